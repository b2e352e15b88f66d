// The guide as it was made, its steps by id, and what was done so far.
var GUIDE;
var STEPS = {};
var S;
var keeps = true;

// What is on the screen and not kept: the view, a fault to be told, the tick of this step, answers
// picked and numbers typed but not given yet, the change that is asked about, and the record that
// was opened.
var view = 'start';
var fault = '';
var ticked = '';
var picked = {};
var typed = {};
var said = {};
var faults = {};
var change = null;
var oddWords = '';
var opened = null;
var pressed = false;
var waits = false;
var busy = false;

// Goes over to another state; nothing that was begun on the screen goes along.
function become(state) {
  S = state;
  forget();
  dropFallen();
}

function forget() {
  fault = '';
  ticked = '';
  picked = {};
  typed = {};
  said = {};
  faults = {};
  change = null;
  oddWords = '';
  opened = null;
}

var SCREENS = {
  start: startScreen, step: stepScreen, list: listScreen, change: changeScreen, back: backScreen,
  odd: oddScreen, again: againScreen, summary: summaryScreen, opened: openedScreen
};

// The view of someone who comes back to the work.
function resting() {
  if (!S.begun || (GUIDE.numbers.length > 0 && !S.partNumber)) { return 'start'; }
  if (S.back.length > 0) { return 'back'; }
  return S.state === 'under way' ? 'step' : 'summary';
}

function show(next) {
  if (view !== next && next !== 'change') { fault = ''; }
  view = next;
  draw();
  window.scrollTo(0, 0);
  var title = document.getElementById('heading');
  if (title) { title.focus(); }
}

// Draws the same view again; what had the focus keeps it. A button that is being pressed must not
// vanish under the finger, so that drawing waits until it is let go.
function changed() {
  keep();
  if (busy) { return; }
  if (pressed) {
    waits = true;
    return;
  }
  var before = document.activeElement ? document.activeElement.id : '';
  draw();
  var again = before ? document.getElementById(before) : null;
  if (again) { again.focus(); }
  var told = document.querySelector('#step-fault, #start-fault');
  if (told && told.scrollIntoView) { told.scrollIntoView({block: 'nearest'}); }
}

function released() {
  pressed = false;
  window.setTimeout(drawIfWaiting, 0);
}

// A list of units that has just been opened must not vanish either.
function drawIfWaiting() {
  var active = document.activeElement;
  if (waits && !pressed && !(active && active.tagName === 'SELECT')) { changed(); }
}

function draw() {
  waits = false;
  var app = document.getElementById('app');
  // What stands there stays until the new view is whole.
  var parts = document.createDocumentFragment();
  put(parts, SCREENS[view]());
  // A field that goes tells its change once more, which is drawn already.
  busy = true;
  while (app.firstChild) { app.removeChild(app.firstChild); }
  busy = false;
  app.appendChild(parts);
}

function begin(data) {
  GUIDE = data;
  GUIDE.steps.forEach(function (it) { STEPS[it.id] = it; });
  become(load());
  view = resting();
  draw();
  var warning = document.getElementById('damaged');
  warning.parentNode.removeChild(warning);
  document.getElementById('app').hidden = false;
  document.addEventListener('mousedown', function () { pressed = true; }, true);
  document.addEventListener('mouseup', released, true);
  document.addEventListener('dragend', released, true);
  document.addEventListener('focusout', function () { window.setTimeout(drawIfWaiting, 0); }, true);
  window.addEventListener('beforeprint', makePaper);
  if (window.matchMedia) {
    var print = window.matchMedia('print');
    if (print.addListener) {
      print.addListener(function (it) { if (it.matches) { makePaper(); } });
    }
  }
  // Another window with the same guide went on: this one follows.
  window.addEventListener('storage', function (event) {
    if (event.key === storeKey()) {
      become(load());
      show(resting());
    }
  });
}

whenWhole(begin);
