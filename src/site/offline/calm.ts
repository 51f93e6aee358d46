/** A notice waits until nobody has typed for so long, ms. */
export const quiet = 10_000;

const kindsWithoutText = new Set(['button', 'submit', 'reset', 'checkbox', 'radio', 'range', 'color', 'file', 'image']);

/** Whether an element takes what is typed. */
export function takesText(element: Element | null): boolean {
  if (!element) return false;
  // An editor may stand in a shadow of its own.
  if (element.shadowRoot) return takesText(element.shadowRoot.activeElement);
  if (element instanceof HTMLInputElement) return !kindsWithoutText.has(element.type);
  return (
    element instanceof HTMLTextAreaElement ||
    element instanceof HTMLSelectElement ||
    (element instanceof HTMLElement && element.isContentEditable)
  );
}

/** Tells when nobody is typing: no field has the focus, and none was typed in for a while. */
export class Calm {
  #typed = Number.NEGATIVE_INFINITY;
  readonly #now: () => number;

  /** @param now a clock that never jumps, ms; the machine's own may be wrong and be set right meanwhile */
  constructor(now: () => number = () => performance.now()) {
    this.#now = now;
  }

  /** Something was typed. */
  typed(): void {
    this.#typed = this.#now();
  }

  /** Whether a notice may come now. */
  is(active: Element | null): boolean {
    return !takesText(active) && this.#now() - this.#typed >= quiet;
  }
}
