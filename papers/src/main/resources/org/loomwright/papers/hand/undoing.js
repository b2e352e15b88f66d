// What the work on the vehicle is like after the steps done so far.
function powerIsOff(done) {
  return doneAct(done, 'isolate') && !doneAct(done, 'reconnect');
}

function doneAct(done, act) {
  return GUIDE.steps.some(function (it) { return it.act === act && has(done, it.id); });
}

function openNow(done) {
  var closed = {};
  GUIDE.steps.forEach(function (it) {
    if (it.act === 'close' && has(done, it.id)) { closed[it.opening] = true; }
  });
  return GUIDE.steps.filter(function (it) {
    return it.act === 'open' && has(done, it.id) && !has(closed, it.opening);
  });
}

var WIRING = ['lay', 'land', 'change', 'park', 'pull-plug'];

function isWiring(step) {
  return WIRING.indexOf(step.act) >= 0;
}

// Work on the wiring, and the looks and measures that have to be right before a fuse goes in.
function isAtWiring(step) {
  return isWiring(step) || step.kind === 'confirm'
    || (step.kind === 'measure' && step.live === false);
}

// What other answers, or a step that turns out not to be done, mean for the steps done so far:
// gone: done, but not on the new way; again: on it, but to be done once more;
// back: what has to be done on the vehicle first: what is taken back, last done first, and power;
// unsure: done, and it depends on a question still to be asked whether they stay.
function weigh(answers, done) {
  var way = walk(answers);
  var onWay = {};
  way.steps.forEach(function (it) { onWay[it.id] = true; });
  var later = way.open ? reachable(way.open, way.build, {}) : {};
  var keep = copy(done);
  var gone = GUIDE.steps.filter(function (it) {
    return has(done, it.id) && !has(onWay, it.id) && !has(later, it.id);
  });
  gone.forEach(function (it) { delete keep[it.id]; });
  var unsure = GUIDE.steps.filter(function (it) { return has(keep, it.id) && !has(onWay, it.id); });
  var again = [];
  var more = true;
  while (more) {
    more = false;
    GUIDE.steps.forEach(function (it) {
      if (has(keep, it.id) && isSpoilt(it, way, done, keep, gone)) {
        delete keep[it.id];
        again.push(it);
        more = true;
      }
    });
  }
  again.sort(function (a, b) { return a.number - b.number; });
  return {
    way: way, gone: gone, again: again, unsure: unsure, keep: keep,
    back: toTakeBack(way, done, keep, gone, again)
  };
}

// Whether a step done before has to be done once more, because of what comes before it now.
function isSpoilt(step, way, done, keep, gone) {
  // What has to be taken back needs the same doors open and the same power off.
  var open = way.steps.filter(function (it) { return !has(keep, it.id); })
    .concat(gone.filter(function (it) { return it.act; }));
  var before = open.filter(function (it) { return it.number < step.number; });
  var isolate = GUIDE.steps.filter(function (it) { return it.act === 'isolate'; })[0];
  var isolatedAgain = isolate && has(done, isolate.id) && !has(keep, isolate.id);
  if (step.act === 'reconnect') {
    return before.some(function (it) {
      return (it.act || it.live === false || isAtWiring(it))
        && (!isolate || it.number >= isolate.number);
    });
  }
  if (step.act === 'isolate') {
    return GUIDE.steps.some(function (it) {
      return it.act === 'reconnect' && has(done, it.id) && !has(keep, it.id);
    }) || (powerIsOff(done) && before.some(function (it) { return it.live === true; }));
  }
  if (step.act === 'close') {
    return before.some(function (it) {
      return it.openings.indexOf(step.opening) >= 0
        || (it.act === 'open' && it.opening === step.opening);
    });
  }
  if (step.act === 'open') {
    return GUIDE.steps.some(function (it) {
      return it.act === 'close' && it.opening === step.opening && has(done, it.id)
        && !has(keep, it.id);
    });
  }
  if (step.act === 'fit-fuse' || step.act === 'plug-in') { return before.some(isAtWiring); }
  if (step.kind === 'measure') {
    return before.some(function (it) {
      return isWiring(it) || it.kind === 'confirm' || it.act === 'fit-fuse' || it.act === 'plug-in';
    }) || asksMore(step, way);
  }
  if (step.kind === 'confirm') {
    var at = way.steps.indexOf(step);
    return at > 0 && !has(keep, way.steps[at - 1].id);
  }
  // The waits and warnings that belong to the isolation.
  var wiring = way.steps.filter(isWiring)[0];
  return step.kind === 'caution' && isolatedAgain && step.number > isolate.number
    && (!wiring || step.number < wiring.number);
}

// Whether other answers ask for a value at a step that was not asked for before.
function asksMore(step, way) {
  var before = readingsOf(step, walk(S.answers).build);
  return way.steps.indexOf(step) >= 0 && readingsOf(step, way.build).some(function (it) {
    return before.indexOf(it) < 0 && !isGood(it, step);
  });
}

function toTakeBack(way, done, keep, gone, again) {
  var list = gone.filter(function (it) {
    return isWiring(it) || it.act === 'fit-fuse' || it.act === 'plug-in';
  }).concat(again.filter(function (it) {
    return it.act === 'fit-fuse' || it.act === 'plug-in';
  }));
  list.sort(function (a, b) { return b.number - a.number; });
  var back = list.map(function (it) { return {step: it.id, what: 'back'}; });
  openNow(done).forEach(function (it) {
    if (gone.indexOf(it) >= 0) { back.push({step: it.id, what: 'close'}); }
  });
  var wired = GUIDE.steps.some(function (it) { return isWiring(it) && has(done, it.id); });
  var live = way.steps.some(function (it) { return !has(keep, it.id) && it.live === true; });
  var isolate = GUIDE.steps.filter(function (it) { return it.act === 'isolate'; })[0];
  if (isolate && back.length > 0 && has(done, isolate.id) && !powerIsOff(done)) {
    back.unshift({step: isolate.id, what: 'isolate'});
  }
  if (live && powerIsOff(done)) {
    var measures = way.steps.filter(function (it) {
      return !has(keep, it.id) && it.live === true && isolate && it.number < isolate.number;
    });
    if (measures.length > 0) {
      back.push({step: measures[0].id, what: wired ? 'shop' : 'connect'});
    }
  }
  return back;
}

// One thing to take back, in words.
function backWords(entry) {
  var step = stepOf(entry.step);
  var named = 'Step ' + step.number + ': ' + step.title;
  if (entry.what === 'isolate') {
    return 'Isolate the battery before you touch any wiring, as in step ' + step.number
      + ', and wait as long as it says. Open again what is in the way.';
  }
  if (entry.what === 'close') { return 'Close again what was opened. ' + named + '.'; }
  if (entry.what === 'connect') {
    return named + ' needs power on: connect the battery again. No wiring has been started yet.';
  }
  if (entry.what === 'shop') {
    return named + ' needs power on, and wiring has been started. Do not connect the battery with'
      + ' unfinished wiring: ask the shop how to find this out.';
  }
  if (step.undo === 'not-at-all') {
    return named + '. This can\'t be taken back: talk to the shop before you do anything else.';
  }
  if (step.undo === 'special-tool') {
    return named + '. It comes out with a special tool only: without the tool, talk to the shop.';
  }
  if (step.act === 'fit-fuse') { return named + '. Take the fuse out again.'; }
  if (step.act === 'plug-in') { return named + '. Unplug it again.'; }
  if (step.act === 'pull-plug') { return named + '. Push the seal plug in again.'; }
  return named + '. Take this back.';
}
