import { cleanup, render } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { studentSheet } from '../../src/method/documents/student.ts';
import { answerMethod } from '../../src/method/page/answer.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { MethodView } from '../../src/site/method/MethodView.tsx';
import { minutesText } from '../../src/site/method/time-words.ts';
import { readMethodTexts } from '../../src/store/index.ts';

afterEach(cleanup);

const text = readMethodTexts().find(({ id }) => id === 'salvaged-ash-amber')?.text ?? '';

test('the list of steps says that its times are work, with as many people as each takes, as the student’s sheet does', async () => {
  const answered = await answerMethod({ text, file: 'methods/salvaged-ash-amber.yaml', pieces: 3, people: 3 });
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
  const { page } = answered;
  render(<MethodView page={page} />);
  const lines = [...document.querySelectorAll('[data-part="step-list"] li')].map(({ textContent }) => textContent);
  const sheet = JSON.stringify(studentSheet(page, { made: '2027-01-12' } as Parameters<typeof studentSheet>[1]));
  let sum = 0;
  for (const [at, { title, people, hands }] of page.steps.entries()) {
    const work = people * (hands.setUp + hands.each * 3);
    sum += work;
    const with2 = people > 1 ? `, ${people} people` : '';
    expect(lines[at]).toBe(`${title} ${minutesText(work, defaultUnits)} of work${with2}`);
  }
  // What the steps are together is what the head of the page says.
  expect(sum).toBeCloseTo(page.brief.hands, 6);
  expect(page.steps.some(({ people }) => people > 1)).toBe(true);
  expect(sheet).toMatch(/ of work, 2 people"/);
  expect(document.querySelector('section[aria-labelledby="times"] figcaption')?.textContent).toContain('by the clock');
});
