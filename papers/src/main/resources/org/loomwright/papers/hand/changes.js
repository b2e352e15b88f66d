// Says what a changed answer does to steps that are done, before it is changed.
function changeScreen() {
  var it = change;
  var w = it.weighed;
  return screen([
    el('p', {'class': 'phase'}, 'Step ' + it.step.number + ': ' + it.step.title),
    heading(it.title),
    it.from ? el('p', {}, ['From ', el('b', {}, it.from), ' to ', el('b', {}, it.to), '.'])
      : it.to ? el('p', {}, ['Answer: ', el('b', {}, it.to), '.']) : null,
    w.gone.length + w.again.length + w.unsure.length === 0
      ? el('p', {id: 'untouched'}, 'No step that is done is touched by this.') : null,
    w.back.length > 0 ? box('danger', 'To be taken back on the vehicle first',
      el('ol', {id: 'take-back'}, w.back.map(function (one) {
        return el('li', {}, backWords(one));
      }))) : null,
    stepsBox('gone', 'Done, but not on the new way', w.gone),
    stepsBox('again', 'To be done again', w.again),
    w.unsure.length > 0 ? el('p', {id: 'unsure'}, (w.unsure.length === 1 ? 'One done step depends'
      : w.unsure.length + ' done steps depend') + ' on a question that is still to be asked.') : null
  ], [
    button('keep-answer', 'second', 'Leave it as it was', function () {
      if (it.drop) { it.drop(); }
      show('step');
    }),
    button('change-answer', 'first', it.from ? 'Change the answer' : 'It is so', function () {
      settle(w);
      it.apply();
      if (S.back.length > 0) {
        keep();
        show('back');
      } else {
        it.after();
      }
    })
  ]);
}

function stepsBox(id, title, steps) {
  return steps.length > 0 ? box('warn', title, el('ul', {id: id}, steps.map(function (it) {
    return el('li', {'data-step': it.id}, 'Step ' + it.number + ': ' + it.title);
  }))) : null;
}

// Takes out of what is done, answered and measured what no longer counts.
function settle(weighed) {
  S.done = weighed.keep;
  weighed.gone.concat(weighed.again).forEach(function (step) {
    step.readings.forEach(function (it) {
      delete S.taken[it.id];
    });
    if (step.ask && weighed.gone.indexOf(step) >= 0) {
      delete S.answers[step.ask.trait];
      delete S.measured[step.ask.trait];
    }
  });
  S.back = S.back.concat(weighed.back);
  S.state = 'under way';
}

// What has to be taken back; the guide goes on when all of it is ticked.
function backScreen() {
  var entry = S.back[0];
  var step = stepOf(entry.step);
  var words = backWords(entry);
  return screen([
    el('p', {'class': 'phase'}, S.back.length === 1 ? 'The last thing to take back'
      : S.back.length + ' things to take back'),
    heading(entry.what === 'back' ? 'Take back step ' + step.number : 'Before you go on'),
    leadChip(step),
    box(entry.what === 'shop' || step.undo === 'not-at-all' ? 'danger' : 'warn', '', words),
    entry.what === 'back' ? figureOf(step) : null,
    tick('tick', entry.what === 'shop' || step.undo === 'not-at-all'
      ? 'Settled with the shop' : 'Done', ticked === 'back', function (on) {
      ticked = on ? 'back' : '';
      fault = '';
    }),
    fault ? alarm('step-fault', fault) : null
  ], [button('forward', 'first', 'Go on \u2192', function () {
    if (ticked !== 'back') {
      fault = 'Tick it first.';
      changed();
      return;
    }
    ticked = '';
    fault = '';
    S.back.shift();
    S.at = '';
    keep();
    show(resting());
  })]);
}

// Takes a step out of what is done, with all that hangs on it. What that touches is said first.
function reopen(step, title, apply) {
  var answers = copy(S.answers);
  if (step.ask) { delete answers[step.ask.trait]; }
  var done = copy(S.done);
  delete done[step.id];
  var weighed = weigh(answers, done);
  var touched = weighed.gone.concat(weighed.again, weighed.back).length > 0;
  change = {
    step: step, weighed: weighed, title: title, from: '', to: '', drop: null,
    apply: function () {
      apply();
      S.at = step.id;
      if (step.ask) {
        delete S.answers[step.ask.trait];
        delete S.measured[step.ask.trait];
      } else if (touched) {
        step.readings.forEach(function (it) { delete S.taken[it.id]; });
      }
    },
    after: function () { goTo(step); }
  };
  if (isDone(step) && touched) {
    show('change');
    return;
  }
  if (isDone(step)) { settle(weighed); }
  change.apply();
  change.after();
}

// A step that was ticked turns out not to be done.
function notDone(step) {
  reopen(step, 'Not done after all?', function () {});
}

function openOdd(step) {
  return S.odd.filter(function (it) { return it.step === step.id && !it.settled; })[0] || null;
}

function oddScreen() {
  var step = here(walk(S.answers));
  return screen([
    el('p', {'class': 'phase'}, 'Step ' + step.number + ': ' + step.title),
    heading('It does not look like that'),
    box('danger', 'Stop here', ['Do not go on by guess, and do not try the next best place.']),
    el('label', {'for': 'odd-words'}, 'What do you see instead?'),
    el('textarea', {
      id: 'odd-words', rows: '4', maxlength: '400',
      input: function (event) { oddWords = event.target.value; }
    }, oddWords),
    fault ? alarm('step-fault', fault) : null
  ], [
    button('odd-drop', 'second', 'Back', function () {
      fault = '';
      oddWords = '';
      show('step');
    }),
    button('odd-keep', 'first', 'Note it', function () {
      var clean = oddWords.replace(/\s+/g, ' ').replace(/^ | $/g, '');
      if (!clean) {
        fault = 'Write down what you see.';
        changed();
        return;
      }
      fault = '';
      reopen(step, 'This touches steps that are done', function () {
        S.odd.push({step: step.id, words: clean, settled: false});
      });
    })
  ]);
}

function oddBox(odd, step) {
  var photos = ['the whole place, so that one sees where it is'];
  if (has(step, 'picture')) { photos.push('the face from the side shown in the picture, sharp and straight on'); }
  if (step.lead) { photos.push('the label of lead ' + GUIDE.leads[step.lead].label); }
  photos.push('the label of the kit');
  return el('div', {id: 'odd-open', 'class': 'box danger stop'}, [
    el('p', {'class': 'box-title'}, 'Stop: this is not as the guide says'),
    el('p', {}, 'Noted: ' + odd.words),
    el('p', {}, 'Photograph ' + photos.join('; ') + '.'),
    el('p', {}, 'Ask the shop that made the kit: kit ' + GUIDE.kit + ', revision ' + GUIDE.revision
      + ', step ' + step.number + '. Do not go on before it has answered.'),
    tick('settled', 'Settled with the shop: this step can be done', false, function (on) {
      if (on) {
        odd.settled = true;
        keep();
        changed();
      }
    }),
    button('odd-end', 'second', 'End the guide here', function () {
      stop(step, '');
    })
  ]);
}

// Ends the guide before its last step. Why is in the record.
function stop(step, words) {
  if (words) { S.odd.push({step: step.id, words: words.replace(/\u00a0/g, ' '), settled: true}); }
  S.state = 'stopped';
  S.ended = now();
  keep();
  show('summary');
}

function againScreen() {
  var sure = ticked === 'again';
  return screen([
    heading(sure ? 'Really begin again?' : 'Begin again?'),
    box('danger', '', [sure ? 'Everything that was answered, ticked and measured is lost now.'
      : 'All answers, ticks and values are thrown away. Save the record first if the work on this'
        + ' vehicle has begun.']),
    sure ? null : saveParts('again-save')
  ], [
    button('again-no', 'first', 'No, keep it', function () {
      ticked = '';
      show(resting());
    }),
    button(sure ? 'again-really' : 'again-yes', 'second', sure ? 'Yes, throw it away'
      : 'Begin again', function () {
      if (!sure) {
        ticked = 'again';
        show('again');
        return;
      }
      become(fresh());
      keep();
      show('start');
    })
  ]);
}
