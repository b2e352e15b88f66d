// SHA-256 of a text of ASCII characters (FIPS 180-4), as hexadecimal digits.
// A text with any other character has none: what this file carries is plain ASCII.
function sha256(text) {
  var length = text.length;
  var total = ((length + 8) >> 6) + 1;
  var first = primes(64);
  var constants = first.map(function (it) { return fraction(Math.pow(it, 1 / 3)); });
  var hash = first.slice(0, 8).map(function (it) { return fraction(Math.sqrt(it)); });
  var words = new Array(64);
  for (var block = 0; block < total; block++) {
    var i;
    for (i = 0; i < 16; i++) {
      var word = 0;
      for (var j = 0; j < 4; j++) {
        var at = block * 64 + i * 4 + j;
        var code = 0;
        if (at < length) {
          code = text.charCodeAt(at);
          if (code > 126) { return ''; }
        } else if (at === length) {
          code = 0x80;
        }
        word = (word << 8) | code;
      }
      words[i] = word;
    }
    if (block === total - 1) {
      words[14] = Math.floor(length / 0x20000000);
      words[15] = (length << 3) | 0;
    }
    for (i = 16; i < 64; i++) {
      var a = words[i - 15];
      var b = words[i - 2];
      words[i] = (words[i - 16] + words[i - 7]
        + (turned(a, 7) ^ turned(a, 18) ^ (a >>> 3))
        + (turned(b, 17) ^ turned(b, 19) ^ (b >>> 10))) | 0;
    }
    var h = hash.slice();
    for (i = 0; i < 64; i++) {
      var one = (h[7] + (turned(h[4], 6) ^ turned(h[4], 11) ^ turned(h[4], 25))
        + ((h[4] & h[5]) ^ (~h[4] & h[6])) + constants[i] + words[i]) | 0;
      var two = ((turned(h[0], 2) ^ turned(h[0], 13) ^ turned(h[0], 22))
        + ((h[0] & h[1]) ^ (h[0] & h[2]) ^ (h[1] & h[2]))) | 0;
      h = [(one + two) | 0, h[0], h[1], h[2], (h[3] + one) | 0, h[4], h[5], h[6]];
    }
    for (i = 0; i < 8; i++) { hash[i] = (hash[i] + h[i]) | 0; }
  }
  return hash.map(function (it) {
    return ('0000000' + (it >>> 0).toString(16)).slice(-8);
  }).join('');
}

function turned(word, by) {
  return (word >>> by) | (word << (32 - by));
}

// The first 32 bits of what stands behind the point.
function fraction(number) {
  return ((number - Math.floor(number)) * 0x100000000) | 0;
}

function primes(count) {
  var found = [];
  for (var it = 2; found.length < count; it++) {
    if (found.every(function (prime) { return it % prime !== 0; })) { found.push(it); }
  }
  return found;
}
