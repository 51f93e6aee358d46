import { calculators } from '../../src/calculators/index.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import { figureLines } from './lines.ts';

/** Every figure of the worked examples that calculators open with, as readers in millimetres and in inches meet them. */
export function calculatorFigures(): string[] {
  return calculators.flatMap((calculator) =>
    (['metric', 'inch'] as const).flatMap((system) => {
      const outcome = answer(calculator, calculator.example[system]);
      if (!outcome.ok) throw new Error(`${calculator.id}: its ${system} example is refused.`);
      return figureLines(`${calculator.id} ${system}`, outcome.value.result);
    }),
  );
}
