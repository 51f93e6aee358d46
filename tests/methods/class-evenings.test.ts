import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { workMethod } from '../../src/method/case/work.ts';
import { planOf } from '../../src/method/plan/index.ts';
import type { OpeningHours } from '../../src/method/schedule/index.ts';
import { readShop } from '../../src/method/shop/index.ts';
import { methodFiles } from './files.ts';

// The class’s method says which evening holds what. The plan must find that by itself, from waits, tools and hands alone.

const file = '../../methods/calendars/six-tuesdays.yaml';
const hours = parse(readFileSync(new URL(file, import.meta.url), 'utf8')) as OpeningHours & { sessions: string[] };

const { shop } = readShop(readFileSync(new URL('../../methods/shop.yaml', import.meta.url), 'utf8'));

test.each([
  ['in a room of its own', undefined, '2027-01-23'],
  // The workshop is drier than the wood, which settles in it for twelve days: the wood is bought the sooner.
  ['in the workshop', shop, '2027-01-12'],
])(
  'a class of twelve %s has its trays after six Tuesday evenings, each with what the method says of it',
  async (_, its, start) => {
    const method = methodFiles.find(({ name }) => name === 'class-of-twelve.yaml');
    const working = method && (await workMethod(method.read, its ? { shop: its } : {}));
    if (!working?.ok) throw new Error('It is not worked out.');
    const plan = await planOf(working.worked, { start, hours, people: 14 });
    if (!plan.timetable.ok) throw new Error(plan.impossible?.why);
    const evenings = plan.sessions
      .filter(({ start }) => plan.timetable.ok && plan.timetable.momentAt(start).date >= '2027-02-09')
      .map(({ work }) => [...new Set(work.map(({ step }) => step))]);
    expect(evenings).toEqual([
      ['brief', 'mark-out', 'rout-channel', 'seal'],
      ['abrade', 'mask', 'dry-run', 'mix', 'pour', 'watch'],
      ['cut-out', 'trim', 'soften-edges'],
      ['level', 'soften-face', 'sand', 'raise-the-grain'],
      ['last-grit', 'first-coat', 'wipe-first'],
      ['second-coat', 'wipe-second', 'label', 'hand-over'],
    ]);
  },
);
