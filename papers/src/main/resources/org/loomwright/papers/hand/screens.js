function screen(children, feet, look) {
  return [el('main', {id: 'main', 'class': look || ''}, children), feet ? el('nav', {
    'class': 'feet', 'aria-label': 'Steps'
  }, feet) : null];
}

function heading(words) {
  return el('h1', {id: 'heading', tabindex: '-1'}, words);
}

function keepNote() {
  return keeps ? null : box('warn', 'Nothing is kept', [NOT_KEPT].concat(saveParts('keep-save')));
}

// A plan that is not sound is for looking at: no work on the vehicle is done by it.
function unsoundBox() {
  return GUIDE.sound ? null : box('danger', 'Do not fit this kit', ['Its plan has gaps or a check that'
    + ' fails. This guide is for looking at only.']);
}

// Whether a step of a plan that is not sound can only be looked at: the first work, and all after it.
function isLookedAt(way, step) {
  return !GUIDE.sound && way.steps.slice(0, way.steps.indexOf(step) + 1).some(function (it) {
    return has(it, 'act');
  });
}

// Kit, vehicle and person; where the work begins and where it is gone on with.
function startScreen() {
  var begun = S.begun !== '';
  return screen([
    el('p', {'class': 'phase'}, 'Fitting guide'),
    heading(GUIDE.kitName),
    el('p', {}, 'Kit ' + GUIDE.kit + ', revision ' + GUIDE.revision
      + (has(GUIDE, 'release') ? ', release ' + GUIDE.release : ', not released')
      + '. For: ' + GUIDE.vehicleName + '.'),
    unsoundBox(),
    el('p', {}, 'About ' + GUIDE.minutes + ' min. On average '
      + Math.round(GUIDE.questions * 10) / 10 + ' questions. Tools: '
      + (GUIDE.tools.join(', ') || 'none') + '.'),
    keepNote(),
    fault ? alarm('start-fault', fault) : null,
    GUIDE.numbers.length > 1 ? choices('part-number', 'Which part number is in your hand?'
      + ' It is on the label of the kit.', GUIDE.numbers.map(function (it) {
        return {value: it.id, words: it.id, more: tellingLeads(it)};
      }), S.partNumber, function (value) {
        S.partNumber = value;
        fault = '';
        keep();
      }) : null,
    textField('serial', 'Serial of the kit', S.serial, 'As on its label; may stay empty.',
      function (it) { S.serial = it; keep(); }),
    textField('vehicle-note', 'Vehicle', S.vehicleNote, 'Its registration, or what tells it apart.',
      function (it) { S.vehicleNote = it; keep(); }),
    textField('by', 'Who does the work', S.by, '', function (it) { S.by = it; keep(); }),
    el('div', {'class': 'buttons'}, [
      el('input', {
        id: 'open-record', type: 'file', 'class': 'file-input', accept: '.json,.txt,application/json,text/plain',
        change: openRecord
      }),
      el('label', {'class': 'second', 'for': 'open-record'}, 'Open a saved record'),
      button('print', 'second', 'Print all steps', printAll),
      begun ? button('begin-again', 'second', 'Begin again', function () { show('again'); }) : null
    ])
  ], [button('begin', 'first', begun ? 'Go on' : 'Begin', function () {
    if (!S.partNumber && GUIDE.numbers.length > 0) {
      fault = 'Choose the part number that is on the label of the kit.';
      changed();
      return;
    }
    fault = '';
    if (!S.begun) { S.begun = now(); }
    keep();
    show(resting());
  })]);
}

// The leads that tell one part number from the others.
function tellingLeads(number) {
  var own = number.labels.filter(function (label) {
    return GUIDE.numbers.some(function (it) { return it.labels.indexOf(label) < 0; });
  });
  return own.length > 0 ? 'With ' + own.join(', ') : '';
}

// Cases of this vehicle that the part number in the hand can't serve.
function notServed(way) {
  var number = numberOf(S.partNumber);
  return number ? casesOf(way.build).filter(function (it) {
    return number.cases.indexOf(it.id) < 0;
  }) : [];
}

function numberFault(way) {
  var cases = notServed(way);
  if (cases.length === 0) { return null; }
  var all = casesOf(way.build);
  var others = GUIDE.numbers.filter(function (number) {
    return all.every(function (it) { return number.cases.indexOf(it.id) >= 0; });
  });
  return box('danger', 'Stop: this vehicle needs another part number', [
    'It is in ' + cases.map(function (it) { return 'case ' + it.id + ' (' + it.topic + ': '
      + it.words + ')'; }).join(' and ') + ', which ' + S.partNumber + ' does not serve. '
      + (others.length > 0 ? 'Right is ' + others.map(function (it) { return it.id; }).join(' or ')
        + '.' : 'Ask the shop.') + ' Do not go on with this kit.',
    button('number-change', 'second', 'The part number was noted wrong', function () {
      show('start');
    })
  ]);
}

function casesWords(way) {
  var cases = casesOf(way.build);
  return cases.length > 0 ? box('note', 'This vehicle', cases.map(function (it) {
    return it.id + ', ' + it.topic + ': ' + it.words;
  })) : null;
}

var DONE_WORDS = {
  caution: 'Go on', prepare: 'Done', act: 'Done', confirm: 'Go on', measure: 'Done', ask: 'Go on'
};

// What has to be ticked before a step counts as done, in words; empty when the button will do.
function tickWords(step) {
  if (step.kind === 'caution') { return 'I have read this and keep to it'; }
  if (step.kind === 'confirm') {
    return /tug/i.test(step.title) ? 'Clicked, tugged, looked: it holds' : 'Checked: it is right';
  }
  return hardWords(step) && step.act ? 'I looked twice: this is the right place' : '';
}

function stepScreen() {
  var way = walk(S.answers);
  var step = here(way);
  var oddNow = openOdd(step);
  var confirm = confirmWords(step);
  var looks = isLookedAt(way, step);
  return screen([
    topBar(way, step),
    el('progress', {max: String(way.steps.filter(isDone).length + leftAtMost(way)),
      value: String(way.steps.filter(isDone).length), 'aria-label': 'Steps done'}),
    unsoundBox(),
    way.lost === step && (isDone(step) || looks) ? lostBox(way) : null,
    numberFault(way),
    el('p', {'class': 'phase'}, step.phase),
    heading(step.title),
    isDone(step) ? el('p', {'class': 'done-mark'}, '\u2713 Done') : null,
    hardMark(step),
    leadChip(step),
    figureOf(step),
    step.text ? el('p', {'class': 'text' + (step.kind === 'caution' ? ' caution' : '')}, step.text)
      : null,
    step.why ? el('p', {'class': 'why'}, [el('b', {}, 'Why it matters: '), step.why]) : null,
    confirm ? el('p', {'class': 'confirm'}, [el('b', {}, 'Then confirm. '), confirm]) : null,
    step.id === 'prepare/cases' ? casesWords(way) : null,
    factsOf(step),
    step.ask ? questionForm(step) : null,
    readingsOf(step, way.build).map(function (it) {
      return looks ? readingLine(it) : isDone(step) ? readingKept(it) : readingForm(it, step);
    }),
    tickWords(step) && !isDone(step) && !looks ? tick('tick', tickWords(step), ticked === step.id,
      function (on) {
        ticked = on ? step.id : '';
        fault = '';
        changed();
      }) : null,
    oddNow ? oddBox(oddNow, step) : button('odd', 'odd', 'It does not look like that', function () {
      show('odd');
    }),
    isDone(step) && (!step.ask || isLocked(step)) ? button('not-done', 'quiet', step.ask
      ? 'Measure it again' : 'Not done after all', function () { notDone(step); }) : null,
    keepNote(),
    fault ? alarm('step-fault', fault) : null
  ], [
    button('back', 'second', 'Back', function () { goBack(way, step); }),
    button('forward', 'first', (isDone(step) || looks ? 'Go on' : DONE_WORDS[step.kind]) + ' \u2192',
      function () { forward(way, step); })
  ], has(step, 'picture') ? 'step' : '');
}

function topBar(way, step) {
  var done = way.steps.filter(isDone).length;
  return el('div', {'class': 'top'}, [
    el('p', {id: 'where'}, [el('b', {}, 'Step ' + step.number), ' \u00b7 ' + done + ' done \u00b7 '
      + leftWords(way)]),
    button('list', 'quiet', 'All steps', function () { show('list'); })
  ]);
}

function leftAtMost(way) {
  var end = way.steps[way.steps.length - 1];
  return way.steps.filter(function (it) { return !isDone(it); }).length
    + (way.lost ? 0 : leftAfter(end, way.build, {})[1]);
}

function lostBox(way) {
  var isReal = meets(GUIDE.never.filter(function (it) { return !it.unserved; })
    .map(function (it) { return ['not', it.when]; }), way.build);
  return box('danger stop', isReal ? 'Stop: this kit does not serve this vehicle'
    : 'Stop: the answers do not go together', [
    (isReal ? 'Check the answers; if they are right, do not fit the kit: ask the shop.'
      : 'No vehicle is like this. Check the answers; if they are right, do not go on: ask the shop.')
  ].concat(way.why.map(function (it) { return it.why; })));
}

// The step that is shown: the one that was left, as far as the work has come to it.
function here(way) {
  var last = way.steps[way.steps.length - 1];
  var limit = GUIDE.sound ? firstOpen(way) || last : last;
  var step = stepOf(S.at);
  var at = step ? way.steps.indexOf(step) : -1;
  return at >= 0 && at <= way.steps.indexOf(limit) ? step : firstOpen(way) || last;
}

function goTo(step) {
  S.at = step.id;
  forget();
  keep();
  show('step');
}

function goBack(way, step) {
  var at = way.steps.indexOf(step);
  if (at > 0) { goTo(way.steps[at - 1]); } else { show('start'); }
}

// Why a step can't be left towards the next; empty when it can.
function forwardFault(way, step) {
  if (openOdd(step)) { return 'Something does not look as it should here. Stop until it is settled.'; }
  if (step.ask && questionFault(step)) { return questionFault(step); }
  // Another answer may be the right one, which needs no other part number.
  if (notServed(way).length > 0 && !(step.ask && isNewAnswer(step))) {
    return 'Stop: this vehicle needs another part number.';
  }
  if (isLookedAt(way, step)) {
    return step === way.steps[way.steps.length - 1] && !step.ask ? 'Do not fit this kit.' : '';
  }
  if (isDone(step)) { return ''; }
  var readings = readingsFault(step, way.build);
  if (readings) { return readings; }
  if (powerIsWrong(step)) {
    return 'Stop: this step needs ' + needsWords(step) + '.';
  }
  return tickWords(step) && ticked !== step.id
    ? 'Tick "' + tickWords(step) + '" first.' : '';
}

function forward(way, step) {
  fault = forwardFault(way, step);
  if (fault) {
    changed();
    return;
  }
  var on = function () {
    if (!isDone(step) && !isLookedAt(way, step)) {
      S.done[step.id] = now();
      S.state = 'under way';
    }
    dropFallen();
    var next = walk(S.answers);
    var at = next.steps.indexOf(step);
    if (next.lost === step) {
      goTo(step);
    } else if (at === next.steps.length - 1) {
      if (firstOpen(next)) {
        goTo(firstOpen(next));
        return;
      }
      if (S.state !== 'finished') {
        S.state = 'finished';
        S.ended = now();
      }
      keep();
      show('summary');
    } else {
      goTo(next.steps[at + 1]);
    }
  };
  if (step.ask) { giveAnswer(step, on); } else { on(); }
}

// All steps of this way: done, here, left.
function listScreen() {
  var way = walk(S.answers);
  var step = here(way);
  var limit = firstOpen(way);
  var last = limit && GUIDE.sound ? way.steps.indexOf(limit) : way.steps.length;
  var phase = '';
  var parts = [];
  way.steps.forEach(function (it, i) {
    if (it.phase !== phase) {
      phase = it.phase;
      parts.push(el('h2', {}, phase));
    }
    var stands = openOdd(it) ? '! not as the guide says' : isDone(it) ? '\u2713 done' : it === limit ? '\u25b6 next'
      : '\u25cb left';
    var words = [el('b', {}, String(it.number)), el('span', {}, it.title),
      el('i', {}, stands + (it === step ? ', you are here' : ''))];
    parts.push(i <= last
      ? el('button', {
        type: 'button', 'class': 'entry', 'data-step': it.id,
        'aria-current': it === step ? 'step' : null, click: function () { goTo(it); }
      }, words)
      : el('p', {'class': 'entry'}, words));
  });
  if (way.open) {
    parts.push(el('p', {'class': 'hint'}, 'More steps follow; which ones depends on the answer to'
      + ' step ' + way.open.number + '.'));
  }
  return screen([
    heading('All steps'),
    el('p', {id: 'where'}, way.steps.filter(isDone).length + ' done \u00b7 ' + leftWords(way)),
    casesWords(way), parts,
    el('div', {'class': 'buttons'}, [
      button('to-start', 'second', 'Kit and vehicle', function () { show('start'); }),
      button('to-summary', 'second', 'Summary so far', function () { show('summary'); }),
      button('begin-again', 'second', 'Begin again', function () { show('again'); })
    ])
  ], [button('to-step', 'first', 'Back to step ' + step.number, function () { show('step'); })]);
}
