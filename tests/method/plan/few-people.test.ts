import { expect, test } from 'vitest';
import { answerMethod, MethodMemory } from '../../../src/method/page/answer.ts';
import { methodFiles } from '../../methods/files.ts';

const memory = new MethodMemory();

async function pageFor(name: string, people: number, more: object = {}) {
  const { text } = methodFiles.find((file) => file.name === `${name}.yaml`) as { text: string };
  const answered = await answerMethod({ text, file: `methods/${name}.yaml`, people, ...more }, memory);
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
  return answered.page;
}

const withPour = methodFiles.filter(({ read }) =>
  Object.values(read.record?.steps ?? {}).some(({ people = 1 }) => people > 1),
);

test('there are methods whose steps take two', () => {
  expect(withPour.length).toBeGreaterThanOrEqual(5);
});

test.each(withPour.map(({ name }) => name.replace('.yaml', '')))(
  'one person alone at %s is told which steps need how many, and how many would do',
  async (name) => {
    const { impossible, steps } = await pageFor(name, 1);
    for (const { title, people } of steps)
      if (people > 1) expect(impossible?.why).toContain(`“${title}”`);
      else expect(impossible?.why).not.toContain(`“${title}”`);
    expect(impossible?.why).toMatch(/ needs? 2 people at once; 1 is there\. No hours make up for that\.$/);
    expect(impossible?.changes).toHaveLength(1);
    const [change = ''] = impossible?.changes ?? [];
    const { timetable } = await pageFor(name, 2);
    // What is said of two people is what comes of asking with two.
    if (timetable) expect(change).toBe('2 people instead of 1: with them there is a plan');
    else expect(change).toContain('2 people instead of 1; with them there is still no plan');
  },
);

test('nothing of it is said where there are enough for each step', async () => {
  const { impossible } = await pageFor('salvaged-ash-amber', 2, { start: '2027-01-12', end: '2027-01-13' });
  expect(impossible?.why).toBeDefined();
  expect(impossible?.why).not.toContain('at once');
});
