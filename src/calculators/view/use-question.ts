import { useMemo } from 'react';
import { withUnits } from '../kit/address.ts';
import type { Calculator, RawInputs } from '../kit/calculator.ts';
import { useUnits } from './units.tsx';
import { useInputs } from './use-inputs.ts';
import { type Remembers, useHabits } from './use-remembering.ts';
import { useSame } from './use-same.ts';

/** What a calculator is asked on a page: what stands in its fields, and how that is changed. */
export interface QuestionProps {
  calculator: Calculator;
  /** Texts laid over the worked case. */
  preset?: RawInputs | undefined;
  /** Prefix of its inputs in the address; '' on the calculator's own page. */
  prefix?: string | undefined;
  /** How far it takes part in what this browser remembers; not where a page shows a case of its own. */
  remembers?: Remembers | undefined;
}

const none: RawInputs = {};

/** The question of a calculator: its inputs as texts, and `typed`, the same with their units, the same object as long as nothing changes. */
export function useQuestion({ calculator, preset = none, prefix = '', remembers }: QuestionProps) {
  const units = useUnits();
  const { habits, ...remembered } = useHabits(calculator, remembers);
  const inputs = useInputs(calculator, preset, units, prefix, habits);
  const { raw } = inputs;
  const typed = useSame(useMemo(() => withUnits(calculator, raw, units), [calculator, raw, units]));
  return { units, ...remembered, ...inputs, typed };
}
