// Places and runs as they stand on the page. The fields of the lists are what is saved, so every
// move is written into them, and what is typed there is read back.
import {readBends, readMm, writeBends, within} from './map-geometry.js';

const numbers = text => (text.match(/-?[\d.]+/g) || []).map(Number);
const field = (row, end) => row.querySelector(`input[name$=".${end}"]`);

export class MapModel {
  /** @param {SVGSVGElement} svg the map as the server drew it */
  constructor(svg) {
    this.along = Number(svg.dataset.along);
    this.down = Number(svg.dataset.down);
    this.watchers = [];
    this.undo = [];
    this.chosen = null;
    const rows = new Map([...document.querySelectorAll('.map-row')].map(it => [it.id, it]));
    this.places = [...svg.querySelectorAll('.handle')].map((el, i) => {
      const [x, y] = numbers(el.querySelector('.spot').getAttribute('transform'));
      const row = rows.get(el.getAttribute('href').slice(1));
      return {
        kind: 'place', id: el.dataset.place, name: el.dataset.name, number: i + 1, el, row,
        at: el.classList.contains('off') ? null : {x, y},
        fields: [field(row, 'along'), field(row, 'down')].filter(it => it),
      };
    });
    this.runs = [...svg.querySelectorAll('.run')].map(el => {
      const raw = numbers(el.querySelector('.run-line').getAttribute('points'));
      const points = raw.filter((_, i) => i % 2 === 0).map((x, i) => ({x, y: raw[2 * i + 1]}));
      const row = rows.get(el.querySelector('a').getAttribute('href').slice(1));
      const fields = [field(row, 'bends')].filter(it => it);
      return {
        kind: 'run', id: el.dataset.run, name: el.dataset.names, el, row, fields,
        from: this.get('place', el.dataset.from), to: this.get('place', el.dataset.to),
        stated: Number(el.dataset.stated), tolerance: Number(el.dataset.tolerance),
        bends: points.length > 2 ? points.slice(1, -1) : (fields[0] && readBends(fields[0].value)) || [],
      };
    });
  }

  /** Line of a run; empty when a place at its ends is not on the map. */
  line(run) {
    return run.from && run.to && run.from.at && run.to.at ? [run.from.at, ...run.bends, run.to.at] : [];
  }

  get(kind, id) {
    return (kind === 'place' ? this.places : this.runs).find(it => it.id === id);
  }

  watch(watcher) { this.watchers.push(watcher); }
  tell() { this.watchers.forEach(it => it()); }

  choose(item) {
    this.chosen = item;
    this.tell();
  }

  value(item) { return item.kind === 'place' ? item.at : item.bends; }

  /** Keeps what stands now, to be taken back. */
  remember(item) {
    this.undo.push({item, value: this.value(item), texts: item.fields.map(it => it.value)});
  }

  /** Sets a place's spot or a run's bends, and writes it into the fields. */
  set(item, value) {
    const fit = it => within(it, this.along, this.down);
    if (item.kind === 'place') {
      item.at = value && fit(value);
      const texts = item.at ? [item.at.x, item.at.y] : ['', ''];
      item.fields.forEach((it, i) => { it.value = texts[i]; });
    } else {
      item.bends = value.map(fit);
      item.fields.forEach(it => { it.value = writeBends(item.bends); });
    }
    this.tell();
  }

  /** Takes what was typed into the picture; what only the server can read stays in its field. */
  typed(item) {
    const texts = item.fields.map(it => it.value);
    if (item.kind === 'run') {
      item.bends = readBends(texts[0]) || item.bends;
    } else if (texts.every(it => !it.trim())) {
      item.at = null;
    } else {
      const [x, y] = texts.map(readMm);
      if (x !== null && y !== null && x <= this.along && y <= this.down) item.at = {x, y};
    }
    this.tell();
  }

  takeBack() {
    const last = this.undo.pop();
    if (!last) return null;
    if (last.item.kind === 'place') last.item.at = last.value;
    else last.item.bends = last.value;
    last.item.fields.forEach((it, i) => { it.value = last.texts[i]; });
    this.tell();
    return last.item;
  }

  /** Places and runs whose fields differ from what is on file. */
  changed() {
    const same = it => it.value.trim() === it.dataset.was || readMm(it.value) !== null && readMm(it.value) === readMm(it.dataset.was);
    return [...this.places, ...this.runs].filter(item => !item.fields.every(same));
  }
}
