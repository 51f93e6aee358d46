import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { withUnits } from '../../calculators/kit/address.ts';
import { fieldsOf } from '../../calculators/kit/answer.ts';
import type { Asking, RawInputs } from '../../calculators/kit/calculator.ts';
import { replaceSearch, useSearch } from '../../calculators/view/address-bar.ts';
import { useHeldWrite } from '../../calculators/view/held-write.ts';
import { defaultUnits, type ReaderUnits } from '../../model/quantity/index.ts';

/** What an address says of a case, by the names of its form; other names are left alone. */
export function readCaseAddress(form: Asking, search: string): RawInputs {
  const query = new URLSearchParams(search);
  return Object.fromEntries(
    Object.keys(fieldsOf(form)).flatMap((name) => {
      const value = query.get(name);
      return value === null ? [] : [[name, value] as const];
    }),
  );
}

/** The address of a case: only what differs from the method's own, so that a code on paper stays small; what else stood in it is kept. */
export function caseAddress(form: Asking, own: RawInputs, search = ''): string {
  const query = new URLSearchParams(search);
  for (const name of Object.keys(fieldsOf(form))) {
    const value = own[name];
    if (value === undefined) query.delete(name);
    else query.set(name, value);
  }
  const text = query.toString();
  return text ? `?${text}` : '';
}

/** The texts of a form that differ from what it begins with, every bare number with the unit of the reader who typed it. */
export function ownTexts(form: Asking, raw: RawInputs, units: ReaderUnits): RawInputs {
  const usual = form.example[units.system];
  const own = Object.fromEntries(Object.entries(raw).filter(([name, text]) => text !== (usual[name] ?? '')));
  return withUnits(form, own, units);
}

export interface CaseState {
  /** Texts as they stand in the fields. */
  raw: RawInputs;
  /** What the reader changed, with units: what is asked, and what the address holds. */
  own: RawInputs;
  set: (patch: Readonly<Record<string, string | undefined>>) => void;
  reset: () => void;
}

/** The same texts as the same object: what was typed comes again when the address has it, and draws nothing. */
function useSame(texts: RawInputs): RawInputs {
  const last = useRef(texts);
  const before = last.current;
  const names = Object.keys(texts);
  const same =
    names.length === Object.keys(before).length &&
    names.every((name) => Object.hasOwn(before, name) && before[name] === texts[name]);
  if (!same) last.current = texts;
  return last.current;
}

/**
 * The case of a method, kept in the address. What is typed stays as typed while one types; the address gets it a moment later, with its unit. When
 * the reader turns to the other units or goes back in history, the fields show what the address holds.
 */
export function useCase(form: Asking, units: ReaderUnits): CaseState {
  const search = useSearch();
  const [typed, setTyped] = useState<Readonly<Record<string, string | undefined>>>({});
  const standing = useMemo(() => {
    // A bare number of an address is metric: a reader of inches gets it with its unit.
    const addressed = readCaseAddress(form, search);
    const base = units.system === 'metric' ? addressed : withUnits(form, addressed, defaultUnits);
    const merged: Record<string, string> = { ...form.example[units.system], ...base };
    for (const [name, text] of Object.entries(typed)) merged[name] = text ?? form.example[units.system][name] ?? '';
    return merged;
  }, [form, search, typed, units]);
  const raw = useSame(standing);
  const own = useMemo(() => ownTexts(form, raw, units), [form, raw, units]);

  const write = useCallback((asked: Asking, texts: RawInputs) => {
    replaceSearch(caseAddress(asked, texts, window.location.search));
  }, []);
  const latest = useRef({ form, own });
  latest.current = { form, own };
  const writeNow = useCallback(() => write(latest.current.form, latest.current.own), [write]);
  const forget = useCallback(() => setTyped({}), []);
  const { later, drop } = useHeldWrite(writeNow, forget);

  const set = useCallback(
    (patch: Readonly<Record<string, string | undefined>>) => {
      setTyped((before) => ({ ...before, ...patch }));
      later();
    },
    [later],
  );
  const reset = useCallback(() => {
    drop();
    setTyped({});
    write(latest.current.form, {});
  }, [write, drop]);

  // A bare number keeps the unit that it was typed in: it is written down before the fields turn to the other system.
  // Where nothing was typed the address holds all: on the first paint, before it is read, it must not be written over.
  const seen = useRef({ units, own, typed });
  useEffect(() => {
    const before = seen.current;
    seen.current = { units, own, typed };
    if (before.units === units || Object.keys(before.typed).length === 0) return;
    drop();
    write(latest.current.form, before.own);
    setTyped({});
  }, [units, own, typed, write, drop]);

  return useMemo(() => ({ raw, own, set, reset }), [raw, own, set, reset]);
}
