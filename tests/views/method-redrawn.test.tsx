import { readFileSync } from 'node:fs';
import { cleanup, render } from '@testing-library/react';
import { expect, test } from 'vitest';
import { answersTo, MethodMemory } from '../../src/method/page/answer.ts';
import { PageTeller, patched, withoutDocuments } from '../../src/method/page/patch.ts';
import type { MethodPage } from '../../src/method/page/types.ts';
import { MethodView } from '../../src/site/method/MethodView.tsx';
import { readMethodTexts } from '../../src/store/index.ts';

const text = readMethodTexts().find(({ id }) => id === 'first-tray')?.text ?? '';
const shop = readFileSync('methods/shop.yaml', 'utf8');
/** Ids that a browser counts up are others in each drawing. */
const markup = (root: Element) => root.innerHTML.replace(/[«_]r_?[0-9a-z]+[»_]/gi, 'id');

/** Where two texts part: some of each; nothing where they are the same. */
function firstApart(one: string, other: string): string[] {
  if (one === other) return [];
  const at = [...one].findIndex((letter, place) => letter !== other[place]);
  return [one, other].map((each) => each.slice(Math.max(0, at - 80), at + 120));
}

test('a page that follows somebody who changes it shows, at every answer, what one that is drawn anew shows', async () => {
  const memory = new MethodMemory();
  const teller = new PageTeller();
  let held: MethodPage | undefined;
  const told: MethodPage['toCome'][] = [];
  const live = render(<div />);
  const cases = [
    {},
    { set: { length: '420 mm', wood: 'black-cherry' }, pieces: 3, start: '2027-01-12' },
    { people: 1, start: '2027-01-12', end: '2027-01-13' },
    { set: { finish: 'tung-oil' } },
  ];
  for (const one of cases) {
    for await (const answer of answersTo({ text, file: 'methods/first-tray.yaml', shop, ...one }, memory, true)) {
      if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
      held = patched(held, structuredClone(teller.tell(withoutDocuments(answer.page), true)));
      told.push(held.toCome);
      live.rerender(<MethodView page={held} />);
      const anew = render(<MethodView page={JSON.parse(JSON.stringify(held)) as MethodPage} />);
      expect(firstApart(markup(live.container), markup(anew.container))).toEqual([]);
      anew.unmount();
    }
  }
  const first = ['timetable', 'advice', undefined];
  expect(told).toEqual([...first, ...Array.from({ length: cases.length - 1 }, () => ['judgement', ...first]).flat()]);
  cleanup();
});

test('while a timetable is worked out the one before stands, and says so', async () => {
  const memory = new MethodMemory();
  for await (const answer of answersTo({ text, file: 'methods/first-tray.yaml', shop }, memory)) {
    if (!answer.ok || !answer.page.timetable) continue;
    const { container } = render(<MethodView page={{ ...answer.page, toCome: 'timetable' }} />);
    const times = container.querySelector('section[aria-labelledby="times"]');
    expect(times?.querySelector('[role="status"]')?.textContent).toContain('the timetable of the numbers before');
    expect(times?.querySelector('svg')).not.toBeNull();
    cleanup();
    return;
  }
  throw new Error('There was no timetable.');
});
