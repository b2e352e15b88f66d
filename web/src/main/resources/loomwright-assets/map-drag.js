// Moves places and bends: by mouse, finger or pen, and by keys.
import {apart, between, showMm} from './map-geometry.js';

const STEPS = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1]};
const STEP_MM = 10;
const FAR_MM = 100;
/** Pixels a pointer may shake before it counts as a move. */
const SHAKE = 3;
const REACH = {mouse: 14, pen: 18, touch: 24};

export class Mover {
  /** @param {(words: string) => void} say tells what happens, for eyes and ears */
  constructor(svg, model, view, say) {
    Object.assign(this, {svg, model, view, say, active: true, held: null, drag: null, fingers: new Map()});
    svg.addEventListener('pointerdown', it => this.press(it));
    svg.addEventListener('pointermove', it => this.move(it));
    svg.addEventListener('pointerup', it => this.release(it));
    svg.addEventListener('pointercancel', it => this.release(it, true));
    svg.addEventListener('keydown', it => this.key(it));
    svg.addEventListener('focusout', () => this.keep());
    svg.addEventListener('dragstart', it => it.preventDefault());
  }

  /** The nearest thing under a pointer: bends and rings of the chosen run, then places. */
  under(event) {
    const at = this.view.toPlan(event);
    const reach = (REACH[event.pointerType] || REACH.mouse) * this.view.unit;
    const things = [];
    const run = this.model.chosen;
    if (run && run.kind === 'run' && run.fields.length) {
      const line = this.model.line(run);
      run.bends.forEach((p, i) => things.push({item: run, p, bend: i}));
      line.slice(1).forEach((to, i) => things.push({item: run, p: between(line[i], to, .5), middle: i}));
    }
    this.model.places.filter(it => it.at).forEach(it => things.push({item: it, p: it.at}));
    return things.map(it => ({...it, far: apart(it.p, at)})).filter(it => it.far <= reach)
      .sort((a, b) => a.far - b.far)[0];
  }

  press(event) {
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    this.fingers.set(event.pointerId, event);
    if (this.fingers.size === 2) {
      this.letGo();
      this.drag = {pinch: this.spread()};
      return;
    }
    const thing = this.active ? this.under(event) : null;
    const movable = thing && thing.item.fields.length;
    this.drag = {start: event, last: event, thing: movable ? thing : null, chosen: thing, moved: false,
      ground: this.view.toPlan(event)};
    if (thing && event.pointerType !== 'touch') event.preventDefault();
    if (movable || this.view.zoomed) this.svg.setPointerCapture(event.pointerId);
  }

  spread() {
    const [a, b] = [...this.fingers.values()];
    return {size: Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY),
      middle: {clientX: (a.clientX + b.clientX) / 2, clientY: (a.clientY + b.clientY) / 2}};
  }

  move(event) {
    if (!this.fingers.has(event.pointerId)) return;
    this.fingers.set(event.pointerId, event);
    const {drag} = this;
    if (!drag) return;
    if (drag.pinch) {
      const now = this.spread();
      this.view.zoom(now.size / drag.pinch.size, this.view.toPlan(now.middle));
      const before = this.view.toPlan(drag.pinch.middle);
      const after = this.view.toPlan(now.middle);
      this.view.pan(after.x - before.x, after.y - before.y);
      drag.pinch = now;
      return;
    }
    if (!drag.moved && Math.hypot(event.clientX - drag.start.clientX, event.clientY - drag.start.clientY) < SHAKE) return;
    const first = !drag.moved;
    drag.moved = true;
    if (drag.thing) {
      if (first) this.begin(drag.thing);
      const to = this.view.toPlan(event);
      this.put(drag.thing, {x: drag.thing.p.x + to.x - drag.ground.x, y: drag.thing.p.y + to.y - drag.ground.y});
    } else if (this.view.zoomed) {
      const to = this.view.toPlan(event);
      this.view.pan(to.x - drag.ground.x, to.y - drag.ground.y);
    }
    drag.last = event;
  }

  /** Remembers what stands, and makes a ring a bend. */
  begin(thing) {
    this.model.remember(thing.item);
    if (thing.middle !== undefined) {
      thing.bend = thing.middle;
      delete thing.middle;
      this.model.set(thing.item, thing.item.bends.toSpliced(thing.bend, 0, thing.p));
    }
    if (thing.item.kind === 'place') this.model.choose(thing.item);
  }

  put(thing, at) {
    const {item} = thing;
    this.model.set(item, item.kind === 'place' ? at : item.bends.with(thing.bend, at));
    const now = item.kind === 'place' ? item.at : item.bends[thing.bend];
    this.say(`${item.kind === 'place' ? item.name : 'Bend'}: ${showMm(now.x)} from the left, ${showMm(now.y)} from the top` +
      `, moved ${showMm(apart(now, thing.p))}`);
  }

  release(event, broken) {
    this.fingers.delete(event.pointerId);
    const {drag} = this;
    this.drag = null;
    if (!drag || drag.pinch || drag.moved) {
      // The click that ends a drag must not choose or follow anything.
      if (drag && drag.moved) this.svg.addEventListener('click', it => it.preventDefault(), {once: true, capture: true});
      if (broken && drag && drag.moved && drag.thing) this.model.takeBack();
    }
  }

  letGo() {
    if (this.drag && this.drag.moved && this.drag.thing) this.model.takeBack();
    this.drag = null;
  }

  /** What a key is meant for. */
  focused(target) {
    const bend = target.closest('.bend');
    if (bend) {
      const [sort, i] = bend.dataset.key.split('-');
      const item = this.model.chosen;
      const line = this.model.line(item);
      return sort === 'bend' ? {item, p: item.bends[i], bend: Number(i)}
        : {item, p: between(line[Number(i)], line[Number(i) + 1], .5), middle: Number(i)};
    }
    const handle = target.closest('.handle');
    const item = handle && this.model.get('place', handle.dataset.place);
    return item && item.at ? {item, p: item.at} : null;
  }

  key(event) {
    const thing = this.focused(event.target);
    if (!thing || !this.active || !thing.item.fields.length) return;
    const step = STEPS[event.key];
    if (step && !event.ctrlKey && !event.altKey && !event.metaKey) {
      event.preventDefault();
      this.nudge(thing, step, event.shiftKey ? FAR_MM : STEP_MM);
    } else if (event.key === 'Escape' && this.held) {
      event.preventDefault();
      this.model.takeBack();
      this.say(`${thing.item.name} is back where it was`);
      this.held = null;
    } else if (event.key === 'Enter' && this.held) {
      event.preventDefault();
      this.keep();
      this.say(`${thing.item.name} stays there. It is not saved yet.`);
    } else if ((event.key === 'Delete' || event.key === 'Backspace') && thing.bend !== undefined) {
      event.preventDefault();
      this.keep();
      this.model.remember(thing.item);
      this.model.set(thing.item, thing.item.bends.toSpliced(thing.bend, 1));
      this.say(`Bend taken out of the run ${thing.item.name}`);
      (this.svg.querySelector('.bend') || thing.item.row.querySelector('.badge')).focus({preventScroll: true});
    }
  }

  nudge(thing, [dx, dy], mm) {
    if (!this.held || this.held.item !== thing.item || this.held.bend !== thing.bend) {
      this.moving = true;
      this.begin(thing);
      this.held = {...thing};
      if (thing.bend !== undefined) this.svg.querySelector(`[data-key="bend-${thing.bend}"]`).focus({preventScroll: true});
      this.moving = false;
    }
    const now = thing.bend === undefined ? thing.item.at : thing.item.bends[thing.bend];
    this.put({...this.held}, {x: now.x + dx * mm, y: now.y + dy * mm});
    const stands = this.held.bend === undefined ? thing.item.at : thing.item.bends[this.held.bend];
    this.view.reveal(stands);
  }

  /** Ends a move by keys; redrawing moves the focus about and is no end of it. */
  keep() {
    if (!this.moving && !this.model.drawing) this.held = null;
  }
}
