// Draws what the model says: handles, lines, names where there is room, and the lists beside.
import {apart, between, check, length, legs, showMm} from './map-geometry.js';

const SPACE = 'http://www.w3.org/2000/svg';
const HALF = 14;

/** Makes an element of a drawing. */
export function make(tag, attributes, ...within) {
  const it = document.createElementNS(SPACE, tag);
  Object.entries(attributes).forEach(([key, value]) => it.setAttribute(key, String(value)));
  it.append(...within);
  return it;
}

/** Something that keeps its size on the screen, at a point of the plan. */
export const sized = (at, unit, ...within) => make('g', {transform: `translate(${at.x} ${at.y})`},
  make('g', {class: 'sized', transform: `scale(${unit})`}, ...within));

const points = line => line.map(it => `${it.x},${it.y}`).join(' ');
const meet = (a, b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

const WORDS = {
  'not-drawn': () => 'Not drawn: a place at its ends is not on the map',
  agrees: () => '',
  apart: (run, line) => run.stated > length(line)
    ? 'Stated much longer than drawn: it climbs, has bends that are not drawn, or one of the two is wrong'
    : 'Drawn much longer than stated: a bend or the length is wrong',
  impossible: (run, line) => 'Impossible: the straight line between its places is ' +
    showMm(apart(line[0], line[line.length - 1])) + (run.stated + run.tolerance < apart(line[0], line[line.length - 1])
      ? '; look for a typing error' : '; within its tolerance, so a place may be marked a little off'),
};

export function draw(svg, model, view) {
  const unit = view.unit;
  svg.querySelectorAll('.sized').forEach(it => it.setAttribute('transform', `scale(${unit})`));
  model.places.forEach(it => place(it, model));
  model.runs.forEach(it => run(it, model));
  bends(svg.querySelector('#map-bends'), model, unit);
  names(svg, model, view, unit);
}

function place(it, model) {
  const chosen = model.chosen === it;
  it.el.classList.toggle('off', !it.at);
  it.el.classList.toggle('chosen', chosen);
  it.el.tabIndex = it.at ? 0 : -1;
  mark(it.row, chosen);
  if (it.at) {
    it.el.querySelector('.spot').setAttribute('transform', `translate(${it.at.x} ${it.at.y})`);
  }
  const where = it.at ? `${showMm(it.at.x)} from the left edge, ${showMm(it.at.y)} from the top edge` : 'not on the map';
  it.el.setAttribute('aria-label', `${it.number}, ${it.name}: ${where}`);
  const off = it.row.querySelector('.map-off');
  if (off) off.hidden = !!it.at;
  const put = it.row.querySelector('.put');
  if (put) put.hidden = !!it.at || !it.fields.length;
}

function mark(row, chosen) {
  row.classList.toggle('chosen', chosen);
  if (chosen) row.setAttribute('aria-current', 'true');
  else row.removeAttribute('aria-current');
}

function run(it, model) {
  const line = model.line(it);
  const verdict = check(it.stated, line);
  const chosen = model.chosen === it;
  it.el.querySelectorAll('polyline').forEach(l => l.setAttribute('points', points(line)));
  ['not-drawn', 'agrees', 'apart', 'impossible'].forEach(word => it.el.classList.toggle(word, word === verdict));
  it.el.classList.toggle('chosen', chosen);
  mark(it.row, chosen);
  it.row.querySelector('.drawn').textContent = line.length ? `, drawn ${showMm(length(line))}` : '';
  const told = it.row.querySelector('.map-check');
  told.className = `small map-check ${verdict}`;
  told.textContent = WORDS[verdict](it, line);
  const text = it.el.querySelector('.label text');
  if (text) text.textContent = (verdict === 'impossible' ? '! ' : '') + showMm(it.stated);
}

/** Handles of the chosen run: squares at its bends, rings in the middle of its stretches. */
function bends(group, model, unit) {
  const item = model.chosen;
  const focused = document.activeElement && group.contains(document.activeElement) ? document.activeElement.dataset.key : null;
  group.replaceChildren();
  if (!item || item.kind !== 'run' || !item.fields.length) return;
  const line = model.line(item);
  const handle = (key, at, name, shape) => {
    const it = make('a', {class: `bend ${key.split('-')[0]}`, 'data-key': key, href: item.el.querySelector('a').getAttribute('href'), tabindex: 0, 'aria-label': name},
      sized(at, unit, make('circle', {class: 'hit', r: 22}), shape));
    group.append(it);
    if (key === focused) it.focus({preventScroll: true});
  };
  line.slice(1).forEach((to, i) => handle(`middle-${i}`, between(line[i], to, .5),
    `New bend in stretch ${i + 1} of the run ${item.name}: move it with the arrow keys`, make('circle', {class: 'ring', r: 6})));
  item.bends.forEach((at, i) => handle(`bend-${i}`, at,
    `Bend ${i + 1} of the run ${item.name}: ${showMm(at.x)} from the left edge, ${showMm(at.y)} from the top edge`,
    make('rect', {class: 'square', x: -7, y: -7, width: 14, height: 14})));
}

/** Names and lengths stand where they cover nothing; what finds no room shows when it is chosen. */
function names(svg, model, view, unit) {
  const shown = model.places.filter(it => it.at);
  const box = (x, y, left, right, top, bottom) => ({left: x + left, right: x + right, top: y + top, bottom: y + bottom});
  const taken = shown.map(it => box(it.at.x / unit, it.at.y / unit, -HALF, HALF, -HALF, HALF));
  const edge = {left: view.part.x / unit, right: (view.part.x + view.part.width) / unit};
  [...shown].sort((a, b) => (b === model.chosen) - (a === model.chosen)).forEach(it => {
    const text = it.el.querySelector('.name');
    const wide = text.getComputedTextLength() || 7 * it.name.length;
    const x = it.at.x / unit;
    const y = it.at.y / unit;
    const ways = [
      [17, 4.5, 'start', box(x, y, 15, 19 + wide, -9, 9)], [-17, 4.5, 'end', box(x, y, -19 - wide, -15, -9, 9)],
      [0, 27, 'middle', box(x, y, -wide / 2, wide / 2, 14, 32)], [0, -19, 'middle', box(x, y, -wide / 2, wide / 2, -33, -15)],
    ];
    const free = ways.find(([, , , b]) => b.left >= edge.left && b.right <= edge.right && !taken.some(t => meet(t, b)));
    const way = free || (it === model.chosen ? ways.find(([, , , b]) => b.left >= edge.left && b.right <= edge.right) || ways[2] : null);
    text.classList.toggle('crowded', !way);
    if (!way) return;
    text.setAttribute('x', way[0]);
    text.setAttribute('y', way[1]);
    text.style.textAnchor = way[2];
    taken.push(way[3]);
  });
  // What is wrong is told first.
  const urgent = it => (it === model.chosen ? 2 : 0) + (it.el.classList.contains('impossible') ? 1 : 0);
  [...model.runs].sort((a, b) => urgent(b) - urgent(a)).forEach(it => {
    const label = it.el.querySelector('.label');
    const line = model.line(it);
    if (!label || !line.length) return;
    const wide = label.querySelector('text').getComputedTextLength() + 6;
    const longest = legs(line).map((mm, i) => [mm, i]).sort((a, b) => b[0] - a[0]);
    const spots = longest.flatMap(([, i]) => [.5, .3, .7].map(share => between(line[i], line[i + 1], share)));
    const at = spots.find(p => !taken.some(t => meet(t, box(p.x / unit, p.y / unit, -wide / 2, wide / 2, -9, 9))));
    const spot = at || (it === model.chosen ? spots[0] : null);
    label.classList.toggle('crowded', !spot);
    if (!spot) return;
    label.setAttribute('transform', `translate(${spot.x} ${spot.y})`);
    taken.push(box(spot.x / unit, spot.y / unit, -wide / 2, wide / 2, -9, 9));
  });
}
