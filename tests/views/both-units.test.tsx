import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import type { CalculatorId } from '../../src/calculators/registry.ts';
import { turnScript } from '../../src/calculators/view/both-units.tsx';
import { CalculatorAhead, CalculatorView } from '../../src/calculators/view/CalculatorView.tsx';
import { DrawnCalculator } from '../../src/calculators/view/DrawnCalculator.tsx';
import { withDifferencesOnly } from '../../src/site/built/both-units.ts';
import { shownOf } from './view-of.tsx';

const root = document.documentElement;
beforeEach(() => root.removeAttribute('data-units'));
afterEach(() => root.removeAttribute('data-units'));

/** A calculator as its page is sent. */
async function sent(id: CalculatorId): Promise<string> {
  const live = { shown: await shownOf(id), CalculatorView, CalculatorAhead };
  const { title, summary } = live.shown.calculator;
  const load = () => Promise.reject(new Error('not asked for'));
  return renderToString(
    <DrawnCalculator calculator={{ id, title, summary, asksMarket: false, live, load }} prefix="" />,
  );
}

/** The page as a browser reads it, the script behind the part run. */
function read(html: string): HTMLElement {
  const page = document.createElement('main');
  page.innerHTML = html;
  const script = page.querySelector('template + script');
  new Function('document', turnScript)({ currentScript: script, documentElement: root });
  return page;
}

/** A part without what only tells how it was sent: marks, and ids that follow from the place in a drawing. */
function content(page: HTMLElement): string {
  const ids = new Map<string, string>();
  return (page.querySelector('[data-in]')?.innerHTML ?? '')
    .replace(/ data-both(?:="")?/g, '')
    .replace(/«R\w+»|_R_\w+_/g, (id) => {
      if (!ids.has(id)) ids.set(id, `id-${ids.size}`);
      return ids.get(id) as string;
    });
}

const system = (page: HTMLElement) => page.querySelector('[data-in]')?.getAttribute('data-in');

test.each(calculators.map(({ id }) => id as CalculatorId))(
  '%s: what is turned from the differences alone is the whole drawing in inches; nobody else sees any of it',
  async (id) => {
    const whole = await sent(id);
    const cut = withDifferencesOnly(whole);
    expect(cut.length).toBeLessThan(whole.length);

    const metric = read(cut);
    expect(system(metric)).toBe('metric');
    expect(metric.querySelectorAll('template, script, [data-coming]')).toHaveLength(0);
    expect(content(metric)).toBe(content(read(whole)));

    root.setAttribute('data-units', 'inch');
    const inch = read(cut);
    expect(system(inch)).toBe('inch');
    expect(inch.querySelectorAll('template, script, [data-coming]')).toHaveLength(0);
    expect(content(inch)).toBe(content(read(whole)));
  },
);

test('a width stands in inches, field and answer', async () => {
  root.setAttribute('data-units', 'inch');
  const page = read(withDifferencesOnly(await sent('width-change')));
  expect(page.querySelector<HTMLInputElement>('[data-field="width"] input')?.value).toMatch(/ in$/);
  expect(page.querySelector('[data-figure] output')?.textContent).toMatch(/ in$/);
  expect(page.textContent).not.toMatch(/\d mm\b/);
});
