function summaryScreen() {
  var way = walk(S.answers);
  var record = makeRecord();
  var parts = [
    row('Kit', GUIDE.kit + ', revision ' + GUIDE.revision), row('Part number', S.partNumber),
    row('Serial', S.serial), row('Vehicle', S.vehicleNote), row('Done by', S.by),
    row('Begun', timeWords(record.begun)), row('Ended', record.ended ? timeWords(record.ended) : ''),
    row('Steps done', record.steps)
  ];
  var answers = way.steps.filter(function (it) {
    return it.ask && has(S.answers, it.ask.trait);
  }).map(function (it) {
    return row(capital(traitOf(it.ask.trait).name), answerWords(it.ask));
  });
  var values = [];
  GUIDE.steps.forEach(function (step) {
    step.readings.forEach(function (it) {
      if (has(S.taken, it.id)) {
        values.push(row(capital(it.name), it.kind === 'number' ? valueWords(it, S.taken[it.id])
          : S.taken[it.id]));
      }
    });
  });
  var title = {finished: 'Finished', stopped: 'Stopped', 'under way': 'So far'}[S.state];
  return screen([
    el('p', {'class': 'phase'}, GUIDE.kitName),
    heading(title),
    unsoundBox(),
    S.state === 'stopped' ? box('danger', 'The work is not finished', ['Do not use what was fitted.'
      + ' Put the vehicle into a safe state: no loose wiring near power. Send the record to the'
      + ' shop.']) : null,
    el('dl', {'class': 'facts', id: 'summary'}, parts),
    casesWords(way),
    answers.length > 0 ? [el('h2', {}, 'Answers'), el('dl', {'class': 'facts'}, answers)] : null,
    values.length > 0 ? [el('h2', {}, 'Values'), el('dl', {'class': 'facts'}, values)] : null,
    S.odd.length > 0 ? [el('h2', {}, 'Not as the guide says'), el('ul', {}, S.odd.map(function (it) {
      return el('li', {}, 'Step ' + stepOf(it.step).number + ': ' + it.words);
    }))] : null,
    el('h2', {}, 'Hand it to the shop'),
    keepNote(),
    canShare() ? button('share', 'second', 'Send the record', shareFile) : null,
    saveParts('save'),
    codeFigure(),
    el('div', {'class': 'buttons'}, [
      button('to-start', 'second', 'Kit and vehicle', function () { show('start'); }),
      S.begun ? button('begin-again', 'second', 'Begin again', function () { show('again'); }) : null
    ])
  ], [button('to-step', 'second', S.state === 'stopped' ? 'Go on after all' : 'Back to the steps',
    function () {
      if (S.state === 'stopped') {
        S.state = 'under way';
        keep();
      }
      show('step');
    })]);
}

function timeWords(iso) {
  var time = new Date(iso);
  if (isNaN(time.getTime())) return iso;
  // Year first, as on the papers: day and month the other way round are another day.
  var two = function (number) { return (number < 10 ? '0' : '') + number; };
  return time.getFullYear() + '-' + two(time.getMonth() + 1) + '-' + two(time.getDate())
    + ' ' + two(time.getHours()) + ':' + two(time.getMinutes());
}

// The record as a code that the shop's phone or program reads from this screen.
function codeFigure() {
  var code = qrCode(codeText());
  if (!code) {
    return el('p', {id: 'code-too-long'}, 'The record is too long for a code on the screen: save'
      + ' it as a file instead.');
  }
  var ns = 'http://www.w3.org/2000/svg';
  var edge = 4;
  var size = code.length + 2 * edge;
  var path = '';
  code.forEach(function (line, y) {
    for (var x = 0; x < line.length; x++) {
      var from = x;
      while (x < line.length && line[x]) { x++; }
      if (x > from) {
        path += 'M' + (from + edge) + ' ' + (y + edge) + 'h' + (x - from) + 'v1h-' + (x - from) + 'z';
      }
    }
  });
  var svg = document.createElementNS(ns, 'svg');
  // Whole pixels of the screen a module, so that no module is blurred.
  var fine = window.devicePixelRatio || 1;
  var scale = Math.max(1, Math.floor(Math.min(window.innerWidth - 24, 560) * fine / size)) / fine;
  svg.setAttribute('viewBox', '0 0 ' + size + ' ' + size);
  svg.setAttribute('width', String(size * scale));
  svg.setAttribute('height', String(size * scale));
  svg.setAttribute('shape-rendering', 'crispEdges');
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', 'The record as a QR code');
  [['M0 0h' + size + 'v' + size + 'H0z', '#fff'], [path, '#000']].forEach(function (it) {
    var part = document.createElementNS(ns, 'path');
    part.setAttribute('d', it[0]);
    part.setAttribute('fill', it[1]);
    svg.appendChild(part);
  });
  return el('figure', {id: 'code'}, [svg, el('figcaption', {}, 'The same record as a QR code.'
    + (code.length > 17 + 4 * QR_EASY ? ' It is dense: where it is not read at once, save the file.'
      : ''))]);
}

// The buttons that save the record, what is said then, and its text for where nothing can be saved.
function saveParts(id) {
  var said = el('p', {id: id + '-said', role: 'status'}, '');
  var text = el('textarea', {
    id: id + '-text', rows: '5', readonly: true, 'aria-label': 'The record as text',
    focus: function () { text.select(); }
  }, '');
  text.value = fileText();
  return [
    button(id, 'second', 'Save the record', function () {
      saveFile();
      said.textContent = 'Look for ' + fileName('.json') + ' among the downloads before you begin'
        + ' again.';
    }),
    said,
    el('details', {}, [
      el('summary', {}, 'No file there? Send the record as text'),
      el('p', {}, 'Copy all of this into a message to the shop.'), text,
      button(id + '-copy', 'second', 'Copy the text', function () {
        text.focus();
        text.select();
        said.textContent = copied() ? 'Copied.' : 'The text is marked; copy it with the menu of your'
          + ' browser.';
      })
    ])
  ];
}

function copied() {
  try {
    return document.execCommand('copy');
  } catch (e) {
    return false;
  }
}

function saveFile() {
  var link = el('a', {
    href: URL.createObjectURL(new Blob([fileText()], {type: 'application/json'})),
    download: fileName('.json')
  }, '');
  document.body.appendChild(link);
  link.click();
  document.body.removeChild(link);
  window.setTimeout(function () { URL.revokeObjectURL(link.href); }, 60000);
}

// As plain text, which phones pass on where they refuse other kinds of files.
function sentFile() {
  return new File([fileText()], fileName('.txt'), {type: 'text/plain'});
}

function canShare() {
  try {
    return !!(navigator.share && navigator.canShare && navigator.canShare({files: [sentFile()]}));
  } catch (e) {
    return false;
  }
}

function shareFile() {
  var say = function (words) {
    var place = document.getElementById('save-said');
    if (place) { place.textContent = words; }
  };
  navigator.share({files: [sentFile()], title: fileName('.txt')}).then(function () {
    say('Passed on. Ask the shop whether it came.');
  }, function () {
    say('It was not sent. Save the record instead.');
  });
}

function openRecord(event) {
  var file = event.target.files[0];
  if (!file) { return; }
  var reader = new FileReader();
  reader.onload = function () {
    var read = readRecord(String(reader.result));
    if (read.fault) {
      fault = read.fault;
      changed();
      return;
    }
    // What was done here must not be lost to a record of another vehicle unasked.
    if (S.begun && Object.keys(S.done).length > 0 && S.begun !== read.state.begun) {
      fault = 'Work has begun here already. Save its record and begin again before you open another.';
      changed();
      return;
    }
    if (missingIn(read.state).length > 0) {
      opened = read.state;
      show('opened');
      return;
    }
    goOnWith(read.state);
  };
  reader.onerror = function () {
    fault = 'The file can\'t be read.';
    changed();
  };
  reader.readAsText(file);
}

function goOnWith(state) {
  become(state);
  keep();
  show(resting());
}

// What is here and not, or otherwise, in a record that was opened: in words, one for each.
function missingIn(state) {
  var words = [];
  var steps = GUIDE.steps.filter(function (it) { return isDone(it) && !has(state.done, it.id); });
  if (steps.length > 0) {
    words.push('Steps done: ' + ranges(steps.map(function (it) { return it.number; })));
  }
  GUIDE.steps.forEach(function (step) {
    var trait = step.ask ? step.ask.trait : '';
    if (step.ask && has(S.answers, trait) && S.answers[trait] !== state.answers[trait]) {
      words.push('Answer: ' + traitOf(trait).name);
    }
    step.readings.forEach(function (it) {
      if (has(S.taken, it.id) && S.taken[it.id] !== state.taken[it.id]) {
        words.push('Value: ' + it.name);
      }
    });
  });
  S.odd.forEach(function (it) {
    if (!state.odd.some(function (one) { return one.step === it.step && one.words === it.words; })) {
      words.push('Note at step ' + stepOf(it.step).number + ': ' + it.words);
    }
  });
  return words.filter(function (it, i) { return words.indexOf(it) === i; });
}

// An older record of the same work is opened only when that is meant.
function openedScreen() {
  return screen([
    heading('This record is older'),
    box('danger', 'It lacks what was done here since', el('ul', {id: 'missing'},
      missingIn(opened).map(function (it) { return el('li', {}, it); }))),
    saveParts('opened-save')
  ], [
    button('opened-no', 'first', 'Keep what is here', function () {
      opened = null;
      show(resting());
    }),
    button('opened-yes', 'second', 'Open it, and lose this', function () { goOnWith(opened); })
  ]);
}
