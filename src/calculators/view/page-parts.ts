import { fieldsOf } from '../kit/answer.ts';
import type { Calculator } from '../kit/calculator.ts';
import { type FieldKind, fieldMeta } from '../kit/fields.ts';

/**
 * Files of the controls that are code of their own, by kind of field, under `src/calculators`; each exports a component of its file's name.
 * They stand here by name, not imported: what reads a drawing is larger than most calculators, and comes only where one is asked for.
 */
export const controlFiles: Readonly<Partial<Record<FieldKind, string>>> = {
  resin: 'view/ResinControl.tsx',
  readings: 'view/ReadingsControl.tsx',
  drawing: 'view/DrawingControl.tsx',
};

/** Parts below an answer, by calculator. */
export const extraFiles: Readonly<Record<string, string>> = {
  'template-fit': 'template-fit/Templates.tsx',
  'food-contact': 'food-contact/Rules.tsx',
};

/** What the page of a calculator must bring beside it, as files under `src/calculators`. */
export interface PageParts {
  controls: Readonly<Partial<Record<FieldKind, string>>>;
  extra?: string;
}

/** What the page of a calculator must bring: the controls of the kinds that its fields are of, and its own part below the answer. */
export function pagePartsOf(calculator: Pick<Calculator, 'id' | 'inputs'>): PageParts {
  const kinds = new Set(Object.values(fieldsOf(calculator)).map((schema) => fieldMeta(schema)?.kind));
  const controls = Object.fromEntries(Object.entries(controlFiles).filter(([kind]) => kinds.has(kind as FieldKind)));
  const extra = extraFiles[calculator.id];
  return { controls, ...(extra ? { extra } : {}) };
}

/** The component that such a file exports: it bears the file's name. */
export const componentOf = (file: string): string => (/(\w+)\.tsx$/.exec(file) as RegExpExecArray)[1] as string;
