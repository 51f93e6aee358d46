import { amount } from '../../model/quantity/index.ts';
import { layResinSheet } from '../../model/resin/resin.ts';
import { reviewSheet } from '../../model/resin/sheet-review.ts';
import { machineLimits } from './machines.ts';
import type { Shop } from './shop.ts';

/** A part of a shop record, as it is filled in. */
export type ShopPart = 'about' | 'air' | 'machines' | 'tools' | 'resins' | 'hours' | 'people' | 'materials' | 'prices';

/** What is known of a part, in a few words. */
export interface KnownPart {
  part: ShopPart;
  /** Quantities in it are marked. */
  words: string;
}

/** What a record does not say, and what follows for whoever asks a calculator or a method. */
export interface ShopGap {
  part: ShopPart;
  /** What is missing: `no temperature by night`. */
  what: string;
  /** What follows, a clause that goes on after a colon. */
  follows: string;
}

const things = (count: number, one: string, many = `${one}s`) => `${count} ${count === 1 ? one : many}`;
const total = (list: readonly { count: number }[]) => list.reduce((sum, { count }) => sum + count, 0);

function airKnown({ air }: Shop, placeName?: string): string[] {
  if (!air) return [];
  const { day, night, humidity, place, readings } = air;
  return [
    ...(day === undefined ? [] : [`${amount(day, 'Cel', 2)} by day`]),
    ...(night === undefined ? [] : [`${amount(night, 'Cel', 2)} by night`]),
    ...(humidity === undefined ? [] : [`relative humidity ${amount(humidity, '%', 2)}`]),
    ...(place === undefined ? [] : [`climate of ${placeName ?? place}`]),
    ...(readings === undefined ? [] : ['own readings']),
  ];
}

function hoursKnown({ calendar }: Shop): string[] {
  if (!calendar) return [];
  const days = Object.values(calendar.week ?? {}).filter((ranges) => (ranges?.length ?? 0) > 0).length;
  const { sessions = [], holidays = [] } = calendar;
  return [
    ...(days > 0 ? [`open on ${things(days, 'day')} of the week`] : []),
    ...(sessions.length > 0 ? [things(sessions.length, 'session')] : []),
    ...(holidays.length > 0 ? [things(holidays.length, 'holiday')] : []),
  ];
}

function pricesKnown({ overhead, energy, fees, margin, markup }: Shop): string[] {
  return [
    ...(overhead ? ['overhead'] : []),
    ...(energy ? ['price of a kilowatt-hour'] : []),
    ...(fees.length > 0 ? [things(fees.length, 'fee')] : []),
    ...(margin === undefined ? [] : [`margin ${amount(margin, '%', 3)}`]),
    ...(markup === undefined ? [] : [`mark-up ${amount(markup, '%', 3)}`]),
  ];
}

/**
 * What a record says, part by part; a part that it says nothing of is left out.
 *
 * @param placeName its place as a reader knows it, where the tables that know it are at hand
 */
export function shopKnown(shop: Shop, placeName?: string): KnownPart[] {
  const { machines, moulds, clamps, scales, bits, grits, resins, people, materials } = shop;
  const priced = materials.filter(({ packs }) => packs.length > 0).length;
  const rated = people.some(({ rate }) => rate !== undefined);
  const parts: Readonly<Record<ShopPart, readonly string[]>> = {
    about: [`${shop.name}, ${shop.zone}, sums in ${shop.currency}`],
    air: airKnown(shop, placeName),
    machines: machines.length > 0 ? [things(total(machines), 'machine')] : [],
    tools: [
      ...(moulds.length > 0 ? [things(total(moulds), 'mould')] : []),
      ...(clamps.length > 0 ? [things(total(clamps), 'clamp')] : []),
      ...(scales.length > 0 ? [things(scales.length, 'scale')] : []),
      ...(bits.length > 0 ? [things(total(bits), 'bit')] : []),
      ...(grits.length > 0 ? [things(grits.length, 'grit')] : []),
    ],
    resins: resins.map(({ id, entries }) => entries['name'] ?? id),
    hours: hoursKnown(shop),
    people: people.length > 0 ? [`${things(total(people), 'person', 'people')}${rated ? ', with a rate' : ''}`] : [],
    materials: materials.length > 0 ? [`${things(materials.length, 'material')}, ${priced} with packs to buy`] : [],
    prices: pricesKnown(shop),
  };
  return (Object.entries(parts) as [ShopPart, readonly string[]][])
    .filter(([, words]) => words.length > 0)
    .map(([part, words]) => ({ part, words: words.join('; ') }));
}

function airGaps({ air }: Shop): ShopGap[] {
  const { day, night, humidity, place, readings } = air ?? {};
  const gap = (what: string, follows: string): ShopGap => ({ part: 'air', what, follows });
  return [
    ...(day === undefined
      ? [gap('no temperature by day', 'pot life and cure are worked out for a shop that is not yours')]
      : []),
    ...(day !== undefined && night === undefined
      ? [gap('no temperature by night', 'cures are worked out as if nights were as warm as days')]
      : []),
    ...(place === undefined && readings === undefined
      ? [gap('no place', 'how far wood moves through the year is worked out for another climate than yours')]
      : []),
    ...(humidity === undefined
      ? [gap('no humidity', 'how dry wood becomes in the shop is worked out for air that is not yours')]
      : []),
  ];
}

function resinGaps({ resins }: Shop): ShopGap[] {
  const gap = (what: string, follows: string): ShopGap => ({ part: 'resins', what, follows });
  if (resins.length === 0)
    return [gap('no resin', 'doses and pours begin with a generic kind from memory, not with your data sheet')];
  const gaps = resins.flatMap(({ id, sheet, entries }) => {
    const { war, missing } = reviewSheet(layResinSheet(sheet));
    const name = entries['name'] ?? id;
    return [
      ...(war ? [gap(`“${name}” contradicts itself`, 'nothing is dosed or timed by it')] : []),
      ...missing.map(({ what, blocks }) => gap(`“${name}” has ${what}`, blocks)),
    ];
  });
  if (resins.length === 1) return gaps;
  return [...gaps, gap(`${resins.length} resins`, 'calculators begin with none of them, pick one in each')];
}

function toolGaps({ scales, grits, machines }: Shop): ShopGap[] {
  const { jointerWidth, planerWidth } = machineLimits(machines);
  return [
    ...(scales.length === 0
      ? [{ part: 'tools' as const, what: 'no scale', follows: 'a dose is written for a scale that is not yours' }]
      : []),
    ...(grits.length === 0
      ? [{ part: 'tools' as const, what: 'no grits', follows: 'a sequence may name papers that you do not have' }]
      : []),
    ...(machines.length === 0
      ? [
          {
            part: 'machines' as const,
            what: 'no machines',
            follows: 'no board of a method is held against what your machines take',
          },
        ]
      : jointerWidth === undefined && planerWidth === undefined
        ? [
            {
              part: 'machines' as const,
              what: 'no width of a jointer or planer',
              follows: 'how to flatten a wide board is worked out for machines that are not yours',
            },
          ]
        : []),
  ];
}

function priceGaps({ calendar, people, materials, overhead, margin, markup }: Shop): ShopGap[] {
  const gap = (part: ShopPart, what: string, follows: string): ShopGap => ({ part, what, follows });
  return [
    ...(calendar ? [] : [gap('hours', 'no opening hours', 'a plan takes weekdays from nine to five, and says so')]),
    ...(people.some(({ rate, count }) => rate !== undefined && count > 0)
      ? []
      : [gap('people', 'nobody with a rate', 'what a piece costs and sells for is not worked out')]),
    ...(materials.length === 0
      ? [gap('materials', 'no materials', 'a bill says what is needed, not what it costs')]
      : []),
    ...(margin === undefined && markup === undefined
      ? [gap('prices', 'neither a margin nor a mark-up', 'no price is set')]
      : []),
    ...(overhead ? [] : [gap('prices', 'no overhead', 'rent, heat and insurance are not in the price')]),
  ];
}

/** What a record does not say and calculators and methods miss: what can spoil a pour or a board first, what a price misses last. */
export function shopGaps(shop: Shop): ShopGap[] {
  return [airGaps, resinGaps, toolGaps, priceGaps].flatMap((gapsOf) => gapsOf(shop));
}
