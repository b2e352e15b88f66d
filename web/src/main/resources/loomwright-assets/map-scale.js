// Two points on the picture and their real distance give the size of the whole view.
import {apart, readMm, showMm} from './map-geometry.js';
import {make, sized} from './map-draw.js';

document.querySelector('.problems')?.focus();
const svg = document.getElementById('plan-picture');
const image = svg.querySelector('image');
const figure = document.getElementById('plan-scale');
const real = document.getElementById('real');
const told = document.getElementById('real-told');
const group = document.getElementById('scale-points');
const STEPS = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1]};
let height = svg.viewBox.baseVal.height;
let points = [{x: 250, y: height / 2}, {x: 750, y: height / 2}];
let next = 0;

figure.hidden = !image.getAttribute('href');

function show() {
  const matrix = svg.getScreenCTM();
  const unit = matrix && matrix.a ? 1 / matrix.a : 1;
  const focused = group.contains(document.activeElement) ? document.activeElement.dataset.point : null;
  group.replaceChildren(make('line', {class: 'measure', x1: points[0].x, y1: points[0].y, x2: points[1].x, y2: points[1].y}));
  points.forEach((p, i) => {
    const it = make('g', {class: 'scale-point', tabindex: 0, role: 'button', 'data-point': i, 'aria-label': `Point ${i + 1}`},
      sized(p, unit, make('circle', {class: 'hit', r: 22}), make('circle', {class: 'ring', r: 8}), make('path', {class: 'measure-point', d: 'M-14 0H14M0-14V14'})));
    group.append(it);
    if (String(i) === focused) it.focus({preventScroll: true});
  });
  const mm = readMm(real.value);
  if (!mm || apart(...points) < 1) {
    told.textContent = real.value.trim() ? 'Write a distance such as 2400 or 7 ft.' : '';
    return;
  }
  const along = Math.round(1000 * mm / apart(...points));
  const down = Math.round(height * mm / apart(...points));
  document.getElementById('along').value = `${along} mm`;
  document.getElementById('down').value = `${down} mm`;
  told.textContent = `So the view is ${showMm(along)} long and ${showMm(down)} wide.`;
}

svg.addEventListener('click', event => {
  const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  points[next] = {x: Math.min(1000, Math.max(0, p.x)), y: Math.min(height, Math.max(0, p.y))};
  next = 1 - next;
  show();
});
svg.addEventListener('keydown', event => {
  const step = STEPS[event.key];
  const it = event.target.closest('.scale-point');
  if (!step || !it) return;
  event.preventDefault();
  const p = points[it.dataset.point];
  const size = event.shiftKey ? 20 : 2;
  points[it.dataset.point] = {x: Math.min(1000, Math.max(0, p.x + step[0] * size)), y: Math.min(height, Math.max(0, p.y + step[1] * size))};
  show();
});
real.addEventListener('input', show);
document.getElementById('picture').addEventListener('change', async event => {
  const file = event.target.files[0];
  if (!file) return;
  const reader = new FileReader();
  reader.addEventListener('load', () => {
    const sample = new Image();
    sample.addEventListener('load', () => {
      height = 1000 * sample.naturalHeight / sample.naturalWidth;
      svg.setAttribute('viewBox', `0 0 1000 ${height}`);
      image.setAttribute('href', reader.result);
      image.setAttribute('height', height);
      points = [{x: 250, y: height / 2}, {x: 750, y: height / 2}];
      figure.hidden = false;
      show();
    });
    sample.src = reader.result;
  });
  reader.readAsDataURL(file);
});
show();
