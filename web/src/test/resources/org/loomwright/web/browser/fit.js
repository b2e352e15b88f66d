// What is wider than the window, and what is too small to touch (WCAG 2.2, 2.5.8, with its
// exceptions: within a sentence, room around it, the same done by another control).
() => {
  const LEAST = 24;
  const faults = [];
  const name = it => {
    const text = (it.getAttribute('aria-label') || it.textContent || it.value || '').trim();
    return `<${it.tagName.toLowerCase()}${it.id ? '#' + it.id : ''} class="${it.getAttribute('class') || ''}"> ` +
      text.replace(/\s+/g, ' ').slice(0, 60);
  };
  const page = document.documentElement;
  const width = page.clientWidth;
  if (page.scrollWidth > width) {
    faults.push(`the page is ${page.scrollWidth} px wide in a window of ${width} px`);
    const scrolls = it => {
      for (let up = it.parentElement; up && up !== document.body; up = up.parentElement) {
        if (getComputedStyle(up).overflowX !== 'visible') return true;
      }
      return false;
    };
    [...document.body.querySelectorAll('*')]
      .filter(it => it.getBoundingClientRect().right > width + 1 && !scrolls(it))
      .slice(-5)
      .forEach(it => faults.push(`reaches past the window: ${name(it)}`));
  }
  const targets = [...document.querySelectorAll(
    'a[href], button, input:not([type=hidden]), select, textarea, summary, [role=button]')]
    .filter(it => it.checkVisibility({visibilityProperty: true}))
    .map(it => ({it, box: it.getBoundingClientRect()}))
    .filter(({box}) => box.width > 0 && box.height > 0 && box.bottom + scrollY > 0);
  const small = ({box}) => box.width < LEAST - .5 || box.height < LEAST - .5;
  const middle = ({box}) => [box.left + box.width / 2, box.top + box.height / 2];
  const inSentence = ({it}) => {
    if (getComputedStyle(it).display !== 'inline') return false;
    let block = it.parentElement;
    while (getComputedStyle(block).display === 'inline') block = block.parentElement;
    const links = [...block.querySelectorAll('a, button')].map(a => a.textContent).join('');
    return block.textContent.replace(/\s/g, '').length > links.replace(/\s/g, '').length;
  };
  const goal = ({it}) => (it.getAttribute('href') || it.getAttribute('xlink:href') || '').replace(/#.*/, '');
  const big = new Set(targets.filter(it => !small(it)).map(goal).filter(it => it));
  const crowded = one => targets.some(other => {
    if (other === one || one.it.contains(other.it) || other.it.contains(one.it)) return false;
    const [x, y] = middle(one);
    const b = other.box;
    const dx = Math.max(b.left - x, 0, x - b.right);
    const dy = Math.max(b.top - y, 0, y - b.bottom);
    if (Math.hypot(dx, dy) < LEAST / 2) return true;
    const [u, v] = middle(other);
    return small(other) && Math.hypot(u - x, v - y) < LEAST;
  });
  targets.filter(small)
    .filter(it => !inSentence(it) && !big.has(goal(it)) && crowded(it))
    .forEach(it => faults.push(
      `too small to touch, ${Math.round(it.box.width)} x ${Math.round(it.box.height)} px: ${name(it.it)}`));
  return faults;
}
