// Distances along clicked points, in the vehicle's own size.
import {legs, length, showInches, showMm} from './map-geometry.js';
import {make, sized} from './map-draw.js';

export class Measure {
  constructor(svg, view, box) {
    Object.assign(this, {svg, view, box, points: [], active: false});
  }

  start() {
    this.active = true;
    this.points = [];
    this.tell();
  }

  stop() {
    this.active = false;
    this.points = [];
    this.tell();
  }

  /** @param {{x: number, y: number}} at @param {string} [name] of the place it is at */
  add(at, name) {
    this.points.push({x: at.x, y: at.y, name: name || `point ${this.points.length + 1}`});
    this.tell();
  }

  back() {
    this.points.pop();
    this.tell();
  }

  tell() {
    const {box, points} = this;
    box.hidden = !this.active;
    const parts = legs(points);
    const sum = document.createElement('p');
    sum.className = 'measured-sum';
    sum.setAttribute('role', 'status');
    sum.textContent = points.length < 2
      ? 'Click points on the map, or move to a place with Tab and press Enter.'
      : `${showMm(length(points))} (${showInches(length(points))})`;
    const list = document.createElement('ol');
    parts.forEach((mm, i) => {
      const it = document.createElement('li');
      it.textContent = `${points[i].name} to ${points[i + 1].name}: ${showMm(mm)} (${showInches(mm)})`;
      list.append(it);
    });
    const buttons = document.createElement('p');
    buttons.className = 'buttons';
    const button = (words, act) => {
      const it = document.createElement('button');
      it.type = 'button';
      it.className = 'quiet-button';
      it.textContent = words;
      it.addEventListener('click', act);
      buttons.append(it);
    };
    if (points.length) {
      button('Take the last point back', () => this.back());
      button('Start again', () => this.start());
    }
    box.replaceChildren(sum, ...(parts.length > 1 ? [list] : []), buttons);
    this.draw();
  }

  draw() {
    const group = this.svg.querySelector('#map-tool');
    group.replaceChildren();
    if (!this.points.length) return;
    const unit = this.view.unit;
    const points = this.points.map(it => `${it.x},${it.y}`).join(' ');
    group.append(make('polyline', {class: 'measure-under', points}), make('polyline', {class: 'measure', points}));
    this.points.forEach(it => group.append(sized(it, unit, make('path', {class: 'measure-point', d: 'M-6 0H6M0-6V6'}))));
    if (this.points.length > 1) {
      // The sum stands at the last point too: the list below may be out of sight.
      const text = make('text', {class: 'measure-text', x: 12, y: -8});
      text.textContent = showMm(length(this.points));
      group.append(sized(this.points[this.points.length - 1], unit, text));
    }
  }
}
