import { act, cleanup, renderHook } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

type Told = (list: { getEntries: () => readonly { startTime: number; duration: number }[] }) => void;

let tell: Told | undefined;

/** A browser that tells of its long frames. */
class Observer {
  static readonly supportedEntryTypes = ['long-animation-frame'];
  constructor(told: Told) {
    tell = told;
  }
  observe(): void {}
}

/** A field and what is asked of it, with the module as a page has it that has just been opened. */
async function opened() {
  vi.resetModules();
  const { answerDrawn, useUnhurried } = await import('../../src/calculators/view/unhurried.ts');
  const asked: string[] = [];
  const hook = renderHook(
    ({ text }) => {
      const now = useUnhurried(text);
      if (asked.at(-1) !== now) asked.push(now);
    },
    { initialProps: { text: '4' } },
  );
  const field = document.createElement('input');
  document.body.replaceChildren(field);
  field.focus();
  const type = (...texts: readonly string[]) => {
    for (const text of texts) {
      hook.rerender({ text });
      act(() => void vi.advanceTimersByTime(120));
    }
  };
  /** An answer comes to stand on the page, in a frame of this length, ms; the browser tells of those over 50. */
  const answered = (took: number) => {
    answerDrawn();
    const startTime = performance.now() - 5;
    act(() => void vi.advanceTimersByTime(took));
    if (took > 50) tell?.({ getEntries: () => [{ startTime, duration: took + 5 }] });
  };
  return { asked, field, type, answered };
}

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal('PerformanceObserver', Observer);
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('where answers are drawn quickly each key is asked about at once', async () => {
  const { asked, type, answered } = await opened();
  answered(12);
  type('42', '420');
  expect(asked).toEqual(['4', '42', '420']);
});

test('where the last answer took long, what was typed is asked about once the typist pauses, and nothing of it is lost', async () => {
  const { asked, type, answered } = await opened();
  answered(90);
  type('42', '420', '4200');
  expect(asked).toEqual(['4']);
  act(() => void vi.advanceTimersByTime(160));
  expect(asked).toEqual(['4', '4200']);
});

test('one long frame is not held against a device for ever', async () => {
  const { asked, type, answered } = await opened();
  answered(90);
  answered(12);
  type('42');
  act(() => void vi.advanceTimersByTime(160));
  answered(12);
  type('420');
  expect(asked).toEqual(['4', '42', '420']);
});

test('a long frame that drew something else holds nothing back', async () => {
  const { asked, type, answered } = await opened();
  answered(12);
  act(() => void vi.advanceTimersByTime(500));
  tell?.({ getEntries: () => [{ startTime: performance.now() - 90, duration: 90 }] });
  type('42', '420');
  expect(asked).toEqual(['4', '42', '420']);
});

test('whoever does not type waits for nothing: a choice is asked about at once', async () => {
  const { asked, field, type, answered } = await opened();
  answered(90);
  field.blur();
  type('42', '420');
  expect(asked).toEqual(['4', '42', '420']);
});

test('a browser that tells nothing of its frames is taken for quick', async () => {
  vi.stubGlobal('PerformanceObserver', undefined);
  const { asked, type, answered } = await opened();
  answered(90);
  type('42', '420');
  expect(asked).toEqual(['4', '42', '420']);
});
