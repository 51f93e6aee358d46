import * as z from 'zod/mini';
import { readField } from '../../calculators/kit/fields.ts';
import { resinSheetInputs } from '../../calculators/kit/resin-sheet-entries.ts';
import { excerpt, nearest } from '../../model/quantity/index.ts';
import type { ResinSheet } from '../../model/resin/resin.ts';
import { currencyOf } from '../cost/index.ts';
import { type OpeningHours, openingHours } from '../schedule/hours.ts';
import { moneyField, ownId, ownName, quantityText, shareText } from './fields.ts';
import { machineSchema } from './machines.ts';
import { feeSchema, materialSchema, overheadSchema, peopleSchema } from './money.ts';
import { bitSchema, clampSchema, gritSchema, mouldSchema, scaleSchema } from './tools.ts';

/** Whether a text names a time zone of the IANA list, older names included; an offset such as +02:00 is none. */
function isZone(text: string): boolean {
  if (!/^[A-Za-z]/.test(text)) return false;
  try {
    return new Intl.DateTimeFormat('en', { timeZone: text }).resolvedOptions().timeZone !== '';
  } catch {
    return false;
  }
}

const zone = readField(
  z.string(),
  (text) => {
    if (isZone(text)) return { ok: true, value: text };
    const near = nearest(text, Intl.supportedValuesOf('timeZone'));
    return {
      ok: false,
      problem: `“${excerpt(text)}” is not a time zone of the IANA list`,
      wayOut: near ? `Did you mean ${near}?` : 'Write it as region and town, such as America/Chicago or Europe/Oslo.',
    };
  },
  {
    kind: 'text',
    label: 'Time zone',
    help: 'By its name in the IANA list, so that clock changes are known.',
    examples: ['America/Chicago'],
  },
);

const currency = readField(
  z.string(),
  (text) => {
    const known = currencyOf(text);
    if (known.ok) return { ok: true, value: known.value.code };
    const [problem = '', ...wayOut] = (known.errors[0]?.message ?? '').split('. ');
    return { ok: false, problem, wayOut: wayOut.join('. ') };
  },
  {
    kind: 'text',
    label: 'Currency',
    help: 'By its code in ISO 4217. Every sum of the record is in it.',
    examples: ['USD'],
  },
);

const temperature = (label: string, examples: readonly string[]) =>
  z.exactOptional(quantityText({ label, examples, dimension: 'temperature', minimum: -30, maximum: 50 }));

const airSchema = z.strictObject({
  place: z.exactOptional(
    z
      .string()
      .check(
        z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'Write the place as the climate tables name it, such as duluth-mn.'),
        z.describe('The nearest place of the climate tables, by its id there.'),
      ),
  ),
  readings: z.exactOptional(
    z
      .string()
      .check(
        z.minLength(1),
        z.maxLength(200_000),
        z.describe('Own readings of the air in the shop: month, temperature, relative humidity.'),
      ),
  ),
  day: temperature('Temperature of the shop by day', ['20 °C', '68 °F']),
  night: temperature('Temperature of the shop by night', ['14 °C', '57 °F']),
  humidity: z.exactOptional(
    quantityText({
      label: 'Relative humidity of the shop',
      examples: ['40 %'],
      dimension: 'percent',
      minimum: 1,
      maximum: 100,
    }),
  ),
});

const hours = openingHours._zod.def.shape;

/** Opening hours in clock times of the shop, whose zone they have where they name none. */
const calendarSchema = z
  .strictObject({ ...hours, zone: z.exactOptional(hours.zone) })
  .check(z.describe('When the shop is open.'));

const list = <Schema extends z.ZodMiniType>(schema: Schema, most: number, words: string) =>
  z._default(z.array(schema).check(z.maxLength(most), z.describe(words)), []);

const shopShape = {
  shop: z
    .literal(1, { error: 'This reads version 1 of the record. Write “shop: 1”.' })
    .check(z.describe('Version of the form of this record.')),
  name: ownName.check(z.describe('What the shop is called.')),
  about: z.exactOptional(
    z.string().check(z.minLength(1), z.maxLength(600), z.describe('What kind of shop it is, in a few sentences.')),
  ),
  zone,
  currency,
  air: z.exactOptional(airSchema.check(z.describe('The air of the shop, in which wood settles and resin cures.'))),
  machines: list(machineSchema, 100, 'Machines, each with what limits it as its own manual and plate say.'),
  moulds: list(mouldSchema, 100, 'Moulds and dams.'),
  clamps: list(clampSchema, 50, 'Clamps, by kind.'),
  scales: list(scaleSchema, 20, 'Scales.'),
  bits: list(bitSchema, 200, 'Router bits.'),
  grits: list(gritSchema, 60, 'Grits in the drawer, as printed on the paper.'),
  resins: list(
    z.strictObject({
      id: ownId,
      sheet: resinSheetInputs.check(z.describe('What the maker’s data sheet says, entry by entry.')),
    }),
    40,
    'Resins on the shelf, each with what its maker’s data sheet says.',
  ),
  calendar: z.exactOptional(calendarSchema),
  people: list(peopleSchema, 100, 'Who does the work.'),
  materials: list(materialSchema, 500, 'Materials and consumables: packs, prices, what is on the shelf.'),
  overhead: z.exactOptional(
    overheadSchema.check(
      z.describe('What the shop costs whether it works or not: for an hour, or for a month with its hours.'),
    ),
  ),
  energy: z.exactOptional(
    z
      .strictObject({ price: moneyField({ label: 'Price of a kilowatt-hour', examples: ['0.16'] }) })
      .check(z.describe('What machines draw.')),
  ),
  fees: list(feeSchema, 20, 'What a market, a card or a gallery keeps.'),
  margin: z.exactOptional(
    shareText(
      { label: 'Margin wanted', help: 'Share of the price that stays after every cost and fee.', examples: ['30 %'] },
      99,
    ),
  ),
  markup: z.exactOptional(
    shareText(
      { label: 'Mark-up wanted', help: 'Share of the cost that is put on top of it.', examples: ['60 %'] },
      1000,
    ),
  ),
};

/** A shop record as it is written. */
export const shopSchema = z.strictObject(shopShape).check(
  z.refine(({ margin, markup }) => margin === undefined || markup === undefined, {
    error: 'Both a margin and a mark-up are stated, and each sets the price by itself. Keep one of them.',
    path: ['markup'],
  }),
);

type Parsed = z.output<typeof shopSchema>;

/** A resin on the shelf: its data sheet as read, and as it was written, which is how a calculator takes it. */
export interface ShopResin {
  id: string;
  sheet: ResinSheet;
  /** Each entry as a text with its unit. */
  entries: Record<string, string>;
}

/**
 * A shop as read: its machines, tools, materials, hours and prices.
 *
 * Lengths in mm, masses in g, temperatures in °C, shares in %, turns per minute, rim speed in m/s, power in kW, times in s, money in whole
 * units of the currency. What was not stated is left out; a list that was not given is empty.
 */
export type Shop = Omit<Parsed, 'resins' | 'calendar'> & { resins: ShopResin[]; calendar?: OpeningHours };
export type { Parsed as ParsedShop };
