import { unitByCode, unitLabel } from '../../model/quantity/index.ts';
import { type Amount, currencyOf } from '../cost/index.ts';
import { readOpeningHours } from '../schedule/hours.ts';
import type { Material } from './money.ts';
import type { ParsedShop } from './shop.ts';

/** What is wrong in a record that its shape allows, and where. */
export interface Fault {
  path: PropertyKey[];
  /** What was read, what is allowed, a way out: whole sentences. */
  message: string;
}

/** Lists whose entries bear ids. One id names one thing of the shop, whatever it is. */
const listsWithIds = [
  'machines',
  'moulds',
  'clamps',
  'scales',
  'bits',
  'resins',
  'people',
  'materials',
  'fees',
] as const;

/** Lists of things that are bought once and kept. */
const listsWithPrices = ['machines', 'moulds', 'clamps', 'scales', 'bits'] as const;

/** What is wrong between the fields of a record: names given twice, limits that cross, sums that the currency cannot pay. */
export function shopFaults(shop: ParsedShop): Fault[] {
  return [sharedIds, twiceInDrawer, crossedLimits, hoursNeverOpen, finePrices, mixedMeasures].flatMap((faultsOf) =>
    faultsOf(shop),
  );
}

function sharedIds(shop: ParsedShop): Fault[] {
  const bearers = new Map<string, string>();
  return listsWithIds.flatMap((list) =>
    shop[list].flatMap(({ id }, at): Fault[] => {
      const before = bearers.get(id);
      if (before === undefined) bearers.set(id, `${list}, entry ${at + 1}`);
      return before === undefined
        ? []
        : [
            {
              path: [list, at, 'id'],
              message: `“${id}” is the id of something else already (${before}). Give one of them another id: each names one thing of the shop.`,
            },
          ];
    }),
  );
}

function twiceInDrawer({ grits }: ParsedShop): Fault[] {
  return grits.flatMap((grit, at) =>
    grits.indexOf(grit) < at
      ? [{ path: ['grits', at], message: `${grit} stands in the drawer already. Leave it out here.` }]
      : [],
  );
}

function crossedLimits({ machines }: ParsedShop): Fault[] {
  const pairs = [
    ['leastThickness', 'thickness'],
    ['leastWidth', 'width'],
    ['leastLength', 'mostLength'],
    ['leastTurns', 'mostTurns'],
  ] as const;
  return machines.flatMap(({ limits }, at) =>
    pairs.flatMap(([low, high]): Fault[] => {
      const [least, most] = [limits[low], limits[high]];
      if (least === undefined || most === undefined || least <= most) return [];
      return [
        {
          path: ['machines', at, 'limits', low],
          message: `“${low}” is more than “${high}”, so that nothing would fit. Look whether the two are swapped.`,
        },
      ];
    }),
  );
}

function hoursNeverOpen({ calendar, zone }: ParsedShop): Fault[] {
  if (!calendar) return [];
  if (calendar.zone !== undefined && calendar.zone !== zone) {
    return [
      {
        path: ['calendar', 'zone'],
        message: `“${calendar.zone}” is not the zone of the shop, ${zone}. Leave it out: the hours are those of the shop’s own clock.`,
      },
    ];
  }
  const read = readOpeningHours({ ...calendar, zone });
  return read.ok
    ? []
    : read.faults.map(({ field, text }) => ({
        path: ['calendar', ...field.split('.').filter(Boolean)],
        message: text,
      }));
}

/** Prices of packs and of tools and fixed fees are paid in coin; a rate for an hour or a kilowatt-hour is only reckoned with. */
function finePrices(shop: ParsedShop): Fault[] {
  const { currency, materials, fees } = shop;
  const known = currencyOf(currency);
  // A code that is none is told at its own field.
  if (!known.ok) return [];
  const { digits } = known.value;
  const paid = [
    ...materials.flatMap(({ packs }, at) =>
      packs.map(({ price }, pack) => ({
        sum: price,
        path: ['materials', at, 'packs', pack, 'price'] as PropertyKey[],
      })),
    ),
    ...listsWithPrices.flatMap((list) =>
      shop[list].map(({ price = 0 }, at) => ({ sum: price, path: [list, at, 'price'] as PropertyKey[] })),
    ),
    ...fees.map(({ fixed = 0 }, at) => ({ sum: fixed, path: ['fees', at, 'fixed'] as PropertyKey[] })),
  ];
  return paid
    .filter(({ sum }) => Number(sum.toFixed(digits)) !== sum)
    .map(({ sum, path }) => ({
      path,
      message: `${sum} has more decimals than ${currency}, which has ${digits === 0 ? 'none' : digits}. Write the price as it is paid.`,
    }));
}

const measureOf = ({ unit }: Amount) => unitByCode(unit)?.dimension ?? 'count';

function mixedMeasures({ materials }: ParsedShop): Fault[] {
  return materials.flatMap((material, at) => {
    const parts = [
      ...material.packs.map(({ size }, pack) => ({ amount: size, path: ['packs', pack, 'size'] as PropertyKey[] })),
      ...(material.onHand ? [{ amount: material.onHand, path: ['onHand'] as PropertyKey[] }] : []),
    ];
    const [first] = parts;
    return parts.flatMap(({ amount, path }): Fault[] =>
      first === undefined || canBeCompared(first.amount, amount, material)
        ? []
        : [
            {
              path: ['materials', at, ...path],
              message: `${words(amount)} cannot be compared with ${words(first.amount)} of the same material. ${wayOut(first.amount, amount)}`,
            },
          ],
    );
  });
}

const words = ({ value, unit }: Amount) => (unit === '{count}' ? `${value} pieces` : `${value} ${unitLabel(unit)}`);

function weighed(one: Amount, other: Amount): boolean {
  const measures = new Set([measureOf(one), measureOf(other)]);
  return measures.has('mass') && measures.has('volume');
}

function canBeCompared(one: Amount, other: Amount, { density }: Material): boolean {
  return measureOf(one) === measureOf(other) || (density !== undefined && weighed(one, other));
}

function wayOut(one: Amount, other: Amount): string {
  return weighed(one, other) ? 'Add its density, such as “density: 1.1 g/ml”.' : 'Write both in the same measure.';
}
