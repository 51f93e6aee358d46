import { act, cleanup, render, screen } from '@testing-library/react';
import type { ComponentType } from 'react';
import { afterEach, expect, test } from 'vitest';
import { fetchedPart } from '../../src/site/page/fetched-part.tsx';

afterEach(cleanup);

const Card = ({ name }: { name: string }) => <p>Card of {name}</p>;
const words = { meanwhile: 'One moment.', notFetched: 'The card could not be fetched. What you wrote is kept.' };

test('a part is fetched when it is first shown, says so meanwhile, and once for all that show it', async () => {
  let fetches = 0;
  let come = (_part: ComponentType<{ name: string }>) => {};
  const Part = fetchedPart<{ name: string }>(() => {
    fetches += 1;
    return new Promise((resolve) => {
      come = resolve;
    });
  }, words);
  expect(fetches).toBe(0);
  render(
    <>
      <Part name="maple" />
      <Part name="ash" />
    </>,
  );
  expect(screen.getAllByRole('status').map(({ textContent }) => textContent)).toEqual(['One moment.', 'One moment.']);
  await act(async () => come(Card));
  expect(screen.getByText('Card of maple')).toBeTruthy();
  expect(screen.getByText('Card of ash')).toBeTruthy();
  expect(screen.queryByRole('status')).toBeNull();
  expect(fetches).toBe(1);
});

test('a part that cannot be had says so, what is kept, and offers to be asked for again', async () => {
  const Part = fetchedPart<{ name: string }>(() => Promise.reject(new Error('no connection')), words);
  await act(async () => {
    render(<Part name="maple" />);
  });
  expect(screen.getByRole('alert').textContent).toContain(words.notFetched);
  expect(screen.getByRole('button', { name: 'Try again' })).toBeTruthy();
});
