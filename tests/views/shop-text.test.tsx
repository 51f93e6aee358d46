import { act, cleanup, render, screen, waitFor } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { changeShop, SiteShopContext } from '../../src/calculators/view/kept-shop.ts';
import { useShopText } from '../../src/site/kept/use-shop-text.ts';
import { CaseLinks } from '../../src/site/method/CaseLinks.tsx';
import { caseOfAddress } from '../../src/site/method/question.ts';

beforeEach(() => {
  localStorage.clear();
  changeShop(() => ({ aside: false }));
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

function Shown() {
  const { text, whose, pending } = useShopText();
  return <p>{`${text ?? 'none'} / ${whose ?? 'nobody'} / ${pending ? 'pending' : 'there'}`}</p>;
}

const ofSite = { shop: 'The lakeside workshop', inputs: {} };

test('a method is worked out with the reader’s own record, else the site’s, unless records are set aside', async () => {
  const fetched = vi.fn(async () => new Response('shop: of the site'));
  vi.stubGlobal('fetch', fetched);
  render(
    <SiteShopContext value={ofSite}>
      <Shown />
    </SiteShopContext>,
  );
  expect(screen.getByText('none / site / pending')).toBeTruthy();
  await waitFor(() => expect(screen.getByText('shop: of the site / site / there')).toBeTruthy());
  expect(fetched).toHaveBeenCalledWith('/data/shop.yaml');
  act(() => void changeShop(() => ({ text: 'shop: my own', aside: false })));
  expect(screen.getByText('shop: my own / reader / there')).toBeTruthy();
  act(() => void changeShop((before) => ({ ...before, aside: true })));
  expect(screen.getByText('none / reader / there')).toBeTruthy();
  act(() => void changeShop(() => ({ aside: true })));
  expect(screen.getByText('none / site / there')).toBeTruthy();
});

test('a site without a record asks for none', () => {
  const fetched = vi.fn();
  vi.stubGlobal('fetch', fetched);
  render(<Shown />);
  expect(screen.getByText('none / nobody / there')).toBeTruthy();
  expect(fetched).not.toHaveBeenCalled();
});

test('a method leads with its very case to its sheets and a batch, and to a class and the bench', () => {
  render(<CaseLinks id="first-tray" asked={{ pieces: 6, start: '2027-01-12', set: { wood: 'sugar-maple' } }} />);
  const links = screen.getAllByRole('link').map((link) => link.getAttribute('href'));
  expect(links).toEqual([
    '/sheets?method=first-tray&pieces=6&start=2027-01-12&wood=sugar-maple',
    '/quote?method=first-tray&pieces=6&start=2027-01-12&wood=sugar-maple',
    '/batches?open=first-tray&pieces=6&start=2027-01-12&wood=sugar-maple',
    '/class?method=first-tray&pieces=6&start=2027-01-12&wood=sugar-maple',
    '/bench?from=first-tray',
  ]);
});

test('the hours that were chosen for the plan go with the case; a class begins with those of its method where none were', () => {
  const asked = caseOfAddress({ calendar: 'six-tuesdays', pieces: '6' });
  const links = () => screen.getAllByRole('link').map((link) => link.getAttribute('href'));
  render(<CaseLinks id="class-of-twelve" asked={asked} taught="other-days" />);
  const query = 'pieces=6&calendar=six-tuesdays';
  expect(links()).toEqual([
    `/sheets?method=class-of-twelve&${query}`,
    `/quote?method=class-of-twelve&${query}`,
    `/batches?open=class-of-twelve&${query}`,
    `/class?method=class-of-twelve&${query}`,
    '/bench?from=class-of-twelve',
  ]);
  cleanup();
  render(<CaseLinks id="class-of-twelve" asked={caseOfAddress({ calendar: '' })} taught="six-tuesdays" />);
  expect(links().slice(0, 4)).toEqual([
    '/sheets?method=class-of-twelve',
    '/quote?method=class-of-twelve',
    '/batches?open=class-of-twelve',
    '/class?method=class-of-twelve&calendar=six-tuesdays',
  ]);
});
