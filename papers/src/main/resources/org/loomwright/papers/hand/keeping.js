// What is kept in the browser, under the fingerprint of the guide and what tells this kit apart.
function fresh() {
  return {
    form: 1, begun: '', ended: '', state: 'under way', vehicleNote: '', serial: '',
    partNumber: GUIDE.numbers.length === 1 ? GUIDE.numbers[0].id : '', by: '',
    answers: {}, measured: {}, taken: {}, done: {}, odd: [], back: [], at: ''
  };
}

function storeKey() {
  return ['guide', GUIDE.guide, GUIDE.kit, GUIDE.revision, GUIDE.release || 'not released'].concat(
    GUIDE.numbers.map(function (it) { return it.id; })).join(' ');
}

function load() {
  try {
    var text = window.localStorage.getItem(storeKey());
    window.localStorage.setItem(storeKey() + ' trial', '1');
    window.localStorage.removeItem(storeKey() + ' trial');
    if (text) {
      var kept = JSON.parse(text);
      if (kept && kept.form === 1) {
        // A part number that the kit does not have can't be held against the cases.
        if (!numberOf(kept.partNumber)) { kept.partNumber = fresh().partNumber; }
        return kept;
      }
    }
  } catch (e) {
    keeps = false;
  }
  return fresh();
}

function keep() {
  try {
    window.localStorage.setItem(storeKey(), JSON.stringify(S));
    keeps = true;
  } catch (e) {
    keeps = false;
  }
}

var NOT_KEPT = 'This browser does not let the guide keep anything. When you close it, answers and'
  + ' ticks are lost: save the record before you close it, and open it here to go on.';
