// What is known at a step beside what to do: picture, lead, place, power, openings, tools.
function figureOf(step) {
  if (!has(step, 'picture')) { return null; }
  return el('figure', {}, [
    el('div', {'class': 'picture'}, drawing(GUIDE.pictures[step.picture])),
    el('figcaption', {}, step.pictureWords)
  ]);
}

function leadChip(step) {
  var lead = step.lead ? GUIDE.leads[step.lead] : null;
  if (!lead) { return null; }
  var inks = lead.inks;
  var ns = 'http://www.w3.org/2000/svg';
  var wire = document.createElementNS(ns, 'svg');
  wire.setAttribute('viewBox', '0 0 40 16');
  wire.setAttribute('class', 'wire');
  wire.setAttribute('aria-hidden', 'true');
  [[1, 1, 38, 14, inks[0]], [1, 6, 38, 4, inks[1]]].forEach(function (it) {
    if (!it[4]) { return; }
    var part = document.createElementNS(ns, 'rect');
    ['x', 'y', 'width', 'height', 'fill'].forEach(function (key, i) {
      part.setAttribute(key, it[i]);
    });
    part.setAttribute('stroke', '#333');
    wire.appendChild(part);
  });
  return el('p', {'class': 'lead'}, [
    el('b', {'class': 'label'}, lead.label), wire,
    el('span', {}, lead.colour + ' (' + lead.code + ')')
  ]);
}

function hardWords(step) {
  if (step.undo === 'not-at-all') {
    return 'This can\'t be taken back. Be sure before you do it.';
  }
  return step.undo === 'special-tool'
    ? 'This comes out again with a special tool only. Be sure before you do it.'
    : '';
}

function hardMark(step) {
  var words = hardWords(step);
  return words ? box('hard', '\u26a0 ' + words, []) : null;
}

function row(name, words) {
  return words ? [el('dt', {}, name), el('dd', {}, words)] : null;
}

function openingName(id) {
  var step = GUIDE.steps.filter(function (it) { return it.opening === id; })[0];
  return step ? step.openingName : id;
}

function powerWords() {
  if (!doneAct(S.done, 'isolate')) { return 'battery connected'; }
  return powerIsOff(S.done) ? 'battery isolated' : 'battery connected again';
}

function needsWords(step) {
  if (!has(step, 'live')) { return ''; }
  return step.live ? 'power on' : 'battery isolated';
}

// Whether power is not as a step needs it, be the step done or not.
function powerIsWrong(step) {
  return has(step, 'live') && step.live === powerIsOff(S.done)
    && GUIDE.steps.some(function (it) { return it.act === 'isolate'; });
}

function factsOf(step) {
  var open = openNow(S.done).map(function (it) { return it.openingName; });
  var wants = needsWords(step);
  var wrong = powerIsWrong(step);
  return [
    wrong && !isDone(step) ? box('danger', 'Power is wrong for this step', 'It needs ' + wants + ', but now: '
      + powerWords() + '. Stop, and go through the steps before this one again.') : null,
    el('dl', {'class': 'facts'}, [
      row('Where', step.place),
      row('Tools', step.tools.join(', ')),
      row('Power', !wants ? capital(powerWords()) : !wrong ? capital(powerWords())
        + ', as it has to be' : isDone(step) ? 'This step needed ' + wants + '; now: '
        + powerWords() : capital(powerWords()) + '; this step needs ' + wants),
      row('Still closed', step.openings.map(openingName).filter(function (it) {
        return open.indexOf(it) < 0;
      }).join(', ')),
      row('Open now', open.length > 0 ? open.join(', ') : 'nothing')
    ])
  ];
}

// How to see that it was done right: what the next look says.
function confirmWords(step) {
  if (!step.act || step.next.length !== 1) { return ''; }
  var next = stepOf(step.next[0].to);
  return next.kind === 'confirm' ? next.title + ': ' + next.text : '';
}
