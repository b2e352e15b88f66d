// A QR code of a text of ASCII characters (ISO/IEC 18004, byte mode) as rows of true (dark) and
// false; null when the text is too long for a code that can be read from a screen.
function qrCode(text) {
  var levels = ['M', 'L'];
  for (var version = 1; version <= QR_LARGEST; version++) {
    for (var i = 0; i < levels.length; i++) {
      // More checks where they cost no larger code.
      if (qrBits(text, version) <= 8 * qrRoom(version, levels[i])) {
        return qrDrawn(text, version, levels[i]);
      }
    }
  }
  return null;
}

function qrBits(text, version) {
  return 4 + (version < 10 ? 8 : 16) + 8 * text.length;
}

// Codewords that can hold data.
function qrRoom(version, level) {
  return qrCodewords(version) - QR_CHECKS[level][version - 1] * QR_BLOCKS[level][version - 1];
}

function qrCodewords(version) {
  var grid = qrGrid(version);
  var free = 0;
  grid.fixed.forEach(function (row) {
    row.forEach(function (it) { free += it ? 0 : 1; });
  });
  return Math.floor(free / 8);
}

function qrDrawn(text, version, level) {
  var words = qrWords(text, version, level);
  var best = null;
  var least = Infinity;
  for (var mask = 0; mask < 8; mask++) {
    var grid = qrGrid(version);
    qrFill(grid, words, mask);
    qrFormat(grid, level, mask);
    var penalty = qrPenalty(grid.dark);
    if (penalty < least) {
      least = penalty;
      best = grid.dark;
    }
  }
  return best;
}

// Data and check codewords, block by block, as they are laid into the code.
function qrWords(text, version, level) {
  var room = qrRoom(version, level);
  var bits = [];
  qrPut(bits, 4, 4);
  qrPut(bits, text.length, version < 10 ? 8 : 16);
  for (var i = 0; i < text.length; i++) { qrPut(bits, text.charCodeAt(i), 8); }
  qrPut(bits, 0, Math.min(4, 8 * room - bits.length));
  while (bits.length % 8 !== 0) { bits.push(0); }
  var data = [];
  for (i = 0; i < bits.length; i += 8) { data.push(parseInt(bits.slice(i, i + 8).join(''), 2)); }
  for (var pad = 0xEC; data.length < room; pad = pad === 0xEC ? 0x11 : 0xEC) { data.push(pad); }

  var count = QR_BLOCKS[level][version - 1];
  var checks = QR_CHECKS[level][version - 1];
  var small = Math.floor(room / count);
  var long = room % count;
  var blocks = [];
  var at = 0;
  for (i = 0; i < count; i++) {
    var size = small + (i >= count - long ? 1 : 0);
    blocks.push(data.slice(at, at + size));
    at += size;
  }
  var tails = blocks.map(function (it) { return qrCheck(it, checks); });
  var words = [];
  for (i = 0; i <= small; i++) {
    blocks.forEach(function (it) { if (i < it.length) { words.push(it[i]); } });
  }
  for (i = 0; i < checks; i++) {
    tails.forEach(function (it) { words.push(it[i]); });
  }
  return words;
}

function qrPut(bits, value, count) {
  for (var i = count - 1; i >= 0; i--) { bits.push((value >>> i) & 1); }
}

// Product in the field of 256 elements with x^8 + x^4 + x^3 + x^2 + 1.
function qrTimes(a, b) {
  var product = 0;
  for (var i = 7; i >= 0; i--) {
    product = (product << 1) ^ ((product >>> 7) * 0x11D);
    product ^= ((b >>> i) & 1) * a;
  }
  return product;
}

// Reed-Solomon check codewords of a block.
function qrCheck(data, count) {
  var divisor = [1];
  var root = 1;
  var i;
  for (i = 0; i < count; i++) {
    var longer = divisor.concat([0]);
    for (var j = 0; j < divisor.length; j++) { longer[j + 1] ^= qrTimes(divisor[j], root); }
    divisor = longer;
    root = qrTimes(root, 2);
  }
  var rest = data.slice();
  for (i = 0; i < count; i++) { rest.push(0); }
  for (i = 0; i < data.length; i++) {
    var factor = rest[i];
    if (factor !== 0) {
      for (var k = 0; k < divisor.length; k++) { rest[i + k] ^= qrTimes(divisor[k], factor); }
    }
  }
  return rest.slice(data.length);
}

// An empty code with its fixed patterns.
function qrGrid(version) {
  var size = 17 + 4 * version;
  var grid = {size: size, version: version, dark: [], fixed: []};
  for (var i = 0; i < size; i++) {
    grid.dark.push([]);
    grid.fixed.push([]);
    for (var j = 0; j < size; j++) {
      grid.dark[i].push(false);
      grid.fixed[i].push(false);
    }
  }
  for (i = 0; i < size; i++) {
    qrSet(grid, 6, i, i % 2 === 0);
    qrSet(grid, i, 6, i % 2 === 0);
  }
  [[3, 3], [3, size - 4], [size - 4, 3]].forEach(function (it) { qrFinder(grid, it[0], it[1]); });
  var places = qrPlaces(version);
  places.forEach(function (row, r) {
    places.forEach(function (column, c) {
      var last = places.length - 1;
      if (!((r === 0 && (c === 0 || c === last)) || (r === last && c === 0))) {
        qrRings(grid, row, column);
      }
    });
  });
  // Room for the format, and the one module that is always dark.
  for (i = 0; i < 9; i++) {
    if (!grid.fixed[8][i]) { qrSet(grid, 8, i, false); }
    if (!grid.fixed[i][8]) { qrSet(grid, i, 8, false); }
    if (i < 8) {
      qrSet(grid, 8, size - 1 - i, false);
      qrSet(grid, size - 1 - i, 8, false);
    }
  }
  qrSet(grid, size - 8, 8, true);
  if (version >= 7) { qrVersion(grid); }
  return grid;
}

function qrSet(grid, row, column, dark) {
  grid.dark[row][column] = dark;
  grid.fixed[row][column] = true;
}

function qrFinder(grid, row, column) {
  for (var i = -4; i <= 4; i++) {
    for (var j = -4; j <= 4; j++) {
      var far = Math.max(Math.abs(i), Math.abs(j));
      var r = row + i;
      var c = column + j;
      if (r >= 0 && c >= 0 && r < grid.size && c < grid.size) {
        qrSet(grid, r, c, far !== 2 && far !== 4);
      }
    }
  }
}

function qrRings(grid, row, column) {
  for (var i = -2; i <= 2; i++) {
    for (var j = -2; j <= 2; j++) {
      qrSet(grid, row + i, column + j, Math.max(Math.abs(i), Math.abs(j)) !== 1);
    }
  }
}

// Rows and columns of the alignment patterns.
function qrPlaces(version) {
  if (version === 1) { return []; }
  var count = Math.floor(version / 7) + 2;
  var step = version === 32 ? 26 : Math.ceil((4 * version + 4) / (2 * count - 2)) * 2;
  var places = [];
  for (var i = 0; i < count - 1; i++) { places.unshift(10 + 4 * version - i * step); }
  places.unshift(6);
  return places;
}

// Remainder of a value, moved up, by a polynomial of the given degree.
function qrRest(value, polynomial, degree) {
  var rest = value << degree;
  for (var i = 31 - degree; i >= 0; i--) {
    if ((rest >>> (i + degree)) & 1) { rest ^= polynomial << i; }
  }
  return (value << degree) | rest;
}

function qrVersion(grid) {
  var bits = qrRest(grid.version, 0x1F25, 12);
  for (var i = 0; i < 18; i++) {
    var dark = ((bits >>> i) & 1) === 1;
    var near = Math.floor(i / 3);
    var far = grid.size - 11 + i % 3;
    qrSet(grid, near, far, dark);
    qrSet(grid, far, near, dark);
  }
}

function qrFormat(grid, level, mask) {
  var bits = qrRest((QR_LEVEL[level] << 3) | mask, 0x537, 10) ^ 0x5412;
  for (var i = 0; i < 15; i++) {
    var dark = ((bits >>> i) & 1) === 1;
    // Beside the upper left finder.
    if (i < 6) {
      qrSet(grid, i, 8, dark);
    } else if (i < 8) {
      qrSet(grid, i + 1, 8, dark);
    } else if (i === 8) {
      qrSet(grid, 8, 7, dark);
    } else {
      qrSet(grid, 8, 14 - i, dark);
    }
    // Once more beside the other two.
    if (i < 8) {
      qrSet(grid, 8, grid.size - 1 - i, dark);
    } else {
      qrSet(grid, grid.size - 15 + i, 8, dark);
    }
  }
}

// Lays the codewords into the code in pairs of columns from the right, up and down in turn.
function qrFill(grid, words, mask) {
  var at = 0;
  var up = true;
  for (var right = grid.size - 1; right > 0; right -= 2) {
    if (right === 6) { right = 5; }
    for (var i = 0; i < grid.size; i++) {
      var row = up ? grid.size - 1 - i : i;
      for (var column = right; column > right - 2; column--) {
        if (!grid.fixed[row][column]) {
          var bit = at < 8 * words.length ? (words[at >>> 3] >>> (7 - at % 8)) & 1 : 0;
          grid.dark[row][column] = (bit === 1) !== qrMasked(mask, row, column);
          at++;
        }
      }
    }
    up = !up;
  }
}

function qrMasked(mask, r, c) {
  switch (mask) {
    case 0: return (r + c) % 2 === 0;
    case 1: return r % 2 === 0;
    case 2: return c % 3 === 0;
    case 3: return (r + c) % 3 === 0;
    case 4: return (Math.floor(r / 2) + Math.floor(c / 3)) % 2 === 0;
    case 5: return (r * c) % 2 + (r * c) % 3 === 0;
    case 6: return ((r * c) % 2 + (r * c) % 3) % 2 === 0;
    default: return ((r + c) % 2 + (r * c) % 3) % 2 === 0;
  }
}

// How hard a code is to read: long runs, blocks, patterns like a finder, too much of one kind.
function qrPenalty(dark) {
  var size = dark.length;
  var penalty = 0;
  var total = 0;
  var finder = /(?=10111010000|00001011101)/g;
  for (var i = 0; i < size; i++) {
    var row = '';
    var column = '';
    for (var j = 0; j < size; j++) {
      row += dark[i][j] ? '1' : '0';
      column += dark[j][i] ? '1' : '0';
      total += dark[i][j] ? 1 : 0;
      if (i > 0 && j > 0 && dark[i][j] === dark[i - 1][j] && dark[i][j] === dark[i][j - 1]
        && dark[i][j] === dark[i - 1][j - 1]) {
        penalty += 3;
      }
    }
    [row, column].forEach(function (line) {
      (line.match(/0{5,}|1{5,}/g) || []).forEach(function (it) { penalty += it.length - 2; });
      penalty += 40 * (line.match(finder) || []).length;
    });
  }
  return penalty + 10 * Math.floor(Math.abs(20 * total / (size * size) - 10));
}
