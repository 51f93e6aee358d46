import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import { seasonalMovementCalculator } from '../../src/calculators/seasonal-movement/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

const board = { species: 'white-ash', width: '300 mm', thickness: '20 mm', cut: 'flatsawn', moistureNow: '8 %' };
const climate = { place: 'duluth-mn', indoors: 'heated' };
const seasons = { dryTemperature: 20, dryHumidity: 30, wetTemperature: 22, wetHumidity: 60 };

const calc = (raw: Record<string, unknown>): Result => {
  const outcome = answer(seasonalMovementCalculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const refusal = (raw: Record<string, unknown>) => {
  const outcome = answer(seasonalMovementCalculator, raw);
  return outcome.ok ? [] : outcome.errors.map(({ field, message }) => `${field}: ${message}`);
};
const value = (result: Result, name: string) => result.figures[name]?.value ?? Number.NaN;

describe('a board', () => {
  const result = calc({ ...board, ...climate });

  test('swing is widest less narrowest, and the change from now spans both', () => {
    expect(value(result, 'swing')).toBeCloseTo(value(result, 'widest') - value(result, 'narrowest'), 9);
    const change = result.figures.changeFromNow;
    expect(change?.low).toBeCloseTo(value(result, 'narrowest') - 300, 9);
    expect(change?.high).toBeCloseTo(value(result, 'widest') - 300, 9);
  });

  test('twelve months of width, cup, moisture and humidity', () => {
    expect(result.series?.map((series) => [series.id, series.axis.values.length])).toEqual([
      ['width', 12],
      ['cup', 12],
      ['moisture', 12],
      ['humidity', 12],
    ]);
  });

  test('one equation for the whole year, named in the evidence', () => {
    const equations = result.evidence.map((note) => note.equation).filter((id) => id?.startsWith('wood-handbook-13'));
    expect(equations).toEqual(['wood-handbook-13-3']);
  });

  test('says that the climate is an average year', () => {
    expect(result.cautions.map((caution) => caution.id)).toContain('average-year');
  });

  test('the drawing shows the board now, driest and wettest, and says how much it exaggerates', () => {
    const roles = new Set(result.drawings?.[0]?.shapes.map((shape) => shape.role));
    expect(roles).toEqual(new Set(['ring', 'outline-now', 'outline-dry', 'outline-wet']));
    expect(result.drawings?.[0]?.exaggeration).toBeGreaterThan(1);
  });

  test('from two seasons within 6 to 14 % it moves by Eq. 13-2: 300 · C_T · ΔM', () => {
    const two = calc({ ...board, ...seasons });
    const moved = value(two, 'wettest') - value(two, 'driest');
    expect(value(two, 'swing')).toBeCloseTo(300 * 0.00274 * moved, 9);
  });

  test('an unheated shed follows the outdoor air', () => {
    const shed = calc({ ...board, place: 'duluth-mn', indoors: 'unheated' });
    expect(value(shed, 'driest')).toBeGreaterThan(value(result, 'driest'));
  });

  test('own readings and two seasons of the same air agree', () => {
    const readings = calc({ ...board, readings: 'Dry season, 20 °C, 30 %; Damp season, 22 °C, 60 %' });
    expect(value(readings, 'swing')).toBeCloseTo(value(calc({ ...board, ...seasons }), 'swing'), 9);
  });

  test('readings of a file may be a list of objects', () => {
    const list = [
      { label: 'Jan', temperature: 20, humidity: 30 },
      { label: 'Jul; warm, damp', temperature: '71.6 °F', humidity: '60 %' },
    ];
    const text = calc({ ...board, readings: 'Jan, 20 °C, 30 %; Jul, 22 °C, 60 %' });
    const listed = calc({ ...board, readings: list });
    expect(value(listed, 'swing')).toBeCloseTo(value(text, 'swing'), 9);
    expect(listed.figures.widest?.note).toBe('In Jul; warm, damp.');
  });

  test('a place of one’s own, and how a house is kept, say nothing beside own readings', () => {
    const readings = 'Dry season, 20 °C, 30 %; Damp season, 22 °C, 60 %';
    const kept = { place: 'own', indoors: 'heated', heatTo: '20 °C', moistureGain: '2 g/kg' };
    expect(calc({ ...board, ...kept, readings }).figures).toEqual(calc({ ...board, readings }).figures);
    expect(calc({ ...board, ...kept, ...seasons }).figures).toEqual(calc({ ...board, ...seasons }).figures);
  });

  test('the shop’s air stands for a meter', () => {
    const { moistureNow: _, ...rest } = board;
    const result = calc({ ...rest, ...seasons, shopTemperature: '20 °C', shopHumidity: '30 %' });
    expect(value(result, 'changeFromNow')).toBeCloseTo(value(result, 'swing'), 9);
  });

  test('a pith far below is flatsawn, far to the side quartersawn', () => {
    const { cut: _, ...rest } = board;
    const swing = (more: Record<string, unknown>) => value(calc({ ...rest, ...seasons, ...more }), 'swing');
    expect(swing({ pithDepth: '5 m' })).toBeCloseTo(swing({ cut: 'flatsawn' }), 2);
    expect(swing({ pithDepth: '-10 mm', pithOffset: '5 m' })).toBeCloseTo(swing({ cut: 'quartersawn' }), 2);
    expect(swing({ pithDepth: '60 mm' })).toBeLessThan(swing({ cut: 'flatsawn' }));
  });

  test('an inlay takes its share of the movement, and a warning', () => {
    const inlaid = calc({ ...board, ...seasons, inlayWidth: '75 mm' });
    expect(value(inlaid, 'inlaySwing')).toBeCloseTo(value(inlaid, 'swing') / 4, 9);
    expect(inlaid.cautions.map((caution) => caution.id)).toContain('rigid-inlay');
  });
});

describe('a panel', () => {
  const panel = { thickness: '20 mm', moistureNow: '8 %', ...seasons };

  test('staves of one wood and cut move as one board', () => {
    const staves = 'white-ash, 100 mm, flatsawn; white-ash, 120 mm; white-ash, 80 mm, flatsawn';
    expect(value(calc({ ...panel, staves }), 'swing')).toBeCloseTo(value(calc({ ...board, ...seasons }), 'swing'), 9);
  });

  test('text and list are the same panel', () => {
    const staves = 'white-ash, 6 cm, rift; black-cherry, 40 mm';
    const list = [
      { species: 'white-ash', width: 60, cut: 'rift' },
      { species: 'Black cherry', width: '40 mm' },
    ];
    expect(calc({ ...panel, staves }).figures).toEqual(calc({ ...panel, staves: list }).figures);
  });

  test('neighbours of unlike cut part in thickness', () => {
    const step = value(calc({ ...panel, staves: 'white-ash, 60 mm, flatsawn; white-ash, 60 mm, quartersawn' }), 'step');
    expect(step).toBeGreaterThan(0);
    expect(value(calc({ ...panel, staves: 'white-ash, 60 mm; white-ash, 60 mm' }), 'step')).toBe(0);
  });
});

describe('refusals', () => {
  const { species: _, width: __, ...noBoard } = board;
  const { moistureNow: ___, ...noMoisture } = board;
  test.each([
    [{ ...board }, 'place: It was not said where the board will live.'],
    [
      { ...board, ...climate, ...seasons },
      'dryTemperature: Both “Nearest place” and “Dry season, temperature” were given',
    ],
    [{ ...board, place: 'own' }, 'place: It was not said where the board will live.'],
    [
      { ...board, dryTemperature: 20 },
      'dryHumidity: A dry and a damp season are four readings. Give “Dry season, relative humidity” too',
    ],
    [{ ...board, place: 'atlantis' }, 'place: “atlantis” is not a place in the climate tables'],
    [{ ...board, ...climate, heatTo: '28 °C' }, 'coolTo: The room is cooled to 26 °C but heated to 28 °C.'],
    [{ ...noMoisture, ...climate }, 'moistureNow: It was not said how dry the board is.'],
    [
      { ...noMoisture, ...climate, shopTemperature: 20 },
      'shopHumidity: The air of the shop is a temperature and a humidity. Give “Relative humidity of the shop” too',
    ],
    [
      { ...board, ...climate, shopHumidity: 40 },
      'shopHumidity: Both “Moisture content” and “Relative humidity of the shop”',
    ],
    [{ ...noBoard, ...climate }, 'species: No wood was given.'],
    [{ ...board, ...climate, staves: 'white-ash, 60 mm' }, 'staves: Both “Wood” and “Staves, from edge to edge”'],
    [{ ...noBoard, ...climate, staves: 'white-ash, wide' }, 'staves: Stave 1, width: '],
    [{ ...noBoard, ...climate, staves: 'white-ash, 60 mm, plain' }, 'staves: Stave 1: “plain” is not a cut'],
    [{ ...noBoard, ...climate, staves: 'koa, 60 mm' }, 'staves: Stave 1: The radial and tangential shrinkage of Koa'],
    [{ ...board, ...climate, pithDepth: 50 }, 'pithDepth: Both “Cut” and “Pith, below the heart-side face”'],
    [{ ...board, cut: '', ...climate, pithDepth: '-5 mm', pithOffset: 0 }, 'pithDepth: The pith is inside the board'],
    [{ ...board, ...climate, inlayWidth: '400 mm' }, 'inlayWidth: An inlay'],
    [{ ...board, readings: 'Jan, 20 °C' }, 'readings: '],
    [{ ...board, readings: [{ label: 'Jan', temperature: 20 }] }, 'readings: Reading 1 has no humidity.'],
    [
      { ...board, readings: [{ temperature: 20, humidity: 140 }] },
      'readings: Line 1: “140 %” is not a relative humidity',
    ],
  ])('%#', (raw, message) => {
    expect(inReaderUnits(refusal(raw).join('\n'), defaultUnits)).toContain(message);
  });
});
