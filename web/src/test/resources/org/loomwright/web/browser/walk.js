// Notes what Tab reaches and whether the ring around it is seen.
step => {
  const parts = colour => (colour.match(/[\d.]+/g) || []).map(Number);
  const light = ([r, g, b]) => {
    const f = c => (c /= 255) <= .04045 ? c / 12.92 : ((c + .055) / 1.055) ** 2.4;
    return .2126 * f(r) + .7152 * f(g) + .0722 * f(b);
  };
  const ground = it => {
    for (let up = it.parentElement; up; up = up.parentElement) {
      const colour = parts(getComputedStyle(up).backgroundColor);
      if (colour.length === 3 || colour[3] === 1) return colour;
    }
    return [255, 255, 255];
  };
  const ring = it => {
    const style = getComputedStyle(it);
    // The browser's own ring is two-coloured and seen on any ground.
    if (style.outlineStyle === 'auto') return '';
    if (style.outlineStyle === 'none' || parseFloat(style.outlineWidth) < 2) return 'no ring';
    const a = light(parts(style.outlineColor)), b = light(ground(it));
    const contrast = (Math.max(a, b) + .05) / (Math.min(a, b) + .05);
    return contrast < 3 ? `ring of contrast ${contrast.toFixed(2)}, needs 3` : '';
  };
  if (step === 'begin') {
    const all = [...document.querySelectorAll(
      'a[href], button, input:not([type=hidden]), select, textarea, summary, [tabindex]')]
      .filter(it => it.tabIndex >= 0 && !it.disabled && it.checkVisibility({visibilityProperty: true}));
    const radios = it => it.type === 'radio' && it.name;
    const walked = all.filter(it => {
      if (!radios(it)) return true;
      const group = all.filter(r => radios(r) && r.name === it.name && r.form === it.form);
      return it === (group.find(r => r.checked) || group[0]);
    });
    const names = new Map(walked.map((it, i) => [it, `${i}: <${it.tagName.toLowerCase()}> ` +
      (it.id || it.getAttribute('aria-label') || it.textContent || it.name || '').trim().replace(/\s+/g, ' ').slice(0, 60)]));
    const walk = {reached: [], faults: []};
    document.activeElement && document.activeElement.blur();
    getSelection().removeAllRanges();
    document.body.tabIndex = -1;
    document.body.focus();
    document.body.removeAttribute('tabindex');
    walk.listen = event => {
      const it = event.target;
      const name = names.get(it) || `<${it.tagName.toLowerCase()}> ${(it.textContent || '').trim().slice(0, 60)}`;
      walk.reached.push(name);
      const fault = ring(it);
      if (fault) walk.faults.push(`${fault}: ${name}`);
    };
    document.addEventListener('focusin', walk.listen);
    window.loomwrightWalk = walk;
    return [...names.values()];
  }
  if (step === 'reached') return window.loomwrightWalk.reached;
  document.removeEventListener('focusin', window.loomwrightWalk.listen);
  document.activeElement.blur();
  return window.loomwrightWalk.faults;
}
