import { afterPaint } from './after-paint.ts';

/** A control that one types in: it has been entered by the time that a page scrolls, so that no press is lost on it. */
const typedIn = 'input:not([type="radio"], [type="checkbox"], [type="file"]), textarea, select';

/**
 * Bring a field that somebody entered clear of the strip with the answer, which comes to the foot of a phone at that moment. A browser does so
 * for whoever comes by the keyboard, and not for a finger.
 */
export function keepClearOfStrip(entered: EventTarget | null): void {
  if (!(entered instanceof HTMLElement) || !entered.matches(typedIn)) return;
  afterPaint(() => {
    const strip = entered
      .closest('[data-part="entry"]')
      ?.querySelector('[data-part="glance"]')
      ?.getBoundingClientRect();
    const field = entered.getBoundingClientRect();
    // The room that style keeps for the strip is what it is scrolled by.
    if (strip && strip.height > 0 && field.bottom > strip.top && field.top < strip.bottom)
      entered.scrollIntoView({ block: 'nearest' });
  });
}
