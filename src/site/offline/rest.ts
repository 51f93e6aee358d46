/** A page is in use for so long after a tap, a key or a scroll, ms. */
const inUseFor = 1000;
/** A file waits no longer than this, ms: a page that is used without a pause is kept all the same. */
const longest = 3000;
const look = 100;

/** Tells when no page is in use: what is kept for later must not slow down what is done now. */
export class Rest {
  #used = Number.NEGATIVE_INFINITY;

  /** Somebody has just tapped, typed or scrolled. */
  used(): void {
    this.#used = performance.now();
  }

  /** Settled once no page is in use, at once where none is. */
  async comes(): Promise<void> {
    const begun = performance.now();
    const isUsed = (now: number) => now - this.#used < inUseFor && now - begun < longest;
    while (isUsed(performance.now())) await new Promise((resolve) => setTimeout(resolve, look));
  }
}
