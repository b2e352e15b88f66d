// The map of a vehicle: brings together what is drawn, what is typed and what a pointer does.
import {draw} from './map-draw.js';
import {Mover} from './map-drag.js';
import {MapModel} from './map-model.js';
import {MapWindow} from './map-view.js';
import {Measure} from './map-measure.js';
import {NewPlaceTool, NewRunTool} from './map-add.js';

const svg = document.getElementById('plan-map');
const form = document.getElementById('map-form');
const canChange = form.dataset.changes === 'true';
const told = document.getElementById('map-told');
const say = words => {
  told.textContent = words;
  told.hidden = !words;
};

document.querySelector('.problems')?.focus();
const model = new MapModel(svg);
const view = new MapWindow(svg, () => redraw());
const mover = new Mover(svg, model, view, say);
const measure = new Measure(svg, view, document.getElementById('measured'));
const newPlace = canChange ? new NewPlaceTool(svg, model, view, say) : null;
const newRun = canChange ? new NewRunTool(svg, model, view, say) : null;
let mode = 'move';
/** The place that the next click puts on the map. */
let waiting = null;

function redraw() {
  if (!mover) return;
  model.drawing = true;
  draw(svg, model, view);
  model.drawing = false;
  const tool = svg.querySelector('#map-tool');
  tool.replaceChildren();
  if (mode === 'measure') {
    measure.draw();
  } else if (canChange) {
    newPlace.draw();
    newRun.draw();
  }
}

function setMode(next) {
  mode = next;
  waiting = null;
  document.querySelectorAll('[data-mode]').forEach(it => it.setAttribute('aria-pressed', String(it.dataset.mode === mode)));
  svg.dataset.mode = mode;
  mover.active = mode === 'move';
  say('');
  if (mode === 'measure') measure.start();
  else measure.stop();
  if (mode === 'place') newPlace.start();
  if (mode === 'run') newRun.start();
  redraw();
}

/** Chooses on both sides; the other side comes into sight without moving what is being used. */
function choose(item, from) {
  model.choose(item);
  if (from === 'map') {
    if (matchMedia('(min-width: 64rem)').matches) item.row.scrollIntoView({block: 'nearest'});
    const where = item.row.querySelector('.map-check, .map-what .small').textContent.trim();
    say(item.kind === 'place' ? `${item.number}, ${item.name}: ${item.el.getAttribute('aria-label').split(': ')[1]}`
      : `Run ${item.name}: ${item.row.querySelector('b').textContent}${item.row.querySelector('.drawn').textContent}. ${where}`);
  } else {
    const at = item.kind === 'place' ? item.at : model.line(item)[0];
    if (at) view.reveal(at);
  }
}

svg.addEventListener('click', event => {
  event.preventDefault();
  const handle = event.target.closest('.handle');
  const nearest = event.detail > 0 ? mover.under({...pick(event)}) : null;
  const place = nearest && nearest.item.kind === 'place' ? nearest.item : handle ? model.get('place', handle.dataset.place) : null;
  const at = view.toPlan(event);
  if (waiting) {
    model.remember(waiting);
    model.set(waiting, at);
    choose(waiting, 'map');
    waiting = null;
  } else if (mode === 'measure') {
    measure.add(place ? place.at : at, place && place.name);
  } else if (mode === 'place') {
    newPlace.at(at);
  } else if (mode === 'run') {
    if (place) newRun.place(place);
    else newRun.at(at);
    redraw();
  } else if (place) {
    choose(place, 'map');
  } else {
    const run = event.target.closest('.run');
    if (run) choose(model.get('run', run.dataset.run), 'map');
    else if (!event.target.closest('.bend')) model.choose(null);
  }
});

/** What is needed of an event to find what lies under it; its own fields can't be spread. */
const pick = event => ({clientX: event.clientX, clientY: event.clientY, pointerType: event.pointerType || 'mouse'});

document.querySelectorAll('.map-row').forEach(row => {
  const item = row.dataset.place ? model.get('place', row.dataset.place) : model.get('run', row.dataset.run);
  row.querySelector('.badge').addEventListener('click', event => {
    event.preventDefault();
    choose(item, 'list');
    // On a phone the map is above the lists.
    if (!matchMedia('(min-width: 64rem)').matches) svg.scrollIntoView({block: 'nearest'});
  });
  row.addEventListener('focusin', () => { if (model.chosen !== item) choose(item, 'list'); });
  item.fields.forEach(it => it.addEventListener('change', () => {
    // What stood in the field before is on file, or was set from the map: the model knows it.
    model.undo.push({item, value: model.value(item), texts: item.before || item.fields.map(f => f.dataset.was)});
    model.typed(item);
  }));
  item.fields.forEach(it => it.addEventListener('focus', () => { item.before = item.fields.map(f => f.value); }));
});

document.querySelectorAll('[data-put]').forEach(it => {
  it.hidden = false;
  it.addEventListener('click', () => {
    setMode('move');
    mover.active = false;
    waiting = model.get('place', it.dataset.put);
    say(`Click where ${waiting.name} is, or type its distances in the list.`);
    svg.scrollIntoView({block: 'nearest'});
  });
});

document.querySelectorAll('[data-mode]').forEach(it => it.addEventListener('click', () => setMode(it.dataset.mode)));
document.querySelectorAll('[data-zoom]').forEach(it => it.addEventListener('click', () => view.step(it.dataset.zoom)));

/** Says how many changes wait to be saved. */
function count() {
  if (!canChange) return;
  const value = name => document.getElementById(name).value.trim();
  const words = model.changed().map(it => `${it.kind} ${it.name}`);
  if (['name', 'ambient', 'along', 'down'].some(it => value(`newPlace.${it}`))) words.push('a new place');
  if (['from', 'to', 'length', 'tolerance', 'follows', 'bends'].some(it => value(`newRun.${it}`))) words.push('a new run');
  const n = words.length;
  document.getElementById('map-changes').textContent = n === 0 ? 'Nothing to save yet.'
    : `Not saved yet: ${words.slice(0, 3).join(', ')}${n > 3 ? ` and ${n - 3} more` : ''}.`;
  document.getElementById('map-submit').textContent = n === 0 ? 'Save the map' : n === 1 ? 'Save 1 change' : `Save ${n} changes`;
  document.getElementById('map-bar').classList.toggle('waits', n > 0);
  document.getElementById('take-back').hidden = model.undo.length === 0;
  document.getElementById('take-all-back').hidden = model.undo.length < 2;
  form.dataset.waits = String(n);
}

model.watch(redraw);
model.watch(count);
if (canChange) {
  form.addEventListener('input', count);
  ['new-place-box', 'new-run-box'].forEach(it => document.getElementById(it).addEventListener('input', redraw));
  const back = () => {
    const item = model.takeBack();
    if (item) say(`${item.name} is back where it was`);
  };
  document.getElementById('take-back').addEventListener('click', back);
  document.getElementById('take-all-back').addEventListener('click', () => { while (model.undo.length) back(); });
  let leaving = false;
  form.addEventListener('submit', () => { leaving = true; });
  window.addEventListener('beforeunload', event => {
    if (!leaving && Number(form.dataset.waits) > 0) event.preventDefault();
  });
}
document.getElementById('map-tools').hidden = false;
svg.classList.add('live');
svg.setAttribute('role', 'application');
svg.dataset.mode = mode;
// Fields that a refused save or a reload brought back are already in the drawing.
redraw();
count();
