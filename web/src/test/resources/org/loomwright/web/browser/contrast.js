// Text of steps with less contrast than 7 to 1 (WCAG 2.2, 1.4.6, its formula of luminance).
() => {
  const LEAST = 7;
  const channel = c => c <= .04045 ? c / 12.92 : ((c + .055) / 1.055) ** 2.4;
  const light = ([r, g, b]) =>
    .2126 * channel(r / 255) + .7152 * channel(g / 255) + .0722 * channel(b / 255);
  const colour = text => text.match(/[\d.]+/g).map(Number);
  const ground = it => {
    for (let up = it; up; up = up.parentElement) {
      const found = colour(getComputedStyle(up).backgroundColor);
      if (found.length < 4 || found[3] > 0) return found;
    }
    return [255, 255, 255];
  };
  const faults = [];
  for (const it of document.querySelectorAll('.job-step, .job-step *')) {
    if (it.closest('svg') || !it.checkVisibility()) continue;
    const own = [...it.childNodes].some(n => n.nodeType === 3 && n.textContent.trim());
    if (!own) continue;
    const a = light(colour(getComputedStyle(it).color));
    const b = light(ground(it));
    const ratio = (Math.max(a, b) + .05) / (Math.min(a, b) + .05);
    if (ratio < LEAST) {
      faults.push(`contrast ${ratio.toFixed(2)}: <${it.tagName.toLowerCase()} class="` +
        `${it.className}"> ${it.textContent.trim().slice(0, 50)}`);
    }
  }
  return faults;
}
