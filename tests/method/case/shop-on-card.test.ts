import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { calculatedSheets } from '../../../src/method/documents/packet.ts';
import { answerMethod } from '../../../src/method/page/answer.ts';

const ids = ['first-tray', 'class-of-twelve', 'panel-moss-channel', 'salvaged-ash-amber', 'wide-cherry-flood'];

/** What stands at the head of the card of a method, in a shop or in none. */
async function headOf(id: string, shop?: string) {
  const text = readFileSync(`methods/${id}.yaml`, 'utf8');
  const answer = await answerMethod({ text, file: id, ...(shop ? { shop } : {}), start: '2027-01-12' });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  const card = calculatedSheets(answer.page).find(({ form }) => form === 'card');
  return card?.blocks[0];
}

const named = (name: string) =>
  readFileSync('methods/shop.yaml', 'utf8').replace(/^name: .*$/m, `name: ${JSON.stringify(name)}`);

describe.each([...ids, 'repair-and-reoil'])('the care card of %s', (id) => {
  test('leaves a line for the shop where there is no record of one', async () => {
    expect(await headOf(id)).toEqual({ kind: 'blanks', labels: ['Shop'] });
  });
});

test('a card bears the name of the shop’s own record', async () => {
  expect(await headOf('first-tray', named('Pier Road boards'))).toMatchObject({
    kind: 'text',
    text: 'Pier Road boards',
  });
});

test('a name for which the card has no room is written in by hand, and the card is printed all the same', async () => {
  expect(await headOf('first-tray', named(`Boards ${'and more '.repeat(5)}`.trim()))).toEqual({
    kind: 'blanks',
    labels: ['Shop'],
  });
});
