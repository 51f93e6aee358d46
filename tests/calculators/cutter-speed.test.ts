import { describe, expect, test } from 'vitest';
import { cutterSpeedCalculator } from '../../src/calculators/cutter-speed/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

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
  test('a bit over its limit, and one larger than any named, are dangers', () => {
    const fast = calc({ diameter: '50 mm', turns: 23_000 });
    expect(fast.verdict?.level).toBe('stop');
    expect(fast.cautions[0]).toMatchObject({ id: 'too-fast', level: 'danger', own: true });
    expect(calc({ diameter: '50 mm', turns: 20_000 }).verdict?.level).toBe('care');
    const large = calc({ diameter: '100 mm', turns: 8000, cuttingLength: '20 mm', stock: '10 mm', template: '30 mm' });
    expect(large.verdict?.level).toBe('unknown');
    expect(ids(large)).toContain('no-usual-ceiling');
    expect(large.figures.usualTurns).toBeUndefined();
    expect(large.figures.passes).toBeUndefined();
  });
  test('the mark on the tool is named with every speed', () => {
    expect(ids(calc({ diameter: '10 mm' }))).toContain('marked-speed');
  });
  test.each([
    ['1 in', '1/2 in', '1/4 in', 22.05, '9.35 mm out under the stock'],
    ['1 in', '3/4 in', '1/4 in', 22.05, '3 mm out under the stock'],
    ['1 1/4 in', '3/4 in', '1/4 in', 28.4, '9.35 mm out under the stock'],
    ['1 in', '20 mm', '2 mm', undefined, 'thinner than the 3 mm'],
  ])(
    'edge %s, stock %s, template %s: the bearing would not be on the template, and no pass is named',
    (cuttingLength, stock, template, least, words) => {
      const result = calc({ work: 'routing', diameter: '1/2 in', bearing: 'shank', cuttingLength, stock, template });
      expect(result.verdict?.level).toBe('stop');
      expect(inReaderUnits(result.verdict?.text ?? '', defaultUnits)).toContain(words);
      expect(result.figures.passes).toBeUndefined();
      expect(result.figures.leastFirstPass?.value).toEqual(least === undefined ? undefined : expect.closeTo(least, 6));
      expect(result.cautions[0]).toMatchObject({ id: 'bearing-off-template', level: 'danger', own: true });
      expect(JSON.stringify(result.cautions)).not.toMatch(/takes little/);
    },
  );
  test('a first pass deeper than usual is named, with what it must be', () => {
    const result = calc({
      diameter: '1/2 in',
      bearing: 'shank',
      cuttingLength: '1 in',
      stock: '20 mm',
      template: '12 mm',
    });
    expect(result.verdict?.level).toBe('care');
    expect(inReaderUnits(result.verdict?.text ?? '', defaultUnits)).toMatch(
      /begin with a pass 16.4 mm deep.*2 passes: 16.4 mm and 4.6 mm/,
    );
  });
  test('a good set-up says speed and passes', () => {
    const result = calc({
      diameter: '1/2 in',
      bearing: 'tip',
      cuttingLength: '25 mm',
      stock: '20 mm',
      template: '12 mm',
    });
    expect(result.verdict?.level).toBe('good');
    expect(inReaderUnits(result.verdict?.text ?? '', defaultUnits)).toMatch(
      /^Run the bit at no more than 22 000 turns a minute.*one pass, 20 mm deep/,
    );
  });
  test('an edge at the tip too short for the stock is not cut with: the shank would rub', () => {
    const result = calc({
      diameter: '1/2 in',
      cuttingLength: '15 mm',
      stock: '20 mm',
      template: '20 mm',
      bearing: 'tip',
    });
    expect(value(result, 'shortBy')).toBeCloseTo(6, 9);
    expect(inReaderUnits(result.verdict?.text ?? '', defaultUnits)).toContain('6 mm too short');
    expect(result.verdict?.level).toBe('stop');
    expect(result.figures.passes).toBeUndefined();
    expect(result.cautions[0]).toMatchObject({ id: 'edge-too-short', level: 'danger', basis: 'memory' });
  });
  test.each([
    [22_000, /^Slow the router down first: 22 000 .* at most\. .*13\.7 mm too short/],
    [undefined, /^Do not rout this: the edge is 13\.7 mm too short/],
  ])('an edge too short at %s turns: the speed first where it is past every limit', (turns, said) => {
    const raw = { diameter: '3 in', bearing: 'tip', cuttingLength: '1 in', stock: '1 1/2 in', template: '1/4 in' };
    const result = calc({ ...raw, ...(turns === undefined ? {} : { turns }) });
    expect(result.verdict?.level).toBe('stop');
    expect(inReaderUnits(result.verdict?.text ?? '', defaultUnits)).toMatch(said);
    expect(value(result, 'shortBy')).toBeCloseTo(13.7, 9);
  });
  test('the one deep pass of a bearing at the tip, and the usual depth beside it, are told apart', () => {
    const raw = { diameter: '1/2 in', bearing: 'tip', cuttingLength: '1 in', stock: '3/4 in', template: '1/4 in' };
    const result = calc(raw);
    expect(result.verdict?.text).toMatch(/one pass, .* deep, as a bearing at the tip asks/);
    expect(result.figures.depthOfPass?.note).toMatch(/^The usual one\. Not kept here/);
    expect(calc({ ...raw, depthOfPass: '3 mm' }).figures.depthOfPass?.note).toMatch(/^Not kept here/);
    expect(result.figures.passes).toMatchObject({ value: 1, unit: '{count}' });
  });
  test('a bearing off its template: the remedy first, in few words', () => {
    const text = calc({
      diameter: '1/2 in',
      bearing: 'shank',
      cuttingLength: '1 in',
      stock: '1/2 in',
      template: '1/4 in',
    }).verdict?.text;
    const said = inReaderUnits(text ?? '', { system: 'inch', inches: 'thirty-seconds' });
    expect(said).toMatch(
      /^Take an edge of at most .*, a template at least .* thick or a bearing at the tip\. As it is/,
    );
    expect(said.length).toBeLessThan(200);
  });
  test('dust, noise and work that comes loose are said', () => {
    expect(ids(calc({ diameter: '10 mm' }))).toEqual(
      expect.arrayContaining(['wood-dust', 'noise', 'template-routing']),
    );
  });
  test('half a description of the cut is refused at what is missing', () => {
    const outcome = run({ diameter: '1/2 in', cuttingLength: '15 mm', stock: '20 mm' });
    expect(outcome.ok ? [] : outcome.errors.map((error) => error.field)).toEqual(['template']);
    // A hole has no template: what an address still holds of one does not matter there.
    expect(run({ work: 'boring', diameter: '25 mm', stock: '20 mm' }).ok).toBe(true);
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
