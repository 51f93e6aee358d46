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

test('whoever goes on to another field while the live form settles stays there, and keys that pick are pressed where they were meant', async () => {
  const two = () => {
    const part = wood();
    part.insertAdjacentHTML('beforeend', '<p data-field="width"><input type="text" value="240 mm"></p>');
    return part;
  };
  const sent = two();
  field(sent).focus();
  field(sent).value = 'hard map';
  const carried = takeFrom(sent, undefined, ['ArrowDown']);
  sent.remove();
  const live = two();
  const heard: EventTarget[] = [];
  live.addEventListener('keydown', ({ target }) => target && heard.push(target));
  const left = giveTo(live, carried);
  expect(document.activeElement).toBe(field(live));
  const next = live.querySelector<HTMLInputElement>('[data-field=width] input') as HTMLInputElement;
  next.focus();
  await finishOn(live, left, () => Promise.resolve());
  expect(document.activeElement).toBe(next);
  expect(heard).toEqual([field(live)]);
});

test('whoever goes on from a button while the live form settles stays where they are, and the button is pressed', async () => {
  const withButton = () => {
    const part = wood();
    part.insertAdjacentHTML('beforeend', '<button type="button">Add a row</button>');
    return part;
  };
  const button = (part: Element) => part.querySelector('button') as HTMLButtonElement;
  const sent = withButton();
  button(sent).focus();
  const carried = takeFrom(sent, button(sent));
  sent.remove();
  const live = withButton();
  let presses = 0;
  button(live).addEventListener('click', () => {
    presses += 1;
  });
  const left = giveTo(live, carried);
  expect(document.activeElement).toBe(button(live));
  field(live).focus();
  await finishOn(live, left, () => Promise.resolve());
  expect(document.activeElement).toBe(field(live));
  expect(presses).toBe(1);
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
