import type { Channel } from './channel.ts';

/** Whether this tab may write a draft: one tab at a time does. */
export type Holding = 'asking' | 'mine' | 'other';

/** How long another tab is given to answer or to store what it holds, ms. */
const patience = { answer: 300, store: 1_500 };

interface Told {
  id: string;
  /** `who` asks who holds it, `held` answers; `give` asks for it, `given` says that all is stored and it may be taken. */
  say: 'who' | 'held' | 'give' | 'given';
}

interface HoldOptions {
  id: string;
  /** Called with each change. */
  onChange: (holding: Holding) => void;
  /** Store what is typed and not stored yet. */
  store: () => Promise<unknown>;
  /** Read the draft anew before it is written here: another tab may have changed it. */
  renew: () => Promise<unknown>;
  /** The draft was taken without having been given: this tab was asleep. What it still holds must not be written over the other’s. */
  lost: () => void;
  /** `navigator.locks`; a page on plain http, as in a classroom, has none, and tabs then ask each other. */
  locks: LockManager | undefined;
  channel: Channel | undefined;
}

/** Hold a draft for writing, give it up when another tab takes it over, and get it when that tab is closed. */
export class DraftHold {
  readonly #options: HoldOptions;
  readonly #name: string;
  readonly #waiting = new AbortController();
  #holding: Holding = 'asking';
  #given = false;
  #release: (() => void) | undefined;
  #heard: ((say: Told['say']) => void) | undefined;
  #closed = false;

  constructor(options: HoldOptions) {
    this.#options = options;
    this.#name = `kerf-draft:${options.id}`;
    const { channel } = options;
    if (channel)
      channel.onmessage = ({ data }: MessageEvent<Told | null>) => data?.id === options.id && this.#hear(data.say);
    void this.#start();
  }

  #become(holding: Holding): void {
    if (this.#closed || this.#holding === holding) return;
    this.#holding = holding;
    this.#options.onChange(holding);
  }

  #say(say: Told['say']): void {
    if (!this.#closed) this.#options.channel?.postMessage({ id: this.#options.id, say } satisfies Told);
  }

  #hear(say: Told['say']): void {
    this.#heard?.(say);
    if (this.#holding !== 'mine') return;
    if (say === 'who') this.#say('held');
    if (say === 'give') {
      // Read-only from here on, so that nothing is typed behind what is being stored.
      this.#given = true;
      this.#become('other');
      void this.#options.store().then(() => this.#say('given'));
    }
  }

  /** Whether another tab says this within the time. */
  #hears(wanted: Told['say'], within: number): Promise<boolean> {
    return new Promise((resolve) => {
      const timer = setTimeout(() => resolve(false), within);
      this.#heard = (say) => {
        if (say !== wanted) return;
        clearTimeout(timer);
        resolve(true);
      };
    });
  }

  async #start(): Promise<void> {
    const { locks, channel } = this.#options;
    if (locks) {
      const got = await this.#request(locks, { ifAvailable: true });
      if (!got) this.#wait(locks);
      return;
    }
    if (!channel) return this.#mine();
    const held = this.#hears('held', patience.answer);
    this.#say('who');
    if (await held) this.#become('other');
    else await this.#mine();
  }

  async #mine(): Promise<void> {
    await this.#options.renew();
    this.#given = false;
    this.#become('mine');
  }

  /** In line behind the tab that holds it: it is free once that tab is closed, also by a crash. */
  #wait(locks: LockManager): void {
    this.#become('other');
    void this.#request(locks, { signal: this.#waiting.signal });
  }

  /** Ask for the lock and keep it until it is given up or taken. @returns whether it was got */
  #request(locks: LockManager, options: LockOptions): Promise<boolean> {
    return new Promise((resolve) => {
      locks
        .request(this.#name, options, async (lock) => {
          resolve(lock !== null);
          if (!lock || this.#closed) return;
          await new Promise<void>((release) => {
            this.#release = release;
            void this.#mine();
          });
        })
        .catch(() => {
          resolve(false);
          if (this.#closed || options.signal?.aborted) return;
          // Another tab has taken it.
          const given = this.#given || this.#holding !== 'mine';
          this.#wait(locks);
          if (!given) this.#options.lost();
        });
    });
  }

  /** Take the draft over from the tab that holds it, once that has stored what was typed, or does not answer. */
  async takeOver(): Promise<void> {
    const { locks } = this.#options;
    this.#become('asking');
    const given = this.#hears('given', this.#options.channel ? patience.store : 0);
    this.#say('give');
    await given;
    if (this.#closed) return;
    if (locks) await this.#request(locks, { steal: true });
    else await this.#mine();
  }

  /** Give it up, so that another tab may have it. */
  close(): void {
    this.#closed = true;
    this.#waiting.abort();
    this.#release?.();
    this.#options.channel?.close();
  }
}
