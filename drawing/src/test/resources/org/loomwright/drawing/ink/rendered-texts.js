// Looks at all lines of text of the drawings in a page and leaves what is wrong as plain lines.
(function () {
  'use strict';
  const pen = document.createElement('canvas').getContext('2d');
  const found = [];
  let count = 0;

  function corners(box, matrix) {
    return [[box.x, box.y], [box.x + box.width, box.y],
      [box.x + box.width, box.y + box.height], [box.x, box.y + box.height]]
      .map(function (p) {
        return { x: matrix.a * p[0] + matrix.c * p[1] + matrix.e,
          y: matrix.b * p[0] + matrix.d * p[1] + matrix.f };
      });
  }

  function around(points) {
    const xs = points.map(p => p.x), ys = points.map(p => p.y);
    return { left: Math.min(...xs), right: Math.max(...xs),
      top: Math.min(...ys), bottom: Math.max(...ys) };
  }

  // The height that the ink of the letters takes, not the height of the line.
  function ink(words, style, box) {
    pen.font = style.fontStyle + ' ' + style.fontWeight + ' 100px ' + style.fontFamily;
    const m = pen.measureText(words);
    const scale = box.height / (m.fontBoundingBoxAscent + m.fontBoundingBoxDescent);
    const baseline = box.y + m.fontBoundingBoxAscent * scale;
    const top = baseline - m.actualBoundingBoxAscent * scale;
    return { x: box.x, width: box.width, y: top,
      height: baseline + m.actualBoundingBoxDescent * scale - top };
  }

  // Letters of one element that stand on one line side by side.
  function lines(text) {
    const words = text.textContent;
    const style = getComputedStyle(text);
    const result = [];
    let open = null;
    const shown = text.getNumberOfChars();
    for (let i = 0; i < shown; i++) {
      const at = text.getExtentOfChar(i);
      if (open && Math.abs(open.y - at.y) < 0.01 * at.height
          && at.x - (open.x + open.width) < at.height && at.x > open.x - 0.01) {
        open.width = Math.max(open.width, at.x + at.width - open.x);
        open.to = i + 1;
      } else {
        open = { x: at.x, y: at.y, width: at.width, height: at.height, from: i, to: i + 1 };
        result.push(open);
      }
    }
    return result.map(function (line) {
      const said = shown === words.length ? words.slice(line.from, line.to) : words.trim();
      return { words: said, box: ink(said, style, line) };
    }).filter(line => line.words.trim() !== '' && line.box.width > 0);
  }

  // Drawings within a drawing cut off what is beyond their edge; null where nothing is left.
  function cut(text, figure) {
    let left = figure;
    for (let it = text.parentNode.closest('svg'); it && it.ownerSVGElement;
        it = it.parentNode.closest('svg')) {
      const view = around(corners(it.viewBox.baseVal, it.getScreenCTM()));
      const own = around(left);
      const x1 = Math.max(own.left, view.left), x2 = Math.min(own.right, view.right);
      const y1 = Math.max(own.top, view.top), y2 = Math.min(own.bottom, view.bottom);
      if (x1 >= x2 || y1 >= y2) {
        return null;
      }
      if (x1 > own.left || x2 < own.right || y1 > own.top || y2 < own.bottom) {
        left = [{ x: x1, y: y1 }, { x: x2, y: y1 }, { x: x2, y: y2 }, { x: x1, y: y2 }];
      }
    }
    return left;
  }

  // Two convex figures share an area when no side of either keeps them apart.
  function share(one, other, slack) {
    for (const figure of [one, other]) {
      for (let i = 0; i < 4; i++) {
        const a = figure[i], b = figure[(i + 1) % 4];
        const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
        const nx = (b.y - a.y) / length, ny = -(b.x - a.x) / length;
        const mine = one.map(p => p.x * nx + p.y * ny);
        const its = other.map(p => p.x * nx + p.y * ny);
        if (Math.min(Math.max(...mine), Math.max(...its))
            - Math.max(Math.min(...mine), Math.min(...its)) <= slack) {
          return false;
        }
      }
    }
    return true;
  }

  function say() {
    found.push(Array.from(arguments).map(it => encodeURIComponent(it)).join(' '));
  }

  const drawings = Array.from(document.querySelectorAll('svg')).filter(it => !it.ownerSVGElement);
  drawings.forEach(function (drawing, number) {
    const own = drawing.viewBox.baseVal;
    const frame = own && own.width ? around(corners(own, drawing.getScreenCTM()))
      : drawing.getBoundingClientRect();
    const texts = [];
    drawing.querySelectorAll('text').forEach(function (text) {
      if (text.closest('defs') || getComputedStyle(text).visibility === 'hidden') {
        return;
      }
      lines(text).forEach(function (line) {
        const figure = cut(text, corners(line.box, text.getScreenCTM()));
        if (!figure) {
          return;
        }
        const limits = around(figure);
        const size = Math.min(limits.right - limits.left, limits.bottom - limits.top);
        texts.push({ words: line.words, figure: figure, limits: limits, size: size });
        count++;
      });
    });
    texts.forEach(function (one, i) {
      const slack = 0.02 * one.size + 0.01;
      if (one.limits.left < frame.left - slack || one.limits.right > frame.right + slack
          || one.limits.top < frame.top - slack || one.limits.bottom > frame.bottom + slack) {
        say('outside', number, one.words);
      }
      for (let k = 0; k < i; k++) {
        const other = texts[k];
        if (one.limits.left < other.limits.right && other.limits.left < one.limits.right
            && one.limits.top < other.limits.bottom && other.limits.top < one.limits.bottom
            && share(one.figure, other.figure, slack)) {
          say('overlap', number, other.words, one.words);
        }
      }
    });
  });
  say('count', count);
  const answer = document.createElement('pre');
  answer.id = 'rendered-texts';
  answer.textContent = found.join('\n');
  document.documentElement.replaceChildren(document.createElement('body'));
  document.body.append(answer);
})();
