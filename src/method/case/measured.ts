import { fieldsOf } from '../../calculators/kit/answer.ts';
import type { CalculatorId } from '../../calculators/registry.ts';
import type { MethodRecord } from '../record/index.ts';
import type { Calculators } from './fit.ts';
import type { Fault } from './named.ts';
import { orThese } from './or-these.ts';
import type { CaseOptions } from './types.ts';

/** What was measured for a calculation or an input that the method does not have. */
export function measuredFaults(
  record: MethodRecord,
  calculators: Calculators,
  measured: CaseOptions['measured'] = {},
): Fault[] {
  const all = Object.entries(record.steps).flatMap(([step, { calculations = {} }]) =>
    Object.entries(calculations).map(([name, { use }]) => ({ step, name, use: use as CalculatorId })),
  );
  return Object.entries(measured).flatMap(([name, inputs]): Fault[] => {
    const found = all.find((each) => each.name === name);
    if (!found) {
      const names = all.map((each) => each.name);
      return [
        {
          path: ['steps'],
          message: `“${name}” was measured for, and is not a calculation of this method. ${orThese(name, names, 'calculation')}`,
        },
      ];
    }
    const calculator = calculators.get(found.use);
    const known = Object.keys(calculator ? fieldsOf(calculator) : {});
    return Object.keys(inputs)
      .filter((input) => !known.includes(input))
      .map((input) => ({
        path: ['steps', found.step, 'calculations', name],
        key: true,
        message: `“${input}” was measured for “${name}”, and ${found.use} has no such input. ${orThese(input, known, 'input')}`,
      }));
  });
}
