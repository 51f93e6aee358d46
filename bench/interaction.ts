import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type CDPSession, chromium, type Locator, type Page } from '@playwright/test';
import { browserArguments, browserPath } from '../scripts/browser.ts';
import { builtBareSite } from './bare-site.ts';
import { serve } from './serve.ts';

/** What a reader waits for after a key or a tap, ms. */
export interface Wait {
  /**
   * Longest time from the key or tap to the next paint, of all of its kind. A key that is let go changes nothing, so that it counts in the visit's
   * metric alone: what is painted next after it may be the answer that waits for a pause.
   */
  paint: number;
  /** Longest that the main thread was at work for one of them, its own work behind the paint with it; other programs do not count in it. */
  work: number;
  /** The control with the longest time to the next paint. */
  at: string;
}

/** One visit of a page: the waits by kind of control, and the visit's Interaction to Next Paint as the metric is defined, ms. */
export interface Visit {
  waits: Map<string, Wait>;
  /** The longest wait; of every fifty the longest is left out. */
  inp: number;
}

interface Kind {
  find: string;
  /** How many of each a page is asked for: the first ones, which stand where a reader begins. */
  most: number;
  act: (control: Locator) => Promise<void>;
}

/** Kinds of control of a calculator. */
const kinds: Readonly<Record<string, Kind>> = {
  typing: { find: '[data-field] input[type="text"]:not([role])', most: 6, act: type },
  naming: { find: '[data-field] input[role="combobox"]', most: 2, act: name },
  choosing: { find: '[data-field] input[type="radio"]:not(:checked)', most: 4, act: press },
  list: { find: '[data-field] select', most: 2, act: choose },
  units: { find: '[data-calculator] input[type="radio"][name*="units"]:not(:checked)', most: 1, act: press },
  opening: { find: '[data-calculator] summary, [data-calculator] button[aria-expanded="false"]', most: 4, act: press },
  ticking: { find: '[data-calculator] input[type="checkbox"]', most: 2, act: press },
  adding: { find: '[data-field] button', most: 3, act: press },
};

/** How many times slower than this machine the phone is. */
const slowdown = 4;

/** A tap, then two digits and back, a key every 120 ms, as a quick typist does. */
async function type(control: Locator): Promise<void> {
  await press(control);
  await control.page().waitForTimeout(300);
  await control.press('End');
  await control.pressSequentially('12', { delay: 120 });
  await control.press('Backspace', { delay: 120 });
  await control.press('Backspace');
}

async function name(control: Locator): Promise<void> {
  await press(control);
  await control.fill('');
  await control.pressSequentially('che', { delay: 120 });
  await control.press('Escape');
}

/** How long a finger is down, ms. */
const tap = 80;

/** What touches a page: to make it anew would be work beside the tap that is measured. */
const fingers = new WeakMap<Page, CDPSession>();

async function press(control: Locator): Promise<void> {
  const box = await control.boundingBox({ timeout: 5000 });
  if (!box) throw new Error('What is to be tapped is not on the page');
  const page = control.page();
  const session = fingers.get(page) ?? (await page.context().newCDPSession(page));
  fingers.set(page, session);
  const [x, y] = [box.x + Math.min(30, box.width / 2), box.y + box.height / 2];
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
  await page.waitForTimeout(tap);
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

async function choose(control: Locator): Promise<void> {
  const values = await control
    .locator('option')
    .evaluateAll((all) => all.map((each) => (each as HTMLOptionElement).value));
  await control.focus();
  await control.selectOption(values.at(-1) ?? null);
}

const workOf = async (session: CDPSession): Promise<number> => {
  const { metrics } = await session.send('Performance.getMetrics');
  return 1000 * (metrics.find(({ name: metric }) => metric === 'TaskDuration')?.value ?? 0);
};

const vitals = new URL('web-vitals.iife.js', import.meta.resolve('web-vitals'));

/** What is kept on the page by its watch. */
interface Watched {
  seen: number[];
  inp: number;
  webVitals: typeof import('web-vitals');
}

/** What the event timing of the page saw since it was last asked, ms: the longest of any key or tap that can change something. */
const longest = (page: Page) => page.evaluate(() => Math.max(0, ...(globalThis as unknown as Watched).seen.splice(0)));

async function watched(page: Page): Promise<CDPSession> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  await page.evaluate(() => {
    const here = globalThis as unknown as Watched;
    here.seen = [];
    here.inp = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as PerformanceEventTiming[])
        if (entry.interactionId && entry.name !== 'keyup') here.seen.push(entry.duration);
    }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
    here.webVitals.onINP(
      ({ value }) => {
        here.inp = value;
      },
      { reportAllChanges: true, durationThreshold: 16 },
    );
  });
  return session;
}

/** Use every kind of control of a page that is open, on a slowed-down processor. */
async function visit(page: Page): Promise<Visit> {
  const session = await watched(page);
  const waits = new Map<string, Wait>();
  for (const [kind, { find, most, act }] of Object.entries(kinds)) {
    const controls = page.locator(find).filter({ visible: true });
    const count = Math.min(most, await controls.count());
    for (let at = 0; at < count; at += 1) {
      // What was pressed is no longer among those not yet chosen, or not yet open.
      const control = controls.nth(Math.min(at, (await controls.count()) - 1));
      if ((await controls.count()) === 0) break;
      // In one turn: a live form may take the place of the page as sent while one waits for it to stand still.
      await control.evaluate((element) => element.scrollIntoView({ block: 'center' }));
      await page.waitForTimeout(500);
      await longest(page);
      const label = await control.evaluate((element) => {
        const field = element.closest('[data-field]')?.getAttribute('data-field') ?? '';
        return `${field} ${element.tagName === 'INPUT' ? '' : (element.textContent ?? '').slice(0, 24)}`.trim();
      });
      const before = await workOf(session);
      await act(control);
      await page.waitForTimeout(700);
      const work = (await workOf(session)) - before;
      const paint = await longest(page);
      const last = waits.get(kind);
      waits.set(kind, {
        paint: Math.max(paint, last?.paint ?? 0),
        work: Math.max(work, last?.work ?? 0),
        at: !last || paint > last.paint ? label : last.at,
      });
    }
  }
  return { waits, inp: await page.evaluate(() => (globalThis as unknown as Watched).inp) };
}

/**
 * Use every kind of control of calculators of a served site, and of a form of the bare site, by touch and keys on a slowed-down processor.
 *
 * @param bare origin of the bare site
 * @param origin of the site
 * @param calculators their ids
 * @returns each visit by the calculator's id, that of the bare form first, by `bare form`; a kind that a page has not is left out
 */
export async function interaction(
  bare: string,
  origin: string,
  calculators: readonly string[],
): Promise<Map<string, Visit>> {
  const browser = await chromium.launch({ executablePath: browserPath(), args: browserArguments });
  const found = new Map<string, Visit>();
  const visited = async (id: string, address: string) => {
    const page = await browser.newPage({
      viewport: { width: 360, height: 740 },
      locale: 'en-GB',
      isMobile: true,
      hasTouch: true,
    });
    await page.addInitScript({ content: `${readFileSync(vitals, 'utf8')}; globalThis.webVitals = webVitals;` });
    await page.goto(address, { waitUntil: 'networkidle' });
    found.set(id, await visit(page));
    await page.close();
  };
  await visited('bare form', bare);
  for (const calculator of calculators) await visited(calculator, `${origin}/calculators/${calculator}`);
  await browser.close();
  return found;
}

/** A table of visits, a line each; the last column is the slowest control of all. */
export function printWaits(visits: ReadonlyMap<string, Visit>): void {
  console.log(
    `\nFrom a key or tap to the next paint on a processor ${slowdown} times as slow, ms: Interaction to Next Paint of a visit (INP), and the longest of each kind (the main thread's own work for it)`,
  );
  const names = Object.keys(kinds);
  console.log(`${''.padEnd(22)}${'INP'.padStart(5)}${names.map((each) => each.padStart(11)).join('')}   slowest`);
  for (const [page, { waits, inp }] of visits) {
    const cells = names.map((kind) => {
      const wait = waits.get(kind);
      return (wait ? `${wait.paint.toFixed(0)} (${wait.work.toFixed(0)})` : '').padStart(11);
    });
    const slowest = [...waits].reduce((one, other) => (one[1].paint >= other[1].paint ? one : other));
    console.log(`${page.padEnd(22)}${inp.toFixed(0).padStart(5)}${cells.join('')}   ${slowest[0]} ${slowest[1].at}`);
  }
}

// `tsx bench/interaction.ts [calculators with commas] [folder of the site]`
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { calculators } = await import('../src/calculators/index.ts');
  const [some = calculators.map(({ id }) => id).join(), folder] = process.argv.slice(2);
  const root = fileURLToPath(new URL('..', import.meta.url));
  const bare = await serve(builtBareSite(root));
  const server = await serve(folder ?? fileURLToPath(new URL('../build', import.meta.url)));
  printWaits(await interaction(bare.origin, server.origin, some.split(',')));
  server.close();
  bare.close();
}
