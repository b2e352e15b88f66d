function stepOf(id) {
  return has(STEPS, id) ? STEPS[id] : null;
}

// The steps that the answers lead through, in order: up to the last step, the first question
// without an answer, or the step from which there is no way on.
function walk(answers) {
  var way = {steps: [], build: {}, open: null, lost: null, why: []};
  var step = stepOf(GUIDE.start);
  while (step) {
    way.steps.push(step);
    if (step.ask) {
      if (!has(answers, step.ask.trait)) {
        way.open = step;
        return way;
      }
      way.build[step.ask.trait] = answers[step.ask.trait];
      if (!possible(way.build, true)) {
        way.lost = step;
        way.why = reasonsAgainst(way.build);
        return way;
      }
    }
    if (GUIDE.ends.indexOf(step.id) >= 0) { return way; }
    var on = waysOn(step, way.build);
    if (on.length !== 1 || way.steps.length > GUIDE.steps.length) {
      way.lost = step;
      return way;
    }
    step = stepOf(on[0].to);
  }
  return way;
}

function waysOn(step, build) {
  return step.next.filter(function (it) { return possible(build, it.when); });
}

// Fewest and most steps from a step on, itself left out, as far as answers are known.
function leftAfter(step, build, known) {
  if (has(known, step.id)) { return known[step.id]; }
  var least = Infinity;
  var most = 0;
  if (GUIDE.ends.indexOf(step.id) >= 0) {
    least = 0;
  } else {
    waysOn(step, build).forEach(function (it) {
      var on = leftAfter(stepOf(it.to), build, known);
      least = Math.min(least, on[0] + 1);
      most = Math.max(most, on[1] + 1);
    });
  }
  known[step.id] = [least, most];
  return known[step.id];
}

// Ids of all steps that can still come after a step.
function reachable(step, build, seen) {
  waysOn(step, build).forEach(function (it) {
    if (!has(seen, it.to)) {
      seen[it.to] = true;
      reachable(stepOf(it.to), build, seen);
    }
  });
  return seen;
}

// How many steps are left to do, in words.
function leftWords(way) {
  var undone = way.steps.filter(function (it) { return !isDone(it); }).length;
  var end = way.steps[way.steps.length - 1];
  var after = way.lost ? [0, 0] : leftAfter(end, way.build, {});
  var least = undone + after[0];
  var most = undone + after[1];
  return least === most ? least + ' left' : least + ' to ' + most + ' left';
}

// The first step that is not done yet; null when all are.
function firstOpen(way) {
  return way.steps.filter(function (it) { return !isDone(it); })[0] || null;
}

// A step with a value that is not right, by what was taken since, is not done.
function dropFallen() {
  var way = walk(S.answers);
  way.steps.forEach(function (it) {
    if (isDone(it) && readingsOf(it, way.build).some(function (one) {
      return standing(one) === 'outside';
    })) {
      delete S.done[it.id];
      S.state = 'under way';
    }
  });
}

function isDone(step) {
  return has(S.done, step.id);
}
