// Walks as one build, finds at a step that it is another one, changes the answer, does all that the
// guide asks for then, and walks on as the other. Gives all that was done on the vehicle, in order.
({first, second, number, until, trait}) => {
  const guide = JSON.parse(document.getElementById('data').textContent);
  const byNumber = new Map(guide.steps.map(it => [it.number, it]));
  document.documentElement.style.display = 'none';
  URL.createObjectURL = () => 'blob:kept';
  HTMLAnchorElement.prototype.click = () => {};
  const get = id => document.getElementById(id);
  const one = id => {
    if (!get(id)) throw new Error(`no ${id} on: ${document.body.textContent.slice(0, 600)}`);
    return get(id);
  };
  const press = id => one(id).click();
  const type = (field, text) => {
    field.value = text;
    field.dispatchEvent(new Event('change', {bubbles: true}));
  };
  const within = band => String(Number((band.low === undefined ? Math.max(0, band.high / 2)
    : band.high === undefined ? band.low * 1.01 : (band.low + band.high) / 2).toFixed(4)));
  const choose = (name, value) => {
    const found = [...document.querySelectorAll('input[type=radio]')]
      .find(it => it.name === name && it.value === value);
    if (!found) throw new Error(`no choice ${value} of ${name}: ${document.body.textContent}`);
    if (!found.checked) found.click();
  };
  const events = [];
  const here = () => byNumber.get(Number(/Step (\d+)/.exec(one('where').textContent)[1]));
  const answer = (step, value) => {
    const found = step.ask.answers.find(it => it.value === value);
    if (found.band) type(one('answer'), `${within(found.band)} ${found.band.unit}`);
    else choose('answer', value);
  };
  // Passes through the screens that come between the steps.
  const between = () => {
    for (let i = 0; i < 200; i++) {
      const title = one('heading').textContent;
      if (get('change-answer')) {
        press('change-answer');
      } else if (title.startsWith('Take back step') || title === 'Before you go on') {
        const words = document.querySelector('.box').textContent;
        const named = /(?:Take back step|[Ss]tep) (\d+)/.exec(title + words);
        const what = /^Isolate/.test(words) ? 'isolate' : /^Close/.test(words) ? 'close'
          : /unfinished wiring/.test(words) ? 'shop' : 'back';
        events.push({what, step: byNumber.get(Number(named[1])).id});
        one('tick').click();
        press('forward');
      } else {
        return title;
      }
    }
    throw new Error('no end of screens between steps');
  };
  const through = (build, last) => {
    let guard = 0;
    while (between() !== 'Finished') {
      const step = here();
      if (step.id === last) return;
      if (guard++ > 400) throw new Error(`goes round at ${step.id}`);
      const done = document.querySelector('.done-mark') !== null;
      if (step.ask) answer(step, build[step.ask.trait]);
      for (const reading of step.readings) {
        const shown = () => document.querySelector(`[data-reading="${reading.id}"]`);
        if (!shown()) continue;
        if (reading.kind === 'works') choose(reading.id, 'yes');
        else if (reading.kind === 'words') type(shown().querySelector('textarea'), 'none');
        else type(shown().querySelector('input[type=text]'), reading.band ? within(reading.band) : '20');
        if (reading.compareWith && !reading.band) choose(reading.id + ' agreed', 'yes');
      }
      if (get('tick')) one('tick').click();
      press('forward');
      if (!done) events.push({what: 'do', step: step.id});
    }
  };
  if (get('begin')) {
    if (guide.numbers.length > 1) choose('part-number', number);
    press('begin');
  }
  through(first, until);
  if (get('to-step') ) press('to-step');
  press('list');
  const ask = guide.steps.find(it => it.ask && it.ask.trait === trait);
  const entry = document.querySelector(`button[data-step="${ask.id}"]`);
  if (!entry) throw new Error(`${ask.id} is not in the list`);
  entry.click();
  answer(ask, second[trait]);
  press('forward');
  through(second, null);
  const record = JSON.parse(localStorage.getItem('guide ' + guide.guide));
  press('begin-again');
  press('again-yes');
  press('again-really');
  return {events, done: Object.keys(record.done)};
}
