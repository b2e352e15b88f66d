// Walks as one build as far as a step, does one thing that is a second thought at a step that is done
// (another answer, not done after all, something odd, a value that turns out wrong), does all that
// the guide asks for then, and walks on as the other build. Gives all that was done on the vehicle, in
// order.
({first, second, number, until, deed, at}) => {
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
    field.dispatchEvent(new Event('input', {bubbles: true}));
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
  const kept = () => JSON.parse(localStorage.getItem(
    Object.keys(localStorage).find(it => it.startsWith(`guide ${guide.guide} `))));
  const events = [];
  const here = () => byNumber.get(Number(/Step (\d+)/.exec(one('where').textContent)[1]));
  const isDone = () => document.querySelector('.done-mark') !== null;
  const form = reading => document.querySelector(`[data-reading="${reading.id}"]`);
  const answer = (step, value) => {
    const found = step.ask.answers.find(it => it.value === value);
    if (found.band) type(one('answer'), `${within(found.band)} ${found.band.unit}`);
    else choose('answer', value);
  };
  const take = step => {
    for (const reading of step.readings) {
      if (!form(reading)) continue;
      if (reading.kind === 'works') choose(reading.id, 'yes');
      else if (reading.kind === 'words') type(form(reading).querySelector('textarea'), 'none');
      else type(form(reading).querySelector('input[type=text]'),
        reading.band ? within(reading.band) : '20');
    }
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
          : /unfinished wiring/.test(words) ? 'shop' : /connect the battery again/.test(words)
            ? 'connect' : 'back';
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
      if (guard++ > 500) throw new Error(`goes round at ${step.id}`);
      const done = isDone();
      if (get('settled')) one('settled').click();
      // An answer that stays, because power is not as it was, is passed by.
      if (step.ask && !get('not-done')) answer(step, build[step.ask.trait]);
      if (!done) take(step);
      if (get('tick')) one('tick').click();
      press('forward');
      if (!done) events.push({what: 'do', step: step.id});
    }
  };
  const think = () => {
    const step = here();
    if (deed === 'answer') {
      if (get('not-done')) {
        // Measured with other power: only a new measurement changes it.
        press('not-done');
      } else {
        answer(step, second[step.ask.trait]);
        press('forward');
      }
    } else if (deed === 'odd') {
      press('odd');
      type(one('odd-words'), 'not as in the picture');
      press('odd-keep');
    } else {
      press('not-done');
      events.push({what: 'undone', step: step.id});
    }
    between();
    if (kept().state === 'finished') throw new Error(`still finished after ${deed} at ${at}`);
    if (deed !== 'answer' && kept().done[at]) throw new Error(`${at} stays done after ${deed}`);
    if (deed === 'value' && here().id === at) {
      const reading = step.readings.find(it => it.kind === 'number' && it.band && form(it));
      const band = reading.band;
      type(form(reading).querySelector('input[type=text]'),
        String(band.low === undefined ? band.high * 2 : band.low / 2));
      press('forward');
      if (here().id !== at || isDone()) throw new Error(`a wrong value passes at ${at}`);
    }
  };
  if (get('begin')) {
    if (guide.numbers.length > 1) choose('part-number', number);
    press('begin');
  }
  through(first, until);
  if (get('to-step')) press('to-step');
  press('list');
  const entry = document.querySelector(`button[data-step="${at}"]`);
  if (!entry) throw new Error(`${at} is not in the list`);
  entry.click();
  think();
  through(second, null);
  const record = kept();
  press('begin-again');
  press('again-yes');
  press('again-really');
  return {events, done: Object.keys(record.done)};
}
