import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import { holeAdvice, remedies } from '../../model/outline/index.ts';
import type { Found } from './found.ts';

const own = (id: string, level: Caution['level'], text: string): Caution => ({
  id,
  level,
  text,
  basis: 'shop-practice',
});

const standing = ['template-routing', 'router-setup', 'marked-speed', 'wood-dust'];

/** What to beware of with this outline, bit and board, and what is said with all routing. */
export function cautionsOf({ shape, tears, pockets, inside, necks, fit, routing, given, notes }: Found): Caution[] {
  const list: Caution[] = [];
  const uphill = tears.arcs.filter(({ meeting }) => meeting === 'uphill');
  if (uphill.length > 0) {
    list.push(
      own(
        'uphill',
        'warning',
        `Where the edge runs uphill it tears. ${remedies.flip.title}: ${lower(remedies.flip.text)}`,
      ),
    );
    if (routing === 'handheld') list.push(own('climb-cut', 'danger', remedies.climb.text));
    else
      list.push(
        own(
          'climb-cut',
          'danger',
          'Never feed with the rotation at a table: the bit snatches the work, and the hands with it.',
        ),
      );
  }
  if (tears.exits.length > 0)
    list.push(own('end-exit', 'warning', `${remedies.backing.title}: ${lower(remedies.backing.text)}`));
  if (shape.holes.length > 0) list.push(own('holes', 'note', holeAdvice));
  if (inside?.kind === 'corner') {
    list.push(
      own(
        'sharp-corner',
        'warning',
        'The outline has a sharp inside corner. No router bit cuts it: round it on the template, or finish it with a saw and a file.',
      ),
    );
  }
  if (pockets.some(({ kind }) => kind === 'corner')) {
    list.push(
      own(
        'bit-too-wide',
        'warning',
        'The bit is too wide for a hollow of this outline and leaves wood there. Take a narrower bit or a rounder hollow, or take the rest off by hand.',
      ),
    );
  }
  if (necks.shortGrain.length > 0) {
    list.push(
      own(
        'short-grain',
        'warning',
        'A thin part has its grain from side to side and may split off when it is routed, dropped or leaned on. Turn the outline on the board, make the part wider, or leave it out.',
      ),
    );
  }
  if (fit && !fit.fits) {
    list.push(
      own(
        'does-not-fit',
        'warning',
        `The outline with its clearance does not fit the board within ${given.mostSwing ?? 5}° off the grain. Take a larger board, less clearance, or a smaller outline.`,
      ),
    );
  }
  for (const [index, text] of notes.slice(0, 12).entries())
    list.push({ id: `drawing-${index + 1}`, level: 'note', text, basis: 'derived' });
  for (const id of standing) {
    const caution = cautionById(id);
    if (caution) list.push(caution);
  }
  if ((given.bitDiameter ?? 0) > 25.4) {
    const large = cautionById('large-bits');
    if (large) list.push(large);
  }
  return list;
}

function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
