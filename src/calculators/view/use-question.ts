import { useDeferredValue, useMemo } from 'react';
import { withUnits } from '../kit/address.ts';
import type { Calculator, RawInputs } from '../kit/calculator.ts';
import { useUnhurried } from './unhurried.ts';
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

/**
 * The question of a calculator: its inputs as texts, `raw`, and as they are asked, with their units. What was typed is on the screen before it is
 * asked, and its answer is worked out and drawn, since on a slow phone that takes longer than a key may: `onPaper` and `question` follow `raw`, and are
 * the same objects as long as nothing changes.
 */
export function useQuestion({ calculator, preset = none, prefix = '', remembers }: QuestionProps) {
  const units = useUnits();
  const { habits, ...remembered } = useHabits(calculator, remembers);
  const inputs = useInputs(calculator, preset, units, prefix, habits);
  const { raw } = inputs;
  const onPaper = useDeferredValue(raw);
  const typed = useSame(useMemo(() => withUnits(calculator, onPaper, units), [calculator, onPaper, units]));
  const question = useDeferredValue(useUnhurried(typed));
  return { units, ...remembered, ...inputs, onPaper, question, follows: onPaper !== raw || question !== typed };
}
