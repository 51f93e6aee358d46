import { useCallback, useEffect, useMemo, useRef, useSyncExternalStore } from 'react';
import { type MarketGuess, marketOfRegion } from '../../model/food/market-of-region.ts';
import { overlay } from '../kit/address.ts';
import { fieldsOf } from '../kit/answer.ts';
import type { Calculator, RawInputs } from '../kit/calculator.ts';
import { habitsFor, remember } from '../kit/remembered.ts';
import { shopInputs } from '../kit/shop-defaults.ts';
import { changeRemembered, useRemembered } from './kept-cases.ts';
import { useShopDefaults } from './kept-shop.ts';
import { whenLeaving } from './leaving.ts';

/** Whoever types has not done yet: a case is kept when it has stood for so long, or when the page is left, ms. */
const settled = 600;

const none: RawInputs = {};

/**
 * How far a calculator takes part in what this browser remembers: it begins with the reader's `habits`, or it keeps its `cases` too.
 * Without either a page shows a case of its own, as a how-to page does.
 */
export type Remembers = 'habits' | 'cases';

/** The market of a page as sent, before the browser has been asked. */
const anywhere = marketOfRegion([]);

let guessed: MarketGuess | undefined;
/** The market of the region that the browser is set to: the same object each time. */
const ofBrowser = () => {
  guessed ??= marketOfRegion(navigator.languages ?? []);
  return guessed;
};
const never = () => () => undefined;

/**
 * What a worked case begins with of the reader's own, and the reader's last case; nothing for the first paint. Where it asks for a market
 * and none is kept, it begins with that of the region, and says so.
 */
export function useHabits(
  calculator: Calculator,
  remembers: Remembers | undefined,
): {
  habits: RawInputs;
  last: RawInputs | undefined;
  guess: MarketGuess | undefined;
  /** The shop record that has values for this calculator, and whether they are set aside. */
  shop: { name: string; aside: boolean } | undefined;
} {
  const kept = useRemembered();
  const { defaults, aside } = useShopDefaults();
  const region = useSyncExternalStore(never, ofBrowser, () => anywhere);
  const guess = remembers && 'market' in fieldsOf(calculator) && kept.habits.market === undefined ? region : undefined;
  const ofShop = useMemo(() => (defaults ? shopInputs(calculator, defaults) : none), [calculator, defaults]);
  // A record was written on purpose; a habit is what stood in a field the last time.
  const habits = useMemo(
    () =>
      remembers
        ? {
            ...(guess ? { market: guess.market } : {}),
            ...overlay(calculator, habitsFor(calculator, kept), aside ? none : ofShop),
          }
        : none,
    [remembers, calculator, kept, guess, aside, ofShop],
  );
  return {
    habits,
    last: remembers === 'cases' ? kept.last[calculator.id] : undefined,
    guess,
    shop: remembers && defaults && Object.keys(ofShop).length > 0 ? { name: defaults.shop, aside } : undefined,
  };
}

/**
 * Remember the cases that are answered, from the first field on that the reader changes: a case that came with a link is not the
 * reader's own before that.
 *
 * @param asked inputs with their units
 * @param answered whether they were answered
 * @returns to be told the names of every field that the reader changes
 */
export function useRemembering(
  calculator: Calculator,
  remembers: Remembers | undefined,
  asked: RawInputs,
  answered: boolean,
): (names: readonly string[]) => void {
  const touched = useRef(new Set<string>());
  useEffect(() => {
    if (remembers !== 'cases' || !answered || touched.current.size === 0) return;
    let waits = true;
    const keep = () => {
      if (!waits) return;
      waits = false;
      changeRemembered((before) => remember(before, calculator, asked, touched.current));
    };
    const timer = setTimeout(keep, settled);
    const stay = whenLeaving(keep);
    return () => {
      clearTimeout(timer);
      stay();
    };
  }, [calculator, remembers, asked, answered]);
  return useCallback((names) => {
    for (const name of names) touched.current.add(name);
  }, []);
}
