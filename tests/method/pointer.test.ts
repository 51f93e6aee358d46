import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { at, pointerOf, readPointer, stepsOfPointer } from '../../src/method/pointer.ts';

// RFC 6901 (Bryan, Zyp, Nottingham: JavaScript Object Notation (JSON) Pointer, IETF, April 2013), section 5: the document and what each
// pointer evaluates to, as printed there.
const document = {
  foo: ['bar', 'baz'],
  '': 0,
  'a/b': 1,
  'c%d': 2,
  'e^f': 3,
  'g|h': 4,
  'i\\j': 5,
  'k"l': 6,
  ' ': 7,
  'm~n': 8,
};

describe('the examples of RFC 6901, section 5', () => {
  test.each([
    ['', document],
    ['/foo', ['bar', 'baz']],
    ['/foo/0', 'bar'],
    ['/', 0],
    ['/a~1b', 1],
    ['/c%d', 2],
    ['/e^f', 3],
    ['/g|h', 4],
    ['/i\\j', 5],
    ['/k"l', 6],
    ['/ ', 7],
    ['/m~0n', 8],
  ])('“%s”', (pointer, expected) => {
    const reading = readPointer(pointer);
    expect(reading.ok && at(document, reading.steps)).toEqual(expected);
    expect(reading.ok && pointerOf(reading.steps)).toBe(pointer);
  });
});

test('~01 is a tilde and a one, as section 4 warns', () => {
  expect(stepsOfPointer('/~01')).toEqual(['~1']);
});

test('any steps are written and read again', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ unit: fc.constantFrom('a', '/', '~', '0', '1', ' ', 'ü') })), (steps) => {
      expect(readPointer(pointerOf(steps))).toEqual({ ok: true, steps });
    }),
  );
});

test.each([
  ['foo', 0, /begins with a slash/],
  ['/a~', 2, /~ is written ~0/],
  ['/a~2b', 2, /~ is written ~0/],
  ['#/foo', 0, /begins with a slash/],
])('%s is none', (pointer, place, why) => {
  expect(readPointer(pointer)).toMatchObject({ ok: false, at: place, why: expect.stringMatching(why) });
});

test.each([
  '/foo/2',
  '/foo/-',
  '/foo/00',
  '/foo/01',
  '/foo/length',
  '/foo/bar',
  '/bar',
  '/toString',
  '/__proto__',
  '/foo/0/length',
])('%s leads nowhere', (pointer) => {
  expect(at(document, stepsOfPointer(pointer))).toBeUndefined();
});
