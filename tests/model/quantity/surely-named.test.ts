import { describe, expect, test } from 'vitest';
import { findNamed, surelyNamed } from '../../../src/model/quantity/index.ts';
import { findWoods, namesOf } from '../../../src/model/species/find-woods.ts';
import { allSpecies } from '../../../src/model/species/index.ts';

const sure = (text: string) => surelyNamed(findWoods(allSpecies, text), text, namesOf)?.id;

describe('what a text surely names', () => {
  test.each([
    ['black walnut', 'black-walnut'],
    ['Juglans nigra', 'black-walnut'],
    ['honeyloc', 'honeylocust'],
  ])('%s is %s', (text, id) => {
    expect(sure(text)).toBe(id);
  });

  // Red maple and silver maple are both sold as soft maple, and one of them is better not under a knife.
  test.each(['soft maple', 'maple', 'sasafras', ''])('“%s” is nobody’s until the reader picks', (text) => {
    expect(sure(text)).toBeUndefined();
  });

  test('a place of another spelling is not taken for the one that was typed', () => {
    const places = [{ name: 'Warsaw (Okecie), Poland', others: ['warsaw-pl'] }];
    const found = findNamed(places, 'wausau', (place) => place);
    expect(surelyNamed(found, 'wausau', (place) => place)).toBeUndefined();
  });
});
