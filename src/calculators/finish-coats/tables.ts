import { type ResultTable, weakestBasis } from '../../model/evidence/index.ts';
import type { CoatsPlan, Finish } from '../../model/finish/index.ts';
import { amountBasis } from './figures.ts';
import type { Inputs } from './inputs.ts';

/** The coats one by one: when each is due, and what it takes. */
export function coatTable(given: Inputs, finish: Finish, plan: CoatsPlan): ResultTable {
  return {
    id: 'coats',
    title: 'Coat by coat',
    columns: [
      { id: 'coat', label: 'Coat', unit: '{count}', digits: 2 },
      { id: 'start', label: 'On, after', unit: 's', digits: 2 },
      ...(finish.wiped ? [{ id: 'soak', label: 'Soak', unit: 's', digits: 2 }] : []),
      { id: 'volume', label: 'Amount', unit: 'mL', digits: 2 },
      { id: 'mass', label: 'Weight', unit: 'g', digits: 2 },
    ],
    rows: plan.coats.map(({ number, start, wipe, volume, mass }) => [
      number,
      start,
      ...(wipe === null ? [] : [wipe - start]),
      volume.value,
      mass,
    ]),
    basis: weakestBasis([amountBasis(given, finish, plan), 'shop-practice']),
  };
}

/** One coat of what is wiped, step by step. */
export function soakTable({ figures, wiped }: Finish): ResultTable[] {
  if (!wiped || !figures.soak) return [];
  const { value, low, high } = figures.soak;
  return [
    {
      id: 'soak',
      title: 'Each coat',
      columns: [
        { id: 'at', label: 'At', unit: 's', digits: 2 },
        { id: 'what', label: 'What to do' },
      ],
      rows: [
        [0, 'Flood faces and edges, end grain twice. Can of water for the cloths open beside you.'],
        [(low ?? value) / 2, 'Dull places: wet them again.'],
        [low ?? value, 'Earliest: wipe off all that is still on top, off resin too.'],
        [high ?? value, 'Latest: it must be off by now, before it gets sticky.'],
        [(high ?? value) + 600, 'Wipe again with a dry cloth. Cloths into the water.'],
      ],
      basis: 'shop-practice',
    },
  ];
}
