import { expect, test, vi } from 'vitest';
import { remembered } from '../../src/method/remembered.ts';

test('a text is asked once, until as many others have been asked', () => {
  const asked = vi.fn((text: string) => [text]);
  const of = remembered(asked, 2);
  expect([of('a'), of('b'), of('a')]).toEqual([['a'], ['b'], ['a']]);
  expect(asked).toHaveBeenCalledTimes(2);
  of('c');
  of('a');
  expect(asked).toHaveBeenCalledTimes(4);
});
