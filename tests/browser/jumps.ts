import type { Page } from '@playwright/test';

/** Shares of the screen that jumped without anybody's doing. */
export interface Jumps {
  /** In the moment after a face of ours came. */
  ofFaces: number;
  others: number;
}

/** Note from now on how far the browser saw things jump that nobody moved. */
export async function watchShift(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const seen = window as unknown as { jumps: [at: number, share: number][]; faces: number[] };
    seen.jumps = [];
    seen.faces = [];
    document.fonts.addEventListener('loadingdone', () => seen.faces.push(performance.now()));
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries())
        seen.jumps.push([entry.startTime, (entry as unknown as { value: number }).value]);
    }).observe({ type: 'layout-shift', buffered: true });
  });
}

/** What was noted: a stand-in of a machine without the usual faces is wider than ours, and text gives way when ours comes late. */
export function jumpsOf(page: Page): Promise<Jumps> {
  return page.evaluate(() => {
    const { jumps, faces } = window as unknown as { jumps: [number, number][]; faces: number[] };
    const total: Jumps = { ofFaces: 0, others: 0 };
    for (const [at, share] of jumps)
      total[faces.some((came) => Math.abs(at - came) < 150) ? 'ofFaces' : 'others'] += share;
    return total;
  });
}
