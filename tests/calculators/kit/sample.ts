import * as z from 'zod/mini';
import { calculator } from '../../../src/calculators/kit/calculator.ts';
import { choiceField, quantityField } from '../../../src/calculators/kit/fields.ts';
import { answer } from '../../../src/model/evidence/index.ts';

/** A small calculator for the frame's own tests: the area of a board, whose length is given or found from a number of paces. */
export const sample = calculator({
  id: 'sample',
  title: 'Sample',
  question: 'How large is it?',
  summary: 'A calculator for tests.',
  inputs: z.strictObject({
    width: quantityField({
      label: 'Width',
      dimension: 'length',
      minimum: 1,
      maximum: 1000,
      examples: ['300 mm', '12 in'],
    }),
    length: z.optional(
      quantityField({ label: 'Length', dimension: 'length', minimum: 1, maximum: 5000, examples: ['600 mm', '24 in'] }),
    ),
    paces: z.optional(
      quantityField({ label: 'Paces', dimension: 'percent', minimum: 1, maximum: 100, examples: ['2 %'] }),
    ),
    face: z.optional(
      choiceField({
        label: 'Face',
        options: [
          { value: 'one', label: 'One face' },
          { value: 'both', label: 'Both faces' },
        ],
        examples: ['one'],
      }),
    ),
  }),
  alternatives: [
    {
      label: 'How it is known',
      sets: [
        { label: 'Measured', fields: ['length'] },
        { label: 'Paced', fields: ['paces'] },
      ],
    },
  ],
  example: {
    metric: { width: '300 mm', length: '600 mm', face: 'one' },
    inch: { width: '12 in', length: '24 in', face: 'one' },
  },
  figures: { area: { label: 'Area', unit: 'mm2' } },
  compute({ width, length, paces, face }) {
    const long = length ?? (paces ?? 0) * 700;
    return answer({
      verdict: { level: 'good', text: 'So large.' },
      figures: {
        area: { value: width * long * (face === 'both' ? 2 : 1), basis: 'derived' },
      },
      cautions: [],
      evidence: [],
    });
  },
});
