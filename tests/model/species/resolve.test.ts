import { describe, expect, test } from 'vitest';
import { coefficientFromShrinkage } from '../../../src/model/species/equations.ts';
import { figureKinds } from '../../../src/model/species/labels.ts';
import { type FigureName, figureNames } from '../../../src/model/species/types.ts';
import { dossier, dossiers } from './world.ts';

/** Rows looked up by eye in the table files: id, figure, value, basis, source. */
const spot: readonly [string, FigureName, number, string, string][] = [
  ['sugar-maple', 'radialShrinkage', 4.8, 'published', 'fpl-gtr-282'],
  ['sugar-maple', 'tangentialCoefficient', 0.00353, 'published', 'fpl-gtr-190'],
  ['sugar-maple', 'sideHardness12', 6400, 'published', 'fpl-gtr-282'],
  ['sugar-maple', 'density12', 705.6, 'derived', 'fpl-gtr-282'],
  ['black-cherry', 'tangentialShrinkage', 7.1, 'published', 'fpl-gtr-190'],
  ['black-cherry', 'specificGravity12', 0.5, 'published', 'fpl-gtr-282'],
  ['overcup-oak', 'tangentialCoefficient', 0.00462, 'published', 'fpl-gtr-190'],
  ['overcup-oak', 'sideHardness12', 5293.38, 'published', 'fpl-gtr-282'],
  ['white-fir', 'radialShrinkage', 3.3, 'published', 'fpl-gtr-190'],
  ['white-fir', 'sideHardness12', 2100, 'published', 'fpl-gtr-282'],
  ['eastern-white-pine', 'radialShrinkage', 2.1, 'published', 'fpl-gtr-282'],
  ['eastern-white-pine', 'volumetricShrinkage', 8.2, 'published', 'fpl-gtr-282'],
  ['sapele', 'tangentialShrinkage', 7.4, 'published', 'fpl-fact-sheets'],
  ['sapele', 'densityAirDry', 674, 'published', 'fpl-gtr-190'],
  ['black-walnut', 'sideHardness12', 4492.7, 'published', 'fpl-gtr-282'],
  ['osage-orange', 'sideHardnessGreen', 9074.37, 'published', 'fpl-gtr-83'],
  ['teak', 'sideHardness12', 4448.22, 'published', 'fpl-gtr-190'],
  ['teak', 'density12', 671, 'derived', 'cirad-krvf0e'],
  ['utile', 'sideHardness12', 5604.76, 'published', 'fpl-fact-sheets'],
  ['jack-pine', 'sideHardness12', 2500, 'published', 'fpl-gtr-282'],
  ['old-growth-redwood', 'sideHardness12', 2135.15, 'published', 'fpl-gtr-190'],
  ['purpleheart', 'radialShrinkage', 3.2, 'published', 'fpl-fact-sheets'],
];

test.each(spot)('%s: %s is %d, %s, %s', (id, name, value, basis, source) => {
  const figure = dossier(id).figures[name];
  expect(figure?.value).toBeCloseTo(value, 5);
  expect(figure?.basis).toBe(basis);
  expect(figure?.citation?.source).toBe(source);
});

describe('figures', () => {
  const all = dossiers.flatMap((wood) =>
    figureNames.map((name) => ({ id: `${wood.id} ${name}`, name, figure: wood.figures[name] })),
  );

  test('every name is there, null where nothing is published', () => {
    for (const wood of dossiers) expect(Object.keys(wood.figures)).toEqual([...figureNames]);
    expect(all.some(({ figure }) => figure === null)).toBe(true);
  });

  test('each has a finite value, its own label and unit, and a citation or a note', () => {
    const poor = all.filter(
      ({ name, figure }) =>
        figure !== null &&
        (!Number.isFinite(figure.value) ||
          figure.value <= 0 ||
          figure.label !== figureKinds[name].label ||
          figure.unit !== figureKinds[name].unit ||
          (figure.citation === undefined && figure.note === undefined)),
    );
    expect(poor.map(({ id }) => id)).toEqual([]);
  });

  test('a band holds the value and says what it means', () => {
    const banded = all.flatMap(({ id, figure }) => (figure?.low === undefined ? [] : [{ id, figure }]));
    expect(banded.length).toBeGreaterThan(20);
    for (const { id, figure } of banded) {
      expect(figure.low, id).toBeLessThanOrEqual(figure.value);
      expect(figure.high, id).toBeGreaterThanOrEqual(figure.value);
      expect(figure.band?.length, id).toBeGreaterThan(10);
    }
  });

  test('a figure is from memory if and only if what it rests on was not read', () => {
    const wrong = all.filter(
      ({ figure }) => figure !== null && (figure.basis === 'memory') !== (figure.citation?.seen === 'memory'),
    );
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });

  test('memory never stands where a read figure of the wood itself was passed over', () => {
    const beaten = dossiers.flatMap((wood) =>
      wood.others
        .filter(
          ({ name, figure }) =>
            name !== 'other' &&
            figure.basis === 'published' &&
            // A single old lot is shown beside, and never outranks the handbook merely because it was read.
            figure.citation?.source !== 'record-1914' &&
            !figure.label.endsWith('(of the group)') &&
            wood.figures[name]?.basis === 'memory',
        )
        .map(({ name }) => `${wood.id} ${name}`),
    );
    expect(beaten).toEqual([]);
  });

  test('a value of a group never stands for one wood', () => {
    for (const wood of dossiers) {
      for (const name of figureNames) expect(wood.figures[name]?.label ?? '').not.toContain('group');
    }
  });
});

describe('shrinkage start', () => {
  test('is 22 % for the five woods named, 30 % for all others', () => {
    const early = dossiers.filter((wood) => wood.figures.shrinkageStart?.value === 22).map((wood) => wood.id);
    expect(early.sort()).toEqual([
      'northern-white-cedar',
      'old-growth-redwood',
      'teak',
      'western-redcedar',
      'young-growth-redwood',
    ]);
    expect(new Set(dossiers.map((wood) => wood.figures.shrinkageStart?.value))).toEqual(new Set([22, 30]));
  });
});

describe('coefficients', () => {
  const suspicious = ['green-ash', 'sweet-birch', 'cedar-elm', 'black-maple', 'black-oak'];

  test.each(suspicious)('of %s are derived, and the printed pair is among the others as a group’s', (id) => {
    const wood = dossier(id);
    const { radialCoefficient, tangentialCoefficient, radialShrinkage, tangentialShrinkage } = wood.figures;
    expect(radialCoefficient?.value).toBeCloseTo(coefficientFromShrinkage(radialShrinkage?.value ?? 0, 30), 8);
    expect(tangentialCoefficient?.value).toBeCloseTo(coefficientFromShrinkage(tangentialShrinkage?.value ?? 0, 30), 8);
    expect(radialCoefficient?.basis).toBe(radialShrinkage?.basis === 'memory' ? 'memory' : 'derived');
    const passed = wood.others.filter(({ name }) => name === 'radialCoefficient' || name === 'tangentialCoefficient');
    expect(
      passed.filter(({ figure }) => figure.basis === 'published' && figure.label.endsWith('(of the group)')).length,
    ).toBe(2);
  });

  test('of green ash: 0.00158 and 0.00248, not the 0.00169 and 0.00274 of white ash', () => {
    const { radialCoefficient, tangentialCoefficient } = dossier('green-ash').figures;
    expect(radialCoefficient?.value).toBeCloseTo(0.00158, 5);
    expect(tangentialCoefficient?.value).toBeCloseTo(0.00248, 5);
  });

  test('are as printed, and marked so, where a row from memory follows from a shrinkage that was read', () => {
    expect(dossier('noble-fir').figures.tangentialCoefficient).toMatchObject({ value: 0.00293, basis: 'memory' });
  });

  test('are derived where a row from memory does not follow from a shrinkage that was read', () => {
    const mahogany = dossier('african-mahogany');
    expect(mahogany.figures.tangentialCoefficient?.basis).toBe('derived');
    expect(mahogany.others).toContainEqual(
      expect.objectContaining({
        name: 'tangentialCoefficient',
        figure: expect.objectContaining({ value: 0.00201, basis: 'memory' }),
      }),
    );
  });

  test('come in pairs from one place', () => {
    const mixed = dossiers.filter(({ figures: { radialCoefficient: radial, tangentialCoefficient: tangential } }) => {
      if (!radial || !tangential) return false;
      return radial.note?.startsWith('Derived') !== tangential.note?.startsWith('Derived');
    });
    expect(mixed.map((wood) => wood.id)).toEqual([]);
  });

  test('lie between those of the stablest and the liveliest wood of Table 13-5', () => {
    for (const wood of dossiers) {
      for (const name of ['radialCoefficient', 'tangentialCoefficient'] as const) {
        const value = wood.figures[name]?.value ?? 0.002;
        expect(value, wood.id).toBeGreaterThan(0.0006);
        expect(value, wood.id).toBeLessThan(0.0055);
      }
    }
  });
});

describe('other documents', () => {
  test('shrinkage to 12 % or with no end point is never taken as shrinkage to ovendry', () => {
    for (const id of ['dibetou', 'east-african-olive', 'tualang']) {
      const wood = dossier(id);
      expect(wood.figures.radialShrinkage, id).toBeNull();
      expect(wood.others.filter(({ name }) => name === 'other').length, id).toBeGreaterThan(1);
    }
  });

  test('several shipments of one wood give their mean, with the lowest and highest', () => {
    const { radialShrinkage } = dossier('shagbark-hickory').figures;
    expect(radialShrinkage).toMatchObject({ basis: 'derived', low: 6.5, high: 7.9 });
    expect(radialShrinkage?.value).toBeCloseTo((6.5 + 7.9 + 6.5) / 3, 4);
  });

  test('a range shows its middle and its ends, converted together', () => {
    // The sheet of pilon: 46 to 53 lb/ft³.
    const { densityAirDry } = dossier('pilon').figures;
    expect(densityAirDry?.low).toBeCloseTo(46 * 16.018463, 0);
    expect(densityAirDry?.high).toBeCloseTo(53 * 16.018463, 0);
    expect(densityAirDry?.value).toBeCloseTo(49.5 * 16.018463, 0);
  });

  test('pounds keep the printed number in the note', () => {
    expect(dossier('teak').figures.sideHardness12?.note).toBe('Given as 1000 lbf.');
  });
});

describe('statements', () => {
  test.each([
    ['sugar-maple', 'diffuse-porous', 'closed'],
    ['white-oak', 'ring-porous', 'plugged'],
    ['northern-red-oak', 'ring-porous', 'open'],
    // Live oaks are another group by their anatomy: what is said of the white oaks is not said of them.
    ['live-oak', 'semi-ring-porous', null],
    ['common-persimmon', 'semi-ring-porous', null],
    ['chestnut-oak', 'ring-porous', 'open'],
    ['black-walnut', 'semi-ring-porous', 'open'],
    ['white-ash', 'ring-porous', 'open'],
    ['true-mahogany', 'diffuse-porous', 'open'],
    ['eastern-white-pine', 'none', 'none'],
    ['kapur', null, null],
  ])('pores of %s: %s, %s', (id, arrangement, openness) => {
    expect(dossier(id).pores).toMatchObject({ arrangement, openness });
  });

  test('a statement of a group says so', () => {
    expect(dossier('red-maple').decay).toMatchObject({
      text: 'Of the group Maples: slightly or nonresistant',
      group: 'slightly or nonresistant',
      basis: 'published',
    });
  });

  test('a read statement on decay comes before a remembered group, which is kept in the remarks', () => {
    const wood = dossier('afrormosia');
    expect(wood.decay).toMatchObject({ text: 'very durable', basis: 'published', group: null });
    expect(wood.remarks.some((remark) => remark.includes('resistant or very resistant (from memory)'))).toBe(true);
  });

  test('a sheet that says nothing of dust gives no effect, and the silence is remarked on', () => {
    const wood = dossier('zebrawood');
    expect(wood.effects).toEqual([]);
    expect(wood.remarks.some((remark) => remark.includes('not a statement that the wood is harmless'))).toBe(true);
  });

  test('each has a basis, and a citation unless it is common practice or memory', () => {
    for (const wood of dossiers) {
      const all = [...wood.pores.statements, wood.tyloses, wood.decay, ...wood.effects, wood.taste].filter(
        (each) => each !== null,
      );
      for (const each of all) {
        expect(each.text.length, wood.id).toBeGreaterThan(3);
        if (each.basis === 'published') expect(each.citation, `${wood.id}: ${each.text}`).toBeDefined();
      }
    }
  });
});
