function summaryScreen() {
  var way = walk(S.answers);
  var record = makeRecord();
  var parts = [
    row('Kit', GUIDE.kit + ', revision ' + GUIDE.revision), row('Part number', S.partNumber),
    row('Serial', S.serial), row('Vehicle', S.vehicleNote), row('Who', S.by),
    row('Begun', timeWords(record.begun)), row('Ended', record.ended ? timeWords(record.ended) : ''),
    row('Steps done', record.steps)
  ];
  var answers = way.steps.filter(function (it) {
    return it.ask && has(S.answers, it.ask.trait);
  }).map(function (it) {
    var number = S.measured[it.ask.trait];
    var answer = answerOf(it.ask, S.answers[it.ask.trait]);
    return row(capital(traitOf(it.ask.trait).name), answer.words
      + (number === undefined || !answer.band ? '' : ' (' + number + '\u00a0' + answer.band.unit
        + ')'));
  });
  var values = [];
  GUIDE.steps.forEach(function (step) {
    step.readings.forEach(function (it) {
      if (has(S.taken, it.id)) {
        values.push(row(nameOf(it), S.taken[it.id]
          + (it.kind === 'number' ? '\u00a0' + unitOf(it) : '')));
      }
    });
  });
  var title = {finished: 'Finished', stopped: 'Stopped', 'under way': 'So far'}[S.state];
  return screen([
    el('p', {'class': 'phase'}, GUIDE.kitName),
    heading(title),
    S.state === 'stopped' ? box('danger', 'The work is not finished', ['Do not use what was fitted.'
      + ' Put the vehicle into a safe state: no loose wiring near power. Send the record to the'
      + ' shop.']) : null,
    el('dl', {'class': 'facts', id: 'summary'}, parts),
    casesWords(way),
    answers.length > 0 ? [el('h2', {}, 'Answers'), el('dl', {'class': 'facts'}, answers)] : null,
    values.length > 0 ? [el('h2', {}, 'Values'), el('dl', {'class': 'facts'}, values)] : null,
    S.odd.length > 0 ? [el('h2', {}, 'Odd'), el('ul', {}, S.odd.map(function (it) {
      return el('li', {}, 'Step ' + stepOf(it.step).number + ': ' + it.words);
    }))] : null,
    el('h2', {}, 'Hand it to the shop'),
    keepNote(),
    el('div', {'class': 'buttons'}, [
      button('save', 'second', 'Save the record', saveFile),
      canShare() ? button('share', 'second', 'Send the record', shareFile) : null
    ]),
    el('p', {id: 'saved', role: 'status'}, ''),
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

function recordBlob() {
  return new Blob([fileText()], {type: 'application/json'});
}

function saveFile() {
  var link = el('a', {href: URL.createObjectURL(recordBlob()), download: fileName()}, '');
  document.body.appendChild(link);
  link.click();
  document.body.removeChild(link);
  window.setTimeout(function () { URL.revokeObjectURL(link.href); }, 60000);
  say('Saved as ' + fileName() + '.');
}

function recordFile() {
  return new File([fileText()], fileName(), {type: 'application/json'});
}

function canShare() {
  try {
    return !!(navigator.share && navigator.canShare && navigator.canShare({files: [recordFile()]}));
  } catch (e) {
    return false;
  }
}

function shareFile() {
  navigator.share({files: [recordFile()], title: fileName()}).then(function () {
    say('Sent.');
  }, function () {
    say('It was not sent. Save the record instead.');
  });
}

function say(words) {
  var place = document.getElementById('saved');
  if (place) { place.textContent = words; }
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
    S = read.state;
    fault = '';
    keep();
    show(resting());
  };
  reader.onerror = function () {
    fault = 'The file can\'t be read.';
    changed();
  };
  reader.readAsText(file);
}
