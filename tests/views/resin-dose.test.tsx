import { cleanup, render, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { viewOf } from './view-of.tsx';

const ResinDose = await viewOf('resin-dose');

const sheet = () => document.querySelector('[data-document="mixing-sheet"]') as HTMLElement;
const paper = () => document.querySelector('[data-part="paper"]') as HTMLElement;
const rows = () =>
  [...sheet().querySelectorAll('tbody tr')].map((row) => [...row.children].map((cell) => cell.textContent?.trim()));

const at = (inputs: Record<string, string>) =>
  window.history.replaceState(null, '', `/page?${new URLSearchParams(inputs)}`);

beforeEach(() => {
  localStorage.clear();
  at({});
});
afterEach(cleanup);

test('the server writes the worked case with its mixing sheet', () => {
  const page = renderToString(<ResinDose />);
  expect(page).toContain('Mixing sheet');
  expect(page).toContain('moss green');
});

describe('the mixing sheet', () => {
  test('says large what to pour, and small what a scale shows that runs on', () => {
    // 2:1 by weight: 100 of A, 3 % of 150 g stirred into it, as the guides say, then 50 of B.
    at({
      mass: '150 g',
      mixRatio: '2:1',
      mixRatioBy: 'weight',
      colours: 'moss green, paste 3 %',
      scaleDivision: '0.1 g',
      cupMass: '150 g',
    });
    render(<ResinDose />);
    expect(rows()).toEqual([['Cup 1, moss green', '', '100.0 g', '4.5 g', '50.0 g', '104.5 g, then 154.5 g', '', '']]);
    expect([...sheet().querySelectorAll('th')].map((one) => one.textContent)).toContain('Scale then shows');
    expect([...sheet().querySelectorAll('strong')].map((one) => one.textContent)).toEqual(
      expect.arrayContaining(['100.0 g', '4.5 g', '50.0 g']),
    );
    for (const one of sheet().querySelectorAll('strong')) expect(one.textContent).not.toContain('154.5');
  });

  test('has a box for the zero, for each part and for the pigment, each with a name', async () => {
    at({ mass: '150 g', colours: 'moss green, paste 3 %', scaleDivision: '0.1 g', cupMass: '150 g' });
    render(<ResinDose />);
    const boxes = within(sheet()).getAllByRole('checkbox');
    expect(boxes.map((box) => box.getAttribute('aria-label'))).toEqual([
      'Cup 1, moss green, Cup on, zero',
      'Cup 1, moss green, Pour A',
      'Cup 1, moss green, Pigment',
      'Cup 1, moss green, Pour B',
    ]);
    await userEvent.click(boxes[1] as HTMLElement);
    expect((boxes[1] as HTMLInputElement).checked).toBe(true);
  });

  test('measured by volume gives each part by itself, and no zero', () => {
    at({ volume: '150 ml', depth: '3 mm', measureBy: 'volume', volumeDivision: '1 ml', colours: '', cupMass: '200 g' });
    render(<ResinDose />);
    expect(rows()).toEqual([['Cup 1, clear', '100 ml', '50 ml', '', '']]);
  });

  test('names the resin and how it is known, the temperature that was taken, the minutes, the grams of a piece, and the pieces of a cup', () => {
    at({ colours: '', shapes: 'channel, 480 mm, 22 mm, 12', depth: '6 mm', cupMass: '300 g', sealCoat: '' });
    render(<ResinDose />);
    const text = sheet().textContent ?? '';
    for (const part of [
      'a generic kind, from memory and no maker’s sheet',
      'Every cup out within',
      'Slow casting epoxy',
      'shop 25 °C (assumed)',
      'pieces 1 to 12: 70.1 g each',
      'no layer deeper than 19 mm',
    ])
      expect(text).toContain(part);
    expect(rows()[0]).toContain('1 to 3, 70.1 g each');
    expect(document.body.textContent).toContain('The ratio is that of a generic kind');
  });

  test.each([
    ['the sheet names no ratio', { resin: '{"name":"Nothing known"}' }],
    ['one layer is too deep', { depth: '30 mm', layers: '1' }],
    ['the parts cannot be measured', { scaleDivision: '5 g' }],
  ])('is not there where %s', (_, inputs) => {
    at(inputs);
    render(<ResinDose />);
    expect(sheet()).toBeNull();
    expect(document.querySelector('[data-part="verdict"]')).not.toBeNull();
  });

  test('says of a sheet of one’s own that its figures are the sheet’s', () => {
    at({
      resin: JSON.stringify({
        name: 'Ours',
        mixByVolume: '2:1',
        mixByWeight: '100:43',
        potLife: '6 h',
        potLifeMass: '500 g',
        greatestDepth: '20 mm',
      }),
      colours: '',
    });
    render(<ResinDose />);
    expect(sheet().textContent).toContain('Ours: figures of its sheet');
  });

  test('gives the grams of each round into each of several pieces', () => {
    // 480 × 22 × 6 mm at 1.1067 g/ml: 70.1 g a piece, a half of it in each of two layers.
    at({
      colours: '',
      shapes: 'channel, 480 mm, 22 mm, 12',
      depth: '6 mm',
      layers: '2',
      cupMass: '500 g',
      sealCoat: '',
    });
    render(<ResinDose />);
    expect(sheet().textContent).toMatch(/35\.1 g each/);
  });

  const printed = async () => {
    vi.stubGlobal('print', vi.fn());
    await userEvent.click(within(sheet()).getByRole('button', { name: 'Print this sheet' }));
    vi.unstubAllGlobals();
  };

  test('speaks of skin and heat before the cups, on paper', async () => {
    render(<ResinDose />);
    await printed();
    const text = paper().textContent ?? '';
    expect(text.indexOf('Danger.')).toBeGreaterThan(-1);
    expect(text.indexOf('Danger.')).toBeLessThan(text.indexOf('Pour A'));
  });

  test('has a line for each thing that hurts at the bench, without the reasons, on paper', async () => {
    render(<ResinDose />);
    await printed();
    const lines = [...paper().querySelectorAll('[data-level]')].map((line) => line.textContent ?? '');
    for (const part of [/gloves/, /[Gg]oggles/, /sawdust/, /Leftovers|leftovers/])
      expect(lines.join('\n')).toMatch(part);
    for (const line of lines) expect(line.length).toBeLessThan(260);
    expect(within(sheet()).queryByRole('button', { name: 'Why' })).toBeNull();
  });

  test('begins on the screen with its rows, before the other figures, and says no caution that the answer says', () => {
    render(<ResinDose />);
    const page = document.body.textContent ?? '';
    const from = page.indexOf('Every cup out within');
    const places = ['Every cup out within', 'Seal coat', 'Pour A', 'Each cup: A first', 'Part A by volume'].map(
      (words) => page.indexOf(words, from),
    );
    expect(places.every((place) => place > 0)).toBe(true);
    expect(places).toEqual([...places].sort((one, other) => one - other));
    const cautions = [...document.querySelectorAll('li[data-level], p[data-level]:not([data-part])')].map((line) =>
      [...line.childNodes].filter((node) => node.nodeType === 3).map(({ textContent }) => textContent?.trim()),
    );
    const texts = cautions.map((words) => words.join(' '));
    expect(texts.length).toBeGreaterThan(8);
    expect(new Set(texts).size).toBe(texts.length);
  });

  test('prints by itself, in the reader’s units, and leaves the page as it was afterwards', async () => {
    const print = vi.fn(() => expect(document.documentElement.hasAttribute('data-printing')).toBe(true));
    vi.stubGlobal('print', print);
    render(<ResinDose />);
    await userEvent.click(within(sheet()).getByRole('button', { name: 'Print this sheet' }));
    expect(print).toHaveBeenCalledOnce();
    expect(paper().textContent).toContain('Every cup out within');
    expect(document.body.textContent).not.toContain('⟦');
    window.dispatchEvent(new Event('afterprint'));
    expect(document.documentElement.hasAttribute('data-printing')).toBe(false);
    vi.unstubAllGlobals();
  });
});
