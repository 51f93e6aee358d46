import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flattenPlanCalculator } from '../../src/calculators/flatten-plan/calculator.ts';
import { explicitText } from '../../src/calculators/kit/address.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import { fieldMeta } from '../../src/calculators/kit/fields.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

const board = { length: '900 mm', width: '250 mm', thickness: '30 mm', target: '22 mm', depthOfCut: '1 mm' };
const run = (raw: Record<string, unknown>) => answer(flattenPlanCalculator, { ...board, ...raw });
const calc = (raw: Record<string, unknown>): Result => {
  const outcome = run(raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const value = (result: Result, name: string) => result.figures[name]?.value ?? Number.NaN;

describe('a cupped board of 30 mm, 3 mm high at its edges', () => {
  const cupped = '3, 0, 3; 3, 0, 3';
  test('leaves 27 mm; both faces are cut alike down to 22', () => {
    const result = calc({ grid: cupped });
    expect(value(result, 'thicknessLeft')).toBeCloseTo(27, 6);
    expect(value(result, 'deepest')).toBeCloseTo(5.5, 6);
    expect(result.figures.passes).toMatchObject({ value: 6, unit: '{count}' });
    expect(value(result, 'highestShim')).toBeCloseTo(3, 6);
  });
  test('whichever way it is written', () => {
    const left = value(calc({ grid: cupped }), 'thicknessLeft');
    for (const raw of [
      { grid: '3 0 3\n3 0 3' },
      {
        grid: [
          [3, 0, 3],
          [3, '0 mm', 3],
        ],
      },
      { measured: 'gaps', grid: '0, 3, 0; 0, 3, 0' },
      { places: '0, 0, 3; 0, 125, 0; 0, 250, 3; 900, 0, 3; 900, 125, 0; 900, 250, 3' },
      { places: '0 0 3\n0 125 0\n0 250 3\n900 0 3\n900 125 0\n900 250 3' },
      { places: 'mm: 0 0 3; 0 125 0; 0 250 3; 900 0 3; 900 125 0; 900, 250, 3' },
      {
        places: [
          { x: 0, y: 0, height: 3 },
          { x: 0, y: 125, height: 0 },
          { x: 0, y: 250, height: 3 },
          { x: '90 cm', y: 0, height: 3 },
          { x: 900, y: 125, height: 0 },
          { x: 900, y: 250, height: 3 },
        ],
      },
    ]) {
      expect(value(calc(raw), 'thicknessLeft')).toBeCloseTo(left, 6);
    }
  });
  test('a target that is missed is warned of, with what is lacking', () => {
    const result = calc({ grid: cupped, target: '29 mm' });
    expect(value(result, 'shortfall')).toBeCloseTo(2, 6);
    expect(result.cautions.map((caution) => caution.id)).toContain('target-missed');
  });
});

test('inches in front of a list, and a height below the reference', () => {
  const result = calc({ grid: 'in: 1/8, 0, 1/8; 1/8, 0, 1/8' });
  expect(value(result, 'thicknessLeft')).toBeCloseTo(30 - 25.4 / 8, 6);
  expect(value(calc({ grid: '1, −2, 1; 1, -2, 1' }), 'thicknessLeft')).toBeCloseTo(27, 6);
});

const ids = (result: Result) => result.cautions.map((caution) => caution.id);

describe('the way it is flattened', () => {
  const flat = { grid: '0, 1; 1, 0' };
  test('a router on rails meets no jointer and no planer', () => {
    const result = calc({ ...flat, way: 'router' });
    expect(ids(result)).toEqual(expect.arrayContaining(['router-rails', 'router-setup', 'wood-dust', 'noise']));
    expect(ids(result).join(' ')).not.toMatch(/jointer|planer/);
    expect(JSON.stringify(result)).not.toMatch(/jointer/i);
    expect(value(calc({ ...flat, way: 'router', depthOfCut: '' }), 'passes')).toBe(3);
  });
  test('left open, nothing is asked of machines that nobody named; a size given is minded', () => {
    expect(ids(calc(flat))).not.toContain('wider-than-jointer');
    expect(ids(calc({ ...flat, jointerWidth: '150 mm' }))).toContain('wider-than-jointer');
    expect(ids(calc({ ...flat, jointerWidth: '300 mm' }))).not.toContain('wider-than-jointer');
  });
  test('jointer and planer: settings that stand in are said, and one of the reader’s own replaces one', () => {
    const plain = calc({ ...flat, way: 'machines' });
    expect(plain.cautions[0]).toMatchObject({ id: 'wider-than-jointer', level: 'danger', own: true });
    expect(plain.verdict?.level).toBe('care');
    const said = (result: Result) => result.evidence.map((note) => inReaderUnits(note.text, defaultUnits)).join(' ');
    expect(said(plain)).toMatch(/Width of the jointer: 152 mm, since none was given/);
    expect(said(calc({ ...flat, way: 'machines', jointerWidth: '300 mm' }))).not.toMatch(/Width of the jointer/);
  });
  test('the guards of 29 CFR 1910.213 come with every plan that uses the machines', () => {
    const cited = calc({ ...flat, way: 'machines' }).cautions.filter(
      (caution) => caution.citation?.source === 'cfr-29-1910-213',
    );
    expect(cited.map((caution) => caution.citation?.locator)).toEqual(['(j)', '(n)(4)', '(a)(15)', '(a) to (r)']);
    expect(ids(calc({ ...flat, way: 'sled' }))).toEqual(expect.arrayContaining(['planer-sled', 'planer-guards']));
  });
});

describe('the verdict', () => {
  const said = (raw: Record<string, unknown>) => {
    const { verdict } = calc(raw);
    return [verdict?.level, inReaderUnits(verdict?.text ?? '', defaultUnits)] as const;
  };
  test('says what is left and whether it is enough', () => {
    const [level, text] = said({ grid: '3, 0, 3; 3, 0, 3', way: 'router' });
    expect(level).toBe('good');
    expect(text).toBe('Two flat faces leave 27 mm: enough for 22 mm. 6 passes on the measured face, 6 on the other.');
  });
  test('and where it is not, stops and says the way out', () => {
    const [level, text] = said({ grid: '3, 0, 3; 3, 0, 3', target: '29 mm' });
    expect(level).toBe('stop');
    expect(text).toMatch(/^Two flat faces leave 27 mm, 2 mm too little for 29 mm: make the piece thinner/);
  });
});

test('no name of a place is cut in the drawing: each carries its shim', () => {
  const [drawing] = calc({ grid: '3, 0, 3; 3, 0, 3' }).drawings ?? [];
  const labels = drawing?.shapes.flatMap((shape) =>
    shape.role === 'place' ? [inReaderUnits(shape.label ?? '', defaultUnits)] : [],
  );
  expect(labels).toEqual(['1: 3 mm', '2: 0', '3: 3 mm', '4: 3 mm', '5: 0', '6: 3 mm']);
});

test('the thickness left never falls when the board is thicker, and is never more than it', () => {
  const heights = fc.array(fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 3, maxLength: 3 }), {
    minLength: 2,
    maxLength: 4,
  });
  fc.assert(
    fc.property(heights, fc.integer({ min: 20, max: 60 }), (rows, thickness) => {
      const grid = rows.map((row) => row.map((tenths) => tenths / 10).join(', ')).join('; ');
      const left = value(calc({ grid, thickness, target: 5 }), 'thicknessLeft');
      expect(left).toBeLessThanOrEqual(thickness + 1e-6);
      expect(value(calc({ grid, thickness: thickness + 1, target: 5 }), 'thicknessLeft')).toBeCloseTo(left + 1, 6);
    }),
    { numRuns: 60 },
  );
});

describe('refusals', () => {
  test.each([
    [{}, 'grid', /four corners/],
    [{ grid: '0, 1; 1, 0', places: '0, 0, 1' }, 'places', /Both/],
    [{ grid: '0, 1' }, 'grid', /1 row of 2 heights does not span/],
    [{ grid: '0, 1; 1, 0, 2' }, 'grid', /Row 2 has 3 heights where the first has 2/],
    [{ grid: '0, x; 1, 0' }, 'grid', /Row 1, height 2/],
    [{ places: '0, 0, 1; 10, 0, 1; 20, 0, 1; 30, 0, 2' }, 'places', /one line/],
    [{ places: '0, 0; 1, 1' }, 'places', /three are needed/],
    [
      {
        places: [
          { x: 0, y: 0, height: 3 },
          { x: 0, y: 125 },
        ],
      },
      'places',
      /^Place 2 has no height\. Give it as/,
    ],
    [{ places: [{ x: 0, y: 0, heigt: 3 }] }, 'places', /^Place 1 has a “heigt”.* Did you mean height\?/],
    [
      { places: '0, 0, 3; 0, 250, 2; 900, 0, 0; 900, 26000, 4' },
      'places',
      /Place 4: ⟦26000 mm 5⟧ across is off the board, which is ⟦250 mm 5⟧ wide/,
    ],
    [{ places: '0, 0, 3; 0, 250, 2; 900, 0, 0; -5, 250, 4' }, 'places', /Place 4: ⟦-5 mm 5⟧ along is off/],
    [{ grid: '40, 0, 40; 40, 0, 40' }, 'grid', /no flat slab/],
  ])('%j', (raw, field, message) => {
    const outcome = run(raw);
    const [error] = outcome.ok ? [] : outcome.errors;
    expect(error?.field).toBe(field);
    expect(error?.message).toMatch(message);
  });
});

describe('heights at places, in rows to fill', () => {
  const meta = fieldMeta(flattenPlanCalculator.inputs.shape.places);
  const rows = meta?.rows;

  test.each([
    [
      '0, 0, 3; 900, 260, 4',
      [
        ['0', '0', '3'],
        ['900', '260', '4'],
      ],
    ],
    [
      '0 0 3\n900 260 4',
      [
        ['0', '0', '3'],
        ['900', '260', '4'],
      ],
    ],
    ['in: 0, 0, 1/8; 36 10 5/32', [['0 in', '0 in', '1/8 in'], ['36 10 5/32']]],
    ['in: 0, 0, 1/8 in', [['0 in', '0 in', '1/8 in']]],
  ])('%s', (text, cells) => {
    expect(rows?.split(text)?.map((row) => row.filter(Boolean))).toEqual(cells);
  });

  test('the text of the rows is read as they are, and bare numbers get the unit of the reader', () => {
    if (!meta || !rows) throw new Error('no rows');
    const typed = 'in: 0, 0, 1/8; 0, 10, 1/16; 36, 0, 0; 36, 10, 5/32';
    const sized = { length: '36 in', width: '10 in', thickness: '1 1/4 in', target: '7/8 in' };
    const one = calc({ ...sized, places: typed });
    expect(calc({ ...sized, places: rows.join(rows.split(typed) ?? []) })).toEqual(one);
    expect(explicitText(meta, '0, 0, 1/8', { ...defaultUnits, system: 'inch' })).toBe('0 in, 0 in, 1/8 in');
    expect(explicitText(meta, '0 0 3', defaultUnits)).toBe('0 mm, 0 mm, 3 mm');
  });

  test('a place without commas is told where they belong', () => {
    const outcome = run({ places: '0 mm 0 mm 3 mm; 900, 0, 1; 0, 250, 1' });
    expect(outcome.ok ? '' : outcome.errors[0]?.message).toMatch(/^Place 1: .*no commas.* Perhaps 0 mm, 0 mm, 3 mm\.$/);
  });
});
