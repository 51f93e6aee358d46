import { expect, test } from 'vitest';
import { bothUnits, withDifferencesOnly } from '../../../src/site/built/both-units.ts';
import { steps } from '../../../src/site/built/finish.ts';

/** A page with a part in both systems, as the framework and its minifier write it. */
const page = (metric: string, inch: string) =>
  `<main><h1>Width</h1><div><div data-in=metric data-coming="" data-both="">${metric}</div><template><div data-in=inch>${inch}</div></template><script>turn</script></div><p>After</main>`;
const cut = (metric: string, inch: string) =>
  /<div data-in.*<\/template>/.exec(withDifferencesOnly(page(metric, inch)))?.[0];

test.each([
  [
    'only the elements that differ are sent twice, and the first of each is marked',
    '<h2>Result</h2><dl><dt>Width</dt><dd><b>300 mm</b>, <i>firm</i></dd></dl><p class=x>Same</p>',
    '<h2>Result</h2><dl><dt>Width</dt><dd><b>11 13/16 in</b>, <i>firm</i></dd></dl><p class=x>Same</p>',
    '<div data-in=metric data-coming=""><h2>Result</h2><dl><dt>Width</dt><dd><b data-both>300 mm</b>, <i>firm</i></dd></dl><p class=x>Same</p></div><template><b>11 13/16 in</b></template>',
  ],
  [
    'an element whose own text or attribute differs is taken whole',
    '<p class=a>12 mm <b>wide</b></p><p id=z><input value="1 mm"/><br/>x</p>',
    '<p class=a>1/2 in <b>wide</b></p><p id=z><input value="1/16 in"/><br/>x</p>',
    '<div data-in=metric data-coming=""><p data-both class=a>12 mm <b>wide</b></p><p id=z><input data-both value="1 mm"/><br/>x</p></div><template><p class=a>1/2 in <b>wide</b></p><input value="1/16 in"/></template>',
  ],
  [
    'an end that the page leaves out is written, or the next would lie within',
    '<div><p>12 mm<p>10 mm</div><ul><li>1 mm<li>same</ul>',
    '<div><p>1/2 in<p>3/8 in</div><ul><li>1/16 in<li>same</ul>',
    '<div data-in=metric data-coming=""><div><p data-both>12 mm<p data-both>10 mm</div><ul><li data-both>1 mm<li>same</ul></div><template><p>1/2 in</p><p>3/8 in</p><li>1/16 in</li></template>',
  ],
  [
    'drawings, tables and lists to choose from are taken whole: a template would read their insides otherwise',
    '<svg viewBox="0 0 1 1"><path d="M0 0"/></svg><table><tbody><tr><td>1 mm</table>',
    '<svg viewBox="0 0 1 1"><path d="M9 9"/></svg><table><tbody><tr><td>1/16 in</table>',
    '<div data-in=metric data-coming=""><svg data-both viewBox="0 0 1 1"><path d="M0 0"/></svg><table data-both><tbody><tr><td>1 mm</table></div><template><svg viewBox="0 0 1 1"><path d="M9 9"/></svg><table><tbody><tr><td>1/16 in</table></template>',
  ],
  [
    'where one has more in it than the other, what holds them is taken whole',
    '<div><span><input id=a><i>mm</i></span></div><p>same</p>',
    '<div><span><input id=a></span></div><p>same</p>',
    '<div data-in=metric data-coming=""><div><span data-both><input id=a><i>mm</i></span></div><p>same</p></div><template><span><input id=a></span></template>',
  ],
  [
    'ids that are made up by place are those of the first drawing',
    '<label for=«R1a»>Width</label><input id=«R1a» aria-describedby=«R1a»-help value="300 mm"/><p id=«R1a»-help>Across.</p>',
    '<label for=«R2b»>Width</label><input id=«R2b» aria-describedby=«R2b»-help value="12 in"/><p id=«R2b»-help>Across.</p>',
    '<div data-in=metric data-coming=""><label for=«R1a»>Width</label><input data-both id=«R1a» aria-describedby=«R1a»-help value="300 mm"/><p id=«R1a»-help>Across.</p></div><template><input id=«R1a» aria-describedby=«R1a»-help value="12 in"/></template>',
  ],
  [
    'two that are the same all over leave nothing to turn',
    '<p>Ratio 2 : 1</p>',
    '<p>Ratio 2 : 1</p>',
    '<div data-in=metric data-coming=""><p>Ratio 2 : 1</p></div><template></template>',
  ],
])('%s', (_, metric, inch, after) => {
  expect(cut(metric, inch)).toBe(after);
});

test('two that are not drawn alike stay whole: other ids, other parts', () => {
  for (const [metric, inch] of [
    ['<p id=«R1»>12 mm</p>', '<p>1/2 in</p>'],
    ['<p>12 mm</p>', '<p>1/2 in</p><p>more</p>'],
  ] as const)
    expect(withDifferencesOnly(page(metric, inch))).toBe(page(metric, inch));
});

test('what stands around it, and a page without such a part, stay as they are; a second run changes nothing', () => {
  const once = withDifferencesOnly(page('<b>1 mm</b>', '<b>1/16 in</b>'));
  expect(once).toMatch(/^<main><h1>Width<\/h1><div><div data-in/);
  expect(once).toMatch(/<\/template><script>turn<\/script><\/div><p>After<\/main>$/);
  expect(withDifferencesOnly(once)).toBe(once);
  expect(withDifferencesOnly('<main><template><b>x</b></template></main>')).toBe(
    '<main><template><b>x</b></template></main>',
  );
});

test('it stands before the hashes are taken', () => {
  const order = steps.map(({ does }) => does);
  expect(order.indexOf(bothUnits.does)).toBeLessThan(order.indexOf('Policy of content'));
  expect(order).toContain(bothUnits.does);
});
