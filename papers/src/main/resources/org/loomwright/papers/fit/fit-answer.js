// Answers from the data of a fit check. Does the same sums in the same order as the program that
// made the page, so that both come to the same answer.
var fitAnswer = (function () {
  'use strict';
  var NO_BUILD = -1;
  var MOST_KEPT = 64;

  function fold(diagram, known, end, join) {
    var ends = diagram.ends.map(end);
    var nodes = [];
    function at(way) {
      return way < 0 ? ends[-1 - way] : nodes[way];
    }
    diagram.nodes.forEach(function (node) {
      var value = known[node[0]];
      nodes.push(value < 0 ? join(node[0], node.slice(1).map(at)) : at(node[1 + value]));
    });
    return at(diagram.top);
  }

  function rising(numbers) {
    return numbers
      .slice()
      .sort(function (a, b) { return a - b; })
      .filter(function (it, i, all) { return i === 0 || it !== all[i - 1]; });
  }

  function order(a, b) {
    if (a.length !== b.length) return a.length - b.length;
    for (var i = 0; i < a.length; i++) {
      if (a[i] !== b[i]) return a[i] - b[i];
    }
    return 0;
  }

  function containsAll(set, some) {
    return some.every(function (it) { return set.indexOf(it) >= 0; });
  }

  function least(sets) {
    var kept = [];
    sets.slice().sort(order).forEach(function (set) {
      var fresh = kept.every(function (it) { return !containsAll(set, it); });
      if (kept.length < MOST_KEPT && fresh) kept.push(set);
    });
    return kept;
  }

  function both(some, others) {
    var unions = [];
    some.forEach(function (one) {
      others.forEach(function (other) { unions.push(rising(one.concat(other))); });
    });
    return least(unions);
  }

  // An end is [outcomes, sets, kind].
  function joined(trait, parts) {
    var classes = [];
    var sets = [[]];
    parts.forEach(function (part) {
      classes = classes.concat(part[0]);
      sets = both(sets, part[1]);
    });
    return [rising(classes), sets, 0];
  }

  function same(it) {
    return it;
  }

  return function (data, answers) {
    var known = data.questions.map(function (question) {
      var found = -1;
      question.options.forEach(function (option, i) {
        if (option.value === answers[question.id]) found = i;
      });
      return found;
    });

    function left(diagram, what) {
      return fold(diagram, what || known, same, joined);
    }

    function conflict() {
      var rest = known.slice();
      for (var i = rest.length - 1; i >= 0; i--) {
        var value = rest[i];
        rest[i] = -1;
        if (left(data.wiring.whole, rest)[0].length > 0) rest[i] = value;
      }
      return data.questions
        .filter(function (it, i) { return rest[i] >= 0; })
        .map(function (it) { return it.id; });
    }

    function outcome(diagram) {
      var classes = left(diagram)[0];
      if (classes.length !== 1 || classes[0] > 1) return 'OPEN';
      return classes[0] === 0 ? 'FITS' : 'DOES_NOT';
    }

    // Unanswered questions that the diagram still asks once what is alike is put together.
    function open(diagram) {
      var numbers = {};
      var count = 0;
      var forks = {};
      function number(key) {
        if (!numbers.hasOwnProperty(key)) numbers[key] = count++;
        return numbers[key];
      }
      var top = fold(
        diagram,
        known,
        function (end, i) { return end[0].length === 0 ? NO_BUILD : number('end ' + i); },
        function (trait, ways) {
          var apart = rising(ways).filter(function (it) { return it !== NO_BUILD; });
          if (apart.length < 2) return apart.length ? apart[0] : NO_BUILD;
          var own = number('fork ' + trait + ' ' + ways.join(' '));
          forks[own] = [trait, ways];
          return own;
        });
      var found = [];
      var seen = {};
      var next = [top];
      while (next.length) {
        var one = next.shift();
        if (!seen[one] && forks[one]) {
          found.push(forks[one][0]);
          next = next.concat(forks[one][1]);
        }
        seen[one] = true;
      }
      return rising(found);
    }

    function fewest(sets) {
      var best = [];
      var shortest = Infinity;
      sets.forEach(function (set) {
        var minutes = 0;
        set.forEach(function (it) { minutes += data.traits[it].minutes; });
        if (set.length === sets[0].length && minutes < shortest) {
          best = set;
          shortest = minutes;
        }
      });
      return best;
    }

    function deciding(diagram) {
      var now = left(diagram);
      if (now[0].length < 2) return {questions: [], traits: []};
      return {
        questions: open(diagram).map(function (it) { return data.questions[it].id; }),
        traits: fewest(now[1]).map(function (it) { return data.traits[it].id; })
      };
    }

    function part(diagram, reasons) {
      return {outcome: outcome(diagram), reasons: reasons, deciding: deciding(diagram)};
    }

    function refusals() {
      return data.wiring.refusals
        .map(function (it, i) { return {outcome: outcome(it.concerned), place: i}; })
        .filter(function (it) { return it.outcome !== 'FITS'; });
    }

    function demands(kind) {
      return kind.each.map(function (it, i) { return {outcome: outcome(it.needed), place: i}; });
    }

    function partNumber() {
      var ids = data.numbers.ids;
      var classes = left(data.numbers.whole)[0];
      return {
        possible: classes
          .filter(function (it) { return it < ids.length; })
          .map(function (it) { return ids[it]; }),
        none: classes.indexOf(ids.length) >= 0,
        deciding: deciding(data.numbers.whole)
      };
    }

    function weight(diagram) {
      return fold(diagram, known, same, function (trait, parts) {
        var sum = 0;
        parts.forEach(function (it, i) { sum += data.questions[trait].options[i].share * it; });
        return sum;
      });
    }

    function work() {
      var whole = weight(data.work.whole);
      if (!(whole > 0)) return {minutes: null, lines: []};
      var minutes = 0;
      data.work.parts.forEach(function (it) {
        minutes += it.minutes * (weight(it.weight) / whole);
      });
      var lines = [];
      data.work.items.forEach(function (it) {
        var classes = left(it.done)[0];
        if (classes.indexOf(0) >= 0) {
          lines.push({kind: it.kind, words: it.words, always: classes.length === 1});
        }
      });
      return {minutes: minutes, lines: lines};
    }

    if (left(data.wiring.whole)[0].length === 0) {
      var nothing = {questions: [], traits: []};
      var unsaid = {outcome: 'OPEN', reasons: [], deciding: nothing};
      return {
        conflict: conflict(),
        wiring: unsaid,
        modules: unsaid,
        coding: unsaid,
        number: {possible: [], none: true, deciding: nothing},
        work: {minutes: null, lines: []}
      };
    }
    return {
      conflict: [],
      wiring: part(data.wiring.whole, refusals()),
      modules: part(data.modules.whole, demands(data.modules)),
      coding: part(data.coding.whole, demands(data.coding)),
      number: partNumber(),
      work: work()
    };
  };
})();
