import fc from 'fast-check';
import {
  type BoardForFood,
  type FoodStanding,
  foodKinds,
  markets,
  oilOrigins,
  resinPlaces,
} from '../../../src/model/food/index.ts';

/** Hard maple as the species' own assessment gives it, shortened. */
export const maple: NonNullable<BoardForFood['wood']> = {
  name: 'Sugar maple',
  level: 'usual',
  summary: 'Usual kind of wood for a food surface: hard and close-grained',
  reasons: [{ rule: 'named-by-the-code', speaks: 'for', text: 'The Code names it.', basis: 'published' }],
  nutTree: false,
};

/** A wood that a source calls a sensitiser. */
export const sensitising: NonNullable<BoardForFood['wood']> = {
  name: 'Cocobolo',
  level: 'better-not',
  summary: 'Better not: a possible sensitiser',
  reasons: [
    {
      rule: 'sensitiser',
      speaks: 'against',
      text: 'A source says: may sensitise skin.',
      basis: 'published',
      citation: { source: 'trgs-907', locator: 'Annex 2', seen: 'source-text' },
    },
  ],
  nutTree: false,
};

export const listedOil: FoodStanding = {
  level: 'listed',
  summary: 'White mineral oil is listed for articles that touch food',
  conditions: ['Bought as meeting 21 CFR 172.878.'],
  rules: ['cfr-21-178-3620', 'cfr-21-172-878'],
  basis: 'published',
  citation: { source: 'cfr-21-178-3620', locator: '(a)', seen: 'source-text' },
};

export const mineralOil: NonNullable<BoardForFood['finish']> = {
  name: 'Mineral oil',
  standing: listedOil,
  epoxy: false,
  film: false,
  washable: true,
  declared: false,
  origin: 'none-known',
};

export const casting: NonNullable<BoardForFood['resin']> = {
  name: 'Slow casting epoxy',
  place: 'under-food',
  declared: false,
  cure: { daysSince: 10, fullCureDays: 7, basis: 'shop-practice' },
};

const cure = fc.record(
  {
    daysSince: fc.integer({ min: 0, max: 400 }),
    fullCureDays: fc.integer({ min: 1, max: 200 }),
    basis: fc.constantFrom('shop-practice' as const, 'supplier-sheet' as const),
  },
  { requiredKeys: ['basis'] },
);

const woodLevels = ['usual', 'with-care', 'not-enough-known', 'better-not'] as const;
const woodRules = [
  'named-by-the-code',
  'hard-enough',
  'close-grained',
  'softwood',
  'sensitiser',
  'irritant',
  'poison',
] as const;

const wood = fc.record({
  name: fc.constantFrom('Sugar maple', 'Black walnut', 'Cocobolo', 'Pacific yew'),
  level: fc.constantFrom(...woodLevels),
  summary: fc.constantFrom('Usual kind of wood', 'With care: open pores', 'Better not: poisonous'),
  reasons: fc.array(
    fc.record({
      rule: fc.constantFrom(...woodRules),
      speaks: fc.constantFrom('for' as const, 'against' as const, 'unknown' as const),
      text: fc.constant('A reason.'),
      basis: fc.constant('published' as const),
    }),
    { maxLength: 4 },
  ),
  nutTree: fc.boolean(),
});

const standing = fc.record({
  level: fc.constantFrom('listed' as const, 'ask-the-maker' as const, 'silent' as const, 'better-not' as const),
  summary: fc.constantFrom('Listed as a drying oil', 'Its recipe decides'),
  conditions: fc.constant([]),
  rules: fc.subarray(['cfr-21-175-300', 'cfr-21-178-3620', 'eu-1935-2004', 'eu-2024-3190'] as const),
  basis: fc.constant('published' as const),
});

const finish = fc.record(
  {
    name: fc.constantFrom('Mineral oil', 'Walnut oil', 'Epoxy film'),
    standing,
    epoxy: fc.boolean(),
    film: fc.boolean(),
    washable: fc.boolean(),
    declared: fc.boolean(),
    origin: fc.constantFrom(...oilOrigins),
    cure,
  },
  { requiredKeys: ['name', 'standing', 'epoxy', 'film', 'washable', 'declared', 'origin'] },
);

const resin = fc.record({
  name: fc.constantFrom('Slow casting epoxy, 2:1 by volume', 'Fast coating epoxy, 1:1 by volume'),
  place: fc.constantFrom(...resinPlaces),
  declared: fc.boolean(),
  cure,
});

/** Any board that the types allow. */
export const boards: fc.Arbitrary<BoardForFood> = fc
  .record(
    {
      market: fc.constantFrom(...markets),
      food: fc.constantFrom(...foodKinds),
      wood,
      resin,
      finish,
    },
    { requiredKeys: ['market', 'food'] },
  )
  .map((board) => ({ ...board, bare: board.finish === undefined })) as fc.Arbitrary<BoardForFood>;
