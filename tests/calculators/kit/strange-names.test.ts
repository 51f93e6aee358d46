import { describe, expect, test } from 'vitest';
import { renamed, strangeNames, strangeWords } from '../../../src/calculators/kit/strange-names.ts';

const known = ['length', 'width', 'thickness'];

describe('a name in an address that nothing is called', () => {
  test.each([
    ['?lenght=400+mm', [{ name: 'lenght', meant: 'length' }]],
    ['?Length=400+mm', [{ name: 'Length', meant: 'length' }]],
    ['?length=400+mm&width=3', []],
    // The right one stands there besides: to take the other for it would write over it.
    ['?lenght=400+mm&length=300', [{ name: 'lenght' }]],
    ['?colour=green', [{ name: 'colour' }]],
    ['', []],
    ['?', []],
    // Another calculator's on the same page.
    ['?dose.lenght=4', []],
  ] as const)('%s', (search, strange) => {
    expect(strangeNames(search, known)).toEqual(strange);
  });

  test('behind a prefix only the names of that calculator are looked at', () => {
    const search = '?a.lenght=4&b.lenght=5&lenght=6&a.width=3';
    expect(strangeNames(search, known, { prefix: 'a' })).toEqual([{ name: 'lenght', meant: 'length' }]);
  });

  test('names of other uses are left alone', () => {
    expect(strangeNames('?draft=x&widht=3', known, { others: ['draft'] })).toEqual([{ name: 'widht', meant: 'width' }]);
  });

  test('an address full of others is told of in a few lines, each short', () => {
    const search = `?${Array.from({ length: 500 }, (_, at) => `${'x'.repeat(300)}${at}=1`).join('&')}`;
    const told = strangeNames(search, known);
    expect(told.length).toBeLessThanOrEqual(4);
    for (const each of told) expect(strangeWords(each).length).toBeLessThan(160);
  });

  test('one is taken for another with its value, in its place', () => {
    expect(renamed('?width=3+mm&lenght=400+mm&q=a%26b', 'lenght', 'length')).toBe('?width=3+mm&length=400+mm&q=a%26b');
  });
});
