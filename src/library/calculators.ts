/**
 * Every calculator of the handbook, and how one is asked: `answer(calculator, inputs)` reads texts as a maker types them
 * (`'10 1/4 in'`, `'8 %'`) and gives figures, a verdict, cautions and evidence, or one error for each field that cannot be used.
 */
export { calculatorById, calculators } from '../calculators/index.ts';
export { answer, fieldsOf, isOptional, readInputs } from '../calculators/kit/answer.ts';
export type {
  AlternativeSet,
  Alternatives,
  Answer,
  Asking,
  Calculator,
  FigureDeclaration,
  FigureValue,
  RawInputs,
  Together,
} from '../calculators/kit/calculator.ts';
export { documentText } from '../calculators/kit/document-text.ts';
export { type FieldKind, type FieldMeta, fieldMeta, type PickOption } from '../calculators/kit/fields.ts';
export { type Report, report } from '../calculators/kit/report.ts';
export { type CalculatorId, calculatorIds, isCalculatorId, loadCalculator } from '../calculators/registry.ts';
