import { expect, test } from 'vitest';
import { workMethod } from '../../src/method/case/work.ts';
import { planOf } from '../../src/method/plan/index.ts';
import { methodFiles } from './files.ts';

// The class’s method says which evening holds what. The plan must find that by itself, from waits, tools and hands alone.

const saturdays = ['2026-12-05 09:00-16:00', '2026-12-12 09:00-16:00', '2026-12-19 13:00-14:05'];
const hours = {
  zone: 'America/Chicago',
  week: { tue: ['18:30-21:00'] },
  holidays: ['2026-12-08', '2026-12-15', '2026-12-22', '2026-12-29'],
  sessions: saturdays,
};

test('a class of twelve has its trays after six Tuesday evenings, each with what the method says of it', async () => {
  const file = methodFiles.find(({ name }) => name === 'class-of-twelve.yaml');
  const working = file && (await workMethod(file.read));
  if (!working?.ok) throw new Error('It is not worked out.');
  const plan = await planOf(working.worked, { start: '2026-12-05', hours, people: 14 });
  if (!plan.timetable.ok) throw new Error(plan.impossible?.why);
  const evenings = plan.sessions.slice(saturdays.length).map(({ work }) => [...new Set(work.map(({ step }) => step))]);
  expect(evenings).toEqual([
    ['brief', 'mark-out', 'rout-channel', 'seal'],
    ['abrade', 'mask', 'dry-run', 'mix', 'pour', 'watch'],
    ['cut-out', 'trim', 'soften-edges'],
    ['level', 'sand', 'raise-the-grain'],
    ['last-grit', 'first-coat', 'wipe-first'],
    ['second-coat', 'wipe-second', 'label', 'hand-over'],
  ]);
});
