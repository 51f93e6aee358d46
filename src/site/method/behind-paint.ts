/** How long something is held back at most, ms: a page that nobody sees is not painted. */
const longest = 300;

/**
 * Holds back what a worker tells while figures that it told before are on their way to the screen. Whatever a page takes up meanwhile stands before
 * their paint, on a slow phone for as long as it takes to draw them.
 */
export class BehindPaint<Told> {
  readonly #take: (told: Told) => void;
  readonly #held: Told[] = [];
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(take: (told: Told) => void) {
    this.#take = take;
  }

  /** Take up what is told, now or behind the paint, in the order in which it was told. */
  hear(told: Told): void {
    if (this.#timer === undefined) this.#take(told);
    else this.#held.push(told);
  }

  /** Figures are to be drawn: what is told next waits for their paint. */
  hold(): void {
    this.#timer ??= setTimeout(() => this.#goOn(), longest);
  }

  /** They stand in the page and are painted with its next frame. */
  drawn(): void {
    if (this.#timer !== undefined) requestAnimationFrame(() => setTimeout(() => this.#goOn()));
  }

  #goOn(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    while (this.#timer === undefined) {
      const next = this.#held.shift();
      if (next === undefined) return;
      this.#take(next);
    }
  }
}
