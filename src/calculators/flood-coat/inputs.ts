import * as z from 'zod/mini';
import { quantityField } from '../kit/fields.ts';
import { resinField } from '../kit/resin-field.ts';

const expert = 'For experts';

/** What the calculator asks: a resin, the coat that is wanted, and of experts the properties of the liquid. */
export const inputs = z.strictObject({
  resin: z.optional(
    resinField({
      label: 'Resin',
      help: 'How deep it may be poured in one go is its limit. Empty: that of a generic coating epoxy.',
    }),
  ),
  wantedThickness: z.optional(
    quantityField({
      label: 'Thickness wanted',
      dimension: 'length',
      minimum: 0.1,
      maximum: 50,
      examples: ['3 mm', '1/8 in'],
    }),
  ),
  area: z.optional(
    quantityField({
      label: 'Area of the face',
      help: 'Length times width. Leave empty where the amount does not matter.',
      dimension: 'area',
      minimum: 100,
      maximum: 1e8,
      examples: ['1800 cm²', '2 ft²'],
    }),
  ),
  shopTemperature: z.optional(
    quantityField({
      label: 'Temperature of the shop',
      help: 'A warmer shop bears a thinner coat. Empty: as the depth of the resin is stated for.',
      dimension: 'temperature',
      minimum: 0,
      maximum: 45,
      examples: ['22 °C', '72 °F'],
    }),
  ),
  contactAngle: z.optional(
    quantityField({
      label: 'Contact angle',
      help: 'Seen from the side, between the face and the rim of a drop at rest. Empty: 45°, and the band from 30 to 60°.',
      group: expert,
      dimension: 'angle',
      minimum: 0,
      maximum: 180,
      examples: ['45°', '60°'],
    }),
  ),
  surfaceTension: z.optional(
    quantityField({
      label: 'Surface tension of the mix',
      help: 'Empty: 0.040 N/m.',
      group: expert,
      dimension: 'surface-tension',
      minimum: 0.005,
      maximum: 0.1,
      examples: ['0.040 N/m', '40 mN/m'],
    }),
  ),
  density: z.optional(
    quantityField({
      label: 'Density of the mix',
      help: 'Empty: as the resin’s, or 1100 kg/m³.',
      group: expert,
      dimension: 'density',
      minimum: 600,
      maximum: 3000,
      examples: ['1100 kg/m³', '1.1 g/cm³'],
    }),
  ),
});

export type Inputs = z.output<typeof inputs>;
