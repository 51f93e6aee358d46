import { chromium } from '@playwright/test';
import { browserArguments, browserPath } from '../scripts/browser.ts';

/** What a reader waits for when typing a digit, ms. */
export interface Typing {
  /** Longest time from the key to the start of its handling: what a busy main thread costs. */
  delay: number;
  /** Longest time from the key to the next paint. */
  paint: number;
}

/** The calculator with the least to work out: what typing costs in any form. */
export const plainest = 'width-change';

/** Fields to type in, by calculator: one that changes the whole answer. */
const fields: Readonly<Record<string, string>> = {
  [plainest]: 'width',
  'pour-heat': 'depth',
  'working-time': 'mass',
  'cure-clock': 'shopTemperature',
  'resin-dose': 'depth',
  'finish-and-moisture': 'thickness',
  'finish-coats': 'length',
};

/** How many times slower than this machine the phone is. */
const slowdown = 4;
const digits = '3141592';

/**
 * Type into calculators of a served site on a slowed-down processor, a digit every 120 ms, as a quick typist does.
 *
 * @param origin of the site
 * @returns the longest delays by calculator
 */
export async function typing(origin: string): Promise<Map<string, Typing>> {
  const browser = await chromium.launch({ executablePath: browserPath(), args: browserArguments });
  const found = new Map<string, Typing>();
  for (const [calculator, field] of Object.entries(fields)) {
    const page = await browser.newPage({ viewport: { width: 360, height: 740 } });
    await page.goto(`${origin}/calculators/${calculator}`, { waitUntil: 'networkidle' });
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
    await page.evaluate(() => {
      const seen: [number, number][] = [];
      Object.assign(globalThis, { seen });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries() as PerformanceEventTiming[]) {
          if (entry.name === 'keydown' || entry.name === 'input')
            seen.push([entry.processingStart - entry.startTime, entry.duration]);
        }
      }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
    });
    const input = page.locator(`[data-field="${field}"] input`).first();
    // From a touch on the field to the first digit a thumb takes longer than this.
    await input.focus();
    await page.waitForTimeout(800);
    await input.fill('');
    await input.pressSequentially(digits.slice(0, 2), { delay: 120 });
    await input.press('Backspace');
    await input.press('Backspace');
    await input.pressSequentially(digits.slice(2, 4), { delay: 120 });
    await page.waitForTimeout(600);
    const seen = await page.evaluate(() => (globalThis as unknown as { seen: [number, number][] }).seen);
    found.set(calculator, {
      delay: Math.max(0, ...seen.map(([delay]) => delay)),
      paint: Math.max(0, ...seen.map(([, paint]) => paint)),
    });
    await page.close();
  }
  await browser.close();
  return found;
}
