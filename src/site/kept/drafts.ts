import type { Channel } from './channel.ts';
import { allThings, dropThings, type Kept, type KeptThing, newId, oneThing, putThings } from './database.ts';

/** A method that is being written, as it was typed. */
export interface Draft {
  id: string;
  name: string;
  text: string;
  /** When it was begun and changed last, ms since 1970. */
  made: number;
  changed: number;
  /** What the editor can undo, in its own form, where it fits this very text; on the page a function that writes it down when it is stored. */
  history?: unknown;
}

/** A draft's history, written down. */
export const writtenHistory = (history: unknown): unknown => (typeof history === 'function' ? history() : history);

/** Something kept as a draft that cannot be read as one: shown as it is, never dropped unasked. */
export interface DamagedDraft {
  id: string;
  content: string;
}

/** Everything that the bench shows of its drafts. The same object as long as nothing changes. */
export interface Shelf {
  /** False until the browser has been asked. */
  loaded: boolean;
  /** The last changed first. */
  drafts: readonly Draft[];
  damaged: readonly DamagedDraft[];
  /** How the last write ended; where it is not `kept`, what was typed since lasts as long as the page. */
  storage: Kept;
  /** Ids of drafts that are not stored as they stand. */
  unstored: readonly string[];
}

/** Typing is stored when it pauses for so long, ms; and at once where the page is left. */
const pause = 250;

/** A history of more characters than this is not kept: the text is. */
const longestHistory = 400_000;

/** A kept thing as a draft, if it is one. */
export function readDraft(thing: KeptThing): Draft | undefined {
  const { id, name, text, made, changed, history } = thing;
  if (typeof name !== 'string' || typeof text !== 'string' || typeof changed !== 'number') return undefined;
  return {
    id,
    name,
    text,
    changed,
    made: typeof made === 'number' ? made : changed,
    ...(history === undefined ? {} : { history }),
  };
}

/** All that can be saved of a thing that is no draft: its text where it has one, else all of it. */
function contentOf(thing: KeptThing): string {
  if (typeof thing.text === 'string') return thing.text;
  try {
    return JSON.stringify(thing, null, 2);
  } catch {
    return String(thing.text);
  }
}

interface Told {
  kept?: readonly string[];
  dropped?: readonly string[];
}

/** The drafts of this browser: in memory as they stand on the page, in its database soon after, and told to other tabs. */
export class DraftShelf {
  readonly #drafts = new Map<string, Draft>();
  #damaged: readonly DamagedDraft[] = [];
  readonly #unstored = new Set<string>();
  readonly #listeners = new Set<() => void>();
  readonly #channel: Channel | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #storage: Kept = 'kept';
  #loaded = false;
  #shelf: Shelf = { loaded: false, drafts: [], damaged: [], storage: 'kept', unstored: [] };

  constructor(channel?: Channel) {
    this.#channel = channel;
    if (channel)
      channel.onmessage = ({ data }: MessageEvent<Told | null>) => {
        for (const id of data?.kept ?? []) void this.refresh(id);
        for (const id of data?.dropped ?? []) this.#forget(id);
      };
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly shelf = (): Shelf => this.#shelf;

  get(id: string): Draft | undefined {
    return this.#drafts.get(id);
  }

  #tell(): void {
    this.#shelf = {
      loaded: this.#loaded,
      drafts: [...this.#drafts.values()].sort((one, other) => other.changed - one.changed),
      damaged: this.#damaged,
      storage: this.#storage,
      unstored: [...this.#unstored],
    };
    for (const listener of this.#listeners) listener();
  }

  /** Ask the browser for what it keeps. What was typed meanwhile stays. */
  async load(): Promise<void> {
    const things = await allThings('drafts');
    this.#loaded = true;
    if (things === null) this.#storage = 'refused';
    const damaged: DamagedDraft[] = [];
    for (const thing of things ?? []) {
      const draft = readDraft(thing);
      if (!draft) damaged.push({ id: thing.id, content: contentOf(thing) });
      else if (!this.#unstored.has(draft.id)) this.#drafts.set(draft.id, draft);
    }
    this.#damaged = damaged;
    this.#tell();
  }

  /** Read one draft anew, since another tab has changed it. What was typed here and is not stored yet stays. */
  async refresh(id: string): Promise<void> {
    const thing = await oneThing('drafts', id);
    const draft = thing ? readDraft(thing) : undefined;
    if (!draft || this.#unstored.has(id)) return;
    this.#drafts.set(id, draft);
    this.#tell();
  }

  #forget(id: string): void {
    if (this.#unstored.has(id)) return;
    this.#damaged = this.#damaged.filter((each) => each.id !== id);
    this.#drafts.delete(id);
    this.#tell();
  }

  /** A new draft, stored at once. */
  create(name: string, text: string): Draft {
    const now = Date.now();
    const draft = { id: newId(), name, text, made: now, changed: now };
    this.put(draft);
    return draft;
  }

  /** A draft as it stands, stored at once: a new one, or one that was removed. */
  put(draft: Draft): void {
    this.#drafts.set(draft.id, draft);
    this.#unstored.add(draft.id);
    this.#tell();
    void this.flush();
  }

  /**
   * Change a draft, on the page at once and in the database when typing pauses.
   *
   * @param patch a new name, or a new text with the history that fits it; a text without one has none
   */
  change(id: string, patch: { name: string } | { text: string; history?: unknown }): void {
    const before = this.#drafts.get(id);
    if (!before) return;
    const { history: old, ...rest } = before;
    const history = 'text' in patch ? patch.history : old;
    const after = { ...rest, ...patch, changed: Date.now() };
    this.#drafts.set(id, history === undefined ? after : { ...after, history });
    this.#unstored.add(id);
    this.#tell();
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.flush(), pause);
  }

  /** Store all that is not stored yet, now. */
  async flush(): Promise<Kept> {
    clearTimeout(this.#timer);
    const written = [...this.#unstored].map((id) => this.#drafts.get(id)).filter((each) => each !== undefined);
    if (written.length === 0) return this.#storage;
    const kept = await putThings('drafts', written.map(storable));
    // What was typed while it was written is still to be stored.
    if (kept === 'kept')
      for (const draft of written) if (this.#drafts.get(draft.id) === draft) this.#unstored.delete(draft.id);
    this.#storage = kept;
    this.#tell();
    if (kept === 'kept') this.#channel?.postMessage({ kept: written.map(({ id }) => id) } satisfies Told);
    return kept;
  }

  /** Take a draft, or what is damaged, off the shelf. @returns the draft, to be put back */
  remove(id: string): Draft | undefined {
    const draft = this.#drafts.get(id);
    this.#unstored.delete(id);
    this.#forget(id);
    void dropThings('drafts', [id]).then((kept) => {
      if (kept === 'kept') this.#channel?.postMessage({ dropped: [id] } satisfies Told);
      // Where the disk was full there is room now.
      if (this.#unstored.size > 0) void this.flush();
    });
    return draft;
  }

  /** Keep what was typed here and could not be stored as a draft of its own, since another tab has gone on with the first. */
  async fork(id: string, name: string): Promise<Draft | undefined> {
    const draft = this.#drafts.get(id);
    if (!draft || !this.#unstored.delete(id)) return undefined;
    await this.refresh(id);
    return this.create(name, draft.text);
  }
}

/** A draft as it is stored: without a history that is out of all proportion. */
function storable(whole: Draft): KeptThing {
  const { history: kept, ...draft } = whole;
  const history = writtenHistory(kept);
  if (history === undefined) return draft;
  return JSON.stringify(history).length > longestHistory ? draft : { ...draft, history };
}
