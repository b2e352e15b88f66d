// Whether a condition holds on a build of which some traits are known: true, false, or null.
function truth(condition, build) {
  if (condition === true || condition === false) { return condition; }
  var kind = condition[0];
  if (kind === 'is' || kind === 'in') {
    if (!has(build, condition[1])) { return null; }
    var value = build[condition[1]];
    return kind === 'is' ? value === condition[2] : condition[2].indexOf(value) >= 0;
  }
  if (kind === 'not') {
    var inner = truth(condition[1], build);
    return inner === null ? null : !inner;
  }
  var decides = kind === 'any';
  var result = !decides;
  for (var i = 0; i < condition[1].length; i++) {
    var part = truth(condition[1][i], build);
    if (part === decides) { return decides; }
    if (part === null) { result = null; }
  }
  return result;
}

function has(object, key) {
  return Object.prototype.hasOwnProperty.call(object, key);
}

// A trait that an undecided condition waits for.
function waitsFor(condition, build) {
  if (condition === true || condition === false) { return null; }
  if (condition[0] === 'is' || condition[0] === 'in') {
    return has(build, condition[1]) ? null : condition[1];
  }
  var parts = condition[0] === 'not' ? [condition[1]] : condition[1];
  for (var i = 0; i < parts.length; i++) {
    if (truth(parts[i], build) === null) {
      var trait = waitsFor(parts[i], build);
      if (trait !== null) { return trait; }
    }
  }
  return null;
}

// Whether some build that has the known values meets all the conditions.
function meets(conditions, build) {
  var open = null;
  for (var i = 0; i < conditions.length; i++) {
    var holds = truth(conditions[i], build);
    if (holds === false) { return false; }
    if (holds === null && open === null) { open = conditions[i]; }
  }
  if (open === null) { return true; }
  var trait = waitsFor(open, build);
  var values = traitOf(trait).values;
  for (var j = 0; j < values.length; j++) {
    var more = copy(build);
    more[trait] = values[j].id;
    if (meets(conditions, more)) { return true; }
  }
  return false;
}

function copy(object) {
  var same = {};
  Object.keys(object).forEach(function (key) { same[key] = object[key]; });
  return same;
}

function traitOf(id) {
  return GUIDE.traits.filter(function (it) { return it.id === id; })[0];
}

// Whether a vehicle the kit serves can be like this and meet a condition too.
function possible(build, condition) {
  var all = GUIDE.never.map(function (it) { return ['not', it.when]; });
  all.push(condition);
  return meets(all, build);
}

// Why no vehicle that is served is like this.
function reasonsAgainst(build) {
  return GUIDE.never.filter(function (it) { return truth(it.when, build) === true; });
}

// The cases that are certain by now, one a component at most.
function casesOf(build) {
  var byComponent = {};
  GUIDE.cases.forEach(function (it) {
    if (possible(build, it.when)) {
      byComponent[it.component] = (byComponent[it.component] || []).concat([it]);
    }
  });
  return GUIDE.cases.filter(function (it) {
    var open = byComponent[it.component] || [];
    return open.length === 1 && open[0] === it;
  });
}
