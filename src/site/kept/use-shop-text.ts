import { useContext, useEffect, useState } from 'react';
import { changeShop, keptShop, SiteShopContext, useKeptShop } from '../../calculators/view/kept-shop.ts';
import { useLinks } from '../../calculators/view/links.tsx';

/** The shop record that methods are worked out with on this page. */
export interface ShopText {
  /** The record as written (YAML); undefined where there is none, where it is set aside, and while it is fetched. */
  text: string | undefined;
  /** Whose it is, set aside or not: the reader's own, else that which the site's owner ships. */
  whose: 'reader' | 'site' | undefined;
  /** True while the site's record is on its way: what is worked out before is without it. */
  pending: boolean;
  aside: boolean;
  setAside: (aside: boolean) => void;
}

/** Fetched once for all parts of a page and every page after it. */
const fetched = new Map<string, Promise<string | undefined>>();

/** The record of the site; undefined where it cannot be fetched, so that the next page tries again. */
function siteText(address: string): Promise<string | undefined> {
  const known = fetched.get(address);
  if (known) return known;
  const asked = fetch(address)
    .then((answer) => (answer.ok ? answer.text() : undefined))
    .catch(() => undefined)
    .then((text) => {
      // Some servers answer with a page where there is no such file.
      if (text !== undefined && !/^\s*</.test(text)) return text;
      fetched.delete(address);
      return undefined;
    });
  fetched.set(address, asked);
  return asked;
}

/** A way to ask once for the record that stands, where something is begun with a copy of it. */
export function useStandingShop(): () => Promise<string | undefined> {
  const ships = useContext(SiteShopContext) !== undefined;
  const { href } = useLinks();
  const address = href('/data/shop.yaml');
  return async () => {
    const { text, aside } = keptShop();
    if (aside) return undefined;
    return text ?? (ships ? siteText(address) : undefined);
  };
}

/**
 * The shop record that stands: the reader's own, else that of the site's owner, unless the reader has set records aside. A record of the reader's own
 * that cannot be read is not replaced by somebody else's.
 */
export function useShopText(): ShopText {
  const { text: own, aside } = useKeptShop();
  const ships = useContext(SiteShopContext) !== undefined;
  const { href } = useLinks();
  const address = href('/data/shop.yaml');
  const wanted = ships && own === undefined && !aside;
  const [site, setSite] = useState<{ text: string | undefined }>();
  useEffect(() => {
    if (!wanted) return;
    let gone = false;
    void siteText(address).then((text) => !gone && setSite({ text }));
    return () => {
      gone = true;
    };
  }, [address, wanted]);
  return {
    text: aside ? undefined : (own ?? (wanted ? site?.text : undefined)),
    whose: own !== undefined ? 'reader' : ships ? 'site' : undefined,
    pending: wanted && site === undefined,
    aside,
    setAside: (to) => changeShop((before) => ({ ...before, aside: to })),
  };
}
