var HOW = {
  'ask-owner': 'Ask the owner', look: 'Look', 'measure-live': 'Measure with power on',
  'measure-isolated': 'Measure with the battery isolated'
};

function isBanded(ask) {
  return ask.answers.every(function (it) { return has(it, 'band'); });
}

function answerOf(ask, value) {
  return ask.answers.filter(function (it) { return it.value === value; })[0] || null;
}

function questionForm(step) {
  var ask = step.ask;
  var parts = [el('p', {'class': 'how'}, HOW[ask.how] + '.')];
  if (isLocked(step)) {
    parts.push(el('p', {'class': 'right'}, '\u2713 ' + capital(answerWords(ask))));
    parts.push(el('p', {'class': 'hint'}, 'It was measured with ' + needsWords(step) + '; now: '
      + powerWords() + '. An answer can only be changed by measuring again.'));
  } else if (isBanded(ask)) {
    parts.push(el('div', {'class': 'reading'}, numberField('answer', 'What the meter shows', '', {
      options: unitsLike(ask.answers[0].band.unit), said: answerUnit(step),
      value: has(typed, ask.trait) ? typed[ask.trait] : S.measured[ask.trait] || '',
      fault: faults[ask.trait]
    }, function (text, unit) { typeAnswer(step, text, unit); })));
    var open = ask.answers.filter(function (it) { return isOpenLine(it.band); })[0];
    if (open) {
      parts.push(button('answer-line', 'quiet', OPEN_LINE, function () {
        typeAnswer(step, OPEN_VALUE, open.band.unit);
      }));
    }
    parts.push(el('ul', {'class': 'meanings'}, ask.answers.map(function (it) {
      var chosen = chosenAnswer(step) === it.value;
      return el('li', {'class': chosen ? 'chosen' : ''}, [
        el('b', {}, (chosen ? '\u2713 ' : '') + seenWords(it)), ': ' + it.words
      ]);
    })));
  } else {
    parts.push(choices('answer', 'What is it?', ask.answers.map(function (it) {
      return {value: it.value, words: capital(it.words), more: it.expect};
    }), chosenAnswer(step), function (value) {
      picked[ask.trait] = value;
      changed();
    }));
  }
  return el('div', {'class': 'question'}, parts);
}

// An answer that was measured stays while power is not as it was then.
function isLocked(step) {
  return isDone(step) && powerIsWrong(step);
}

// The answer that is kept, with the number measured for it.
function answerWords(ask) {
  var answer = answerOf(ask, S.answers[ask.trait]);
  var number = S.measured[ask.trait];
  return answer.words + (number === undefined || !answer.band ? ''
    : isOpenLine(answer.band) && number === OPEN_VALUE ? ' (open line)'
      : ' (' + number + '\u00a0' + answer.band.unit + ')');
}

// What is seen or read for an answer; said once where the words say no more than the band.
function seenWords(answer) {
  var band = answer.band ? bandWords(answer.band) : '';
  return !band || answer.expect.replace(/\s/g, '') === band.replace(/\s/g, '') ? answer.expect
    : band + (answer.expect ? '; ' + answer.expect : '');
}

// The answer picked on the screen, or given before.
function chosenAnswer(step) {
  return has(picked, step.ask.trait) ? picked[step.ask.trait] : S.answers[step.ask.trait];
}

// The unit of the number typed: that of the answer picked, or of all answers; empty where the answers
// are in different units and none has been said.
function answerUnit(step) {
  var ask = step.ask;
  var chosen = answerOf(ask, chosenAnswer(step));
  var units = ask.answers.map(function (it) { return it.band.unit; });
  return has(said, ask.trait) ? said[ask.trait] : chosen ? chosen.band.unit
    : units.every(function (it) { return it === units[0]; }) ? units[0] : '';
}

// A number picks the answer in whose band it lies; between the bands it picks none. It is kept in
// the unit of that answer's band.
function typeAnswer(step, text, unit) {
  var ask = step.ask;
  delete faults[ask.trait];
  typed[ask.trait] = text;
  said[ask.trait] = unit;
  picked[ask.trait] = null;
  var fits = [];
  var shown = text + '\u00a0' + unit;
  ask.answers.forEach(function (it) {
    var read = readNumber(text, unit, it.band.unit, mayBeNegative(it.band));
    if (read.fault) {
      faults[ask.trait] = read.fault;
    } else if (lies(read.value, it.band)) {
      fits.push([it, read.text]);
    }
  });
  if (!has(faults, ask.trait)) {
    if (fits.length === 1) {
      picked[ask.trait] = fits[0][0].value;
      typed[ask.trait] = fits[0][1];
      said[ask.trait] = fits[0][0].band.unit;
    } else {
      faults[ask.trait] = 'Stop: ' + shown + ' fits none of the answers. Check'
        + ' the range of the meter, clean the spots the leads touch, and measure again. If it stays'
        + ' so, do not go on by guess: note it under "It does not look like that" and ask the shop.';
    }
  }
  changed();
}

function questionFault(step) {
  var value = chosenAnswer(step);
  if (has(faults, step.ask.trait)) { return faults[step.ask.trait]; }
  return value === null || value === undefined
    ? isBanded(step.ask) ? 'Type what the meter shows.' : 'Choose what you found.'
    : '';
}

// Whether going on would give another answer than the one that is kept.
function isNewAnswer(step) {
  return chosenAnswer(step) !== S.answers[step.ask.trait];
}

// Takes the picked answer; what it does to steps that are done is said first.
function giveAnswer(step, after) {
  var trait = step.ask.trait;
  var value = chosenAnswer(step);
  var number = has(typed, trait) ? typed[trait] : S.measured[trait];
  var set = function () {
    S.answers[trait] = value;
    if (isBanded(step.ask) && S.measured[trait] !== number) {
      S.measured[trait] = number;
      S.state = 'under way';
    }
    delete picked[trait];
    delete typed[trait];
    delete said[trait];
  };
  if (S.answers[trait] === value) {
    set();
    after();
    return;
  }
  var answers = copy(S.answers);
  answers[trait] = value;
  var weighed = weigh(answers, S.done);
  if (!has(S.answers, trait) && weighed.gone.length + weighed.again.length === 0) {
    set();
    after();
    return;
  }
  change = {
    step: step, weighed: weighed, title: has(S.answers, trait) ? 'Change this answer?'
      : 'This answer touches steps that are done',
    from: has(S.answers, trait) ? answerOf(step.ask, S.answers[trait]).words : '',
    to: answerOf(step.ask, value).words,
    apply: function () {
      set();
      S.done[step.id] = now();
    },
    after: after, drop: function () {
      delete picked[trait];
      delete typed[trait];
      delete said[trait];
      delete faults[trait];
    }
  };
  show('change');
}
