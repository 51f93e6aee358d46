import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { answerNumbers, answersTo, MethodMemory } from '../../../src/method/page/answer.ts';
import { PageTeller, patched, withoutDocuments } from '../../../src/method/page/patch.ts';
import type { MethodPage } from '../../../src/method/page/types.ts';

const text = readFileSync(new URL('../../../methods/repair-and-reoil.yaml', import.meta.url), 'utf8');
const memory = new MethodMemory();

async function pageFor(more: object): Promise<MethodPage> {
  const answered = await answerNumbers({ text, file: 'methods/one.yaml', ...more }, memory);
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
  return answered.page;
}

test('pages told one after another arrive whole, and what did not change is the same object', async () => {
  const [one, other] = [await pageFor({}), await pageFor({ pieces: 2 })];
  const timed: MethodPage = { ...other, impossible: { why: 'No hours.', changes: [] } };
  const teller = new PageTeller();
  let held: MethodPage | undefined;
  const holds: MethodPage[] = [];
  for (const page of [one, other, timed, one, { ...one, steps: [...one.steps].reverse() }]) {
    // As a worker hands it over.
    held = patched(held, structuredClone(teller.tell(page)));
    expect(held).toStrictEqual(page);
    expect(JSON.stringify(held)).toBe(JSON.stringify(page));
    holds.push(held);
  }
  const [, second, third] = holds;
  expect(third?.steps.every((step, at) => step === second?.steps[at])).toBe(true);
  expect(third?.parameters).toBe(second?.parameters);
  expect(holds[1]?.steps.some((step, at) => step === holds[0]?.steps[at])).toBe(true);
  // Within a step that changed, what did not is the same.
  expect(holds[1]?.steps.every(({ cautions }, at) => cautions === holds[0]?.steps[at]?.cautions)).toBe(true);
});

test('of another page only what differs is told, wherever it stands', async () => {
  const [one, other] = [await pageFor({}), await pageFor({ pieces: 2 })];
  const teller = new PageTeller();
  const whole = JSON.stringify(teller.tell(one)).length;
  expect(JSON.stringify(teller.tell(other)).length).toBeLessThan(whole / 4);
  expect(teller.tell(structuredClone(other))).toEqual({ within: [], gone: [] });
});

test('figures arrive in their order, where one is new among the others too', () => {
  const pageWith = (figures: object) => ({ steps: [{ calculations: [{ figures }] }] }) as unknown as MethodPage;
  const teller = new PageTeller();
  const held = patched(undefined, teller.tell(pageWith({ renewal: 6, care: 1 })));
  const after = pageWith({ wait: 28, renewal: 6, care: 1 });
  expect(JSON.stringify(patched(held, teller.tell(after)))).toBe(JSON.stringify(after));
});

test('a name that every object has is a name of the page like any other', () => {
  const before = JSON.parse('{"steps":[{"id":"cut","__proto__":{"a":1}}]}') as MethodPage;
  const after = JSON.parse('{"steps":[{"id":"cut","__proto__":{"a":2},"constructor":"x"}]}') as MethodPage;
  const teller = new PageTeller();
  const held = patched(undefined, teller.tell(before));
  expect(JSON.stringify(patched(held, teller.tell(after)))).toBe(JSON.stringify(after));
  expect(({} as { a?: number }).a).toBeUndefined();
});

test('a page on a screen carries no sheet to print', async () => {
  const sent = withoutDocuments(await pageFor({}));
  expect(sent.steps.flatMap(({ calculations }) => calculations).flatMap(({ documents }) => documents)).toEqual([]);
});

test('to a page that follows somebody the timetable before stands until there is another, and one that stays is not told again', async () => {
  const pages: MethodPage[] = [];
  for await (const answer of answersTo({ text, file: 'methods/one.yaml' }, memory))
    if (answer.ok) pages.push(answer.page);
  const [numbers, , last] = pages as [MethodPage, MethodPage, MethodPage];
  const teller = new PageTeller();
  let held = patched(undefined, structuredClone(teller.tell(numbers, true)));
  expect(held.timetable).toBeUndefined();
  held = patched(held, structuredClone(teller.tell(last, true)));
  const { timetable } = held;
  expect(timetable?.steps.length).toBeGreaterThan(0);
  for (const toCome of ['judgement', 'timetable'] as const) {
    held = patched(held, structuredClone(teller.tell({ ...numbers, toCome }, true)));
    expect([held.toCome, held.timetable === timetable, held.brief.lasts]).toEqual([toCome, true, last.brief.lasts]);
  }
  const patch = structuredClone(teller.tell(structuredClone(last), true));
  expect(JSON.stringify(patch).length).toBeLessThan(200);
  held = patched(held, patch);
  expect(held).toStrictEqual(last);
  expect(held.timetable).toBe(timetable);
  // Whoever does not follow has no timetable that is not its own.
  expect(patched(held, structuredClone(teller.tell(numbers))).timetable).toBeUndefined();
});

test('to a page that follows somebody the drawings before stand until the figures are told, and are then its own', async () => {
  const tray = readFileSync(new URL('../../../methods/first-tray.yaml', import.meta.url), 'utf8');
  const pageOf = async (length: string): Promise<MethodPage> => {
    const answered = await answerNumbers({ text: tray, file: 'methods/tray.yaml', set: { length } }, memory);
    if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
    return withoutDocuments(answered.page);
  };
  const outlineOf = ({ steps }: MethodPage) =>
    steps.flatMap(({ calculations }) => calculations).find(({ name }) => name === 'outline');
  const [one, other] = [await pageOf('420 mm'), await pageOf('440 mm')];
  const teller = new PageTeller();
  let held = patched(undefined, structuredClone(teller.tell(one, true)));
  const drawn = outlineOf(held)?.drawings;
  expect(drawn?.length).toBeGreaterThan(0);
  held = patched(held, structuredClone(teller.tell({ ...other, toCome: 'judgement' }, true)));
  expect(outlineOf(held)?.figures).toEqual(outlineOf(other)?.figures);
  expect(outlineOf(held)?.drawings).toBe(drawn);
  held = patched(held, structuredClone(teller.tell({ ...other, toCome: 'timetable' }, true)));
  expect(outlineOf(held)?.drawings).toEqual(outlineOf(other)?.drawings);
  expect(outlineOf(held)?.drawings).not.toEqual(drawn);
});
