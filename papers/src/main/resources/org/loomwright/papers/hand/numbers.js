// Units of one kind, each a thousand of the one before.
var UNITS = [['mV', 'V'], ['mA', 'A'], ['\u03a9', 'k\u03a9', 'M\u03a9']];

function unitsLike(unit) {
  return UNITS.filter(function (it) { return it.indexOf(unit) >= 0; })[0] || [unit];
}

// The same number in another unit of its kind, its digits kept.
function inUnit(text, from, to) {
  var kind = unitsLike(to);
  var by = 3 * (kind.indexOf(from) - kind.indexOf(to));
  if (by === 0) { return text; }
  var parts = /^(-?)([0-9]+)(?:\.([0-9]+))?$/.exec(text);
  var digits = '000000' + parts[2] + (parts[3] || '') + '000000';
  var point = 6 + parts[2].length + by;
  var whole = digits.slice(0, point).replace(/^0+(?=[0-9])/, '');
  var rest = digits.slice(point).replace(/0+$/, '');
  return parts[1] + whole + (rest ? '.' + rest : '');
}

// Reads a number as people write it. Gives {value, text} in the unit asked for, or {fault}; never a
// guess. A unit typed behind it counts more than the one it was said to be in.
function readNumber(typed, said, unit, negative) {
  var text = typed.replace(/\u00a0/g, ' ').replace(/^\s+|\s+$/g, '').replace(/\u2212/g, '-');
  if (text === '') { return {fault: 'Type what the meter shows.'}; }
  var parts = /^([+-]?)([0-9.,]+)(?:\s*([^0-9.,\s+-].*))?$/.exec(text);
  if (!parts) {
    return {fault: '"' + shortened(typed) + '" is not a number. Type digits, such as 12.6.'};
  }
  var from = parts[3] ? plainUnit(parts[3]) : said;
  if (unitsLike(unit).indexOf(from) < 0) {
    return {fault: parts[3]
      ? 'The value is wanted in ' + unit + ', not in "' + shortened(parts[3]) + '".'
      : 'Say in which unit the meter shows it.'};
  }
  var digits = parts[2];
  var comma = /^([0-9]+),([0-9]+)$/.exec(digits);
  if (comma) {
    if (comma[2].length === 3 && comma[1] !== '0') {
      return {fault: '"' + digits + '" can be read as ' + comma[1] + comma[2] + ' or as '
        + comma[1] + '.' + comma[2] + '. Write it with a point, or without any mark.'};
    }
    digits = comma[1] + '.' + comma[2];
  }
  if (!/^[0-9]+(\.[0-9]+)?$/.test(digits) || digits.length > 9) {
    return {fault: '"' + shortened(typed) + '" is not a number. Type digits with one point at most,'
      + ' such as 12.6.'};
  }
  digits = digits.replace(/^0+(?=[0-9])/, '');
  var below = parts[1] === '-' && Number(digits) !== 0;
  if (below && !negative) {
    return {fault: 'A value below zero: the leads of the meter are swapped, or the clamp is the'
      + ' wrong way round. Swap them and measure again.'};
  }
  var clean = inUnit((below ? '-' : '') + digits, from, unit);
  if (!IN_RECORD.test(clean)) {
    return {fault: '"' + shortened(typed) + '" is too large or has too many digits. Choose the unit'
      + ' that the meter shows.'};
  }
  return {value: Number(clean), text: clean};
}

// What the reader of records takes for a number.
var IN_RECORD = /^-?[0-9]{1,9}(\.[0-9]{1,9})?$/;

function shortened(text) {
  return text.length > 24 ? text.slice(0, 24) + '...' : text;
}

function plainUnit(unit) {
  var plain = unit.replace(/\s/g, '').replace(/\u2126/g, '\u03a9').replace(/ohms?$/i, '\u03a9')
    .replace(/^K/, 'k');
  // M is a million, so that only the second letter may be small.
  return plain.replace(/^(m?)([va])$/, function (all, milli, letter) {
    return milli + letter.toUpperCase();
  });
}

function lies(value, band) {
  return (!has(band, 'low') || value >= band.low) && (!has(band, 'high') || value <= band.high);
}

// A meter on an open line shows no number: this one stands for it, in the unit of the band.
var OPEN_VALUE = '999999';
var OPEN_LINE = 'The meter shows no number: the line is open';

// Whether an open line lies in a band.
function isOpenLine(band) {
  return !!band && has(band, 'low') && !has(band, 'high') && /\u03a9$/.test(band.unit)
    && band.low <= Number(OPEN_VALUE);
}

function mayBeNegative(band) {
  return has(band, 'low') && band.low < 0;
}

function bandWords(band) {
  var unit = '\u00a0' + band.unit;
  if (has(band, 'low') && has(band, 'high')) {
    return band.low === band.high
      ? band.low + unit
      : 'from ' + band.low + ' to ' + band.high + unit;
  }
  return has(band, 'low') ? band.low + unit + ' or more' : band.high + unit + ' or less';
}
