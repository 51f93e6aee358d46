import { expect, test } from 'vitest';
import { shownBatch } from '../../../src/method/batch/shown.ts';
import { answerNumbers } from '../../../src/method/page/answer.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { at, batchOf, finished, hours, inlaidBoard, read, started, strike } from './kit.ts';

const told = (text: string) => inReaderUnits(text, defaultUnits);

async function cardsAt(entries: Parameters<typeof batchOf>[0], now: string) {
  const answer = await shownBatch(batchOf(entries), at(now), 'today');
  if (!answer.ok) throw new Error(answer.problems.join(' '));
  return answer.shown.cards;
}

test('a card that may be done now tells what to do, and its dangers in short and in full', async () => {
  const { seal } = await cardsAt([], '2027-01-12 08:00');
  expect(seal?.does).toEqual(['Brush a thin coat on.']);
  const dangers = seal?.cautions.filter(({ level }) => level === 'danger') ?? [];
  expect(dangers.length).toBeGreaterThan(0);
  for (const { head, text } of dangers) expect(text.startsWith(head) && head.length > 3).toBe(true);
  expect(seal?.cautions.every(({ level }) => level !== 'note')).toBe(true);
});

test('a step that must wait or is in doubt has no card', async () => {
  const sealed = [started('s1', 'seal', '2027-01-12 09:00'), finished('s2', 'seal', '2027-01-12 09:20')];
  expect(await cardsAt(sealed, '2027-01-13 10:00')).toEqual({});
  expect(await cardsAt([...sealed, read('r', 'seal', '2027-01-12 09:10', '22 °C')], '2027-01-12 10:00')).toEqual({});
});

const dosed = inlaidBoard.replace(
  /( {4}calculations:\n)( {6}clock:)/,
  '$1      dose: { use: resin-dose, with: { resin: { from: /parameters/resin }, depth: 6 mm, scaleDivision: 0.1 g, shapes: [{ kind: channel, length: 200 mm, width: 20 mm, count: { from: /makes/pieces } }] } }\n$2',
);

async function doseOf(pieces: number): Promise<readonly string[]> {
  const whole = await answerNumbers({ text: dosed, file: 'dosed', pieces });
  if (!whole.ok) throw new Error(whole.problems.map(({ message }) => message).join(' '));
  const asked = whole.page.steps[0]?.calculations.find(({ use }) => use === 'resin-dose');
  const batch = batchOf([], { method: { file: 'x.yaml', text: dosed }, case: { pieces, start: '2027-01-12', hours } });
  const answer = await shownBatch(batch, at('2027-01-12 09:00'), 'today');
  if (!answer.ok) throw new Error(answer.problems.join(' '));
  const { doses = [] } = answer.shown.cards.seal ?? {};
  expect(doses).toEqual([asked?.verdict?.text]);
  return doses.map(told);
}

test('the dose is that of this many pieces, as the page of the method says it', async () => {
  const [two, six] = [await doseOf(2), await doseOf(6)];
  expect(two[0]).toMatch(/^Mix [\d.]+ g: /);
  expect(six).not.toEqual(two);
});

test('what was read that forbids the step takes its words and its dose away', async () => {
  const going = [started('s1', 'seal', '2027-01-12 09:00')];
  const { seal } = await cardsAt(going, '2027-01-12 09:05');
  expect(seal?.does.map(told)).toEqual(['Brush a thin coat on.']);
  const hot = await cardsAt([...going, read('r', 'seal', '2027-01-12 09:02', '60 °C')], '2027-01-12 09:05');
  expect(hot.seal?.does).toEqual([]);
  expect(hot.seal?.doses).toEqual([]);
  expect(hot.seal?.cautions.length).toBeGreaterThan(0);
  const struck = await cardsAt(
    [...going, read('r', 'seal', '2027-01-12 09:02', '60 °C'), strike('x', 'r', '2027-01-12 09:03')],
    '2027-01-12 09:05',
  );
  expect(struck.seal?.does).toHaveLength(1);
});
