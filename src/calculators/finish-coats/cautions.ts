import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import type { CoatsPlan, Finish } from '../../model/finish/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { Inputs } from './inputs.ts';

const standing: Readonly<Record<Finish['food']['level'], string>> = {
  listed: 'listed under conditions',
  'ask-the-maker': 'ask the maker',
  silent: 'the rules are silent',
  'better-not': 'better not',
};

/** What must be minded: the inlay and the mixing first, then cloths, coats and food. */
export function cautionsOf(given: Inputs, finish: Finish, plan: CoatsPlan): Caution[] {
  const { low = 1, high = 1 } = finish.figures.coats;
  const known = finish.cautions.flatMap((id) => cautionById(id) ?? []);
  return [
    ...(given.resin === 'inlay'
      ? [
          {
            id: 'resin-cure-first',
            level: 'warning' as const,
            own: true,
            text: 'No food and no water on it before the resin’s own full cure, whatever the finish needs; no finish on it before that either.',
            why: 'The times here are those of the finish. A resin takes a week or more from the pour at room temperature (common practice), longer with cold nights; the cure clock and its sheet say how long. Oil over resin that has not cured stays soft.',
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...(finish.id === 'film-epoxy' ? mixed(plan) : []),
    ...known,
    ...(finish.rags.hazard === 'none-known'
      ? [
          {
            id: 'rags-of-this-finish',
            level: 'note' as const,
            text: `Cloths with ${finish.name.toLowerCase()}: ${finish.rags.words.charAt(0).toLowerCase()}${finish.rags.words.slice(1)}. A tin that mixes in a drying oil is another matter, and nobody tells cloths apart in a bin: treat these as the others.`,
            basis: 'memory' as const,
          },
        ]
      : []),
    ...(plan.usualCoats
      ? []
      : [
          {
            id: 'coats-unusual',
            level: 'note' as const,
            text: `${low === high ? low : `${low} to ${high}`} coats are usual. ${plan.coats.length < low ? 'Fewer leave dry places.' : 'More stay on top: stop when it takes no more.'}`,
            basis: 'shop-practice' as const,
          },
        ]),
    ...(given.resin === 'inlay'
      ? [
          {
            id: 'finish-over-resin',
            level: finish.overResin.level === 'suits' ? ('note' as const) : ('warning' as const),
            text: `Over cured resin: ${finish.overResin.words} Only over resin that its sheet calls cured.`,
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    {
      id: 'finish-and-food',
      level: 'note',
      text: `Food: ${standing[finish.food.level]}. ${finish.food.summary}.`,
      ...(finish.food.conditions.length > 0 ? { why: finish.food.conditions.join(' ') } : {}),
      basis: finish.food.basis,
      ...(finish.food.citation ? { citation: finish.food.citation } : {}),
    },
  ];
}

/** What a film of epoxy asks beyond a finish from a can: it is mixed, and a mass of it heats itself. */
function mixed(plan: CoatsPlan): Caution[] {
  const largest = Math.max(...plan.coats.map(({ volume }) => volume.high));
  return [
    {
      id: 'mix-in-small-cups',
      level: 'danger',
      own: true,
      text: `Never mix a coat at once: ${amount(largest, 'mL', 2)} is the most that one takes. Fresh small cups, each poured out at once, and no coat thicker than its sheet allows.`,
      why: 'Mixed resin left in a mass heats itself, and so does a coat that is too thick. The dose and the working time of a cup have calculators of their own.',
      basis: 'shop-practice',
    },
  ];
}
