import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { RawInputs } from '../../src/calculators/kit/calculator.ts';
import { type FoldedAnswer, foldedCase } from '../../src/calculators/kit/folded.ts';
import { Folded, type FoldedProps } from '../../src/calculators/view/Folded.tsx';
import type { Shown } from '../../src/calculators/view/shown.ts';
import { keepUnits } from '../../src/calculators/view/units.tsx';
import { cautionById } from '../../src/model/evidence/cautions.ts';
import { type Caution, answer as good } from '../../src/model/evidence/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { sample } from '../calculators/kit/sample.ts';

const own: Caution = { id: 'edge', level: 'note', text: 'Mind the edge.', own: true, basis: 'shop-practice' };
const calculator: Shown['calculator'] = {
  ...sample,
  compute: (inputs) => {
    const outcome = sample.compute(inputs as never);
    if (!outcome.ok) return outcome;
    const cautions = [own, cautionById('noise'), cautionById('resin-skin')] as Caution[];
    return good({
      ...outcome.value,
      verdict: { level: 'care', text: `Faces: ${outcome.value.figures.area?.value}.` },
      cautions,
    });
  },
};
const preset: RawInputs = { width: '200 mm' };
const said = [cautionById('resin-skin')] as Caution[];

const settle = () => act(() => new Promise((resolve) => setTimeout(resolve, 320)));
const foldedOfPage = () => foldedCase(calculator, preset, ['resin-skin']) as FoldedAnswer;

function props(load: FoldedProps['load'] = async () => ({ default: { calculator } })): FoldedProps {
  const folded = foldedOfPage();
  return { id: 'sample', title: 'Sample', folded, load, preset, prefix: 'sample', headingLevel: 3, said };
}
const field = (label: RegExp) => screen.findByLabelText<HTMLInputElement>(label);
const opener = () => screen.getByRole('button', { name: /^(Change|Close)/ });
const line = () => document.querySelector('[data-part="answer"]')?.textContent;

beforeEach(() => {
  act(() => keepUnits(defaultUnits));
  window.history.replaceState(null, '', '/page');
});
afterEach(cleanup);

test('the page as sent holds the answer, what it was worked for, its figures and a way to its own page, and no form', () => {
  const html = renderToString(<Folded {...props()} />);
  expect(html).toContain('With care');
  expect(html).toContain('Faces: 120000.');
  expect(html).toContain('Worked for: width 200 mm and 2 more.');
  expect(html).toContain('1200 cm²');
  expect(html).toContain('/calculators/sample?width=200+mm&amp;length=600+mm&amp;face=one');
  expect(html).not.toContain('<input');
});

test('what can hurt somebody stands in the open, unless the page says it above; so does what this case brought up', () => {
  render(<Folded {...props()} />);
  const lines = [...document.querySelectorAll('[data-calculator] li[data-level]')].map((item) => item.textContent);
  expect(lines.some((text) => text?.includes('Mind the edge.'))).toBe(true);
  expect(lines.some((text) => text?.includes(cautionById('noise')?.text as string))).toBe(true);
  expect(lines.some((text) => text?.includes(cautionById('resin-skin')?.text as string))).toBe(false);
});

test('nothing is fetched until somebody comes near, and then once', async () => {
  const load = vi.fn(async () => ({ default: { calculator } }));
  render(<Folded {...props(load)} />);
  await settle();
  expect(load).not.toHaveBeenCalled();
  await userEvent.hover(opener());
  await userEvent.click(opener());
  await field(/^Width/);
  expect(load).toHaveBeenCalledTimes(1);
});

test('opening keeps the focus where it was, and the line follows what is typed, also when it is closed again', async () => {
  render(<Folded {...props()} />);
  await userEvent.click(opener());
  const width = await field(/^Width/);
  expect(document.activeElement).toBe(opener());
  expect(opener().getAttribute('aria-expanded')).toBe('true');
  await userEvent.clear(width);
  await userEvent.type(width, '100');
  expect(line()).toContain('Faces: 60000.');
  await userEvent.type(width, 'x');
  // No level stands over an answer that is not to what stands in the fields.
  expect(line()).toMatch(/^Not updated \(an entry cannot be read\): for the last numbers that could be read, /);
  expect(line()).not.toContain('With care');
  expect(document.querySelector('[data-part="answer"]')?.getAttribute('data-level')).toBe('stale');
  expect(line()).toContain('Faces: 60000.');
  await userEvent.type(width, '{Backspace}');
  await settle();
  expect(window.location.search).toContain('sample.width=100+mm');
  await userEvent.click(opener());
  expect(opener().getAttribute('aria-expanded')).toBe('false');
  expect(screen.getByRole('link', { name: 'On a page of its own' }).getAttribute('href')).toContain('width=100+mm');
  await userEvent.click(opener());
  expect((await field(/^Width/)).value).toBe('100');
});

test('what was typed comes first in what it was worked for', async () => {
  render(<Folded {...props()} />);
  await userEvent.click(opener());
  const length = await field(/^Length/);
  await userEvent.clear(length);
  await userEvent.type(length, '300');
  await settle();
  expect(document.querySelector('[data-part="case"]')?.textContent).toBe(
    'Worked for: length 300 mm; width 200 mm and 1 more.',
  );
});

test('an address that carries a case opens it, and another calculator’s does not', async () => {
  window.history.replaceState(null, '', '/page?sample.width=10+cm&sample.length=10+cm');
  render(<Folded {...props()} />);
  expect((await field(/^Width/)).value).toBe('10 cm');
  await settle();
  expect(line()).toContain('Faces: 10000.');
  cleanup();
  window.history.replaceState(null, '', '/page?sample-2.width=10+cm');
  render(<Folded {...props()} />);
  await settle();
  expect(opener().getAttribute('aria-expanded')).toBe('false');
});

test('where it cannot be fetched it says so, and the next try may go better', async () => {
  const load = vi.fn<FoldedProps['load']>(async () => ({ default: { calculator } }));
  load.mockRejectedValueOnce(new Error('offline'));
  load.mockRejectedValueOnce(new Error('offline'));
  render(<Folded {...props(load)} />);
  await userEvent.click(opener());
  await screen.findByText(/could not be fetched/);
  await userEvent.click(screen.getByRole('button', { name: 'Try again' }));
  await field(/^Width/);
});

test('the entries read in the units of the reader', () => {
  const inch = foldedOfPage().askedInch;
  expect(inch?.given.find(({ name }) => name === 'width')?.words).toBe('7 7/8 in');
});
