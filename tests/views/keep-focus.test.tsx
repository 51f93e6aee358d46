import { afterEach, beforeEach, expect, test } from 'vitest';
import { focusKeeper } from '../../src/site/chrome/keep-focus.ts';

const byId = (id: string) => document.getElementById(id) as HTMLElement;

beforeEach(() => {
  document.body.innerHTML = `
    <ul id="list">
      <li id="one"><input id="name-one"><button id="away-one">Remove</button></li>
      <li id="two"><input id="name-two"><button id="away-two">Remove</button></li>
      <li id="three"><input id="name-three"><button id="away-three">Remove</button></li>
    </ul>
    <button id="add">Add</button>`;
  // This browser of the tests draws nothing.
  HTMLElement.prototype.checkVisibility ??= () => true;
});
afterEach(() => {
  document.body.innerHTML = '';
});

/** What has the focus after this was pressed and the page changed so. */
function after(pressed: string, change: () => void): string | undefined {
  byId(pressed).focus();
  const give = focusKeeper(byId(pressed));
  change();
  give();
  return document.activeElement?.id;
}

test('the focus goes to what stands in the place of what went', () => {
  expect(after('away-two', () => byId('two').remove())).toBe('away-three');
});

test('the last of a list hands it to the one before', () => {
  expect(after('away-three', () => byId('three').remove())).toBe('away-two');
});

test('where the whole list goes, it goes to what is left beside it', () => {
  const main = document.createElement('main');
  main.append(...document.body.children);
  document.body.append(main);
  expect(after('away-one', () => byId('list').remove())).toBe('add');
});

test('it stays where a page has put it itself, and where nothing went', () => {
  expect(
    after('away-one', () => {
      byId('one').remove();
      byId('add').focus();
    }),
  ).toBe('add');
  expect(after('away-two', () => undefined)).toBe('away-two');
});
