// New places and runs: clicks on the map fill the forms beside it; the forms are what is saved.
import {length, showMm, readBends, readMm, writeBends, within} from './map-geometry.js';
import {make, sized} from './map-draw.js';

const field = name => document.getElementById(name);

/** Puts a value into a field as if it were typed, so that changes are counted. */
function fill(name, value) {
  field(name).value = value;
  field(name).dispatchEvent(new Event('input', {bubbles: true}));
}

function open(box) {
  document.getElementById(box).open = true;
}

export class NewPlaceTool {
  constructor(svg, model, view, say) { Object.assign(this, {svg, model, view, say}); }

  start() {
    open('new-place-box');
    this.say('Click where the place is, or type its distances in the form.');
  }

  /** A click on the ground. */
  at(point) {
    const p = within(point, this.model.along, this.model.down);
    fill('newPlace.along', p.x);
    fill('newPlace.down', p.y);
    this.draw();
    this.say(`${showMm(p.x)} from the left, ${showMm(p.y)} from the top. Now name it.`);
    field('newPlace.name').focus();
  }

  draw() {
    const group = this.svg.querySelector('#map-tool');
    const x = readMm(field('newPlace.along').value);
    const y = readMm(field('newPlace.down').value);
    if (x === null || y === null) return;
    group.append(sized({x, y}, this.view.unit, make('circle', {class: 'ghost', r: 12}),
      make('path', {class: 'ghost', d: 'M-5 0H5M0-5V5'})));
  }
}

export class NewRunTool {
  constructor(svg, model, view, say) { Object.assign(this, {svg, model, view, say}); }

  start() {
    open('new-run-box');
    this.say('Click the place it starts at, then its bends if it has any, then the place it ends at; or choose both in the form.');
  }

  /** A click on a place. */
  place(item) {
    if (!field('newRun.from').value) {
      fill('newRun.from', item.id);
      this.say(`From ${item.name}. Click its bends, or the place it ends at.`);
    } else if (item.id !== field('newRun.from').value) {
      fill('newRun.to', item.id);
      this.hint();
      field('newRun.length').focus();
    }
  }

  /** A click on the ground is a bend, once it is known where the run starts. */
  at(point) {
    if (!field('newRun.from').value) {
      this.say('Click the place where the run starts first.');
      return;
    }
    const bends = readBends(field('newRun.bends').value) || [];
    bends.push(within(point, this.model.along, this.model.down));
    fill('newRun.bends', writeBends(bends));
    this.say(`Bend ${bends.length}. Click the next one, or the place it ends at.`);
  }

  line() {
    const end = name => this.model.get('place', field(name).value);
    const [from, to] = [end('newRun.from'), end('newRun.to')];
    const line = [from && from.at, ...(readBends(field('newRun.bends').value) || []), to && to.at];
    return line.filter(it => it);
  }

  /** The drawn length is told, and never becomes the value: the plan shows no heights. */
  hint() {
    const told = document.getElementById('drawn-hint');
    const line = this.line();
    told.hidden = line.length < 2 || !field('newRun.to').value;
    const words = told.hidden ? '' : `drawn: ${showMm(length(line))}; measure the real path`;
    if (told.textContent !== words) told.textContent = words;
  }

  draw() {
    this.hint();
    const line = this.line();
    if (line.length) {
      this.svg.querySelector('#map-tool').append(
        make('polyline', {class: 'ghost-run', points: line.map(it => `${it.x},${it.y}`).join(' ')}));
    }
  }
}
