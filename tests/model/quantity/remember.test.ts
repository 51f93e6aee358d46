import { expect, test } from 'vitest';
import { remembering } from '../../../src/model/quantity/remember.ts';

test('a text is asked once, and again when more than so many were remembered', () => {
  const asked: string[] = [];
  const lengthOf = remembering(2, (text) => {
    asked.push(text);
    return text === 'none' ? undefined : text.length;
  });
  expect([lengthOf('20 mm'), lengthOf('20 mm'), lengthOf('none'), lengthOf('none')]).toEqual([
    5,
    5,
    undefined,
    undefined,
  ]);
  expect(asked).toEqual(['20 mm', 'none']);
  expect([lengthOf('8 in'), lengthOf('20 mm')]).toEqual([4, 5]);
  expect(asked).toEqual(['20 mm', 'none', '8 in', '20 mm']);
});

test('a text too long for a name, a quantity or a step is never kept', () => {
  let asked = 0;
  const lengthOf = remembering(2, (text) => {
    asked += 1;
    return text.length;
  });
  const long = 'x'.repeat(5001);
  expect([lengthOf(long), lengthOf(long), asked]).toEqual([5001, 5001, 2]);
});
