import type { Caution } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { routerCeilings, type SpeedCeiling } from '../../model/stock/index.ts';
import { turnsWords } from './figures.ts';
import { type AskedCut, waysOut } from './verdict.ts';

const mm = (value: number) => amount(value, 'mm', 4);

/** What the speed of a router bit must be warned of. */
export function speedCautions(turns: number | undefined, ceiling: SpeedCeiling | undefined): Caution[] {
  if (!ceiling) {
    return [
      {
        id: 'no-usual-ceiling',
        level: 'danger',
        text: 'Do not run this bit before you know from its maker how fast it may turn.',
        why: `It is larger than the ${amount(routerCeilings.at(-1)?.upTo ?? 0, 'mm')} up to which common practice names a speed.`,
        own: true,
        basis: 'shop-practice',
      },
    ];
  }
  if (turns === undefined || turns <= ceiling.turns) return [];
  return [
    {
      id: 'too-fast',
      level: turns > ceiling.most ? 'danger' : 'warning',
      text: `Slow the router down to ${turnsWords(ceiling.turns)} before it is switched on.`,
      why: `${turnsWords(turns)} are more than ${turns > ceiling.most ? 'either text allows' : 'the lower of two texts allows'} for a bit of this size. An edge that turns too fast can shed a piece.`,
      own: true,
      basis: 'shop-practice',
    },
  ];
}

/** What this very cut must be warned of. */
export function cutCautions(cut: AskedCut): Caution[] {
  const { plan, bearing, contact } = cut;
  const made: Caution[] = [];
  const own = { own: true, basis: 'shop-practice' } as const;
  if (!plan.steadyFirstPass) {
    made.push({
      id: 'bearing-off-template',
      level: 'danger',
      text:
        plan.passes.length > 0
          ? `No pass shallower than ${mm(plan.leastFirstPass ?? 0)} to begin with: the bearing must stand on the template before the bit meets wood.`
          : `Do not cut with the bearing off the template. ${waysOut(cut)}`,
      why: `A bearing that touches less than ${mm(contact)} of template slips over it, and the bit digs into the line and pulls the router or the work with it. Sawing closer to the line does not change that.`,
      ...own,
    });
  }
  if (bearing === 'shank' && !plan.longEnough && plan.passes.length > 0) {
    made.push({
      id: 'edge-too-short',
      level: 'warning',
      text: 'Cut as deep as the edge goes, take the template off, and let the bearing ride on the edge already cut.',
      why: 'The edge does not reach through the stock in one setting.',
      ...own,
    });
  }
  if (bearing === 'tip' && cut.cuttingLength < cut.stock) {
    made.push({
      id: 'edge-too-short',
      level: 'danger',
      text: 'Take an edge longer than the stock is thick: the shank must not rub on wood.',
      why: 'What stands above the edge is not cut, and the shank, often as thick as the bit, runs against it, burns, and pushes the bearing off the line. Only where the shank is much thinner than the bit, and the work sawn closer than the difference, could the rest be trimmed from the other side.',
      own: true,
      basis: 'memory',
    });
  }
  return made;
}
