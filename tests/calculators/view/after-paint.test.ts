import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { afterPaint } from '../../../src/calculators/view/after-paint.ts';

let frames = new Map<number, () => void>();

/** The page is painted: what asked for a frame is called, and its tasks after it. */
function paint(): void {
  const now = [...frames.values()];
  frames = new Map();
  for (const each of now) each();
  vi.advanceTimersByTime(0);
}

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  frames = new Map();
  vi.stubGlobal('requestAnimationFrame', (each: () => void) => {
    frames.set(frames.size + 1, each);
    return frames.size;
  });
  vi.stubGlobal('cancelAnimationFrame', (id: number) => frames.delete(id));
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('what can wait is done behind the paint, once', () => {
  const act = vi.fn();
  afterPaint(act);
  expect(act).not.toHaveBeenCalled();
  paint();
  vi.advanceTimersByTime(1000);
  expect(act).toHaveBeenCalledOnce();
});

test('on a page that nobody sees it is done all the same, and not again once the page is seen', () => {
  const act = vi.fn();
  afterPaint(act);
  vi.advanceTimersByTime(1000);
  expect(act).toHaveBeenCalledOnce();
  paint();
  expect(act).toHaveBeenCalledOnce();
});
