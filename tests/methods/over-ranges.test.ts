import { describe, expect, test } from 'vitest';
import type { CaseOptions } from '../../src/method/case/types.ts';
import { workMethod } from '../../src/method/case/work.ts';
import type { MethodRecord, Parameter } from '../../src/method/record/index.ts';
import { judge } from '../../src/method/rules/judge.ts';
import { methodFiles } from './files.ts';

/** Answers to what was asked before, by all the methods: they pour the same channel in the same shop. */
const memo = new Map<string, unknown>();

/** From the least to the most in so many steps: both ends and the middle, unless told. */
const points = Number(process.env.KERF_POINTS ?? 3);

/** A quantity as typed, its number parted from its unit. */
function parted(text: string | number): { number: number; unit: string } {
  const [, number, unit = ''] = /^([-\d.]+)\s*(.*)$/.exec(String(text)) ?? [];
  return { number: Number(number), unit };
}

/** What a parameter may be set to, over all that it allows. */
function settingsOf(parameter: Parameter): string[] {
  switch (parameter.kind) {
    case 'quantity': {
      const [least, most] = [parted(parameter.least), parted(parameter.most)];
      if (least.unit !== most.unit) throw new Error(`${parameter.label}: its range has two units.`);
      return Array.from({ length: points }, (_, at) => {
        const number = least.number + ((most.number - least.number) * at) / (points - 1);
        return `${Number(number.toFixed(4))} ${least.unit}`;
      });
    }
    case 'count':
      return [String(parameter.least), String(parameter.most)];
    case 'choice':
      return parameter.options.map(({ value }) => value);
    case 'wood':
    case 'resin':
    case 'finish':
      return [...(parameter.among ?? [])];
    default:
      // A place, a list or an outline has no range.
      return [];
  }
}

/** Every case in which one thing alone differs from the method’s own. */
function casesOf({ makes, parameters }: MethodRecord): { name: string; options: CaseOptions }[] {
  return [
    ...[makes.pieces.least, makes.pieces.most].map((pieces) => ({ name: `${pieces} pieces`, options: { pieces } })),
    ...Object.entries(parameters).flatMap(([name, parameter]) =>
      settingsOf(parameter).map((value) => ({ name: `${name} ${value}`, options: { set: { [name]: value } } })),
    ),
  ];
}

describe.each(methodFiles)('$name', ({ read }) => {
  test('is written for every wood, resin and finish by name', () => {
    const open = Object.values(read.record?.parameters ?? {}).filter(
      (parameter) => ['wood', 'resin', 'finish'].includes(parameter.kind) && settingsOf(parameter).length === 0,
    );
    expect(open.map(({ label }) => label)).toEqual([]);
  });

  test('answers over all that each parameter allows, or a rule says why not', { timeout: 240_000 }, async () => {
    if (!read.record) throw new Error('It does not read.');
    const silent: unknown[] = [];
    for (const { name, options } of casesOf(read.record)) {
      const working = await workMethod(read, { ...options, memo });
      if (!working.ok) {
        silent.push({ name, problems: working.problems });
        continue;
      }
      const { worked } = working;
      const open = Object.values(worked.calculations).filter(
        ({ result }) => !result || ['stop', 'unknown'].includes(result.verdict.level),
      );
      if (worked.gaps.length === 0 && open.length === 0) continue;
      const isSaid = judge(worked).some(({ level, excepted }) => level === 'stop' && excepted === undefined);
      if (!isSaid) silent.push({ name, gaps: worked.gaps, calculations: open.map((each) => each.name) });
    }
    expect(silent).toEqual([]);
  });
});
