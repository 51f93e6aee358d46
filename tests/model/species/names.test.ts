import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSpecies } from '../../../src/calculators/kit/species-field.ts';
import { nameKey } from '../../../src/model/quantity/index.ts';
import { allSpecies, searchSpecies, woodsNamed } from '../../../src/model/species/index.ts';
import { botanicalSynonyms } from '../../../src/model/species/synonyms.ts';

const ids = (text: string) => woodsNamed(text).map(({ id }) => id);

describe('what a name means', () => {
  test.each([
    ['sugar-maple', ['sugar-maple']],
    ['Maple, Sugar', []],
    ['hard maple', ['sugar-maple', 'black-maple']],
    ['rock maple', ['sugar-maple', 'black-maple']],
    ['Soft Maple', ['red-maple', 'silver-maple']],
    // A mixed lot that bears the name is what a yard sells under it.
    ['red oak', ['commercial-red-oak']],
    ['hickory', ['true-hickory']],
    ['white oak', ['white-oak']],
    ['cherry', ['black-cherry']],
    ['Acer saccharophorum', ['sugar-maple']],
    ['', []],
    ['zzzz', []],
  ])('“%s” is %j', (text, expected) => {
    expect(ids(text)).toEqual(expected);
  });

  test.each([
    ['mahogany', ['true-mahogany', 'african-mahogany']],
    ['ash', ['white-ash', 'black-ash', 'green-ash']],
    ['birch', ['yellow-birch', 'paper-birch', 'sweet-birch']],
    ['rosewood', ['indian-rosewood', 'brazilian-rosewood']],
    ['cedar', ['incense-cedar', 'spanish-cedar']],
    ['oak', ['white-oak', 'northern-red-oak']],
  ])('“%s” lists its candidates, %j among them', (text, some) => {
    expect(ids(text)).toEqual(expect.arrayContaining(some));
  });

  test('every id, common name and botanical name leads to its wood or to a list that holds it', () => {
    for (const wood of allSpecies) {
      expect(ids(wood.id)).toEqual([wood.id]);
      expect(ids(wood.name)).toContain(wood.id);
      for (const name of [...wood.tradeNames, ...(wood.botanical ? [wood.botanical] : [])]) {
        const meant = ids(name);
        const lot =
          meant.length === 1 && allSpecies.some(({ id, botanical }) => id === meant[0] && botanical?.endsWith(' spp.'));
        const other = allSpecies.some(({ name: own }) => nameKey(own) === nameKey(name));
        expect(meant.includes(wood.id) || lot || other, `${name} → ${wood.id}`).toBe(true);
      }
    }
  });

  test('an older botanical name means what the accepted one does', () => {
    for (const [older, held] of Object.entries(botanicalSynonyms)) {
      if (woodsNamed(held).length > 0) expect(ids(older), older).toEqual(ids(held));
    }
    expect(Object.values(botanicalSynonyms).filter((held) => woodsNamed(held).length > 0).length).toBeGreaterThan(10);
  });
});

describe('a search forgives', () => {
  test.each([
    ['sasafras', 'sassafras'],
    ['sassafrass', 'sassafras'],
    ['blackwalnut', 'black-walnut'],
    ['purple heart', 'purpleheart'],
    ['purple-heart', 'purpleheart'],
    ['honey locust', 'honeylocust'],
    ['walnutt', 'black-walnut'],
    ['mapple', 'sugar-maple'],
    ['hard mapple', 'sugar-maple'],
    ['paduak', 'african-padauk'],
    ['sappele', 'sapele'],
    ['curly maple', 'sugar-maple'],
    ['spalted maple', 'sugar-maple'],
    ['maples', 'sugar-maple'],
    ['ashes', 'white-ash'],
    ['white ash lumber', 'white-ash'],
  ])('“%s” finds %s', (text, id) => {
    const found = searchSpecies(text).map((wood) => wood.id);
    expect(found.slice(0, 3)).toContain(id);
  });

  test('and never throws or invents', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 120 }), (text) => {
        for (const wood of searchSpecies(text)) expect(allSpecies).toContain(wood);
        for (const wood of woodsNamed(text)) expect(allSpecies).toContain(wood);
      }),
    );
  });
});

describe('a refusal', () => {
  const refused = (text: string) => {
    const read = readSpecies(text);
    return read.ok ? 'read' : `${read.problem}. ${read.wayOut}`;
  };
  test.each([
    [
      'hard maple',
      /“hard maple” is a name of 2 woods, which differ: Sugar maple, Black maple\. Say which, such as sugar-maple or black-maple/,
    ],
    ['mahogany', /is a name of \d+ woods.*True mahogany/],
    ['lime wood', /is not a wood in the tables/],
    ['suger maple', /Did you mean sugar-maple/],
  ])('of “%s” names what may be meant', (text, words) => {
    expect(refused(text)).toMatch(words);
  });
  test('suggests by meaning before spelling: never koa for oak, nor apple for maple', () => {
    for (const [text, wrong] of [
      ['oak', 'koa'],
      ['maple', 'apple'],
      ['pine', 'ipe'],
      ['white birch', 'white-fir'],
      ['red cedar', 'red-alder'],
      ['hard maple', 'red-maple'],
    ] as const)
      expect(refused(text)).not.toContain(wrong);
  });
});
