import { rule } from './rule.ts';

/** A material on the bill that no step takes. */
export const unusedMaterial = rule({
  id: 'unused-material',
  level: 'note',
  title: 'Every material is used',
  looksAt: 'The materials of the method beside those that its steps list.',
  why: 'It is bought and paid for, or a step has forgotten it.',
  find: (worked) =>
    Object.values(worked.materials).flatMap(({ name, record, path }) => {
      if (worked.steps.some((step) => step.record.uses?.includes(name))) return [];
      return [
        {
          path,
          message: `“${record.what}” (${name}) is used in no step.`,
          wayOut: 'List it under uses of the step that takes it, or take it out.',
        },
      ];
    }),
});
