/** Numbers in the order of their weight, heaviest first; of equal weight the lowest number first. */
export class Heap {
  private readonly items: number[] = [];
  /** Place of each number in `items`, or -1. */
  private readonly places: number[] = [];
  private readonly weights: readonly number[];

  /** @param weights by number; whoever changes one calls `raised` */
  constructor(weights: readonly number[]) {
    this.weights = weights;
  }

  has(item: number): boolean {
    return (this.places[item] ?? -1) >= 0;
  }

  add(item: number): void {
    if (this.has(item)) return;
    this.items.push(item);
    this.places[item] = this.items.length - 1;
    this.rise(this.items.length - 1);
  }

  /** The weight of a number grew. */
  raised(item: number): void {
    if (this.has(item)) this.rise(this.places[item] as number);
  }

  /** Take the heaviest. */
  take(): number | undefined {
    const top = this.items[0];
    const last = this.items.pop();
    if (top === undefined || last === undefined) return undefined;
    this.places[top] = -1;
    if (this.items.length > 0) {
      this.items[0] = last;
      this.places[last] = 0;
      this.sink(0);
    }
    return top;
  }

  private before(one: number, two: number): boolean {
    const difference = (this.weights[one] as number) - (this.weights[two] as number);
    return difference > 0 || (difference === 0 && one < two);
  }

  private exchange(one: number, two: number): void {
    const [first, second] = [this.items[one] as number, this.items[two] as number];
    this.items[one] = second;
    this.items[two] = first;
    this.places[second] = one;
    this.places[first] = two;
  }

  private rise(from: number): void {
    for (let at = from; at > 0; ) {
      const parent = (at - 1) >> 1;
      if (!this.before(this.items[at] as number, this.items[parent] as number)) return;
      this.exchange(at, parent);
      at = parent;
    }
  }

  private sink(from: number): void {
    for (let at = from; ; ) {
      let best = at;
      for (const child of [2 * at + 1, 2 * at + 2])
        if (child < this.items.length && this.before(this.items[child] as number, this.items[best] as number))
          best = child;
      if (best === at) return;
      this.exchange(at, best);
      at = best;
    }
  }
}
