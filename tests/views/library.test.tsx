import { cleanup, render, screen, within } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { gatherLibrary } from '../../src/site/plugin/library.ts';
import Library from '../../src/site/reference/Library.tsx';
import LibraryEntry from '../../src/site/reference/LibraryEntry.tsx';

afterEach(cleanup);

const rooms = gatherLibrary();
const roomOf = (name: string) => {
  const room = rooms.find((each) => each.name === name);
  if (!room) throw new Error(`No entry ${name}`);
  return room;
};

test('the list names every entry of the package and leads to its page', () => {
  render(<Library rooms={rooms.map(({ name, about, items }) => ({ name, about, count: items.length }))} />);
  for (const { name, items } of rooms) {
    const link = screen.getByRole('link', { name: new RegExp(`^kerf-and-cure/${name}\\b`) });
    expect(link.getAttribute('href')).toBe(`/reference/library/${name}`);
    expect(link.textContent).toContain(`${items.length} exports`);
  }
});

test('a page says of an equation what goes in with its units, and where it is read', () => {
  const { container } = render(<LibraryEntry room={roomOf('movement')} />);
  const heading = screen.getByRole('heading', { level: 3, name: /^changeByCoefficient/ });
  const item = within(heading.closest('section') as HTMLElement);
  expect(item.getByText('dimension at the start, mm')).toBeTruthy();
  expect(item.getByText(/^function changeByCoefficient\(/)).toBeTruthy();
  expect(item.getByText('wood-handbook-13-2').tagName).toBe('CODE');
  expect(container.textContent).toContain('fpl-gtr-190, Eq. 13-2');
  // Names between back quotes are code, and no mark of the docstring is left.
  for (const code of container.querySelectorAll('pre')) code.remove();
  expect(container.textContent).not.toMatch(/`|@param|@returns/);
});

test('every export of every entry has a place that can be linked to, and no two have the same', () => {
  for (const room of rooms) {
    const { container, unmount } = render(<LibraryEntry room={room} />);
    const ids = [...container.querySelectorAll('[id]')].map(({ id }) => id);
    expect(new Set(ids).size, room.name).toBe(ids.length);
    for (const { name } of room.items) expect(ids).toContain(name);
    unmount();
  }
});

test('what reads files says that it runs in Node alone', () => {
  render(<LibraryEntry room={roomOf('store')} />);
  expect(screen.getByText(/runs in Node alone/)).toBeTruthy();
});
