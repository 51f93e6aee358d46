import * as z from 'zod/mini';
import { amount } from '../../model/quantity/index.ts';
import { baseMaterials, usualBase } from '../../model/resin/base.ts';
import { choiceField, quantityField } from '../kit/fields.ts';
import { resinField } from '../kit/resin-field.ts';

const cure = 'For experts: how it cures';
const heat = 'For experts: how heat moves';

/** Groups that most readers leave closed. */
export const folded = [cure, heat];

const temperature = (label: string, help: string, examples: readonly string[]) =>
  quantityField({ label, help, dimension: 'temperature', minimum: -5, maximum: 60, examples });

/** Sets of inputs that exclude each other. */
export const alternatives = [
  {
    label: 'The temperature',
    sets: [
      { label: 'Even', fields: ['shopTemperature'] },
      { label: 'Day and night', fields: ['dayTemperature', 'nightTemperature', 'warmHours', 'pouredAfter'] },
    ],
  },
] as const;

/** Inputs that say nothing without each other. */
export const together = [
  {
    fields: ['dayTemperature', 'nightTemperature'],
    why: 'The temperatures by day and by night say nothing without each other',
  },
] as const;

/** What the calculator asks. Expert figures lie over those of the resin, the base and the air; in SI units. */
export const inputs = z.strictObject({
  resin: z.optional(
    resinField({
      label: 'Resin',
      help: 'A generic kind, or a data sheet of your own: its pot life and greatest depth carry the answer.',
    }),
  ),
  depth: quantityField({
    label: 'Depth of the pour',
    help: 'In one go.',
    dimension: 'length',
    minimum: 0.3,
    maximum: 300,
    examples: ['20 mm', '3/4 in'],
  }),
  proud: z.optional(
    quantityField({
      label: 'Stands proud of the face',
      help: 'Counts as depth: it heats like the rest. Empty: level with the face.',
      dimension: 'length',
      minimum: 0,
      maximum: 5,
      examples: ['0.6 mm', '1/32 in'],
    }),
  ),
  width: z.optional(
    quantityField({
      label: 'Width of the channel',
      help: 'Between walls of wood, at its widest. Empty: a pool, which grows hotter.',
      dimension: 'length',
      minimum: 0.5,
      maximum: 2000,
      examples: ['15 mm', '1/2 in'],
    }),
  ),
  shopTemperature: z.optional(
    temperature('Temperature of the shop', 'Through the whole cure, the first night too.', ['20 °C', '68 °F']),
  ),
  dayTemperature: z.optional(temperature('By day', 'While the shop is heated.', ['21 °C', '70 °F'])),
  nightTemperature: z.optional(temperature('By night', 'While it is not.', ['12 °C', '54 °F'])),
  warmHours: z.optional(
    quantityField({
      label: 'Hours of day',
      help: 'How long the shop is warm each day. Empty: 10 h.',
      dimension: 'time',
      elseBare: 'h',
      minimum: 3600,
      maximum: 23 * 3600,
      examples: ['10 h', '8 h'],
    }),
  ),
  pouredAfter: z.optional(
    quantityField({
      label: 'Poured after the heating comes on',
      help: 'Heated at 7 and poured at 19: 12 h. Empty: the worst hour of the day.',
      dimension: 'time',
      elseBare: 'h',
      minimum: 0,
      maximum: 24 * 3600,
      examples: ['12 h', '2 h'],
    }),
  ),
  resinTemperature: z.optional(
    temperature('Temperature of the mixed resin', 'Where it was warmed or comes from a colder store.', [
      '25 °C',
      '77 °F',
    ]),
  ),
  area: z.optional(
    quantityField({
      label: 'Area of the pour',
      help: 'Only where the sheet limits the volume or the mass of one pour.',
      dimension: 'area',
      minimum: 10,
      maximum: 100e6,
      examples: ['600 cm²', '1 ft²'],
    }),
  ),
  base: z.optional(
    choiceField({
      label: 'What it is poured on',
      options: [
        ...baseMaterials.map(({ id, label, hint }) => ({ value: id, label: hint ? `${label}: ${hint}` : label })),
        { value: 'none', label: 'Nothing: a thin sheet or tape with air below' },
      ],
      examples: ['hardwood'],
    }),
  ),
  baseThickness: z.optional(
    quantityField({
      label: 'Thickness of the base',
      help: `Under the resin. ${amount(usualBase.thickness, 'mm', 2)} is assumed where nothing stands here.`,
      dimension: 'length',
      minimum: 0,
      maximum: 300,
      examples: ['20 mm', '3/4 in'],
    }),
  ),
  air: z.optional(
    choiceField({
      label: 'Air over the pour',
      help: 'It matters more than the base.',
      options: [
        { value: 'still', label: 'Open, still air' },
        { value: 'covered', label: 'Covered against dust' },
        { value: 'moving', label: 'Moving air' },
      ],
      examples: ['still'],
    }),
  ),
  k2At25C: z.optional(
    quantityField({
      label: 'Rate constant k₂ at 25 °C',
      help: 'Of the path that its own product speeds up; otherwise fitted to the pot life.',
      group: cure,
      dimension: 'rate',
      minimum: 1e-8,
      maximum: 0.1,
      examples: ['9.75e-5 1/s', '6.22e-4 1/s'],
    }),
  ),
  activationEnergy: z.optional(
    quantityField({
      label: 'Activation energy',
      group: cure,
      dimension: 'energy-per-amount',
      elseBare: 'kJ/mol',
      minimum: 20_000,
      maximum: 150_000,
      examples: ['58.6 kJ/mol', '58600 J/mol'],
    }),
  ),
  k1OverK2: z.optional(
    quantityField({
      label: 'k₁ over k₂',
      group: cure,
      dimension: 'number',
      minimum: 1e-4,
      maximum: 10,
      examples: ['0.03'],
    }),
  ),
  m: z.optional(
    quantityField({ label: 'Order m', group: cure, dimension: 'number', minimum: 0, maximum: 4, examples: ['1'] }),
  ),
  n: z.optional(
    quantityField({ label: 'Order n', group: cure, dimension: 'number', minimum: 0.3, maximum: 5, examples: ['2'] }),
  ),
  heatOfReaction: z.optional(
    quantityField({
      label: 'Heat of reaction of the mix',
      group: cure,
      dimension: 'energy-per-mass',
      elseBare: 'J/g',
      minimum: 10_000,
      maximum: 1_000_000,
      examples: ['350 J/g', '350000 J/kg'],
    }),
  ),
  density: z.optional(
    quantityField({
      label: 'Density of the mix',
      group: heat,
      dimension: 'density',
      elseBare: 'g/cm3',
      minimum: 600,
      maximum: 3000,
      examples: ['1100 kg/m³', '1.1 g/cm³'],
    }),
  ),
  heatCapacity: z.optional(
    quantityField({
      label: 'Heat capacity of the mix',
      group: heat,
      dimension: 'heat-capacity',
      minimum: 500,
      maximum: 5000,
      examples: ['2000 J/(kg·K)'],
    }),
  ),
  conductivity: z.optional(
    quantityField({
      label: 'Thermal conductivity of the mix',
      group: heat,
      dimension: 'thermal-conductivity',
      minimum: 0.02,
      maximum: 5,
      examples: ['0.18 W/(m·K)'],
    }),
  ),
  baseDensity: z.optional(
    quantityField({
      label: 'Density of the base',
      group: heat,
      dimension: 'density',
      elseBare: 'g/cm3',
      minimum: 10,
      maximum: 9000,
      examples: ['650 kg/m³'],
    }),
  ),
  baseHeatCapacity: z.optional(
    quantityField({
      label: 'Heat capacity of the base',
      group: heat,
      dimension: 'heat-capacity',
      minimum: 300,
      maximum: 5000,
      examples: ['1650 J/(kg·K)'],
    }),
  ),
  baseConductivity: z.optional(
    quantityField({
      label: 'Thermal conductivity of the base',
      group: heat,
      dimension: 'thermal-conductivity',
      minimum: 0.01,
      maximum: 400,
      examples: ['0.15 W/(m·K)'],
    }),
  ),
  filmTop: z.optional(
    quantityField({
      label: 'Film coefficient over the resin',
      help: 'Radiation and air together: 6 covered, 10 in still air, 14 in moving air.',
      group: heat,
      dimension: 'film-coefficient',
      minimum: 0,
      maximum: 1000,
      examples: ['10 W/(m²·K)'],
    }),
  ),
  filmBottom: z.optional(
    quantityField({
      label: 'Film coefficient under the base',
      help: '5 unless told.',
      group: heat,
      dimension: 'film-coefficient',
      minimum: 0,
      maximum: 1000,
      examples: ['5 W/(m²·K)'],
    }),
  ),
});

export type Inputs = z.output<typeof inputs>;
