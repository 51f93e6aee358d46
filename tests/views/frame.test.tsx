import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, describe, expect, onTestFinished, test, vi } from 'vitest';
import * as z from 'zod/mini';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { quantityField } from '../../src/calculators/kit/fields.ts';
import { Frame } from '../../src/calculators/view/Frame.tsx';
import { keepUnits, UnitsSwitch } from '../../src/calculators/view/units.tsx';
import { refuse } from '../../src/model/evidence/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { sample } from '../calculators/kit/sample.ts';

const calculator: Calculator = sample;

/** Longer than the delay with which the address follows the fields. */
const settle = () => act(() => new Promise((resolve) => setTimeout(resolve, 320)));

const open = (search = '') => {
  window.history.replaceState(null, '', `/page${search}`);
  return render(<Frame calculator={calculator} />);
};
const field = (label: RegExp) => screen.getByLabelText<HTMLInputElement>(label);
const headline = () => document.querySelector('[data-figure="area"]') as HTMLElement;

/** Draw as a browser does, which does not wait until all is done. */
function drawnAsByABrowser(): void {
  const environment = globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean };
  environment.IS_REACT_ACT_ENVIRONMENT = false;
  onTestFinished(() => {
    environment.IS_REACT_ACT_ENVIRONMENT = true;
  });
}

/** A text as a reader leaves it in a field. */
function typed(input: HTMLInputElement, text: string): void {
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(input, text);
  input.dispatchEvent(new Event('input', { bubbles: true }));
}

beforeEach(() => act(() => keepUnits(defaultUnits)));
afterEach(cleanup);

describe('a calculator in a page', () => {
  test('the server writes the worked case’s answer', () => {
    expect(renderToString(<Frame calculator={calculator} />)).toContain('1800 cm²');
  });

  test('from the moment in which a text is seen until its answer is, the answer is marked as of another', async () => {
    open();
    drawnAsByABrowser();
    const seen: string[] = [];
    const look = () => {
      const busy = document.querySelector('[aria-busy]') !== null;
      seen.push(`${field(/^Width/).value}: ${headline().querySelector('output')?.textContent}${busy ? ', busy' : ''}`);
    };
    const looks = new MutationObserver(look);
    looks.observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
    typed(field(/^Width/), '200');
    await vi.waitFor(() => expect(seen.at(-1)).toBe('200: 1200 cm²')).finally(() => looks.disconnect());
    expect(seen.filter((one) => one.includes('1800'))).not.toContain('200: 1800 cm²');
    expect(seen).toContain('200: 1800 cm², busy');
  });

  test('whoever leaves the page between a text’s being seen and its being asked has it in the address', async () => {
    open();
    drawnAsByABrowser();
    const leave = new MutationObserver(() => {
      if (document.querySelector('[aria-busy]')) window.dispatchEvent(new Event('pagehide'));
    });
    leave.observe(document.body, { subtree: true, attributes: true });
    typed(field(/^Width/), '287');
    await vi.waitFor(() => expect(window.location.search).toContain('width=')).finally(() => leave.disconnect());
    expect(window.location.search).toContain('width=287+mm');
  });

  test('answers while one types, and the address follows with the unit', async () => {
    open();
    await userEvent.clear(field(/^Width/));
    await userEvent.type(field(/^Width/), '200');
    expect(headline().textContent).toContain('1200 cm²');
    await settle();
    expect(window.location.search).toContain('width=200+mm');
    expect(field(/^Width/).value).toBe('200');
  });

  test('an address is a worked case', () => {
    open('?width=10+cm&length=10+cm');
    expect(headline().textContent).toContain('100 cm²');
  });

  test('an error stands at its field and the last good answer stays, marked', async () => {
    open();
    await userEvent.click(field(/^Width/));
    await userEvent.keyboard('{End} wide');
    const width = field(/^Width/);
    expect(width.getAttribute('aria-invalid')).toBe('true');
    const described = (width.getAttribute('aria-describedby') ?? '')
      .split(' ')
      .map((id) => document.getElementById(id)?.textContent);
    expect(described.join(' ')).toContain('300 mm wide');
    expect(screen.getByText(/^Not updated/).textContent).toContain('one input to mend');
    expect(headline().textContent).toContain('1800 cm²');
  });

  test('more than one thing to mend stands at the head of the form too, each leading to its field', async () => {
    open('?width=wide&length=600+mm');
    const faults = () => document.querySelector<HTMLElement>('form > [data-part="faults"]');
    expect(faults()).toBeNull();
    await userEvent.type(field(/^Length$/), ' long');
    const names = within(faults() as HTMLElement).getAllByRole('button');
    expect(names.map(({ textContent }) => textContent)).toEqual(['Width', 'Length']);
    await userEvent.click(names[0] as HTMLElement);
    expect(document.activeElement).toBe(field(/^Width/));
    await userEvent.clear(field(/^Width/));
    await userEvent.type(field(/^Width/), '20 cm');
    expect(faults()).toBeNull();
  });

  test('a cleared field stays cleared, in the address too', async () => {
    const { unmount } = open('?width=10+cm&length=10+cm');
    await userEvent.clear(field(/^Width/));
    await settle();
    expect(new URLSearchParams(window.location.search).get('width')).toBe('');
    unmount();
    render(<Frame calculator={calculator} />);
    expect(field(/^Width/).value).toBe('');
  });

  test('what was typed in one set of alternatives comes back with it', async () => {
    open();
    await userEvent.clear(field(/^Length$/));
    await userEvent.type(field(/^Length$/), '777 mm');
    await userEvent.click(screen.getByLabelText('Paced'));
    expect(screen.queryByLabelText(/^Length$/)).toBeNull();
    await settle();
    expect(window.location.search).not.toContain('length');
    await userEvent.click(screen.getByLabelText('Measured'));
    expect(field(/^Length$/).value).toBe('777 mm');
  });

  test('an error of a set that is not shown stands at the choice between the sets', async () => {
    const asking = {
      ...sample,
      compute: (inputs: Parameters<typeof sample.compute>[0]) =>
        inputs.length === undefined && inputs.paces === undefined
          ? refuse('length', 'Nothing says how long it is', 'Measure or pace it.')
          : sample.compute(inputs),
    };
    window.history.replaceState(null, '', '/page');
    render(<Frame calculator={asking} />);
    await userEvent.click(screen.getByLabelText('Paced'));
    expect(screen.queryByText(/Nothing says how long/)).toBeNull();
    await userEvent.clear(field(/^Paces$/));
    expect(screen.queryByLabelText(/^Length$/)).toBeNull();
    expect(screen.getByText(/Nothing says how long it is\. Measure or pace it\./)).toBeTruthy();
    await userEvent.click(screen.getByLabelText('Measured'));
    await userEvent.clear(field(/^Length$/));
    expect(screen.getAllByText(/Nothing says how long/)).toHaveLength(1);
  });

  test('what was typed is in the address soon after the field is left, behind the paint', async () => {
    const frames: FrameRequestCallback[] = [];
    open();
    fireEvent.change(field(/^Width/), { target: { value: '210' } });
    const drawing = vi.spyOn(window, 'requestAnimationFrame').mockImplementation((frame) => frames.push(frame));
    fireEvent.focusOut(field(/^Width/));
    expect(window.location.search).toBe('');
    for (const frame of frames) frame(0);
    drawing.mockRestore();
    // A moment, and less than the fields wait otherwise.
    await act(() => new Promise((resolve) => setTimeout(resolve)));
    expect(window.location.search).toContain('width=210+mm');
  });

  test('what was typed is in the address before a link leads away, so that Back leads to it', () => {
    open();
    const link = document.body.appendChild(document.createElement('a'));
    link.href = '#elsewhere';
    fireEvent.change(field(/^Width/), { target: { value: '210' } });
    let found = '';
    link.addEventListener('click', (event) => {
      event.preventDefault();
      found = window.location.search;
    });
    fireEvent.click(link);
    link.remove();
    expect(found).toContain('width=210+mm');
  });

  test('the keypad of a phone has digits alone only where a bare number is read', () => {
    open();
    expect(field(/^Width/).inputMode).toBe('decimal');
    cleanup();
    const timed = {
      ...sample,
      inputs: z.strictObject({
        width: quantityField({ label: 'Width', dimension: 'time', minimum: 1, maximum: 1e5, examples: ['45 min'] }),
      }),
      alternatives: [],
    };
    render(<Frame calculator={timed} />);
    expect(field(/^Width/).inputMode).toBe('text');
  });

  test('a bare number keeps its unit when the reader turns to inches', async () => {
    render(<UnitsSwitch />);
    open('?width=250+mm&length=100+mm');
    await userEvent.clear(field(/^Width/));
    await userEvent.type(field(/^Width/), '254');
    await userEvent.click(screen.getByRole('button', { name: 'inch' }));
    await settle();
    expect(field(/^Width/).value).toBe('254 mm');
    expect(document.querySelector('[data-field="width"]')?.textContent).toContain('= 10 in');
    expect(window.localStorage.getItem('kerf-units')).toBe('inch thirty-seconds');
  });

  test('a page opened in inches starts from the case in inches', () => {
    act(() => keepUnits({ ...defaultUnits, system: 'inch' }));
    open();
    expect(field(/^Width/).value).toBe('12 in');
  });

  test('start again empties the address', async () => {
    open('?width=10+cm&length=10+cm&keep=1');
    await userEvent.click(screen.getByRole('button', { name: 'Start again' }));
    expect(window.location.search).toBe('?keep=1');
    expect(field(/^Width/).value).toBe('300 mm');
  });

  test('going back shows what the address holds', () => {
    open('?width=10+cm&length=10+cm');
    window.history.replaceState(null, '', '/page?width=20+cm&length=10+cm');
    fireEvent.popState(window);
    expect(field(/^Width/).value).toBe('20 cm');
  });

  test('two on a page do not take each other’s inputs', async () => {
    window.history.replaceState(null, '', '/page?a.width=10+cm&b.width=20+cm');
    render(
      <>
        <Frame calculator={calculator} prefix="a" />
        <Frame calculator={calculator} prefix="b" />
      </>,
    );
    const [a, b] = screen.getAllByRole('region');
    expect(within(a as HTMLElement).getByLabelText<HTMLInputElement>(/^Width/).value).toBe('10 cm');
    expect(within(b as HTMLElement).getByLabelText<HTMLInputElement>(/^Width/).value).toBe('20 cm');
  });
});
