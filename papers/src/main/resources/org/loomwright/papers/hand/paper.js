// All steps one after the other, for paper: forks, answers and values as forms.
function makePaper() {
  var paper = document.getElementById('paper');
  if (paper.firstChild) { return; }
  put(paper, [
    el('h1', {}, GUIDE.kitName),
    el('p', {}, 'Kit ' + GUIDE.kit + ', revision ' + GUIDE.revision
      + (has(GUIDE, 'release') ? ', release ' + GUIDE.release : ', not released') + '. For: '
      + GUIDE.vehicleName + '. Tools: ' + (GUIDE.tools.join(', ') || 'none') + '.'),
    GUIDE.sound ? null : el('p', {}, el('b', {}, 'Do not fit this kit: its plan has gaps or a check'
      + ' that fails.')),
    el('p', {}, 'Vehicle ________________  Serial ____________  Part number ____________  By'
      + ' ____________  Date __________'),
    GUIDE.steps.map(paperStep)
  ]);
}

function paperStep(step) {
  var confirm = [];
  if (step.place) { confirm.push('At: ' + step.place); }
  if (step.openings.length > 0) {
    confirm.push('Open: ' + step.openings.map(openingName).join(', '));
  }
  if (needsWords(step)) { confirm.push('Power: ' + needsWords(step)); }
  if (step.tools.length > 0) { confirm.push('Tools: ' + step.tools.join(', ')); }
  return el('section', {'class': 'paper-step'}, [
    el('h2', {}, (step.ask ? '' : '\u2610 ') + step.number + '. ' + step.title),
    hardWords(step) ? el('p', {}, el('b', {}, '\u26a0 ' + hardWords(step))) : null,
    leadChip(step),
    step.text ? el('p', {}, step.text) : null,
    step.why ? el('p', {}, 'Why it matters: ' + step.why) : null,
    step.kind === 'confirm' ? null : figureOf(step),
    step.ask ? el('ul', {}, step.ask.answers.map(function (it) {
      return el('li', {}, '\u2610 ' + it.words + ': ' + seenWords(it));
    })) : null,
    step.readings.map(readingLine),
    el('p', {'class': 'paper-facts'}, confirm.join(' \u00b7 ')),
    paperForks(step)
  ]);
}

// A value as it is taken on paper: on which vehicles, what it has to be, and what if not.
function readingLine(it) {
  var limit = it.band ? bandWords(it.band) : limitWords(it);
  return el('p', {'class': 'paper-reading'}, [
    it.words ? el('b', {}, 'Only ' + it.words + ': ') : null,
    (it.words ? it.name : capital(it.name)) + ': ____________ ' + (it.unit || '') + (limit ? ' (right: ' + limit + '). ' : '. ')
      + (it.outside ? (it.band || it.kind === 'works' ? 'Otherwise: ' : '') + it.outside : '')
  ]);
}

function paperForks(step) {
  if (step.next.length === 0) { return el('p', {}, el('b', {}, 'The work ends here.')); }
  if (step.next.length === 1) {
    var to = stepOf(step.next[0].to).number;
    return to === step.number + 1 ? null : el('p', {}, el('b', {}, 'Go to step ' + to + '.'));
  }
  return el('ul', {}, step.next.map(function (it) {
    return el('li', {}, el('b', {}, capital(it.words) + ': go to step ' + stepOf(it.to).number + '.'));
  }));
}

function printAll() {
  makePaper();
  window.print();
}
