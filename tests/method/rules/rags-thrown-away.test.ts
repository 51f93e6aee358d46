import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { workMethod } from '../../../src/method/case/work.ts';
import { readMethod } from '../../../src/method/read.ts';
import { ragsThrownAway } from '../../../src/method/rules/rags-thrown-away.ts';
import { workedIn } from './base.ts';

const foundIn = async (does: string, step = 'oiling'): Promise<readonly string[]> =>
  ragsThrownAway
    .find(await workedIn({}, `steps: { ${step}: { does: ${JSON.stringify(does)} } }`))
    .map(({ path, message }) => `/${path.join('/')} ${message}`);

test('a step that throws them into the bin, whatever else it does', async () => {
  expect(await foundIn('Say how it is kept. Throw the oily rags in the bin.', 'give')).toEqual([
    '/steps/give/does “Throw the oily rags in the bin.” puts rags where they can take fire by themselves.',
  ]);
});

test.each([
  'The cloths go into the trash.',
  'Leave the rags in a heap.',
  'Put the wet cloths on the floor to dry.',
  'Stuff the rag in your back pocket.',
  'Throw the rags away.',
  'Bin the oily rags.',
  'Drop used cloths into a plastic bag.',
  'Wipe until no oil stands on it, and throw the rags in the bin.',
  'Wipe it dry and throw the rags in the trash can.',
  'Rags into the bin.',
  'Keep the rags in a drawer for the second coat.',
])('as plainly dangerous: %s', async (does) => {
  expect(await foundIn(does)).toHaveLength(1);
});

test.each([
  'Rags never go in the bin.',
  'Do not throw the rags in the bin.',
  'Every cloth into the water, lid on: no heap, no pocket, no bin.',
  'Put the cloths into the can with water.',
  'Hang the cloths up singly out of doors.',
  'Put the clean cloths in the box.',
  'Never, ever throw a rag in the bin.',
  'Wipe it with a cloth.',
  'Wipe dry in the corners with a cloth.',
  'Put a cloth on the table.',
  'Sweep the floor, and the shavings go into the bin.',
])('nothing to say of: %s', async (does) => {
  expect(await foundIn(does)).toEqual([]);
});

test('a cloth for glue may lie where it likes', async () => {
  expect(await foundIn('Keep a damp cloth in your pocket for the drips.', 'thickness')).toEqual([]);
});

test('what goes wrong may name it, and the reason', async () => {
  const worked = await workedIn(
    {},
    'steps: { oiling: { wrong: Somebody put the rags in the bin., why: Rags that lie in a heap take fire. } }',
  );
  expect(ragsThrownAway.find(worked)).toEqual([]);
});

const folder = join(import.meta.dirname, '../../../methods');
const methods = readdirSync(folder).filter((name) => name.endsWith('.yaml') && name !== 'shop.yaml');

test.each(methods)('the method of the workshop says nothing of the kind: %s', async (name) => {
  const working = await workMethod(readMethod(readFileSync(join(folder, name), 'utf8'), name));
  if (!working.ok) throw new Error(working.problems.map(({ message }) => message).join('\n'));
  expect(ragsThrownAway.find(working.worked)).toEqual([]);
});
