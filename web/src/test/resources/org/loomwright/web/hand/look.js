// What is too faint, too small to touch with gloves, or wider than the screen. Contrast as WCAG 2.2
// defines it (relative luminance), of each text with the nearest ground painted behind it.
() => {
  const LEAST_CONTRAST = 7;
  const LEAST_TARGET = 48;
  const faults = [];
  const colour = text => {
    const parts = /rgba?\(([^)]*)\)/.exec(text)[1].split(/[ ,/]+/).map(Number);
    return {rgb: parts.slice(0, 3), alpha: parts.length > 3 ? parts[3] : 1};
  };
  const luminance = rgb => {
    const [r, g, b] = rgb.map(it => it / 255)
      .map(it => it <= .04045 ? it / 12.92 : ((it + .055) / 1.055) ** 2.4);
    return .2126 * r + .7152 * g + .0722 * b;
  };
  const contrast = (a, b) => {
    const [x, y] = [luminance(a), luminance(b)].sort((p, q) => q - p);
    return (x + .05) / (y + .05);
  };
  const ground = it => {
    for (let up = it; up; up = up.parentElement) {
      const painted = colour(getComputedStyle(up).backgroundColor);
      if (painted.alpha === 1) return painted.rgb;
      if (painted.alpha > 0) faults.push(`a ground that shines through: ${up.className}`);
    }
    return [255, 255, 255];
  };
  const seen = it => it.checkVisibility({visibilityProperty: true, opacityProperty: true});
  let texts = 0;
  const walker = document.createTreeWalker(document.getElementById('app'), NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const it = walker.currentNode.parentElement;
    if (!walker.currentNode.textContent.trim() || it.closest('svg') || !seen(it)) continue;
    texts++;
    const ratio = contrast(colour(getComputedStyle(it).color).rgb, ground(it));
    if (ratio < LEAST_CONTRAST) {
      faults.push(`contrast ${ratio.toFixed(2)}: ${it.textContent.slice(0, 60)}`);
    }
    if (parseFloat(getComputedStyle(it).fontSize) < 15) {
      faults.push(`too small to read: ${it.textContent.slice(0, 60)}`);
    }
  }
  if (texts < 3) faults.push('hardly any text found');
  document.querySelectorAll('#app button, #app select, #app textarea, #app summary, #app a,'
    + ' #app input[type=text], #app label[for]').forEach(it => {
    // The label of a field is no target of its own; that of a choice or a file is.
    if (it.tagName === 'LABEL' && !it.closest('.choice') && !it.classList.contains('second')) return;
    if (!seen(it)) return;
    const box = it.getBoundingClientRect();
    if (box.width < LEAST_TARGET - .01 || box.height < LEAST_TARGET - .01) {
      faults.push(`${Math.round(box.width)} x ${Math.round(box.height)} px to touch: `
        + `${it.tagName} ${it.textContent.slice(0, 40)}`);
    }
  });
  const page = document.documentElement;
  if (page.scrollWidth > page.clientWidth) {
    faults.push(`${page.scrollWidth} px wide in ${page.clientWidth} px`);
  }
  return faults;
}
