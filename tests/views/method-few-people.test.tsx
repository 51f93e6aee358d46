import { cleanup, render } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { studentSheet } from '../../src/method/documents/student.ts';
import { answerMethod } from '../../src/method/page/answer.ts';
import { MethodView } from '../../src/site/method/MethodView.tsx';
import { readMethodTexts } from '../../src/store/index.ts';

afterEach(cleanup);

const text = readMethodTexts().find(({ id }) => id === 'salvaged-ash-amber')?.text ?? '';
const file = 'methods/salvaged-ash-amber.yaml';
async function pageWith(people: number) {
  const answered = await answerMethod({ text, file, people });
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
  return answered.page;
}
const section = (id: string) => document.querySelector(`section[aria-labelledby="${id}"]`)?.textContent ?? '';
const judged = () =>
  [...document.querySelectorAll('[data-part="brief"] dt')].find((term) => term.textContent === 'Judged')
    ?.nextElementSibling?.textContent ?? '';

test('a case without a timetable is not judged as if all were well, at the head, among the findings or on paper', async () => {
  const page = await pageWith(1);
  render(<MethodView page={page} />);
  const why = '“Weigh and mix the resin” and “Pour” need 2 people at once; 1 is there.';
  expect(section('times')).toContain(`There is no timetable. ${why}`);
  expect(section('times')).toContain('This would help:2 people instead of 1: with them there is a plan');
  expect(judged()).toMatch(/^Not to be done so: there is no timetable/);
  expect(section('found')).toContain(why);
  expect(document.body.textContent).not.toMatch(/Every rule( of the house)? is kept/);
  const { blocks } = studentSheet(page, { made: '2027-01-12' } as Parameters<typeof studentSheet>[1]);
  expect(JSON.stringify(blocks)).toContain(`Do not begin by this sheet. There is no timetable for it. ${why}`);
});

test('with enough people it is judged as before', async () => {
  const page = await pageWith(3);
  render(<MethodView page={page} />);
  expect(judged()).toBe('Every rule is kept');
  expect(section('found')).toContain('Every rule of the house is kept.');
});
