import type { WorkedMethod, WorkedStep } from '../case/types.ts';
import type { ToolKind } from '../record/index.ts';
import { toolsOf } from './kit.ts';

/** Tools that turn, run or swing by a motor. */
export const powered: readonly ToolKind[] = [
  'planer',
  'jointer',
  'drum-sander',
  'table-saw',
  'band-saw',
  'mitre-saw',
  'track-saw',
  'jigsaw',
  'scroll-saw',
  'router-table',
  'plunge-router',
  'router-sled',
  'router-bit',
  'drill-press',
  'hand-drill',
  'random-orbit-sander',
  'belt-sander',
  'spindle-sander',
  'polisher',
];

/** Tools that cut or rub by hand. What is listed as `other` beside no machine, such as a hand plane, is taken to be one. */
const handTools: readonly ToolKind[] = ['hand-saw', 'sanding-block', 'scraper', 'other'];

/** Whether a step is done with hand tools alone. A step that lists no tool for its work is not: nobody has said so. */
export function isByHand(worked: WorkedMethod, step: WorkedStep): boolean {
  const kinds = toolsOf(worked, step).map(({ record }) => record.kind);
  return !kinds.some((kind) => powered.includes(kind)) && kinds.some((kind) => handTools.includes(kind));
}
