import { afterEach, expect, test } from 'vitest';
import { giveTo, takeFrom } from '../../src/calculators/view/carry-over.ts';

const form = () => {
  const part = document.createElement('form');
  part.innerHTML = `
    <p data-field="heated"><input type="checkbox" value="yes" checked></p>
    <p data-field="dusty"><input type="checkbox" value="yes"></p>
    <p data-field="cut"><input type="radio" name="cut" value="flat" checked><input type="radio" name="cut" value="rift"></p>`;
  document.body.append(part);
  return part;
};
const boxes = (part: Element) => [...part.querySelectorAll('input')].map(({ checked }) => checked);

afterEach(() => document.body.replaceChildren());

test('a box that was ticked as sent and is cleared is cleared in the live form, once', () => {
  const sent = form();
  (sent.querySelector('[data-field=heated] input') as HTMLInputElement).click();
  const carried = takeFrom(sent);
  const live = form();
  giveTo(live, carried);
  expect(boxes(live)).toEqual([false, false, true, false]);
  giveTo(live, carried);
  expect(boxes(live)).toEqual([false, false, true, false]);
});

test('a box that was ticked, and another choice of several, are taken over; what nobody touched is not', () => {
  const sent = form();
  (sent.querySelector('[data-field=dusty] input') as HTMLInputElement).click();
  (sent.querySelector('[value=rift]') as HTMLInputElement).click();
  const carried = takeFrom(sent);
  expect(carried.fields).toHaveLength(2);
  const live = form();
  giveTo(live, carried);
  expect(boxes(live)).toEqual([true, true, false, true]);
});
