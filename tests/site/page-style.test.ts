import { expect, test } from 'vitest';
import { pageStyle } from '../../src/site/sheets/use-page-style.ts';

test('the day of the printing has a margin of its own, where no long name breaks it', () => {
  const style = pageStyle('letter', 'A class of twelve to one template over six Tuesday evenings', '2026-11-30');
  const box = (name: string) => style.match(new RegExp(`@${name} \\{([^}]*)\\}`))?.[1] ?? '';
  const read = (text: string) =>
    text.replace(/\\([\da-f]+) /g, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)));
  expect(style).toContain('size: letter');
  expect(read(box('top-right'))).toContain('"printed 2026-11-30"');
  expect(box('top-right')).toContain('white-space: nowrap');
  expect(read(box('bottom-left'))).toContain('"A class of twelve to one template over six Tuesday evenings"');
  expect(read(box('bottom-left'))).not.toContain('2026');
  expect(box('bottom-right')).toContain('white-space: nowrap');
});

test('paper that bears its day itself, as a quote does, has none in the margin', () => {
  expect(pageStyle('a4', 'Quote')).not.toContain('@top-right');
});
