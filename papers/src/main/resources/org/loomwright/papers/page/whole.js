// Hands over the data once the file is there to its last element and all is as it was made; else
// never, and the words stay that say so.
function whenWhole(go) {
  var check = function () {
    var block = document.getElementById('data');
    var text = block ? block.textContent : '';
    if (text.length === SUM.length && sha256(text) === SUM.sha && document.getElementById('end')) {
      go(JSON.parse(text));
    }
  };
  if (document.readyState === 'loading') {
    document.addEventListener('DOMContentLoaded', check);
  } else {
    check();
  }
}
