// Shows the questions and what the answers say. Words are set as text, never read as markup.
whenWhole(function (data) {
  var main = document.getElementById('page');
  var answers = {};

  function element(tag, kind, words) {
    var it = document.createElement(tag);
    if (kind) it.className = kind;
    if (words) it.textContent = words;
    return it;
  }

  function add(parent, tag, kind, words) {
    return parent.appendChild(element(tag, kind, words));
  }

  function capital(words) {
    return words.charAt(0).toUpperCase() + words.slice(1);
  }

  function listed(words) {
    if (words.length < 2) return words.join('');
    return words.slice(0, -1).join(', ') + ' and ' + words[words.length - 1];
  }

  function find(list, id) {
    return list.filter(function (it) { return it.id === id; })[0];
  }

  function questionName(id) {
    var question = find(data.questions, id);
    return 'question ' + (data.questions.indexOf(question) + 1) + ', ' + question.name;
  }

  // Shapes carry the outcome beside the words, for those who can't tell the colours apart.
  var SHAPES = {
    fits: ['M14 3a11 11 0 1 0 .01 0', 'M9 14.5l3.5 3.5 7-8'],
    not: ['M4 4h20v20h-20z', 'M9 9l10 10M19 9l-10 10'],
    needed: ['M4 8a4 4 0 0 1 4-4h12a4 4 0 0 1 4 4v12a4 4 0 0 1-4 4h-12a4 4 0 0 1-4-4z',
      'M14 9v10M9 14h10'],
    open: ['M14 2l12 12-12 12-12-12z', 'M11 11.5a3 3 0 1 1 3 3.2v1.3M14 19.4v.2']
  };
  var KINDS = {FITS: 'fits', DOES_NOT: 'not', OPEN: 'open'};

  function shape(kind) {
    var svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    svg.setAttribute('viewBox', '0 0 28 28');
    svg.setAttribute('aria-hidden', 'true');
    SHAPES[kind].forEach(function (line) {
      var path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
      path.setAttribute('d', line);
      svg.appendChild(path);
    });
    return svg;
  }

  function card(parent, id, title, kind, words) {
    var box = add(parent, 'section', 'card ' + kind);
    box.id = id;
    add(box, 'h3', '', title);
    var line = add(box, 'p', 'verdict');
    line.appendChild(shape(kind));
    add(line, 'span', '', words);
    return box;
  }

  function openWords(deciding) {
    return deciding.questions.length > 0
      ? 'Can\u2019t be known from these answers'
      : 'Can\u2019t be known before opening';
  }

  function traitWords(id) {
    var trait = find(data.traits, id);
    var verbs = {ask: 'The shop asks', look: 'The shop looks', measure: 'The shop measures'};
    return verbs[trait.how] + ': ' + trait.name +
      (trait.how === 'ask' ? '' : ', at ' + trait.place) +
      (trait.openings.length ? '; opened for it: ' + listed(trait.openings) : '') + '.';
  }

  function decides(box, deciding) {
    if (deciding.questions.length + deciding.traits.length === 0) return;
    add(box, 'p', '', 'What decides:');
    var list = add(box, 'ul');
    deciding.questions.forEach(function (id) {
      add(list, 'li', '', 'Your answer to ' + questionName(id) + '.');
    });
    deciding.traits.forEach(function (id) { add(list, 'li', '', traitWords(id)); });
    if (deciding.traits.length) {
      add(box, 'p', 'soft', 'The shop\u2019s survey looks at this before anything is changed.');
    }
  }

  var WORDS = {
    wiring: {FITS: 'Fits', DOES_NOT: 'Does not fit'},
    modules: {FITS: 'No further module needed', DOES_NOT: 'Needed beside the kit'},
    coding: {FITS: 'No coding needed', DOES_NOT: 'Coding needed'}
  };
  var TITLES = {wiring: 'Wiring', modules: 'Modules', coding: 'Coding'};

  // A kit that is not ready promises nothing, in the same words everywhere.
  function isHeld(answer) {
    return answer.wiring.outcome === 'OPEN' && data.wiring.held !== '';
  }

  function verdict(name, answer) {
    var part = answer[name];
    if (name === 'wiring' && isHeld(answer)) return 'Nothing can be promised yet';
    return part.outcome === 'OPEN' ? openWords(part.deciding) : WORDS[name][part.outcome];
  }

  function wiringCard(parent, answer) {
    var part = answer.wiring;
    var box = card(parent, 'wiring', TITLES.wiring, KINDS[part.outcome], verdict('wiring', answer));
    if (isHeld(answer)) {
      add(box, 'p', '', 'This kit is not ready: ' + data.wiring.held + '.');
    } else if (part.outcome === 'FITS') {
      add(box, 'p', '', 'Each build of this vehicle on record that has your answers was walked ' +
        'through the fitting instructions by calculation, from the first step to the last. ' +
        'On each, everything is connected, protected and grounded at the end.');
    } else if (part.outcome === 'OPEN') {
      add(box, 'p', '', 'It fits some vehicles that have your answers, and others not.');
    }
    var list = part.reasons.length ? add(box, 'ul') : null;
    part.reasons.forEach(function (reason) {
      var refusal = data.wiring.refusals[reason.place];
      var item = add(list, 'li', '', 'It does not fit vehicles ' + refusal.builds +
        '. Nothing in them can serve: ' + listed(refusal.needs) + '.');
      var why = add(item, 'details', 'screen');
      add(why, 'summary', '', 'Why, in full, for the shop');
      add(why, 'p', '', capital(refusal.reason) + '.');
    });
    decides(box, part.deciding);
  }

  function demandCard(parent, name, answer) {
    var part = answer[name];
    var box = card(parent, name, TITLES[name],
      part.outcome === 'DOES_NOT' ? 'needed' : KINDS[part.outcome], verdict(name, answer));
    var list = part.reasons.length ? add(box, 'ul') : null;
    part.reasons.forEach(function (reason) {
      var demand = data[name].each[reason.place];
      var says = {FITS: 'there already, or not needed', DOES_NOT: 'needed', OPEN: 'open'};
      var item = add(list, 'li', '', demand.words + ': ' + says[reason.outcome] + '.');
      if (demand.evidence) add(item, 'span', 'soft', ' How this is known: ' + demand.evidence);
    });
    if (!part.reasons.length) {
      add(box, 'p', '', 'The equipment asks for none on any vehicle of this model.');
    }
    decides(box, part.deciding);
  }

  function numberWords(answer) {
    var number = answer.number;
    if (isHeld(answer)) return 'Not decided yet';
    if (!number.possible.length) return 'None';
    var words = number.possible.length === 1
      ? number.possible[0]
      : number.possible.slice(0, -1).join(', ') + ' or ' +
        number.possible[number.possible.length - 1];
    return words + (number.none ? ', if it fits' : '');
  }

  function numberCard(parent, answer) {
    var number = answer.number;
    if (isHeld(answer)) {
      card(parent, 'number', 'Part number', 'open', numberWords(answer));
      return;
    }
    var known = number.possible.length === 1 && !number.none;
    var outcome = known ? 'FITS' : number.possible.length ? 'OPEN' : 'DOES_NOT';
    var box = card(parent, 'number', 'Part number', KINDS[outcome], numberWords(answer));
    decides(box, number.deciding);
  }

  function time(minutes) {
    var all = Math.max(5, Math.round(minutes / 5) * 5);
    var hours = Math.floor(all / 60);
    var rest = all - 60 * hours;
    return (hours ? hours + ' h' : '') + (hours && rest ? ' ' : '') + (rest ? rest + ' min' : '');
  }

  function kind(work, name, always) {
    return work.lines
      .filter(function (it) { return it.kind === name && it.always === always; })
      .map(function (it) { return it.words; });
  }

  function counted(list, work, name, title) {
    var sure = kind(work, name, true);
    var perhaps = kind(work, name, false);
    if (sure.length) add(list, 'li', '', title + ' (' + sure.length + '): ' + listed(sure) + '.');
    if (perhaps.length) {
      add(list, 'li', '', title + ' on some vehicles only (' + perhaps.length + '): ' +
        listed(perhaps) + '.');
    }
  }

  function told(list, work, name, words) {
    if (kind(work, name, true).length) {
      add(list, 'li', '', capital(words) + '.');
    } else if (kind(work, name, false).length) {
      add(list, 'li', '', 'On some vehicles: ' + words + '.');
    }
  }

  function workPart(parent, work) {
    add(parent, 'h3', '', 'What the job involves');
    if (work.minutes === null) {
      add(parent, 'p', '', 'Nothing can be said, because no vehicle with these answers is proven.');
      return;
    }
    add(parent, 'p', '', 'About ' + time(work.minutes) +
      ' for somebody who knows the trade, on average over vehicles with your answers.');
    var list = add(parent, 'ul');
    told(list, work, 'battery', 'the battery is isolated for the work');
    told(list, work, 'restraint',
      'work beside airbag or belt pretensioner wiring, after the vehicle maker\u2019s waiting time');
    told(list, work, 'for-good', 'something is done that can\u2019t be undone');
    told(list, work, 'special-tool', 'something is done that only a special tool can undo');
    counted(list, work, 'opening', 'Opened or taken out');
    counted(list, work, 'place', 'Places where something is fitted');
    if (!work.lines.some(function (it) { return it.kind === 'for-good' ||
        it.kind === 'special-tool'; })) {
      add(list, 'li', '', 'Everything can be undone with ordinary tools.');
    }
    var tools = add(parent, 'details');
    add(tools, 'summary', '', 'Tools');
    var names = add(tools, 'ul');
    counted(names, work, 'tool', 'Needed');
  }

  function plainly(answer) {
    var lines = [
      'Fit check: ' + data.kit.name,
      'Kit ' + data.kit.id + ', revision ' + data.kit.revision + ', for ' + data.kit.vehicle,
      '', 'Answers'];
    var given = {};
    data.questions.forEach(function (question) {
      var value = answers[question.id];
      var option = question.options.filter(function (it) { return it.value === value; })[0];
      if (option) given[question.id] = value;
      lines.push('- ' + question.name + ': ' + (option ? option.words : 'not known'));
    });
    lines.push('', 'What they say');
    if (answer.conflict.length) {
      lines.push('- These answers do not go together: ' +
        listed(answer.conflict.map(questionName)));
    } else {
      ['wiring', 'modules', 'coding'].forEach(function (name) {
        lines.push('- ' + TITLES[name] + ': ' + verdict(name, answer));
      });
      lines.push('- Part number: ' + numberWords(answer));
    }
    lines.push('', JSON.stringify({
      form: 'loomwright fit check',
      version: 1,
      kit: data.kit.id,
      revision: data.kit.revision,
      vehicle: data.kit.vehicleId,
      answers: given
    }));
    return lines.join('\n') + '\n';
  }

  main.textContent = '';
  document.title = 'Does it fit? ' + data.kit.name;
  add(main, 'h1', '', 'Does it fit your vehicle?');
  add(main, 'p', '', data.kit.name + ': kit ' + data.kit.id + ', revision ' + data.kit.revision +
    ', for ' + data.kit.vehicle + '.');
  add(main, 'p', 'verified', data.verifiedOn === 0
    ? 'Verified on no vehicle yet: nobody has fitted this kit, measured it and signed for it so far.'
    : 'Verified on ' + data.verifiedOn + (data.verifiedOn === 1 ? ' vehicle' : ' vehicles') +
      ': fitted, measured and signed for.');
  add(main, 'p', 'soft', 'Answer what you know or can see. Nothing has to be opened, and nothing ' +
    'is sent: this page works without a network.');

  var asking = add(main, 'section');
  add(asking, 'h2', '', data.questions.length ? 'Questions' : 'No questions');
  if (!data.questions.length) {
    add(asking, 'p', '', 'Nothing that can be seen from outside makes a difference for this kit.');
  }
  var TOPICS = {wiring: 'the wiring', modules: 'modules', coding: 'coding',
    number: 'the part number', work: 'the work'};
  data.questions.forEach(function (question, n) {
    var set = add(asking, 'fieldset');
    set.id = 'question-' + (n + 1);
    add(set, 'legend', '', (n + 1) + '. ' + capital(question.name));
    add(set, 'p', '', question.text);
    add(set, 'p', 'soft', (question.how === 'look' ? 'Where to look: ' + question.place + '. ' : '') +
      'Helps to decide: ' + listed(question.decides.map(function (it) { return TOPICS[it]; })) + '.');
    var all = question.options.concat([{value: null, words: 'I don\u2019t know', expect: ''}]);
    var labels = [];
    all.forEach(function (option) {
      var label = add(set, 'label', 'option');
      var input = add(label, 'input');
      input.type = 'radio';
      input.name = 'question-' + (n + 1);
      input.value = option.value === null ? '' : option.value;
      var words = add(label, 'span');
      add(words, 'strong', '', capital(option.words));
      if (option.expect) add(words, 'span', 'seen', capital(option.expect));
      labels.push([label, input]);
      input.addEventListener('change', function () {
        if (option.value === null) {
          delete answers[question.id];
        } else {
          answers[question.id] = option.value;
        }
        labels.forEach(function (it) {
          it[0].className = it[1].checked ? 'option chosen' : 'option';
        });
        show();
      });
    });
  });

  var saying = add(main, 'section');
  add(saying, 'h2', '', 'What your answers say');
  var status = add(saying, 'p', 'status');
  status.setAttribute('role', 'status');
  var results = add(saying, 'div');
  results.id = 'results';

  var sending = add(main, 'section', 'screen');
  add(sending, 'h2', '', 'Send these answers to the shop');
  var label = add(sending, 'label', '', 'Copy this text into a message, or save it and attach it.');
  label.setAttribute('for', 'message');
  var message = add(sending, 'textarea');
  message.id = 'message';
  message.readOnly = true;
  var copy = add(sending, 'button', 'first', 'Copy the text');
  var save = add(sending, 'button', '', 'Save as a file');
  var done = add(sending, 'p', 'soft');
  done.setAttribute('role', 'status');

  copy.addEventListener('click', function () {
    message.focus();
    message.select();
    var copied = false;
    try {
      copied = document.execCommand('copy');
    } catch (refused) {
      copied = false;
    }
    done.textContent = copied ? 'Copied.' : 'The text is marked; copy it with your browser\u2019s menu.';
  });
  save.addEventListener('click', function () {
    var link = document.createElement('a');
    var address = URL.createObjectURL(new Blob([message.value], {type: 'text/plain'}));
    link.href = address;
    link.download = data.kit.id + '-fit-check.txt';
    document.body.appendChild(link);
    link.click();
    document.body.removeChild(link);
    setTimeout(function () { URL.revokeObjectURL(address); }, 10000);
    done.textContent = 'Look for ' + link.download + ' among the downloads.';
  });

  var safety = add(main, 'section', 'safety');
  add(safety, 'h2', '', 'What this page is, and is not');
  add(safety, 'p', '', 'It supports your decision and that of the shop; it does not replace their ' +
    'judgement. The shop looks at the vehicle itself before anything is changed. Open nothing and ' +
    'measure nothing for this page. Work on safety-relevant systems, such as brakes, steering, ' +
    'lighting, airbags and high voltage, is for licensed workshops.');

  function show() {
    var answer = fitAnswer(data, answers);
    var given = Object.keys(answers).length;
    results.textContent = '';
    var left = given + ' of ' + data.questions.length + ' questions answered. ';
    if (answer.conflict.length) {
      status.textContent = left + 'These answers do not go together.';
      var box = card(results, 'conflict', 'Please look again', 'open',
        'These answers do not go together');
      add(box, 'p', '', 'No vehicle of this model on record has ' +
        (answer.conflict.length === 1 ? 'this' : 'these together') + ':');
      var list = add(box, 'ul');
      answer.conflict.forEach(function (id) {
        var question = find(data.questions, id);
        var option = question.options.filter(function (it) {
          return it.value === answers[id];
        })[0];
        add(list, 'li', '', capital(questionName(id)) + ': ' + option.words + '.');
      });
      add(box, 'p', '', 'If they are right all the same, tell the shop: it is news to them, and ' +
        'nothing can be promised until they have looked.');
    } else {
      status.textContent = left + ['wiring', 'modules', 'coding'].map(function (name) {
        return TITLES[name] + ': ' + verdict(name, answer)
          .replace(/^\w/, function (it) { return it.toLowerCase(); });
      }).join('. ') + '.';
      wiringCard(results, answer);
      demandCard(results, 'modules', answer);
      demandCard(results, 'coding', answer);
      numberCard(results, answer);
      workPart(results, answer.work);
    }
    message.value = plainly(answer);
  }

  show();
});
