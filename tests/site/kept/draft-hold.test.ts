import { describe, expect, test, vi } from 'vitest';
import type { Channel } from '../../../src/site/kept/channel.ts';
import { DraftHold, type Holding } from '../../../src/site/kept/draft-hold.ts';

/** Locks as the Web Locks API describes them, of one name: at once or never, in line, or taken from whoever holds it. */
class Locks {
  #holder: { lost: (error: Error) => void } | undefined;
  #line: (() => void)[] = [];

  request(_: string, options: LockOptions, use: (lock: Lock | null) => Promise<unknown>): Promise<unknown> {
    if (options.ifAvailable && this.#holder) return Promise.resolve(use(null));
    return new Promise((resolve, reject) => {
      const start = () => {
        const holder = { lost: reject };
        this.#holder = holder;
        void use({} as Lock).then((value) => {
          resolve(value);
          if (this.#holder === holder) this.#next();
        });
      };
      if (options.steal) {
        const from = this.#holder;
        start();
        from?.lost(new DOMException('taken', 'AbortError'));
      } else if (this.#holder) {
        this.#line.push(start);
        options.signal?.addEventListener('abort', () => {
          this.#line = this.#line.filter((each) => each !== start);
          reject(new DOMException('given up', 'AbortError'));
        });
      } else start();
    });
  }

  #next(): void {
    this.#holder = undefined;
    this.#line.shift()?.();
  }
}

/** Tabs that hear each other, each with what happened in it. */
function browser(withLocks: boolean) {
  const locks = withLocks ? (new Locks() as unknown as LockManager) : undefined;
  const ends = new Set<Channel>();
  return (asleep = false) => {
    const said: string[] = [];
    const end: Channel = {
      onmessage: null,
      postMessage: (data) => {
        for (const other of ends) if (other !== end) other.onmessage?.({ data } as MessageEvent);
      },
      close: () => ends.delete(end),
    };
    if (!asleep) ends.add(end);
    const hold = new DraftHold({
      id: 'a',
      onChange: (holding: Holding) => said.push(holding),
      store: async () => said.push('store'),
      renew: async () => said.push('renew'),
      lost: () => said.push('lost'),
      locks,
      channel: end,
    });
    return { hold, said };
  };
}

describe.each([
  ['with locks', true],
  ['without locks, as on plain http', false],
] as const)('a draft in two tabs, %s', (_, withLocks) => {
  test('the first may write, the second reads, takes it over once the first has stored, and gives it back', async () => {
    const open = browser(withLocks);
    const one = open();
    await vi.waitFor(() => expect(one.said).toEqual(['renew', 'mine']));
    const other = open();
    await vi.waitFor(() => expect(other.said).toEqual(['other']));
    await other.hold.takeOver();
    await vi.waitFor(() => expect(other.said).toEqual(['other', 'asking', 'renew', 'mine']));
    expect(one.said).toEqual(['renew', 'mine', 'other', 'store']);
    await one.hold.takeOver();
    await vi.waitFor(() => expect(one.said.at(-1)).toBe('mine'));
    expect(other.said.slice(-2)).toEqual(['other', 'store']);
    one.hold.close();
    other.hold.close();
  });
});

describe('with locks', () => {
  test('the second gets the draft, read anew, when the first is closed', async () => {
    const open = browser(true);
    const one = open();
    await vi.waitFor(() => expect(one.said).toContain('mine'));
    const other = open();
    await vi.waitFor(() => expect(other.said).toEqual(['other']));
    one.hold.close();
    await vi.waitFor(() => expect(other.said).toEqual(['other', 'renew', 'mine']));
    other.hold.close();
  });

  test('a tab that sleeps loses the draft all the same, and is told to put by what it holds', async () => {
    const open = browser(true);
    const sleeper = open(true);
    await vi.waitFor(() => expect(sleeper.said).toContain('mine'));
    const other = open();
    await vi.waitFor(() => expect(other.said).toEqual(['other']));
    await other.hold.takeOver();
    await vi.waitFor(() => expect(other.said.at(-1)).toBe('mine'));
    await vi.waitFor(() => expect(sleeper.said).toEqual(['renew', 'mine', 'other', 'lost']));
    sleeper.hold.close();
    other.hold.close();
  });

  test('one that is closed while it waits never gets it', async () => {
    const open = browser(true);
    const one = open();
    await vi.waitFor(() => expect(one.said).toContain('mine'));
    const other = open();
    await vi.waitFor(() => expect(other.said).toEqual(['other']));
    other.hold.close();
    one.hold.close();
    await Promise.resolve();
    expect(other.said).toEqual(['other']);
    const third = open();
    await vi.waitFor(() => expect(third.said.at(-1)).toBe('mine'));
    third.hold.close();
  });
});
