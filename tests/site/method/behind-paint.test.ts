import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { BehindPaint } from '../../../src/site/method/behind-paint.ts';

const frames: (() => void)[] = [];
const paint = () => {
  for (const frame of frames.splice(0)) frame();
  // What a frame puts off comes behind its paint.
  vi.advanceTimersByTime(1);
};

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal('requestAnimationFrame', (frame: () => void) => frames.push(frame));
});
afterEach(() => {
  frames.length = 0;
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

test('what comes while nothing is drawn is taken up at once', () => {
  const taken: string[] = [];
  const replies = new BehindPaint<string>((told) => taken.push(told));
  replies.hear('figures');
  replies.drawn();
  replies.hear('timetable');
  expect(taken).toEqual(['figures', 'timetable']);
});

/** A page that draws figures as they are told. */
function drawing() {
  const taken: string[] = [];
  const replies = new BehindPaint<string>((told) => {
    taken.push(told);
    if (told.startsWith('figures')) replies.hold();
  });
  return { taken, replies };
}

test('what comes before the figures are painted waits for their paint, in its order', () => {
  const { taken, replies } = drawing();
  replies.hear('figures');
  replies.hear('judgement');
  paint();
  expect(taken).toEqual(['figures']);
  replies.drawn();
  replies.hear('timetable');
  expect(taken).toEqual(['figures']);
  paint();
  expect(taken).toEqual(['figures', 'judgement', 'timetable']);
});

test('figures among what waited are painted too before what follows on them', () => {
  const { taken, replies } = drawing();
  for (const told of ['figures', 'figures of the next case', 'judgement']) replies.hear(told);
  replies.drawn();
  paint();
  expect(taken).toEqual(['figures', 'figures of the next case']);
  replies.drawn();
  paint();
  expect(taken).toEqual(['figures', 'figures of the next case', 'judgement']);
});

test('a page that is not painted goes on all the same', () => {
  const { taken, replies } = drawing();
  replies.hear('figures');
  replies.hear('judgement');
  vi.advanceTimersByTime(300);
  expect(taken).toEqual(['figures', 'judgement']);
});
