// An element with attributes and children; words always go in as text.
function el(tag, attributes, children) {
  var element = document.createElement(tag);
  Object.keys(attributes || {}).forEach(function (key) {
    var value = attributes[key];
    if (typeof value === 'function') {
      element.addEventListener(key, value);
    } else if (value !== null && value !== false) {
      element.setAttribute(key, value === true ? '' : value);
    }
  });
  put(element, children);
  return element;
}

function put(element, children) {
  if (children === null || children === undefined || children === false) { return; }
  if (Array.isArray(children)) {
    children.forEach(function (it) { put(element, it); });
  } else if (typeof children === 'string') {
    children.split('\n').forEach(function (line, i) {
      if (i > 0) { element.appendChild(document.createElement('br')); }
      element.appendChild(document.createTextNode(withUnits(line)));
    });
  } else {
    element.appendChild(children);
  }
}

// A number keeps its unit beside it.
function withUnits(words) {
  return words.replace(
    /([0-9]) (?=(?:mm\u00b2|mm|cm|m|mA|A|mV|V|W|[kM]?\u03a9|\u00b0C|Nm|min|h|s|%)(?![A-Za-z0-9]))/g,
    '$1\u00a0');
}

function button(id, look, words, action) {
  return el('button', {type: 'button', id: id, 'class': look, click: action}, words);
}

function box(look, title, lines) {
  return el('div', {'class': 'box ' + look}, [
    title ? el('p', {'class': 'box-title'}, title) : null,
    [].concat(lines || []).map(function (it) {
      return typeof it === 'string' ? el('p', {}, it) : it;
    })
  ]);
}

// Words that are read out at once.
function alarm(id, words) {
  return el('p', {id: id, 'class': 'fault', role: 'alert'}, words);
}

function textField(id, label, value, hint, changed) {
  return el('div', {'class': 'field'}, [
    el('label', {'for': id}, label),
    el('input', {
      id: id, type: 'text', value: value, autocomplete: 'off', maxlength: '120',
      'aria-describedby': hint ? id + '-hint' : null,
      change: function (event) { changed(event.target.value.replace(/^\s+|\s+$/g, '')); }
    }),
    hint ? el('p', {id: id + '-hint', 'class': 'hint'}, hint) : null
  ]);
}

// Choices of which one is taken: {value, words, more}.
function choices(name, title, options, chosen, changed) {
  return el('fieldset', {'class': 'choices'}, [
    el('legend', {}, title),
    options.map(function (it, i) {
      var id = 'choice-' + name.replace(/[^a-z0-9]+/gi, '-') + '-' + i;
      return el('div', {'class': 'choice'}, [
        el('input', {
          type: 'radio', id: id, name: name, value: it.value,
          checked: it.value === chosen, change: function () { changed(it.value); }
        }),
        el('label', {'for': id}, [
          el('b', {}, it.words), it.more ? el('span', {}, it.more) : null
        ])
      ]);
    })
  ]);
}

function tick(id, words, on, changed) {
  return el('div', {'class': 'choice tick'}, [
    el('input', {
      type: 'checkbox', id: id, checked: on,
      change: function (event) { changed(event.target.checked); }
    }),
    el('label', {'for': id}, el('b', {}, words))
  ]);
}

function drawing(svg) {
  var read = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
  if (read.nodeName !== 'svg') { throw new Error('a picture can\'t be drawn'); }
  var picture = document.importNode(read, true);
  picture.removeAttribute('width');
  picture.removeAttribute('height');
  return picture;
}

function capital(words) {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
