import { createContext, useContext, useSyncExternalStore } from 'react';
import { readShopDefaults, type ShopDefaults } from '../kit/read-shop-defaults.ts';
import { shopKey as storageKey } from './keeps-own.ts';
import { keptListener } from './kept.ts';

const changed = 'kerf:shop';

/** The shop record that this browser keeps for its reader, or what it does with the site's own. */
export interface KeptShop {
  /** The record as written (YAML), kept as typed even while it cannot be read. */
  text?: string;
  /** What calculators begin with of the last text that could be read. */
  defaults?: ShopDefaults;
  /** True where the reader wants no shop record to be taken, their own or the site's. */
  aside: boolean;
  /** False where the browser refuses to store: it then lasts as long as the page. */
  lasting: boolean;
}

const nothing: KeptShop = { aside: false, lasting: true };

/** Set once the browser has refused to store; from then on this is what is kept. */
let unstored: string | undefined;
let cached: { text: string | null; lasting: boolean; kept: KeptShop } = { text: null, lasting: true, kept: nothing };

function currentText(): string | null {
  if (unstored !== undefined) return unstored;
  try {
    return window.localStorage.getItem(storageKey);
  } catch {
    // A browser may forbid storage altogether.
    return null;
  }
}

/** Read what was kept. What is no entry of ours is taken as the text of a record: it is shown, and never lost. */
function readKept(text: string | null, lasting: boolean): KeptShop {
  if (text === null) return { ...nothing, lasting };
  try {
    const { text: record, defaults, aside } = JSON.parse(text) as Record<string, unknown>;
    const read = readShopDefaults(defaults);
    return {
      ...(typeof record === 'string' ? { text: record } : {}),
      ...(read ? { defaults: read } : {}),
      aside: aside === true,
      lasting,
    };
  } catch {
    return { text, aside: false, lasting };
  }
}

/** What is kept now. The same object as long as nothing changes. */
export function keptShop(): KeptShop {
  const text = currentText();
  const lasting = unstored === undefined;
  if (text !== cached.text || lasting !== cached.lasting) cached = { text, lasting, kept: readKept(text, lasting) };
  return cached.kept;
}

/**
 * Change what is kept, starting from what is kept at this moment: another tab may have changed it since it was shown.
 *
 * @returns false where the browser refused to store it, so that it lasts only as long as the page
 */
export function changeShop(change: (before: KeptShop) => Pick<KeptShop, 'text' | 'defaults' | 'aside'>): boolean {
  const { text, defaults, aside } = change(keptShop());
  const next = JSON.stringify({ text, defaults, aside });
  try {
    window.localStorage.setItem(storageKey, next);
    unstored = undefined;
  } catch {
    unstored = next;
  }
  window.dispatchEvent(new Event(changed));
  return unstored === undefined;
}

const subscribe = keptListener(changed);

/** What is kept, up to date with this page and with other tabs; nothing on the server and for the first paint. */
export function useKeptShop(): KeptShop {
  return useSyncExternalStore(subscribe, keptShop, () => nothing);
}

/** What calculators begin with of the record that the site's owner ships, where there is one. */
export const SiteShopContext = createContext<ShopDefaults | undefined>(undefined);

/** The shop whose values calculators begin with: the reader's own, else the site's; and whether the reader has set it aside. */
export function useShopDefaults(): { defaults: ShopDefaults | undefined; aside: boolean } {
  const ofSite = useContext(SiteShopContext);
  const { text, defaults, aside } = useKeptShop();
  // A record of the reader's own that cannot be read yet is not replaced by somebody else's.
  return { defaults: text === undefined ? ofSite : defaults, aside };
}
