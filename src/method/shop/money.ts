import * as z from 'zod/mini';
import { amountText, countOf, moneyField, ownId, ownName, quantityText, shareText } from './fields.ts';

/** A pack as it is sold. */
export const packSchema = z.strictObject({
  size: amountText({
    label: 'What is in it',
    help: 'A whole number without a unit counts things.',
    examples: ['5 L', '1 kg', '12 bd ft', '50'],
  }),
  price: moneyField({ label: 'Price of the pack, in the currency of the shop', examples: ['48.00'] }),
  available: z.exactOptional(countOf('How many can be had; as many as are wanted where it is left out.', 10_000)),
});
/** A pack: its size in the unit that it is sold in, its price in the currency of the shop. */
export type Pack = z.output<typeof packSchema>;

/** A material or a consumable: what is on the shelf, and how it is sold. */
export const materialSchema = z.strictObject({
  id: ownId,
  name: ownName.check(z.describe('What it is, as it would stand on a bill.')),
  consumable: z._default(
    z.boolean().check(z.describe('True for what is worn out or thrown away, such as discs, gloves and cups.')),
    false,
  ),
  packs: z._default(z.array(packSchema).check(z.maxLength(12), z.describe('The packs in which it is sold.')), []),
  onHand: z.exactOptional(amountText({ label: 'On the shelf now', examples: ['1.2 L', '20'] }, 'zero')),
  density: z.exactOptional(
    quantityText({
      label: 'Density, where it is needed by weight and sold by volume, or the other way',
      examples: ['1.1 g/ml', '0.86 g/ml'],
      dimension: 'liquid-density',
      minimum: 0.1,
      maximum: 20,
    }),
  ),
});
/** A material: density in g/mL. What is bought beyond a need is the business of the method. */
export type Material = z.output<typeof materialSchema>;

/** People who do the work; a name of a person is not asked. */
export const peopleSchema = z.strictObject({
  id: ownId,
  name: z.exactOptional(
    ownName.check(z.describe('What they are in the shop, such as Helper; no person’s name is needed.')),
  ),
  count: z._default(countOf('How many.', 200), 1),
  rate: z.exactOptional(moneyField({ label: 'For an hour of their work', examples: ['26.00'] })),
});
/** People: their rate in money per hour. */
export type People = z.output<typeof peopleSchema>;

/** What the shop costs whether it works or not. */
export const overheadSchema = z
  .strictObject({
    perHour: z.exactOptional(moneyField({ label: 'For each hour of work', examples: ['6.50'] })),
    perMonth: z.exactOptional(
      moneyField({ label: 'For a month', help: 'Rent, insurance, heat.', examples: ['420.00'] }),
    ),
    hoursPerMonth: z.exactOptional(
      quantityText({
        label: 'Hours worked in a month',
        examples: ['64 h'],
        dimension: 'time',
        minimum: 3600,
        maximum: 744 * 3600,
      }),
    ),
  })
  .check(
    z.refine(
      ({ perHour, perMonth, hoursPerMonth }) =>
        (perHour === undefined) !== (perMonth === undefined) &&
        (perMonth === undefined) === (hoursPerMonth === undefined),
      'Overhead is stated either for an hour (perHour), or for a month with the hours that are worked in it (perMonth and hoursPerMonth). Give one of the two.',
    ),
  );
/** Overhead: money, hoursPerMonth in s. */
export type Overhead = z.output<typeof overheadSchema>;

/** What a market, a card or a gallery keeps. */
export const feeSchema = z
  .strictObject({
    id: ownId,
    name: z.exactOptional(ownName),
    percent: z.exactOptional(shareText({ label: 'Share of the price that is kept', examples: ['10 %', '2.9 %'] }, 99)),
    fixed: z.exactOptional(moneyField({ label: 'Fixed sum', examples: ['0.30', '45.00'] })),
    per: z._default(
      z
        .enum(['piece', 'batch'])
        .check(z.describe('Whether the fixed sum is for each piece sold or for the whole batch.')),
      'piece',
    ),
  })
  .check(
    z.refine(
      ({ percent, fixed }) => percent !== undefined || fixed !== undefined,
      'A fee takes a share of the price (percent), a fixed sum, or both. Give at least one.',
    ),
  );
/** A fee: percent of the price, fixed sum in money. */
export type ShopFee = z.output<typeof feeSchema>;
