// Readings of a step that this vehicle is asked for.
function readingsOf(step, build) {
  return step.readings.filter(function (it) {
    return truth(it.when, build) === true
      || (truth(it.when, build) === null && possible(build, it.when));
  });
}

function readingOf(id) {
  for (var i = 0; i < GUIDE.steps.length; i++) {
    var found = GUIDE.steps[i].readings.filter(function (it) { return it.id === id; })[0];
    if (found) { return found; }
  }
  return null;
}

// How a reading stands: 'open', 'right', 'outside', or 'ask' where the fitter has to compare.
function standing(reading) {
  var value = S.taken[reading.id];
  if (value === undefined || value === '') { return 'open'; }
  if (reading.kind === 'works') { return value === 'yes' ? 'right' : 'outside'; }
  if (reading.kind === 'number' && reading.band && !lies(Number(value), reading.band)) {
    return 'outside';
  }
  if (reading.compareWith && !reading.band) {
    var agreed = S.agreed[reading.id];
    return agreed === 'yes' ? 'right' : agreed === 'no' ? 'outside' : 'ask';
  }
  return 'right';
}

function take(reading, value) {
  S.taken[reading.id] = value;
  delete S.agreed[reading.id];
}

function readingForm(reading, step) {
  var id = 'reading-' + reading.id.replace(/[^a-z0-9]+/gi, '-');
  var stands = standing(reading);
  var parts = [];
  if (reading.kind === 'works') {
    parts.push(choices(reading.id, capital(reading.name), [
      {value: 'yes', words: 'Yes, it works'}, {value: 'no', words: 'No, it does not'}
    ], S.taken[reading.id], function (value) {
      take(reading, value);
      changed();
    }));
  } else if (reading.kind === 'words') {
    parts.push(el('label', {'for': id}, capital(reading.name)));
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
    parts = parts.concat(numberField(id, nameOf(reading), reading.band || {}, {
      options: unitsLike(unitOf(reading)), said: saidUnit(reading.id, unitOf(reading)),
      value: has(typed, reading.id) ? typed[reading.id] : S.taken[reading.id] || '',
      fault: faults[reading.id]
    }, function (text, unit) { typeNumber(reading, text, unit); }));
    if (reading.source) {
      parts.push(el('details', {}, [el('summary', {}, 'Where this limit comes from'),
        el('p', {}, capital(reading.source) + '.')]));
    }
  }
  parts.push(comparison(reading));
  if (stands === 'outside') { parts.push(outside(reading, step)); }
  if (stands === 'right') { parts.push(el('p', {'class': 'right'}, '\u2713 ' + rightWords(reading))); }
  return el('div', {'class': 'reading', 'data-reading': reading.id}, parts);
}

// A number is typed in the unit of its band; one without a band in that of the one it repeats.
function unitOf(reading) {
  if (reading.band) { return reading.band.unit; }
  var before = reading.compareWith ? readingOf(reading.compareWith) : null;
  if (before && before.band) { return before.band.unit; }
  var named = UNIT_IN_NAME.exec(reading.name);
  return named ? named[1] : /current/i.test(reading.name) ? 'mA' : 'V';
}

var UNIT_IN_NAME = /, in (mV|V|mA|A|k?\u03a9)$/;

function nameOf(reading) {
  return capital(reading.name.replace(UNIT_IN_NAME, ''));
}

// The unit that the fitter says the meter shows; a value that is kept is in that of the band.
function saidUnit(id, usual) {
  return has(said, id) ? said[id] : usual;
}

function numberField(id, name, band, now, changedTo) {
  var wants = has(band, 'low') || has(band, 'high');
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
    el('p', {id: id + '-hint', 'class': 'hint'}, (wants ? 'Right: ' + bandWords(band) + '. ' : '')
      + (/\u03a9/.test(now.options[0])
        ? 'Where the meter shows no number because the line is open, type the end of its range.'
        : '')),
    fault ? alarm(id + '-fault', fault) : null
  ];
}

function typeNumber(reading, text, unit) {
  var band = reading.band || {};
  var read = readNumber(text, unit, unitOf(reading), mayBeNegative(band));
  delete faults[reading.id];
  delete said[reading.id];
  if (read.fault) {
    typed[reading.id] = text;
    said[reading.id] = unit;
    faults[reading.id] = read.fault;
    delete S.taken[reading.id];
    delete S.agreed[reading.id];
  } else {
    delete typed[reading.id];
    take(reading, read.text);
  }
  changed();
}

function rightWords(reading) {
  var value = S.taken[reading.id];
  if (reading.kind === 'number') {
    return value + '\u00a0' + unitOf(reading) + (reading.band ? ' is right' : ' is noted');
  }
  return reading.kind === 'works' ? 'Works' : 'Noted';
}

// What is only compared with an earlier value is judged by the fitter, who is told by how much.
function comparison(reading) {
  if (!reading.compareWith || reading.band || standing(reading) === 'open') { return null; }
  var before = S.taken[reading.compareWith];
  var value = S.taken[reading.id];
  var unit = reading.kind === 'number' ? '\u00a0' + unitOf(reading) : '';
  var lines = [before === undefined ? 'Before the work: not taken.' : 'Before the work: ' + before
    + unit + '. Now: ' + value + unit + '.'];
  if (reading.kind === 'number' && before !== undefined) {
    lines.push('Difference: ' + Number((Number(value) - Number(before)).toFixed(6)) + unit + '.');
  }
  return el('div', {}, [
    box('note', '', lines.concat([reading.outside])),
    choices(reading.id + ' agreed', 'Is that in order?', [
      {value: 'yes', words: reading.kind === 'number' ? 'Yes, it is within that'
        : 'Yes, nothing new'},
      {value: 'no', words: reading.kind === 'number' ? 'No, it is more' : 'No, there is something new'}
    ], S.agreed[reading.id], function (value) {
      S.agreed[reading.id] = value;
      changed();
    })
  ]);
}

function outside(reading, step) {
  var id = reading.id.replace(/[^a-z0-9]+/gi, '-');
  var value = S.taken[reading.id];
  var said = reading.kind === 'number'
    ? value + '\u00a0' + unitOf(reading) + (reading.band ? ' is outside: right is '
      + bandWords(reading.band) + '.' : ' is too much.')
    : capital(reading.name) + ': ' + value + '.';
  return el('div', {'class': 'box danger stop', role: 'alert'}, [
    el('p', {'class': 'box-title'}, 'Stop: do not go on'),
    el('p', {}, said),
    reading.outside ? el('p', {}, reading.outside) : null,
    el('div', {'class': 'buttons'}, [
      button('again-' + id, 'second', 'Take it again', function () {
        delete S.taken[reading.id];
        delete S.agreed[reading.id];
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
  var wrong = readingsOf(step, build).filter(function (it) { return standing(it) !== 'right'; })[0];
  if (!wrong) { return ''; }
  if (has(faults, wrong.id)) { return faults[wrong.id]; }
  switch (standing(wrong)) {
    case 'open': return 'Still to be taken: ' + wrong.name + '.';
    case 'ask': return 'Say whether it is in order: ' + wrong.name + '.';
    default: return 'Do not go on: ' + wrong.name + ' is not right.';
  }
}
