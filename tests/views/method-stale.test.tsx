import { readFileSync } from 'node:fs';
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { answerNumbers } from '../../src/method/page/answer.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { emptied } from '../../src/site/method/CaseForm.tsx';
import { caseForm } from '../../src/site/method/case-form.ts';
import { MethodView } from '../../src/site/method/MethodView.tsx';
import { readMethodTexts } from '../../src/store/index.ts';

afterEach(cleanup);

const text = readMethodTexts().find(({ id }) => id === 'first-tray')?.text ?? '';
const answered = await answerNumbers({
  text,
  file: 'methods/first-tray.yaml',
  shop: readFileSync('methods/shop.yaml', 'utf8'),
});
if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
const { page } = answered;

test('a page that was not updated says so at its head, beside how it is judged', () => {
  const { rerender } = render(<MethodView page={page} />);
  const brief = () => document.querySelector('[data-part="brief"]')?.textContent ?? '';
  expect(brief()).not.toContain('Not updated');
  rerender(<MethodView page={page} stale />);
  expect(brief()).toMatch(/^Not updated: .*for the last numbers that could be read/);
  expect(screen.getByText('For the last numbers that could be read:')).toBeTruthy();
});

test('an emptied field says what is taken in its place', () => {
  const form = caseForm(page);
  expect(emptied(form, { length: ' ', pieces: '', start: '' }, defaultUnits)).toEqual([
    'Pieces, 1',
    'Length of the tray, 400 mm',
  ]);
  expect(emptied(form, { length: '420 mm' }, defaultUnits)).toEqual([]);
});

test('what a piece costs is said once', () => {
  render(<MethodView page={page} />);
  expect(
    (document.getElementById('buy')?.parentElement?.textContent ?? '').match(/A piece costs [^.]*\d/g),
  ).toHaveLength(1);
});
