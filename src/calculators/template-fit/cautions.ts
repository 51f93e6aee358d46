import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import { holeAdvice, remedies } from '../../model/outline/index.ts';
import { skim } from '../../model/outline/remedies.ts';
import { amount } from '../../model/quantity/index.ts';
import type { Found } from './found.ts';

const own = (id: string, level: Caution['level'], text: string, why?: string): Caution => ({
  id,
  level,
  text,
  ...(why ? { why } : {}),
  own: true,
  basis: 'shop-practice',
});

const standing = ['template-routing', 'router-setup', 'marked-speed', 'bandsaw', 'noise', 'wood-dust'];

/** What to beware of with this outline, bit and board, and what is said with all routing. */
export function cautionsOf(found: Found): Caution[] {
  const { notes, given } = found;
  const general = [...standing, ...((given.bitDiameter ?? 0) > 25.4 ? ['large-bits'] : [])];
  return [
    ...bearingCautions(found),
    ...edgeCautions(found),
    ...placeCautions(found),
    ...notes
      .slice(0, 12)
      .map((text, index): Caution => ({ id: `drawing-${index + 1}`, level: 'note', text, basis: 'derived' })),
    ...general.flatMap((id) => cautionById(id) ?? []),
  ];
}

/** A bearing that a shallow first pass would leave without template. */
function bearingCautions({ given, cut }: Found): Caution[] {
  if (given.template === undefined || !cut || cut.steadyFirstPass) return [];
  return [
    own(
      'bearing-off-template',
      'danger',
      cut.passes.length > 0
        ? `With a bearing by the shank make no first pass shallower than ${amount(cut.leastFirstPass ?? 0, 'mm')}.`
        : 'With a bearing by the shank make no cut: it would not stand on this template.',
      `At a shallower pass the bearing runs above the template and the bit digs in. ${
        cut.thickerTemplate === undefined
          ? ''
          : `A template of ${amount(cut.thickerTemplate, 'mm')} keeps it on at a usual pass; so does a bearing at the tip.`
      }`,
    ),
  ];
}

/** Where the cut runs uphill or out at an end, and holes. */
function edgeCautions({ shape, tears, routing }: Found): Caution[] {
  const climb =
    routing === 'handheld'
      ? own(
          'climb-cut',
          'danger',
          `Climb-cutting (feeding with the turn of the bit): only a last skim of ${skim} or less, handheld, the work clamped. Never to remove stock, never at a table.`,
          'It presses the fibres down instead of lifting them, but it also pulls the router along: guard in place, both hands on it, so that neither router nor work can run away.',
        )
      : own(
          'table-feed',
          'danger',
          'Never feed with the rotation at a table.',
          'The bit snatches the work, and the hands with it.',
        );
  return [
    ...(tears.arcs.some(({ meeting }) => meeting === 'uphill')
      ? [climb, own('uphill', 'warning', `${remedies.flip.title} where the edge runs uphill.`, remedies.flip.text)]
      : []),
    ...(tears.exits.length > 0
      ? [own('end-exit', 'warning', `${remedies.backing.title}.`, remedies.backing.text)]
      : []),
    ...(shape.holes.length > 0 ? [own('holes', 'note', holeAdvice)] : []),
  ];
}

/** Hollows that the bit does not reach, parts that may split off, a board that is too small. */
function placeCautions({ inside, pockets, necks, fit, given }: Found): Caution[] {
  return [
    ...(inside?.kind === 'corner'
      ? [
          own(
            'sharp-corner',
            'warning',
            'Round the sharp inside corner on the template, or finish it with a saw and a file.',
            'No router bit cuts it.',
          ),
        ]
      : []),
    ...(pockets.some(({ kind }) => kind === 'corner')
      ? [
          own(
            'bit-too-wide',
            'warning',
            'Take a narrower bit or a rounder hollow, or take the rest off by hand.',
            'The bit is too wide for a hollow of this outline and leaves wood there.',
          ),
        ]
      : []),
    ...(necks.shortGrain.length > 0
      ? [
          own(
            'short-grain',
            'warning',
            'Turn the outline on the board, make the thin part wider, or leave it out.',
            'Its grain runs from side to side, and it may split off when it is routed, dropped or leaned on.',
          ),
        ]
      : []),
    ...(fit && !fit.fits
      ? [
          own(
            'does-not-fit',
            'warning',
            'Take a larger board, less clearance, or a smaller outline.',
            `With its clearance it does not fit the board within ${given.mostSwing ?? 5}° off the grain.`,
          ),
        ]
      : []),
  ];
}
