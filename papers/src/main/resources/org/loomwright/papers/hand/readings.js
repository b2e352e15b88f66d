// Readings of a step that this vehicle is asked for.
function readingsOf(step, build) {
  return step.readings.filter(function (it) { return possible(build, it.when); });
}

function readingOf(id) {
  for (var i = 0; i < GUIDE.steps.length; i++) {
    var found = GUIDE.steps[i].readings.filter(function (it) { return it.id === id; })[0];
    if (found) { return found; }
  }
  return null;
}

// How a reading stands: 'open', 'right', 'outside', or 'no-before' where the value that it is
// compared with was not taken.
function standing(reading) {
  if (!has(S.taken, reading.id)) { return 'open'; }
  var value = S.taken[reading.id];
  if (reading.kind === 'works') { return value === 'yes' ? 'right' : 'outside'; }
  if (reading.kind === 'words') { return 'right'; }
  if (reading.band && !lies(Number(value), reading.band)) { return 'outside'; }
  if (!has(reading, 'rise')) { return 'right'; }
  if (valueBefore(reading) === '') { return 'no-before'; }
  return riseOf(reading) > reading.rise ? 'outside' : 'right';
}

// The value that a number is compared with, in its own unit; empty where it was not taken.
function valueBefore(reading) {
  var before = reading.compareWith ? readingOf(reading.compareWith) : null;
  return before && has(S.taken, before.id)
    ? inUnit(S.taken[before.id], before.unit, reading.unit) : '';
}

// Without the binary digits that nobody reads off a meter.
function riseOf(reading) {
  return Number((Number(S.taken[reading.id]) - Number(valueBefore(reading))).toFixed(6));
}

// Whether a reading lets its step be left. What can't be compared is settled by a note at the step.
function isGood(reading, step) {
  var stands = standing(reading);
  return stands === 'right' || (stands === 'no-before' && S.odd.some(function (it) {
    return it.step === step.id && it.settled;
  }));
}

function take(reading, value) {
  if (value === '') { delete S.taken[reading.id]; } else { S.taken[reading.id] = value; }
}

// What is done is only shown: a value is taken again by doing the step again.
function readingKept(reading) {
  return el('div', {'class': 'reading', 'data-reading': reading.id}, [
    el('p', {}, el('b', {}, capital(reading.name))),
    el('p', {'class': 'right'}, '\u2713 ' + rightWords(reading))
  ]);
}

function readingForm(reading, step) {
  var id = 'reading-' + reading.id.replace(/[^a-z0-9]+/gi, '-');
  var stands = standing(reading);
  var parts = [];
  if (reading.kind === 'works') {
    parts.push(choices(reading.id, capital(reading.name), [
      {value: 'yes', words: 'Yes'}, {value: 'no', words: 'No'}
    ], S.taken[reading.id], function (value) {
      take(reading, value);
      changed();
    }));
  } else if (reading.kind === 'words') {
    parts.push(el('label', {'for': id}, capital(reading.name)));
    if (reading.compareWith) {
      parts.push(el('p', {'class': 'hint'}, 'Before the work: '
        + (S.taken[reading.compareWith] || 'not taken') + '.'));
    }
    parts.push(el('textarea', {
      id: id, rows: '3', maxlength: '400',
      change: function (event) {
        take(reading, event.target.value.replace(/\s+/g, ' ').replace(/^ | $/g, ''));
        changed();
      }
    }, S.taken[reading.id] || ''));
    parts.push(button(id + '-none', 'quiet', 'None', function () {
      take(reading, 'none');
      changed();
    }));
  } else {
    parts = parts.concat(numberField(id, capital(reading.name), limitWords(reading), {
      options: unitsLike(reading.unit), said: saidUnit(reading.id, reading.unit),
      value: has(typed, reading.id) ? typed[reading.id] : S.taken[reading.id] || '',
      fault: faults[reading.id]
    }, function (text, unit) { typeNumber(reading, text, unit); }));
    if (isOpenLine(reading.band)) {
      parts.push(button(id + '-line', 'quiet', OPEN_LINE, function () {
        typeNumber(reading, OPEN_VALUE, reading.unit);
      }));
    }
    if (reading.source) {
      parts.push(el('details', {}, [el('summary', {}, 'Where this limit comes from'),
        el('p', {}, capital(reading.source) + '.')]));
    }
  }
  if (reading.outside && !reading.band && reading.kind !== 'works' && stands !== 'outside') {
    parts.push(box('note', '', [reading.outside]));
  }
  if (stands === 'outside') { parts.push(outside(reading, step)); }
  if (stands === 'no-before') { parts.push(box('warn', 'This can\'t be judged', [NO_BEFORE])); }
  if (stands === 'right') { parts.push(el('p', {'class': 'right'}, '\u2713 ' + rightWords(reading))); }
  return el('div', {'class': 'reading', 'data-reading': reading.id}, parts);
}

var NO_BEFORE = 'The value before the work was not taken, and can\'t be taken any more. Note it under'
  + ' "It does not look like that" and settle it with the shop, or end the guide here.';

// What a number has to be, in words; empty where any will do.
function limitWords(reading) {
  if (reading.band) { return bandWords(reading.band); }
  if (!has(reading, 'rise')) { return ''; }
  var before = valueBefore(reading);
  return 'at most ' + reading.rise + '\u00a0' + reading.unit + ' more than before the work'
    + (before === '' ? '' : ' (' + before + '\u00a0' + reading.unit + ')');
}

// The unit that the fitter says the meter shows; a value that is kept is in that of the reading.
function saidUnit(id, usual) {
  return has(said, id) ? said[id] : usual;
}

function numberField(id, name, limit, now, changedTo) {
  var fault = now.fault;
  var number = el('input', {
    id: id, type: 'text', inputmode: 'decimal', autocomplete: 'off', value: now.value,
    maxlength: '30', 'aria-describedby': id + '-hint' + (fault ? ' ' + id + '-fault' : ''),
    'aria-invalid': fault ? 'true' : null,
    change: function () { changedTo(number.value, unit.value); }
  });
  var unit = el('select', {
    id: id + '-unit', 'aria-label': 'Unit of: ' + name,
    change: function () { changedTo(number.value, unit.value); }
  }, (now.said ? [] : ['']).concat(now.options).map(function (it) {
    return el('option', {value: it, selected: it === now.said}, it || 'unit?');
  }));
  return [
    el('label', {'for': id}, name),
    el('div', {'class': 'number'}, [number, unit]),
    el('p', {id: id + '-hint', 'class': 'hint'}, limit ? 'Right: ' + limit + '.' : ''),
    fault ? alarm(id + '-fault', fault) : null
  ];
}

function typeNumber(reading, text, unit) {
  var band = reading.band || {};
  var read = readNumber(text, unit, reading.unit, mayBeNegative(band));
  delete faults[reading.id];
  delete said[reading.id];
  if (read.fault) {
    typed[reading.id] = text;
    said[reading.id] = unit;
    faults[reading.id] = read.fault;
    delete S.taken[reading.id];
  } else {
    delete typed[reading.id];
    take(reading, read.text);
  }
  changed();
}

function rightWords(reading) {
  var value = S.taken[reading.id];
  if (reading.kind !== 'number') { return capital(value); }
  return valueWords(reading, value) + (limitWords(reading) && standing(reading) === 'right'
    ? ' is right' : ' is noted');
}

// A value with its unit; one that stands for an open line says so.
function valueWords(reading, value) {
  return isOpenLine(reading.band) && value === OPEN_VALUE ? 'Open line'
    : value + '\u00a0' + reading.unit;
}

function outside(reading, step) {
  var id = reading.id.replace(/[^a-z0-9]+/gi, '-');
  var value = S.taken[reading.id];
  var said = reading.kind !== 'number' ? capital(reading.name) + ': ' + value + '.'
    : reading.band ? valueWords(reading, value) + ' is outside: right is ' + limitWords(reading) + '.'
      : valueWords(reading, value) + ' is ' + valueWords(reading, riseOf(reading))
        + ' more than before the work (' + valueWords(reading, valueBefore(reading)) + ').';
  return el('div', {'class': 'box danger stop', role: 'alert'}, [
    el('p', {'class': 'box-title'}, 'Stop: do not go on'),
    el('p', {}, said),
    reading.outside ? el('p', {}, reading.outside) : null,
    el('div', {'class': 'buttons'}, [
      button('again-' + id, 'second', 'Take it again', function () {
        delete S.taken[reading.id];
        changed();
      }),
      button('end-' + id, 'second', 'End the guide here', function () {
        stop(step, said);
      })
    ])
  ]);
}

// Why the readings of a step do not let it be left; empty when they do.
function readingsFault(step, build) {
  var wrong = readingsOf(step, build).filter(function (it) { return !isGood(it, step); })[0];
  if (!wrong) { return ''; }
  if (has(faults, wrong.id)) { return faults[wrong.id]; }
  switch (standing(wrong)) {
    case 'open': return 'Still to be taken: ' + wrong.name + '.';
    case 'no-before': return NO_BEFORE;
    default: return 'Do not go on: ' + wrong.name + ' is not right.';
  }
}
