import type { ToolKind } from '../record/index.ts';
import { rule } from './rule.ts';

/** What stands ready for the whole day and belongs to no step. */
const standingBy: readonly ToolKind[] = ['fire-extinguisher', 'eye-wash', 'air-cleaner', 'thermometer'];

/** A tool that no step takes. */
export const unusedTool = rule({
  id: 'unused-tool',
  level: 'note',
  title: 'Every tool is used',
  looksAt:
    'The tools of the method beside those that its steps list or hold. What stands by all day (extinguisher, eye wash, air cleaner, thermometer) need not be listed.',
  why: 'It is laid out for nothing, or a step has forgotten it.',
  find: (worked) =>
    Object.values(worked.tools).flatMap(({ name, record, path }) => {
      const used = worked.steps.some(
        (step) => step.record.tools?.includes(name) || step.record.holds?.some(({ tool }) => tool === name),
      );
      if (used || standingBy.includes(record.kind)) return [];
      return [
        {
          path,
          message: `“${record.what}” (${name}) is used in no step.`,
          wayOut: 'List it under tools of the step that takes it, or take it out.',
        },
      ];
    }),
});
