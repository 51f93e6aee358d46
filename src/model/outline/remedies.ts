import { asTyped } from '../quantity/index.ts';
import type { EdgeArc, Routing } from './tear-out.ts';

/** What can be done about a stretch of edge that tears. Common practice of the trade. */
export interface Remedy {
  id: 'flip' | 'rough-closer' | 'small-steps' | 'climb' | 'relief' | 'backing';
  title: string;
  text: string;
}

/** The last of a cut that is still safe with the turn of the bit, and that is left for a sanding block. */
export const skim = asTyped({ metric: 'half a millimetre', inch: '1/64 in' });

/** All remedies by id. */
export const remedies: Readonly<Record<Remedy['id'], Remedy>> = {
  flip: {
    id: 'flip',
    title: 'Turn blank and template over',
    text: 'Rout the other stretches first, stop, then turn the blank over with the template on its other face and rout this one: seen from above, uphill has become downhill. It takes a template that works from both faces, or a bit with bearings at both ends.',
  },
  'rough-closer': {
    id: 'rough-closer',
    title: 'Rough closer to the line',
    text: `Saw or sand to within ${asTyped({ metric: 'a millimetre', inch: '1/32 in' })} of the line on this stretch before routing. What is not there cannot be torn out.`,
  },
  'small-steps': {
    id: 'small-steps',
    title: 'Take it in small steps',
    text: 'Several passes of little depth with a sharp bit, the last one a skim, at a steady feed.',
  },
  climb: {
    id: 'climb',
    title: 'A last light skim with the rotation',
    text: `Feed with the turn of the bit (a climb cut) only as a last skim of ${skim} or less, with a handheld router, its guard in place, both hands on it and the work clamped so that neither can run away: fed so, the bit presses the fibres down instead of lifting them, but it also pulls the router along. Never remove stock this way, and never at a table, where the bit snatches the work out of the hands.`,
  },
  relief: {
    id: 'relief',
    title: 'Relieve the end grain',
    text: `Bring end grain to within ${skim} of the line with a saw and a sanding block, and rout it before the long edges, so that what breaks at its corners is cut away after it.`,
  },
  backing: {
    id: 'backing',
    title: 'Put a backing block behind the exit',
    text: 'Clamp a waste block tight against the edge where the bit leaves the end grain, cut to the same line, so that the last fibres have something to lean on.',
  },
};

/** For every hole that goes through: common practice. */
export const holeAdvice =
  'Bore or rout through holes against a backing block clamped to the far face, or from both faces with a small pilot hole between them.';

/** Remedies for a stretch of edge, the first to try first; none where it cuts clean. */
export function remediesFor(arc: EdgeArc, routing: Routing): readonly Remedy[] {
  if (arc.meeting === 'uphill') {
    if (arc.steepness === 'slight') {
      return [remedies['small-steps'], remedies['rough-closer'], ...(routing === 'handheld' ? [remedies.climb] : [])];
    }
    return [
      remedies.flip,
      remedies['rough-closer'],
      remedies['small-steps'],
      ...(routing === 'handheld' ? [remedies.climb] : []),
    ];
  }
  if (arc.meeting === 'end-grain') return [remedies.relief, remedies.backing, remedies['small-steps']];
  return [];
}
