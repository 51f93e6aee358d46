import { amount } from '../../model/quantity/index.ts';
import type { WorkedMethod, WorkedTool } from '../case/types.ts';
import type { LimitName, ToolKind } from '../record/index.ts';
import { atStep, inSentence, toolsOf } from './kit.ts';
import type { Found } from './rule.ts';

/** A measure of a piece, and how a machine limits it. */
export interface MachineMeasure {
  of: 'length' | 'width' | 'thickness';
  most: LimitName;
  least: LimitName;
  /** Machines whose limit of that name is one of the piece: the width of a belt is not. */
  machines: readonly ToolKind[];
  /** Machines that limit it by how deep they cut. */
  sawn?: readonly ToolKind[];
  /** As it stands in a sentence: `wide`, and its comparatives. */
  words: { is: string; most: string; least: string };
}

/** What a machine limits of a piece, and how each is said. */
export const machineMeasures: Readonly<Record<MachineMeasure['of'], MachineMeasure>> = {
  width: {
    of: 'width',
    most: 'width',
    least: 'leastWidth',
    machines: ['planer', 'jointer', 'drum-sander', 'mitre-saw', 'router-sled', 'table-saw', 'band-saw', 'router-table'],
    words: { is: 'wide', most: 'wider', least: 'narrower' },
  },
  length: {
    of: 'length',
    most: 'mostLength',
    least: 'leastLength',
    machines: [
      'planer',
      'jointer',
      'drum-sander',
      'mitre-saw',
      'track-saw',
      'router-sled',
      'table-saw',
      'router-table',
    ],
    words: { is: 'long', most: 'longer', least: 'shorter' },
  },
  thickness: {
    of: 'thickness',
    most: 'thickness',
    least: 'leastThickness',
    machines: ['planer', 'jointer', 'drum-sander', 'mitre-saw', 'band-saw', 'router-sled', 'spindle-sander'],
    sawn: ['table-saw', 'track-saw'],
    words: { is: 'thick', most: 'thicker', least: 'thinner' },
  },
};

/** The least and the most of a measure that a tool takes, mm; a tool that is no such machine limits nothing. */
export function limitsOf({ record, limits }: WorkedTool, { most, least, machines, sawn = [] }: MachineMeasure) {
  if (sawn.includes(record.kind)) return { most: limits.depthOfCut?.value, least: undefined };
  if (!machines.includes(record.kind)) return { most: undefined, least: undefined };
  return { most: limits[most]?.value, least: limits[least]?.value };
}

/** Hundredths of a millimetre that come of writing inches in mm and back. */
const rounding = 0.01;

/** Pieces that a machine of their step does not take, by one measure; a step that says its way round has answered. */
export function beyondMachines(worked: WorkedMethod, measure: MachineMeasure): Found[] {
  const { of, words } = measure;
  return worked.steps.flatMap((step) => {
    const size = step.piece?.[of];
    if (size === undefined || step.record.wayRound !== undefined) return [];
    return toolsOf(worked, step).flatMap((tool): Found[] => {
      const { record, from } = tool;
      const { most: upper, least: lower } = limitsOf(tool, measure);
      const over = upper !== undefined && size > upper + rounding;
      const under = lower !== undefined && size < lower - rounding;
      if (!over && !under) return [];
      const limit = over ? upper : (lower as number);
      const whose = from === 'shop' ? ' in this shop' : '';
      return [
        {
          ...atStep(step, 'piece', of),
          message: `The piece is ${amount(size, 'mm', 4)} ${words.is}, ${over ? words.most : words.least} than the ${amount(limit, 'mm', 4)} that ${over ? 'the tool takes' : 'the tool may be fed'}${whose} (${inSentence(record.what)}).`,
          wayOut: over
            ? 'Take another tool, cut the piece down first, or say under wayRound how it is taken all the same.'
            : 'Work it while it is still part of a larger piece, fix it to a sled that is large enough, and say so under wayRound.',
        },
      ];
    });
  });
}
