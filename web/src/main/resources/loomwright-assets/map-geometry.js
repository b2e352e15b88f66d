// Plane sums of the map. All lengths are mm of the vehicle; points are {x, y} from the view's
// top left corner. Nothing here knows of the page, so that it can be tried against other sums.

/**
 * @typedef {{x: number, y: number}} Point
 */

const MOST_APART = 0.25;
const SLACK_MM = 0.5;
const MM_PER_INCH = 25.4;
const UNITS = {mm: 1, cm: 10, m: 1000, in: MM_PER_INCH, ft: 12 * MM_PER_INCH};

/** Straight distance. @param {Point} a @param {Point} b */
export const apart = (a, b) => Math.hypot(a.x - b.x, a.y - b.y);

/** Length of each stretch of a line. @param {Point[]} line */
export const legs = line => line.slice(1).map((it, i) => apart(line[i], it));

/** Length of a line. @param {Point[]} line */
export const length = line => legs(line).reduce((sum, it) => sum + it, 0);

/** A point between two. @param {Point} a @param {Point} b @param {number} share 0 is a, 1 is b */
export const between = (a, b, share) => ({x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y)});

/** A point kept within the view and on whole millimetres, as places are kept. */
export const within = (p, along, down) => ({
  x: Math.round(Math.min(along, Math.max(0, p.x))),
  y: Math.round(Math.min(down, Math.max(0, p.y))),
});

/**
 * What a stated length says beside its line; the same sums as the server's.
 * @param {number} stated @param {Point[]} line
 */
export function check(stated, line) {
  if (line.length < 2) return 'not-drawn';
  if (stated < apart(line[0], line[line.length - 1]) - SLACK_MM) return 'impossible';
  return Math.abs(length(line) - stated) > MOST_APART * stated ? 'apart' : 'agrees';
}

const INCH = document.documentElement.dataset.units === 'inch';

/** Whole millimetres with gaps between thousands, or inches where the page shows inches. */
export const showMm = mm => INCH
  ? Number((mm / MM_PER_INCH).toFixed(Math.abs(mm) < 10 ? 3 : 2)) + '\u00a0in'
  : String(Math.round(mm)).replace(/\B(?=(\d{3})+$)/g, '\u00a0') + '\u00a0mm';

/** Inches to a quarter of one: finer than a plan is drawn. */
export function showInches(mm) {
  const quarters = Math.round(mm / MM_PER_INCH * 4);
  const whole = Math.floor(quarters / 4);
  const part = ['', '1/4', '1/2', '3/4'][quarters % 4];
  return (whole && part ? `${whole} ${part}` : part || String(whole)) + '\u00a0in';
}

/** Millimetres in a typed text; null where only the server can tell. */
export function readMm(text) {
  const it = /^\s*(\d+(?:\.\d+)?)\s*(mm|cm|m|in|ft)?\s*$/.exec(text);
  return it ? Number(it[1]) * UNITS[it[2] || 'mm'] : null;
}

/** Bends in a typed text; null where only the server can tell. */
export function readBends(text) {
  if (!text.trim()) return [];
  const points = text.trim().replace(/;$/, '').split(';').map(it => it.split(',').map(readMm));
  return points.every(it => it.length === 2 && it[0] !== null && it[1] !== null)
    ? points.map(([x, y]) => ({x, y})) : null;
}

/** Bends as they are typed. @param {Point[]} bends */
export const writeBends = bends => bends.map(it => `${it.x}, ${it.y}`).join('; ');
