import { expect, test } from 'vitest';
import { addressWords, runningStyle } from '../../src/site/chrome/running-title.ts';

test('an address that a margin holds stands there whole, a longer one without its entries', () => {
  expect(addressWords('boards.example', '/how-to/care/', '')).toBe('boards.example/how-to/care');
  expect(addressWords('boards.example', '/', '')).toBe('boards.example/');
  expect(addressWords('boards.example', '/calculators/x', '?width=250+mm')).toBe(
    'boards.example/calculators/x?width=250+mm',
  );
  expect(addressWords('boards.example', '/calculators/x', `?shapes=${'1'.repeat(120)}`)).toBe(
    'boards.example/calculators/x',
  );
});

test('a title is text in the style, whatever stands in it', () => {
  const style = runningStyle({ title: '"; } body { display: none } /*', address: 'a', date: 'b' });
  expect(style).not.toContain('body {');
  expect(style).not.toContain('/*');
  expect(style.match(/"/g)?.length).toBe(6);
});
