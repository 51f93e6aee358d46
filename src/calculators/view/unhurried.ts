import { useEffect, useState } from 'react';

/** Whoever has pressed no key for so long has paused, ms: longer than a quick typist takes to the next. */
const pause = 160;

/** When the answer that stands on the page came there, on the page's own clock, ms. */
let drawnAt = Number.NaN;
let tookLong = false;
let takesLong = false;

/** Tell that another answer has just come to stand on the page; it is about to be laid out and painted. */
export function answerDrawn(): void {
  watchFrames();
  takesLong = tookLong;
  tookLong = false;
  drawnAt = performance.now();
}

let watched = false;

/** Frames of over 50 ms are told by the browsers that cheap phones have; where they are not told, no answer is taken for slow. */
function watchFrames(): void {
  if (watched) return;
  watched = true;
  const type = 'long-animation-frame';
  if (!globalThis.PerformanceObserver?.supportedEntryTypes?.includes(type)) return;
  new PerformanceObserver((list) => {
    const holdsIt = list
      .getEntries()
      .some((frame) => frame.startTime <= drawnAt && drawnAt <= frame.startTime + frame.duration);
    if (holdsIt) tookLong = true;
  }).observe({ type });
}

/**
 * What is asked, at the pace that this device can draw answers. A key that comes while an answer is being painted waits for it: where the last one
 * took long, the next is worked out once the typist pauses; elsewhere at once.
 */
export function useUnhurried<Asked>(asked: Asked): Asked {
  const [held, setHeld] = useState(asked);
  const waits = held !== asked && (takesLong || tookLong) && isTypedIn(document.activeElement);
  if (held !== asked && !waits) setHeld(asked);
  useEffect(() => {
    if (!waits) return;
    const timer = setTimeout(() => setHeld(asked), pause);
    return () => clearTimeout(timer);
  }, [waits, asked]);
  return waits ? held : asked;
}

const isTypedIn = (element: Element | null) => element instanceof HTMLInputElement && element.type === 'text';
