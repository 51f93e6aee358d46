import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { type EditProblem, lookOver, problemsOf, usualNames } from '../../../src/method/edit/index.ts';
import { defaultUnits } from '../../../src/model/quantity/index.ts';
import { hostileTexts } from '../../model/data/hostile.ts';

const tray = readFileSync('methods/first-tray.yaml', 'utf8');
const shop = readFileSync('methods/shop.yaml', 'utf8');
const memo = new Map<string, unknown>();
const look = (text: string) => problemsOf(text, 'tray', { memo, names: usualNames });

function changed(stretch: string, by: string): string {
  if (!tray.includes(stretch)) throw new Error(`the tray has no ${stretch}`);
  return tray.replace(stretch, () => by);
}

/** The text with the only mend of a problem done. */
function mended(text: string, problem: EditProblem | undefined): string {
  const [fix, ...more] = problem?.fixes ?? [];
  if (!fix || more.length > 0) throw new Error(`${problem?.fixes.length} mends of: ${problem?.message}`);
  return text.slice(0, fix.splice.from) + fix.splice.insert + text.slice(fix.splice.to);
}

let quiet: readonly EditProblem[];
beforeAll(async () => {
  quiet = await look(tray);
});

describe('what is wrong with a text', () => {
  test('a method of the house has no error, and its shop record nothing', async () => {
    expect(quiet.filter(({ level }) => level === 'error')).toEqual([]);
    expect(await look(shop)).toEqual([]);
  });

  test('a fault is told where it stands', async () => {
    const text = changed('act: brief', 'act: breif');
    const [problem] = await look(text);
    expect(text.slice(problem?.from, problem?.to)).toBe('breif');
    expect(problem).toMatchObject({ level: 'error', path: ['steps', 'brief', 'act'] });
    expect(problem?.message).toContain('brief');
  });

  test('a fault of a shop record too', async () => {
    const text = shop.replace('kind: planer', 'kind: planner');
    const [problem] = await look(text);
    expect(text.slice(problem?.from, problem?.to)).toBe('planner');
    expect(mended(text, problem)).toBe(shop);
  });

  test('what a rule finds is told at the name of the step, in the units that were asked for', async () => {
    const text = changed('default: 400 mm', 'default: 320 mm').replace(
      'limits: { width: 330 mm, leastLength: 305 mm',
      'limits: { width: 330 mm, leastLength: 900 mm',
    );
    const found = (await problemsOf(text, 'tray', { memo, units: { ...defaultUnits, system: 'inch' } })).filter(
      ({ rule }) => rule === 'machine-length',
    );
    expect(found.length).toBeGreaterThan(0);
    for (const { from, to, level, message } of found) {
      expect(text.slice(from, to)).not.toContain('\n');
      expect(level).not.toBe('error');
      expect(message).toMatch(/\d in\b/);
      expect(message).not.toMatch(/\d mm/);
    }
  });

  test('the case comes with it, for whoever shows values', async () => {
    const { worked } = await lookOver(tray, 'tray', { memo });
    expect(worked?.at('/parameters/length')).toMatchObject({ value: 400 });
  });
});

describe('mends', () => {
  test.each([
    ['an act', 'act: brief', 'act: breif'],
    ['a field', 'interrupt: never\n', 'interupt: never\n'],
    ['a material', 'uses: [boards]', 'uses: [borads]'],
    ['a tool', 'tools: [fire-extinguisher]', 'tools: [fire-extingisher]'],
    ['a step', 'after: [{ step: stack,', 'after: [{ step: stak,'],
    ['a calculator', 'use: stock-order', 'use: stock-oder'],
    ['an input of a calculator', 'surfacing: s2s', 'surfaceing: s2s'],
    ['a wood', 'default: sugar-maple\n', 'default: suger-maple\n'],
    ['a reference', 'length: { from: /parameters/length }', 'length: { from: /parameters/lenght }'],
    ['a figure in a text', '{/calculations/settling/figures/balance}', '{/calculations/settling/figures/balence}'],
    ['a calculation in a text', '{/calculations/settling/figures/balance}', '{/calculations/setling/figures/balance}'],
    ['a day without quotes', 'count: 2 }', "count: '2' }"],
    ['a tab', '    act: brief', '\tact: brief'],
  ])('%s that is misspelt is put right', async (_what, right, wrong) => {
    const text = changed(right, wrong);
    const problem = (await look(text)).find(({ level }) => level === 'error');
    const after = mended(text, problem);
    const left = (await look(after)).filter(({ level }) => level === 'error');
    expect(left).toEqual([]);
  });

  test.each([
    ['a number for a text', 'claim: For serving bread, biscuits and whole fruit', 'claim: 12', 'claim: "12"'],
    [
      'a colon in a text',
      'tell: The three readings lie',
      'tell: Look: the three readings lie',
      'tell: "Look: the three readings lie',
    ],
    [
      'a text that begins with a bracket',
      'title: Say what is coming',
      'title: [Say] what is coming',
      'title: "[Say] what is coming"',
    ],
    ['no space behind a colon', 'act: brief', 'act:brief', 'act: brief'],
    [
      'curly quotes around a comma',
      '"Cotton cloths, a hand wide, counted"',
      '“Cotton cloths, a hand wide counted”',
      '"Cotton cloths, a hand wide counted"',
    ],
  ])('%s is mended', async (_what, right, wrong, mend) => {
    const text = changed(right, wrong);
    const [problem] = await look(text);
    expect(mended(text, problem)).toContain(mend);
  });

  test.each([
    ['several names would do', 'act: brief', 'act: xyzzy'],
    ['a field is missing', '    act: brief\n', ''],
    ['a value is out of its range', 'pieces: { default: 1,', 'pieces: { default: 900,'],
    [
      'a reference leads to what measures something else',
      'moistureNow: { from: /parameters/moistureNow }',
      'moistureNow: { from: /parameters/shopTemperature }',
    ],
  ])('none is offered where %s', async (_why, right, wrong) => {
    const text = changed(right, wrong);
    const errors = (await look(text)).filter(({ level }) => level === 'error');
    expect(errors.length).toBeGreaterThan(0);
    expect(errors.flatMap(({ fixes }) => fixes)).toEqual([]);
  });
});

test('a parameter without its unit is told of alone, with the way out, and never with another parameter to take its place', async () => {
  const flood = readFileSync('methods/wide-cherry-flood.yaml', 'utf8');
  const text = flood.replace(/(label: Shop temperature by day\n.*\n\s+default: )20 °C/, '$120');
  const line = text.split('\n').findIndex((each) => each.trim() === 'default: 20') + 1;
  expect(line).toBeGreaterThan(0);
  const problems = await problemsOf(text, 'flood', { memo, names: usualNames });
  expect(problems).toHaveLength(1);
  expect(problems[0]).toMatchObject({ line, level: 'error', fixes: [] });
  expect(problems[0]?.message).toContain('Write 20 °C');
});

test('a spoilt text is told of, with places in it', async () => {
  for (const { text } of hostileTexts(tray, 7, 1).filter((_text, at) => at % 6 === 0)) {
    for (const { from, to, message } of await look(text)) {
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeGreaterThanOrEqual(from);
      expect(to).toBeLessThanOrEqual(text.length);
      expect(message).not.toBe('');
    }
  }
});
