import { describe, expect, test } from 'vitest';
import { gritSequenceCalculator } from '../../src/calculators/grit-sequence/calculator.ts';
import { splitGrits } from '../../src/calculators/grit-sequence/fields.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Result } from '../../src/model/evidence/index.ts';

const base = { drawer: '80, 100, 120, 150, 180, 220, 320', area: '0.25 m²' };
const run = (raw: Record<string, unknown>) => answer(gritSequenceCalculator, { ...base, ...raw });
const calc = (raw: Record<string, unknown>): Result => {
  const outcome = run(raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const steps = (result: Result) => (result.tables?.[0]?.rows ?? []).map((row) => String(row[1]));
const ids = (result: Result) => result.cautions.map((caution) => caution.id);

test('from the planer to an oil finish, with the grain raised after 220 and before 320', () => {
  expect(steps(calc({ surface: 'planed', finish: 'oil-or-wax', water: 'yes' }))).toEqual([
    'Sand with P80',
    'Sand with P120',
    'Sand with P150',
    'Sand with P220',
    'Raise the grain: wipe with clean water, let dry',
    'Take the fibres off with P320: three or four light strokes by hand, no more',
  ]);
});

test('a water-based finish asks for raised grain even where no water follows', () => {
  expect(ids(calc({ finish: 'water-based', water: 'no' }))).toContain('raised-grain');
  expect(ids(calc({ finish: 'film', water: 'no' }))).not.toContain('raised-grain');
});

test('numbers without a P are read in the grading chosen', () => {
  const p = calc({ lastGrit: '400', drawer: '80 120 180 220 320 400' });
  const ansi = calc({ lastGrit: '400', drawer: '80 120 180 220 320 400', grading: 'ansi' });
  expect(p.figures.lastGrain?.value).toBeCloseTo(35.3, 6);
  expect(ansi.figures.lastGrain?.value).toBeCloseTo(22, 6);
  expect(ansi.figures.lastGrain?.note).toMatch(/P800.*P600/);
});

test('what is used up is discs a grit, which sum to the figure, and the time', () => {
  const result = calc({ surface: 'planed', drawer: '80, 120', area: '2 m²' });
  const uses = result.uses ?? [];
  const discs = uses.filter(({ unit }) => unit === '{count}');
  expect(discs.map(({ id }) => id)).toEqual(expect.arrayContaining(['discs-p80', 'discs-p120', 'discs-p320']));
  expect(discs.find(({ id }) => id === 'discs-p320')?.note).toBe('Not in the drawer.');
  expect(discs.reduce((sum, { amount }) => sum + amount, 0)).toBe(result.figures.discs?.value);
  expect(result.figures.discs?.unit).toBe('{count}');
  expect(uses.at(-1)).toMatchObject({ id: 'sanding-time', amount: result.figures.time?.value, unit: 's' });
});

test('resin: wet grits, and cautions on dust that has not cured and on mains tools', () => {
  const result = calc({
    material: 'resin',
    surface: 'resin-as-cast',
    finish: 'resin-polish',
    drawer: '80 120 180 240 320 400 600 800 1000 1500 2000',
  });
  expect(steps(result).at(-1)).toBe('Sand with P2000, wet');
  expect(ids(result)).toEqual(expect.arrayContaining(['resin-dust', 'wet-sanding']));
});

test('what is in the drawer is used, though the first step is too wide whatever one does', () => {
  const result = calc({ surface: 'rough-sawn', finish: 'film', drawer: '80 120 180 220' });
  expect(steps(result).slice(0, 4)).toEqual(['P80', 'P120', 'P180', 'P220'].map((grit) => `Sand with ${grit}`));
  expect(result.verdict?.level).toBe('care');
  expect(result.verdict?.text).toMatch(/^P80, P120, P180, P220, water, but P80 is too fine to begin with: buy P60\./);
});

test('a scraped surface with only fine paper asks for the grit of the table, and speaks of the marks of the tool', () => {
  const result = calc({ surface: 'hand-planed', drawer: '220 320' });
  const said = result.cautions.find((caution) => caution.id === 'step-too-wide');
  expect(said?.text).toMatch(/^Buy P180: P220 is too fine to begin with/);
  expect(said?.why).toMatch(/marks of the tool/);
});

test('the verdict is the grits in a row, with the water where the grain is raised', () => {
  const { verdict } = calc({ surface: 'planed', finish: 'oil-or-wax' });
  expect(verdict).toMatchObject({ level: 'good' });
  expect(verdict?.text).toMatch(/^P80, P120, P150, P220, water, P320 lightly by hand: about /);
});

test('a last grit coarser than the present goes back, and the grain is raised after the grit that is last', () => {
  const result = calc({ sandedWith: 'P220', lastGrit: 'P120', water: 'yes' });
  expect(result.verdict).toMatchObject({ level: 'care' });
  expect(result.verdict?.text).toMatch(/P120 is coarser than the P220/);
  expect(result.cautions[0]).toMatchObject({ id: 'goes-back', own: true });
  expect(result.cautions.find((caution) => caution.id === 'raised-grain')?.text).toMatch(/after P120/);
});

test('a board with an inlay is sanded as wood, and warns of both dusts', () => {
  for (const given of [{ material: 'inlay' }, { material: 'wood', surface: 'resin-as-cast' }]) {
    const result = calc({ surface: 'planed', ...given });
    expect(ids(result)).toEqual(expect.arrayContaining(['resin-dust', 'wood-dust', 'raised-grain']));
  }
  expect(
    ids(calc({ material: 'inlay', lastGrit: 'P2000', drawer: '80 120 180 240 320 400 600 800 1000 1500 2000' })),
  ).toContain('polish-beside-wood');
  expect(ids(calc({ material: 'wood' }))).not.toContain('resin-dust');
});

test('a gap and a missing last grit are said', () => {
  const result = calc({ drawer: '80, 180', finish: 'oil-or-wax' });
  expect(ids(result)).toEqual(expect.arrayContaining(['step-too-wide', 'grit-to-buy']));
  expect(result.cautions.find((caution) => caution.id === 'step-too-wide')?.text).toMatch(
    /^Buy P120 and P150: the step from P80 to P180|^Buy /,
  );
});

test('an ANSI drawer serves a finish by the grain, not by the number', () => {
  // P220 and ANSI 220 are the same grain; no grit has to be bought.
  expect(ids(calc({ grading: 'ansi', finish: 'film', drawer: '80 100 120 150 180 220' }))).not.toContain('grit-to-buy');
});

test.each([
  ['80, 100;P120\nANSI 400 us 600', ['80', '100', 'P120', 'ANSI 400', 'us 600']],
  ['', []],
])('%j is split into grits', (text, grits) => {
  expect(splitGrits(text)).toEqual(grits);
});

describe('refusals', () => {
  test.each([
    [{ drawer: '80, fine' }, 'drawer'],
    [{ drawer: '80, P121' }, 'drawer'],
    [{ drawer: '-80, 120' }, 'drawer'],
    [{ surface: undefined, sandedWith: '-80' }, 'sandedWith'],
    [{ surface: 'planed', sandedWith: '120' }, 'sandedWith'],
    [{ finish: 'film', lastGrit: '320' }, 'lastGrit'],
    [{ count: '1.5' }, 'count'],
    [{ drawer: '800', grading: 'p', lastGrit: '1600' }, 'lastGrit'],
  ])('%j', (raw, field) => {
    const outcome = run(raw);
    expect(outcome.ok ? [] : outcome.errors.map((error) => error.field)).toEqual([field]);
  });
});
