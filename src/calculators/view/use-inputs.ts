import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import { readAddress, startingInputs, writeAddress } from '../kit/address.ts';
import type { Calculator, RawInputs } from '../kit/calculator.ts';
import { replaceSearch, useSearch } from './address-bar.ts';
import { useHeldWrite } from './held-write.ts';
import { useSame } from './use-same.ts';

export interface InputsState {
  /** Texts as they stand in the fields. */
  raw: RawInputs;
  /** Set some fields; a name set to undefined leaves the address. */
  set: (patch: Readonly<Record<string, string | undefined>>) => void;
  /** Back to the worked case: the address loses the calculator's inputs. */
  reset: () => void;
  /** Whether the case is of the reader or of a link, not the worked one. */
  own: boolean;
}

/**
 * The raw inputs of a calculator, kept in the address.
 *
 * What is typed stays as typed while one types; the address gets it a moment later, with its unit.
 * When the reader turns to the other system of units, or goes back in history, the fields show what the address holds.
 */
export function useInputs(
  calculator: Calculator,
  preset: RawInputs,
  units: ReaderUnits,
  prefix: string,
  habits: RawInputs,
): InputsState {
  const search = useSearch();
  const [typed, setTyped] = useState<Readonly<Record<string, string | undefined>>>({});

  const base = useMemo(
    () => startingInputs(calculator, preset, units, search, prefix, habits),
    [calculator, preset, units, search, prefix, habits],
  );
  // The address follows what is typed: that it does is no other case.
  const raw = useSame(useMemo(() => definedOnly({ ...base, ...typed }), [base, typed]));

  const write = useCallback(
    (inputs: RawInputs, as: ReaderUnits) => {
      const next = writeAddress(calculator, inputs, as, { search: window.location.search, prefix });
      replaceSearch(next);
    },
    [calculator, prefix],
  );

  // What is drawn may lag behind what was typed, and whoever leaves the page meanwhile loses nothing.
  const typedNow = useRef(typed);
  const latest = useRef({ base, units });
  latest.current = { base, units };
  const rawNow = useCallback(() => definedOnly({ ...latest.current.base, ...typedNow.current }), []);
  const forget = useCallback(() => {
    typedNow.current = {};
    setTyped({});
  }, []);

  const writeNow = useCallback(() => write(rawNow(), latest.current.units), [write, rawNow]);
  const { later, drop } = useHeldWrite(writeNow, forget);

  const set = useCallback(
    (patch: Readonly<Record<string, string | undefined>>) => {
      typedNow.current = { ...typedNow.current, ...patch };
      setTyped((before) => ({ ...before, ...patch }));
      later();
    },
    [later],
  );

  const reset = useCallback(() => {
    drop();
    forget();
    write({}, latest.current.units);
  }, [write, drop, forget]);

  // A bare number keeps the unit that it was typed in: write it down before the fields turn to the other system.
  const seenUnits = useRef(units);
  useEffect(() => {
    if (seenUnits.current === units) return;
    const before = seenUnits.current;
    seenUnits.current = units;
    if (Object.keys(typedNow.current).length === 0) return;
    drop();
    write(rawNow(), before);
    forget();
  }, [units, write, drop, rawNow, forget]);

  const own = useMemo(
    () => Object.keys(typed).length > 0 || Object.keys(readAddress(calculator, search, prefix)).length > 0,
    [typed, calculator, search, prefix],
  );
  return { raw, set, reset, own };
}

function definedOnly(inputs: Readonly<Record<string, string | undefined>>): RawInputs {
  return Object.fromEntries(
    Object.entries(inputs).filter((entry): entry is [string, string] => entry[1] !== undefined),
  );
}
