import { describe, expect, test } from 'vitest';
import { figureNames } from '../../src/model/species/types.ts';
import { kerf } from './run.ts';

describe('species --json', () => {
  test('gives every wood, with every figure present and null where it is not published', async () => {
    const { code, out } = await kerf('species', '--json');
    expect(code).toBe(0);
    const woods = JSON.parse(out);
    expect(woods.length).toBeGreaterThan(150);
    for (const wood of woods) {
      expect(Object.keys(wood.figures).sort()).toEqual([...figureNames].sort());
      for (const figure of Object.values(wood.figures)) {
        if (figure !== null)
          expect(figure).toMatchObject({
            value: expect.any(Number),
            unit: expect.any(String),
            basis: expect.any(String),
          });
      }
      for (const name of [
        'id',
        'name',
        'tradeNames',
        'botanical',
        'kind',
        'origin',
        'pores',
        'tyloses',
        'decay',
        'effects',
        'food',
      ]) {
        expect(wood, wood.id).toHaveProperty(name);
      }
    }
  });

  test('gives the figures of the tables', async () => {
    const [maple] = JSON.parse((await kerf('species', 'sugar maple', '--json')).out);
    expect(maple.id).toBe('sugar-maple');
    expect(maple.figures.tangentialShrinkage).toMatchObject({ value: 9.9, unit: '%', basis: 'published' });
    expect(maple.figures.radialShrinkage).toMatchObject({ value: 4.8, unit: '%', basis: 'published' });
  });

  test.each(['black-cherry', 'Black cherry', 'black cherry'])('finds %s first', async (query) => {
    const woods = JSON.parse((await kerf('species', query, '--json')).out);
    expect(woods[0].id).toBe('black-cherry');
  });
});

describe('species', () => {
  test('prints a table to read', async () => {
    const { code, out } = await kerf('species', 'ash');
    expect(code).toBe(0);
    expect(out.split('\n')[0]).toMatch(/^id +name +botanical +radial +tangential/);
    expect(out).toMatch(/^white-ash +White ash/m);
    expect(out).not.toMatch(/undefined|NaN| $/m);
  });

  test.each([['zinnwald', /Try a shorter word, such as maple, or kerf species alone for the whole list\.\n$/]])(
    'refuses %s, which matches nothing',
    async (query, way) => {
      const { code, out, err } = await kerf('species', query);
      expect([code, out]).toEqual([2, '']);
      expect(err).toMatch(/^species: “\w+” matches none of the \d+ woods, by common, trade or botanical name\. /);
      expect(err).toMatch(way);
    },
  );

  test('finds what is misspelt', async () => {
    expect((await kerf('species', 'sugermaple')).out).toMatch(/^sugar-maple /m);
  });

  test('refuses an option that it does not have', async () => {
    const { code, err } = await kerf('species', '--csv');
    expect(code).toBe(2);
    expect(err).toMatch(/^species: --csv is not an option/);
  });
});
