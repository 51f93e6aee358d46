import { existsSync, readFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../../../src/store/index.ts';

const view = join(root, 'src/calculators/view');

/** The styles that a module imports, itself or by what it imports. */
function stylesOf(file: string, seen = new Set<string>()): Set<string> {
  const styles = new Set<string>();
  if (seen.has(file)) return styles;
  seen.add(file);
  for (const [, name = ''] of readFileSync(file, 'utf8').matchAll(/(?:from|import) '(\.[^']+)'/g)) {
    const path = resolve(dirname(file), name);
    if (name.endsWith('.css')) styles.add(basename(name));
    else if (/\.tsx?$/.test(name) && existsSync(path)) for (const each of stylesOf(path, seen)) styles.add(each);
  }
  return styles;
}

// Drawn into its page without its code, a calculator would stand there without its style: words that are only heard would be seen.
test('a calculator as sent wears what its live form wears', () => {
  const imports = readFileSync(join(view, 'DrawnCalculator.tsx'), 'utf8').matchAll(/import '\.\/(.+\.css)'/g);
  const sent = new Set([...imports].map(([, name]) => name));
  const without = [...stylesOf(join(view, 'CalculatorView.tsx'))].filter((name) => !sent.has(name));
  // Documents come with the few calculators that have some, paper with the code, and the line about units with every page.
  expect(without.toSorted()).toEqual(['document.module.css', 'paper.module.css', 'units.module.css']);
});
