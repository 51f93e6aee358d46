import { describe, expect, test } from 'vitest';
import { answer } from '../../../src/calculators/kit/answer.ts';
import { widthChangeCalculator } from '../../../src/calculators/width-change/calculator.ts';
import { chooseEquation, movementProperties, strains } from '../../../src/model/movement/index.ts';
import { searchSpecies } from '../../../src/model/species/index.ts';
import { dossier, dossiers } from './world.ts';

describe('European oak', () => {
  test('has the shrinkage of the Croatian journal, green to ovendry', () => {
    // Šumarski list 9-10/1957, English summary: pedunculate 4.87, 9.39, 14.20 %; sessile 4.78, 9.28, 13.86 %.
    expect(dossier('pedunculate-oak').figures).toMatchObject({
      radialShrinkage: { value: 4.87, basis: 'published', citation: { source: 'slavonian-oak-1957' } },
      tangentialShrinkage: { value: 9.39 },
      volumetricShrinkage: { value: 14.2 },
    });
    expect(dossier('sessile-oak').figures).toMatchObject({
      radialShrinkage: { value: 4.78 },
      tangentialShrinkage: { value: 9.28 },
      volumetricShrinkage: { value: 13.86 },
    });
  });

  test('moves: 100 mm of flatsawn pedunculate oak from 12 to 8 % by Eq. 13-3', () => {
    const outcome = movementProperties(dossier('pedunculate-oak'));
    if (!outcome.ok) throw new Error('no movement');
    const { properties } = outcome.value;
    expect(chooseEquation([12, 8], properties)).toEqual({ ok: true, value: '13-3' });
    // 0.04 of moisture over 30 times 100/9.39 less what is dry already: (8 − 12) / (30 × 100 / 9.39 − 30 + 12).
    const change = strains(12, 8, properties, '13-3').tangential * 100;
    expect(change).toBeCloseTo((100 * (8 - 12)) / ((30 * 100) / 9.39 - 30 + 12), 9);
  });
});

describe('shrinkage in volume alone says nothing of a width', () => {
  test.each(['european-beech', 'sugi', 'river-red-gum', 'norway-spruce', 'silver-fir'])('%s', (id) => {
    const wood = dossier(id);
    expect(wood.figures.volumetricShrinkage?.value).toBeGreaterThan(5);
    expect(wood.figures.radialShrinkage).toBeNull();
    expect(wood.figures.tangentialShrinkage).toBeNull();
    const outcome = movementProperties(wood);
    expect(outcome).toMatchObject({ ok: false });
    expect(outcome.ok ? '' : outcome.errors[0]?.message).toContain('radial and tangential shrinkage');
  });

  test('olive has tangential shrinkage alone, which is not enough', () => {
    expect(dossier('olive').figures.tangentialShrinkage?.value).toBe(5.6);
    const outcome = movementProperties(dossier('olive'));
    expect(outcome.ok ? '' : outcome.errors[0]?.message).toContain('The radial shrinkage of Olive');
  });
});

describe('unit shrinkage', () => {
  // Queensland Government pages, % for 1 % of moisture content: radial, tangential.
  const printed = [
    ['queensland-maple', 0.15, 0.25],
    ['mountain-ash', 0.23, 0.36],
    ['alpine-ash', 0.22, 0.35],
    ['messmate', 0.23, 0.36],
    ['brown-salwood', 0.14, 0.36],
  ] as const;

  test.each(printed)('of %s is its coefficient: %d and %d', (id, radial, tangential) => {
    const wood = dossier(id);
    expect(wood.figures.radialCoefficient).toMatchObject({
      value: expect.closeTo(radial / 100, 9),
      basis: 'published',
      citation: { source: 'queensland-timber' },
    });
    expect(wood.figures.tangentialCoefficient?.value).toBeCloseTo(tangential / 100, 9);
    // Its shrinkage from green to 12 % is never shrinkage to ovendry.
    expect(wood.figures.radialShrinkage).toBeNull();
    expect(wood.figures.tangentialShrinkage).toBeNull();
    const outcome = movementProperties(wood);
    if (!outcome.ok) throw new Error(`${id} has no movement`);
    const { properties, evidence, basis } = outcome.value;
    expect(strains(12, 8, properties, '13-2').tangential).toBeCloseTo((-4 * tangential) / 100, 9);
    expect(chooseEquation([12, 8], properties)).toEqual({ ok: true, value: '13-2' });
    // A coefficient holds over a small range of moisture: beyond it there is no answer.
    expect(chooseEquation([18, 8], properties).ok).toBe(false);
    expect(basis['13-2']).toBe('derived');
    expect(evidence['13-2'].map(({ text }) => text).join(' ')).toMatch(/unit shrinkage.*12 to 5 %/);
  });

  test('answers a change of width, with its own note, and refuses one outside the range of a coefficient', () => {
    const board = { species: 'queensland-maple', width: '200 mm', cut: 'flatsawn', moistureFrom: '12 %' };
    const near = answer(widthChangeCalculator, { ...board, moistureTo: '8 %' });
    if (!near.ok) throw new Error(JSON.stringify(near.errors));
    const { figures, evidence } = near.value.result;
    // 200 mm × 0.25 % × 4.
    expect(Math.abs(figures.change?.value ?? 0)).toBeCloseTo(2, 6);
    const said = evidence.map(({ text }) => text).join(' ');
    expect(said).toContain('unit shrinkage in place of a coefficient of Table 13-5');
    expect(said).toContain('the change in service for 1 % of moisture content');
    const far = answer(widthChangeCalculator, { ...board, moistureTo: '18 %' });
    expect(far.ok ? '' : far.errors[0]?.message).toContain('only coefficients are published');
  });

  test('of Acacia aulacocarpa is not given to Acacia mangium', () => {
    const mangium = dossier('mangium');
    expect(mangium.figures.radialCoefficient).toBeNull();
    expect(mangium.others.some(({ figure }) => /shrinkage \(green to 12/i.test(figure.label))).toBe(false);
    expect(movementProperties(mangium).ok).toBe(false);
  });
});

describe('thin rows', () => {
  test('one tree or two never stand for a wood, and say that they are too few', () => {
    for (const wood of dossiers) {
      for (const figure of Object.values(wood.figures)) {
        expect(figure?.note ?? '', wood.id).not.toMatch(/^(One tree\.|Mean of 2 trees)/);
      }
    }
    for (const id of ['european-ash', 'hornbeam', 'european-walnut', 'field-elm', 'scots-pine', 'pedunculate-oak']) {
      const thin = dossier(id).others.filter(({ figure }) => figure.citation?.source === 'cirad-krvf0e');
      expect(thin.length, id).toBeGreaterThan(0);
      for (const { name, figure } of thin) {
        expect(name).toBe('other');
        expect(figure.note).toContain('Too few to stand for the wood');
      }
    }
  });

  test('planted wood never stands where wood from home was measured', () => {
    // Database of 2009: Scots pine 0.422 in Europe, 0.370 to 0.411 in China; pedunculate oak 0.560 in Europe.
    expect(dossier('scots-pine').figures.specificGravityGreen?.value).toBe(0.422);
    expect(dossier('pedunculate-oak').figures.specificGravityGreen?.value).toBe(0.56);
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: a specific gravity that happens to lie near ln 2
    expect(dossier('hornbeam').figures.specificGravityGreen).toMatchObject({ value: 0.693, low: 0.68, high: 0.706 });
    expect(dossier('sweet-chestnut').figures.specificGravityGreen?.note).toContain(
      'not where the tree grows by nature',
    );
  });
});

describe('hardness', () => {
  test('by Brinell or Monnin is never side hardness, so that nothing is said of a knife', () => {
    for (const id of ['silver-birch', 'downy-birch']) {
      const wood = dossier(id);
      expect(wood.figures.sideHardness12).toBeNull();
      expect(wood.food.level).toBe('not-enough-known');
      const brinell = wood.others.filter(({ figure }) => figure.label.startsWith('Brinell'));
      expect(brinell.length).toBeGreaterThan(0);
      for (const { figure } of brinell) expect(figure.unit).toBe('MPa');
    }
    const monnin = dossier('black-locust').others.find(({ figure }) => figure.label.startsWith('Monnin'));
    expect(monnin?.figure.value).toBe(5.22);
  });
});

test('yew is kept from food, and no new wood of unknown hardness is called usual', () => {
  expect(dossier('european-yew').food.level).toBe('better-not');
  for (const wood of dossiers.filter(({ origin }) => origin === 'Europe')) {
    expect(['not-enough-known', 'better-not'], wood.id).toContain(wood.food.level);
  }
});

test.each([
  ['European oak', ['pedunculate-oak', 'sessile-oak']],
  ['Tasmanian oak', ['mountain-ash', 'alpine-ash', 'messmate']],
  ['Fagus sylvatica', ['european-beech']],
  ['linden', ['small-leaved-lime', 'large-leaved-lime']],
  ['Japanese cedar', ['sugi']],
])('“%s” finds %j', (text, ids) => {
  const found = searchSpecies(text).map(({ id }) => id);
  for (const id of ids) expect(found).toContain(id);
});
