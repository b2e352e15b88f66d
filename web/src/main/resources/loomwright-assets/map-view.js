// The window on the map: how large, which part, and where a pointer is in the vehicle.
const LARGEST = 12;
const STEP = 1.5;

export class MapWindow {
  /** @param {SVGSVGElement} svg @param {() => void} changed called when sizes on the screen change */
  constructor(svg, changed) {
    this.svg = svg;
    this.changed = changed;
    const [x, y, width, height] = svg.getAttribute('viewBox').split(' ').map(Number);
    this.whole = {x, y, width, height};
    this.part = {...this.whole};
    new ResizeObserver(() => this.show()).observe(svg);
    svg.addEventListener('wheel', event => {
      // Only with the key that browsers use for larger and smaller: the page has to scroll too.
      if (!event.ctrlKey) return;
      event.preventDefault();
      this.zoom(event.deltaY < 0 ? 1.2 : 1 / 1.2, this.toPlan(event));
    }, {passive: false});
  }

  /** Millimetres for each pixel of the screen. */
  get unit() {
    const matrix = this.svg.getScreenCTM();
    return matrix && matrix.a ? 1 / matrix.a : 1;
  }

  /** Where a pointer is on the plan. @param {{clientX: number, clientY: number}} event */
  toPlan(event) {
    const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(this.svg.getScreenCTM().inverse());
    return {x: p.x, y: p.y};
  }

  get zoomed() { return this.part.width < this.whole.width * .99; }

  /** Makes the map larger (above 1) or smaller around a point. */
  zoom(factor, around) {
    const {whole, part} = this;
    const at = around || {x: part.x + part.width / 2, y: part.y + part.height / 2};
    const width = Math.min(whole.width, Math.max(whole.width / LARGEST, part.width / factor));
    const share = width / part.width;
    part.x = at.x - (at.x - part.x) * share;
    part.y = at.y - (at.y - part.y) * share;
    part.width = width;
    part.height *= share;
    this.show();
  }

  step(word) {
    if (word === 'all') {
      this.part = {...this.whole};
      this.show();
    } else {
      this.zoom(word === 'in' ? STEP : 1 / STEP);
    }
  }

  /** Moves the ground along by millimetres. */
  pan(dx, dy) {
    this.part.x -= dx;
    this.part.y -= dy;
    this.show();
  }

  /** Brings a point into the window. */
  reveal(p) {
    const {part} = this;
    const margin = part.width * .1;
    if (p.x < part.x + margin || p.x > part.x + part.width - margin) part.x = p.x - part.width / 2;
    if (p.y < part.y || p.y > part.y + part.height) part.y = p.y - part.height / 2;
    this.show();
  }

  show() {
    const {whole, part} = this;
    part.x = Math.min(whole.x + whole.width - part.width, Math.max(whole.x, part.x));
    part.y = Math.min(whole.y + whole.height - part.height, Math.max(whole.y, part.y));
    this.svg.setAttribute('viewBox', `${part.x} ${part.y} ${part.width} ${part.height}`);
    this.svg.classList.toggle('zoomed', this.zoomed);
    this.changed();
  }
}
