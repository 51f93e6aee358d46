import type { ToolKind } from '../record/index.ts';
import { atStep, inSentence, listed, toolsOf } from './kit.ts';
import { limitsOf, type MachineMeasure, machineMeasures } from './machines.ts';
import { rule } from './rule.ts';

/** Machines that draw a piece in, or carry a cutter over it. */
const feeding: readonly ToolKind[] = ['planer', 'jointer', 'drum-sander', 'router-sled'];

/** A machine that limits what nobody has said of the piece. */
export const pieceSizeUnsaid = rule({
  id: 'piece-size-unsaid',
  level: 'warn',
  title: 'A machine knows the size of its piece',
  looksAt:
    'The limits of planer, jointer, drum sander and router sled in a step (width, length, thickness, most and least) beside the measures that the step gives of its piece.',
  why: 'A limit protects only where the size is known: what is not said is not taken to fit.',
  find: (worked) =>
    worked.steps.flatMap((step) => {
      if (step.record.wayRound !== undefined) return [];
      const tools = toolsOf(worked, step).filter(({ record }) => feeding.includes(record.kind));
      const limiting = (measure: MachineMeasure) =>
        tools.filter((tool) => Object.values(limitsOf(tool, measure)).some((limit) => limit !== undefined));
      const unsaid = Object.values(machineMeasures).filter(
        (measure) => step.piece?.[measure.of] === undefined && limiting(measure).length > 0,
      );
      if (unsaid.length === 0) return [];
      const whose = new Set(unsaid.flatMap(limiting).map(({ record }) => record.what));
      return [
        {
          ...atStep(step),
          message: `“${step.record.title}” does not say how ${listed(unsaid.map(({ words }) => words.is))} the piece is, which its tool limits (${listed([...whose].map(inSentence))}).`,
          wayOut: `Give ${listed(unsaid.map(({ of }) => of))} under piece, as the piece comes to the machine.`,
        },
      ];
    }),
});
