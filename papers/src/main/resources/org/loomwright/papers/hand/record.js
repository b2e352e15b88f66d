var FORM = 'loomwright guide record';

// The record as RECORD says: keys in a fixed order, what is not there left out.
function makeRecord() {
  var way = walk(S.answers);
  var record = {form: FORM, version: 1, kit: GUIDE.kit, revision: GUIDE.revision};
  if (has(GUIDE, 'release')) { record.release = GUIDE.release; }
  record.vehicle = GUIDE.vehicle;
  record.guide = GUIDE.guide;
  ['vehicleNote', 'serial', 'partNumber', 'by'].forEach(function (key) {
    if (S[key]) { record[key] = S[key]; }
  });
  record.begun = S.begun || now();
  if (S.state !== 'under way' && S.ended) { record.ended = S.ended; }
  record.state = S.state;
  record.cases = casesOf(way.build).map(function (it) { return it.id; });
  record.answers = copy(way.build);
  record.taken = {};
  var measured = {};
  GUIDE.steps.forEach(function (step) {
    step.readings.forEach(function (it) {
      if (has(S.taken, it.id)) { record.taken[it.id] = S.taken[it.id]; }
    });
    if (step.ask && has(S.measured, step.ask.trait)) {
      measured[step.ask.trait] = S.measured[step.ask.trait];
    }
  });
  if (Object.keys(measured).length > 0) { record.measured = measured; }
  record.steps = ranges(GUIDE.steps.filter(isDone).map(function (it) { return it.number; }));
  record.odd = S.odd.map(function (it) {
    return {step: stepOf(it.step).number, words: it.words};
  });
  return record;
}

function now() {
  return new Date().toISOString().replace(/\.[0-9]+Z$/, 'Z');
}

// "1-12,14" for the numbers of steps.
function ranges(numbers) {
  var parts = [];
  numbers.forEach(function (it) {
    var last = parts[parts.length - 1];
    if (last && last[1] === it - 1) { last[1] = it; } else { parts.push([it, it]); }
  });
  return parts.map(function (it) {
    return it[0] === it[1] ? String(it[0]) : it[0] + '-' + it[1];
  }).join(',');
}

function numbersOf(text) {
  var numbers = {};
  if (text === '') { return numbers; }
  text.split(',').forEach(function (part) {
    var ends = /^([0-9]{1,6})(?:-([0-9]{1,6}))?$/.exec(part);
    var last = ends ? Number(ends[2] || ends[1]) : 0;
    if (!ends || last > GUIDE.steps.length) { throw new Error('steps'); }
    for (var it = Number(ends[1]); it <= last; it++) { numbers[it] = true; }
  });
  return numbers;
}

function fileText() {
  return JSON.stringify(makeRecord(), null, 1) + '\n';
}

// The same on one line and in ASCII, which every reader of codes reads alike.
function codeText() {
  return JSON.stringify(makeRecord()).replace(/[\u007f-\uffff]/g, function (it) {
    return '\\u' + ('000' + it.charCodeAt(0).toString(16)).slice(-4);
  });
}

function fileName(end) {
  var name = [GUIDE.kit, S.serial || S.vehicleNote || 'record'].join('-');
  return name.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 60)
    + '.guide-record' + end;
}

// Reads a saved record back into a state to go on from; gives {state} or {fault}.
function readRecord(text) {
  var it;
  try {
    it = JSON.parse(text);
  } catch (e) {
    return {fault: 'This file is not a record of a guide, or it is damaged.'};
  }
  if (!it || it.form !== FORM || it.version !== 1) {
    return {fault: 'This file is not a record that this guide can read.'};
  }
  if (it.guide !== GUIDE.guide) {
    return {fault: 'This record belongs to another guide: kit ' + shortened(String(it.kit))
      + ', revision ' + shortened(String(it.revision)) + '. This is the guide of kit ' + GUIDE.kit
      + ', revision ' + GUIDE.revision + '.'};
  }
  try {
    return {state: stateOf(it)};
  } catch (e) {
    return {fault: 'This record says something that this guide does not know; it is damaged.'};
  }
}

function stateOf(it) {
  var state = fresh();
  ['vehicleNote', 'serial', 'partNumber', 'by', 'begun', 'ended', 'state'].forEach(function (key) {
    if (has(it, key)) {
      if (typeof it[key] !== 'string') { throw new Error(key); }
      state[key] = it[key];
    }
  });
  if (['under way', 'finished', 'stopped'].indexOf(state.state) < 0) { throw new Error('state'); }
  if (state.partNumber && !numberOf(state.partNumber)) { throw new Error('partNumber'); }
  GUIDE.steps.forEach(function (step) {
    if (step.ask && has(it.answers, step.ask.trait)) {
      var value = it.answers[step.ask.trait];
      if (!step.ask.answers.some(function (one) { return one.value === value; })) {
        throw new Error('answers');
      }
      state.answers[step.ask.trait] = value;
    }
    if (step.ask && it.measured && has(it.measured, step.ask.trait)) {
      state.measured[step.ask.trait] = checked({kind: 'number'},
        String(it.measured[step.ask.trait]));
    }
    step.readings.forEach(function (one) {
      if (has(it.taken, one.id)) { state.taken[one.id] = checked(one, String(it.taken[one.id])); }
    });
  });
  var numbers = numbersOf(it.steps);
  walk(state.answers).steps.forEach(function (step) {
    if (has(numbers, step.number)) { state.done[step.id] = it.begun; }
  });
  (it.odd || []).forEach(function (one) {
    var step = GUIDE.steps.filter(function (s) { return s.number === one.step; })[0];
    if (!step) { throw new Error('odd'); }
    // A step that was done later had been settled.
    state.odd.push({step: step.id, words: String(one.words), settled: has(state.done, step.id)});
  });
  return state;
}

// A value of a record, when it is one that this reading can have.
function checked(reading, value) {
  var good = reading.kind === 'number' ? IN_RECORD.test(value)
    : reading.kind === 'works' ? value === 'yes' || value === 'no' : value !== '';
  if (!good) { throw new Error(reading.id); }
  return value;
}

function numberOf(id) {
  return GUIDE.numbers.filter(function (it) { return it.id === id; })[0] || null;
}
