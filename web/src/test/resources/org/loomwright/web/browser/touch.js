// What is touched with gloves on pages of jobs and is smaller than 48 px either way.
() => {
  const LEAST = 48;
  const areas = '.job-step, .job-form, .job-next, .job-move, .job-tabs, .job-way, .job-counts, ' +
    '.job-links, .job-questions, .job-buttons, .job-fold > summary';
  const targets = new Set();
  for (const area of document.querySelectorAll(areas)) {
    const inside = area.matches('summary') ? [area] :
      area.querySelectorAll('a[href], button, input:not([type=hidden], [type=radio], [type=checkbox]), ' +
        'select, textarea, summary, label:has(input:is([type=radio], [type=checkbox]))');
    for (const it of inside) targets.add(it);
  }
  return [...targets]
    .filter(it => it.checkVisibility({visibilityProperty: true}))
    .map(it => ({it, box: it.getBoundingClientRect()}))
    .filter(({box}) => box.width > 0 && (box.width < LEAST - .5 || box.height < LEAST - .5))
    .map(({it, box}) => `${Math.round(box.width)} x ${Math.round(box.height)} px: <` +
      `${it.tagName.toLowerCase()}> ${(it.textContent || it.id).trim().slice(0, 50)}`);
}
