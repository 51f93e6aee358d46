import { afterEach, beforeEach, expect, test } from 'vitest';
import { selectWhole } from '../../src/calculators/view/select-whole.ts';

/** Entered by a finger or not, as browsers tell it that tell it at all. */
const entered = (firesTouchEvents?: boolean) =>
  Object.assign(
    new Event('focusin'),
    firesTouchEvents === undefined ? {} : { sourceCapabilities: { firesTouchEvents } },
  );

const painted = () => new Promise((resolve) => setTimeout(resolve, 150));

let field: HTMLInputElement;
const selected = () => field.value.slice(field.selectionStart ?? 0, field.selectionEnd ?? 0);

beforeEach(() => {
  field = document.createElement('input');
  field.value = '300 mm';
  document.body.append(field);
  field.focus();
  field.setSelectionRange(2, 2);
});
afterEach(() => field.remove());

test.each([
  ['by keys or a mouse', false],
  ['in a browser that does not tell', undefined],
])('a field entered %s is selected whole at once', (_, firesTouchEvents) => {
  selectWhole(field, entered(firesTouchEvents));
  expect(selected()).toBe('300 mm');
});

test('a field entered by a finger is selected whole once that has been seen', async () => {
  selectWhole(field, entered(true));
  expect(selected()).toBe('');
  await painted();
  expect(selected()).toBe('300 mm');
});

test('what was typed meanwhile is not selected, nor a field that was left', async () => {
  selectWhole(field, entered(true));
  field.value = '3005 mm';
  await painted();
  expect(selected()).toBe('');
  field.setSelectionRange(2, 2);
  selectWhole(field, entered(true));
  field.blur();
  await painted();
  expect(selected()).toBe('');
});
