// Runs the rules on the page and puts each fault into a line.
async what => {
  const look = ['color-contrast', 'target-size', 'link-in-text-block', 'scrollable-region-focusable',
    'css-orientation-lock'];
  const only = what === 'look'
    ? {type: 'rule', values: look}
    : {type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']};
  const found = await axe.run(document, {
    runOnly: only,
    rules: what === 'look' ? {} : {'target-size': {enabled: true}},
    resultTypes: ['violations']
  });
  return found.violations.flatMap(rule => rule.nodes.map(node =>
    `${rule.id}: ${node.target.flat().join(' ')} ${node.html.slice(0, 160)}: ` +
    node.failureSummary.replace(/\s+/g, ' ')));
}
