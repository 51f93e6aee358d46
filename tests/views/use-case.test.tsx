import { act, renderHook } from '@testing-library/react';
import { expect, test, vi } from 'vitest';
import type { Asking } from '../../src/calculators/kit/calculator.ts';
import { defaultUnits, type ReaderUnits } from '../../src/model/quantity/index.ts';
import { caseForm } from '../../src/site/method/case-form.ts';
import { useCase } from '../../src/site/method/use-case.ts';

const form: Asking = caseForm({
  title: 'A tray',
  parameters: [],
  makes: { what: 'Tray', pieces: 1, least: 1, most: 9, usual: 1 },
} as never);
const inch: ReaderUnits = { ...defaultUnits, system: 'inch' };

test('an address keeps its case where the units of the reader are known only after the first paint', () => {
  window.history.replaceState(null, '', '/methods/tray');
  const { rerender, result } = renderHook(({ units }) => useCase(form, units), {
    initialProps: { units: defaultUnits },
  });
  // As with the first paint, which knows no address: the address comes together with the units.
  act(() => {
    window.history.replaceState(null, '', '/methods/tray?pieces=4');
    rerender({ units: inch });
  });
  expect(window.location.search).toBe('?pieces=4');
  expect(result.current.own).toEqual({ pieces: '4' });
});

test('what was typed stays the same case once the address has it, so that nothing is drawn or asked again', () => {
  vi.useFakeTimers();
  window.history.replaceState(null, '', '/methods/tray');
  const { result } = renderHook(() => useCase(form, defaultUnits));
  act(() => result.current.set({ pieces: '6' }));
  const typed = result.current;
  act(() => void vi.advanceTimersByTime(2000));
  expect(window.location.search).toBe('?pieces=6');
  expect(result.current).toBe(typed);
  vi.useRealTimers();
});
