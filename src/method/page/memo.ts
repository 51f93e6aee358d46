/** A map that forgets what was put in longest ago, so that a page left open for a day holds no more than at noon. */
export class ShortMemory<Key, Value> extends Map<Key, Value> {
  readonly #most: number;

  constructor(most: number) {
    super();
    this.#most = most;
  }

  override set(key: Key, value: Value): this {
    this.delete(key);
    super.set(key, value);
    for (const oldest of this.keys()) {
      if (this.size <= this.#most) break;
      this.delete(oldest);
    }
    return this;
  }
}
