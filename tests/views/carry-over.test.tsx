import { afterEach, expect, test } from 'vitest';
import { finishOn, giveTo, holdBack, takeFrom } from '../../src/calculators/view/carry-over.ts';

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

const field = (part: Element) => part.querySelector('input') as HTMLInputElement;
const wood = () => {
  const part = document.createElement('form');
  part.innerHTML = '<p data-field="species"><input type="text" value="Black cherry"></p>';
  document.body.append(part);
  return part;
};
const typed = (text: string) => {
  const sent = wood();
  field(sent).focus();
  field(sent).value = text;
  field(sent).setSelectionRange(text.length, text.length);
  return takeFrom(sent, undefined, ['ArrowDown']);
};

test('whoever types on while the live form settles stays where they are in their text', async () => {
  const carried = typed('har');
  const live = wood();
  const left = giveTo(live, carried);
  field(live).value = 'hard';
  field(live).setSelectionRange(4, 4);
  await finishOn(live, left, () => Promise.resolve());
  expect([field(live).value, field(live).selectionStart]).toEqual(['hard', 4]);
});

test('a key that picks, pressed while earlier ones wait to be pressed again, takes effect after them', async () => {
  const carried = typed('hard map');
  const live = wood();
  const heard: string[] = [];
  live.addEventListener('keydown', (event) => heard.push(event.key));
  const left = giveTo(live, carried);
  const keys = [...left.keys];
  const letThrough = holdBack(live, keys);
  const press = (key: string) =>
    field(live).dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
  press('Enter');
  press('x');
  expect(heard).toEqual(['x']);
  await finishOn(live, { ...left, keys }, () => Promise.resolve());
  expect(heard).toEqual(['x', 'ArrowDown', 'Enter']);
  letThrough();
  press('Escape');
  expect(heard.at(-1)).toBe('Escape');
});
