import { useRef } from 'react';
import type { RawInputs } from '../kit/calculator.ts';

/** The same object as before where the texts in it are the same: what is drawn for it is not drawn again. */
export function useSame(inputs: RawInputs): RawInputs {
  const kept = useRef(inputs);
  if (kept.current !== inputs && JSON.stringify(kept.current) !== JSON.stringify(inputs)) kept.current = inputs;
  return kept.current;
}
