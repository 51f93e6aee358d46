import { describe, expect, test } from 'vitest';
import { cutterSpeedCalculator } from '../../src/calculators/cutter-speed/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Result } from '../../src/model/evidence/index.ts';

const run = (raw: Record<string, unknown>) => answer(cutterSpeedCalculator, raw);
const calc = (raw: Record<string, unknown>): Result => {
  const outcome = run(raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const value = (result: Result, name: string) => result.figures[name]?.value ?? Number.NaN;
const ids = (result: Result) => result.cautions.map((caution) => caution.id);

describe('routing', () => {
  test('rim speed by hand: 50 mm at 12,000 turns is 31.4 m/s', () => {
    const result = calc({ diameter: '50 mm', turns: 12_000 });
    expect(value(result, 'rim')).toBeCloseTo((Math.PI * 0.05 * 12_000) / 60, 9);
    expect(value(result, 'usualTurns')).toBe(18_000);
    expect(result.figures.usualTurns?.basis).toBe('shop-practice');
  });
  test('a bit over its ceiling, and one larger than any named, are dangers', () => {
    expect(ids(calc({ diameter: '50 mm', turns: 22_000 }))).toContain('too-fast');
    const large = calc({ diameter: '100 mm', turns: 8000 });
    expect(ids(large)).toContain('no-usual-ceiling');
    expect(large.figures.usualTurns).toBeUndefined();
  });
  test('the mark on the tool is named with every speed', () => {
    expect(ids(calc({ diameter: '10 mm' }))).toContain('marked-speed');
  });
  test('a long edge over a thin template: the bearing would stand clear', () => {
    const result = calc({
      diameter: '1/2 in',
      cuttingLength: '1 in',
      stock: '20 mm',
      template: '6 mm',
      bearing: 'shank',
    });
    expect(ids(result)).toContain('bearing-off-template');
    expect(value(result, 'leastFirstPass')).toBeCloseTo(21, 6);
  });
  test('an edge too short is said, with the way round', () => {
    const result = calc({
      diameter: '1/2 in',
      cuttingLength: '15 mm',
      stock: '20 mm',
      template: '20 mm',
      bearing: 'tip',
    });
    expect(value(result, 'shortBy')).toBeCloseTo(6, 9);
    expect(ids(result)).toContain('edge-too-short');
  });
  test('half a description of the cut is refused at what is missing', () => {
    const outcome = run({ diameter: '1/2 in', cuttingLength: '15 mm', stock: '20 mm' });
    expect(outcome.ok ? [] : outcome.errors.map((error) => error.field)).toEqual(['template']);
  });
});

describe('boring', () => {
  test('a harder wood is bored more slowly', () => {
    const soft = calc({ work: 'boring', diameter: '25 mm', bit: 'forstner', species: 'eastern-white-pine' });
    const hard = calc({ work: 'boring', diameter: '25 mm', bit: 'forstner', species: 'sugar-maple' });
    expect(value(hard, 'usualTurns')).toBeLessThan(value(soft, 'usualTurns'));
  });
  test('a backing block is asked for under every through hole', () => {
    const block = calc({ work: 'boring', diameter: '25 mm' }).cautions.find(
      (caution) => caution.id === 'backing-block',
    );
    expect(block?.text).toMatch(/backing block/);
    expect(block?.basis).toBe('shop-practice');
  });
  test('a size the bit is not made in is noted', () => {
    expect(ids(calc({ work: 'boring', diameter: '2 mm', bit: 'hole-saw' }))).toContain('unusual-diameter');
  });
});
