import * as z from 'zod/mini';
import { asTyped, parseQuantity } from '../../model/quantity/index.ts';
import { bareWoodTakes } from '../../model/resin/dose.ts';
import { parseMixRatio } from '../../model/resin/ratio.ts';
import { choiceField, quantityField, readField, shownWhen } from '../kit/fields.ts';
import { resinField } from '../kit/resin-field.ts';
import { countField, lengthField } from '../kit/stock-fields.ts';
import { coloursField, depthsField, pieceNamesField, shapesField } from './lists.ts';

const group = {
  resin: 'Resin',
  inlay: 'What is to be filled',
  depth: 'Depth and layers',
  extra: 'Soaked up, lost and spare',
  colour: 'Colour',
  mixing: 'Mixing',
  own: 'Mix ratio of your own',
};

/** Density of water at 20 °C, g/mL, from memory: what turns weighed water into a volume. */
const waterDensity = 0.998;
const mostVolume = 200_000;

/** Water that fills a place, as a volume or a weight. */
function waterField() {
  return readField(
    z.union([z.string(), z.number()]),
    (value) => {
      const text = String(value);
      const volume = parseQuantity(text, { dimension: 'volume', bareUnit: 'mL' });
      const mass = volume.ok ? undefined : parseQuantity(text, { dimension: 'mass', bareUnit: 'g' });
      if (!volume.ok && !mass?.ok) {
        return {
          ok: false,
          problem: `“${text.slice(0, 40)}” is neither a volume nor a weight of water`,
          wayOut: 'Write, for example, 240 ml or 240 g.',
        };
      }
      const filled = volume.ok ? volume.value : mass?.ok ? mass.value / waterDensity : 0;
      if (!(filled >= 0.5 && filled <= mostVolume)) {
        return {
          ok: false,
          problem: `${text} of water is outside 0.5 ml to 200 l`,
          wayOut: 'Give what filled the place.',
        };
      }
      return { ok: true, value: filled };
    },
    {
      kind: 'text',
      label: 'Water that filled it',
      help: 'Weighed or measured, in the place lined with film, level with the top. Then let the wood dry.',
      group: group.inlay,
      examples: ['240 g', '8 fl oz'],
    },
  );
}

function percent(label: string, help: string, maximum: number, example: string) {
  return z.optional(
    quantityField({
      label,
      help,
      group: group.extra,
      dimension: 'percent',
      minimum: 0,
      maximum,
      examples: [example],
    }),
  );
}

function liquidDensity(label: string, example: string) {
  return z.optional(
    quantityField({
      label,
      group: group.own,
      dimension: 'liquid-density',
      elseBare: 'g/L',
      minimum: 0.7,
      maximum: 3,
      examples: [example],
    }),
  );
}

/** What the calculator asks: a resin, a place or an amount, and how it is mixed. */
export const inputs = z.strictObject({
  resin: z.optional(
    resinField({
      label: 'Resin',
      group: group.resin,
      help: 'A generic kind stands in until you enter the maker’s sheet.',
    }),
  ),
  shapes: z.optional(shapesField(group.inlay)),
  pieceNames: z.optional(pieceNamesField(group.inlay)),
  drawing: z.optional(
    readField(z.string(), (text) => ({ ok: true, value: text }), {
      kind: 'drawing',
      label: 'Drawing',
      group: group.inlay,
      help: 'SVG path data in millimetres, or the text of an SVG file. Only its numbers are read.',
      examples: ['M0 0H400V180H0ZM60 40H340V70H60ZM60 110H340V140H60Z', 'M0 0H300V20H0Z'],
    }),
  ),
  drawingWidth: z.optional(
    lengthField(
      {
        label: 'Width of the drawing’s outline',
        group: group.inlay,
        help: 'From left to right. Needed where the drawing has no size of its own.',
        examples: ['400 mm', '15 3/4 in'],
      },
      { minimum: 5, maximum: 10_000 },
    ),
  ),
  drawingFilled: z.optional(
    choiceField({
      label: 'What of the drawing is filled',
      group: group.inlay,
      options: [
        { value: 'holes', label: 'The regions drawn inside the outline' },
        { value: 'inside', label: 'The outline itself, without such regions' },
      ],
      examples: ['holes', 'inside'],
    }),
  ),
  water: z.optional(waterField()),
  volume: z.optional(
    quantityField({
      label: 'Volume to fill',
      group: group.inlay,
      dimension: 'volume',
      minimum: 0.5,
      maximum: mostVolume,
      examples: ['240 ml', '8 fl oz'],
    }),
  ),
  mass: z.optional(
    quantityField({
      label: 'Mixed resin wanted',
      group: group.inlay,
      dimension: 'mass',
      minimum: 0.5,
      maximum: 200_000,
      examples: ['300 g', '10 oz'],
    }),
  ),
  displaced: z.optional(
    quantityField({
      label: 'Taken up by what is set into it',
      help: 'Stones, wood, metal: their volume, as the water that they push up in a measuring cup.',
      group: group.inlay,
      dimension: 'volume',
      minimum: 0.1,
      maximum: mostVolume,
      examples: ['40 ml', '1 1/2 fl oz'],
    }),
  ),
  depth: z.optional(
    lengthField({ label: 'Depth', group: group.depth, examples: ['10 mm', '3/8 in'] }, { minimum: 0.1, maximum: 300 }),
  ),
  depths: z.optional(depthsField(group.depth)),
  proud: z.optional(
    lengthField(
      {
        label: 'Stands proud of the face',
        group: group.depth,
        help: `Over the whole of it: ${asTyped({ metric: 'half to one millimetre', inch: '1/64 to 1/32 in' })} is common practice for what is levelled later. Empty: level with the face.`,
        examples: ['0.6 mm', '1/32 in'],
      },
      { minimum: 0, maximum: 5 },
    ),
  ),
  greatestDepth: z.optional(
    lengthField(
      {
        label: 'Greatest depth of one pour',
        group: group.depth,
        help: 'From the maker, for your shop. Empty: as the resin’s sheet or kind says.',
        examples: ['20 mm', '3/4 in'],
      },
      { minimum: 0.5, maximum: 200 },
    ),
  ),
  shopTemperature: z.optional(
    quantityField({
      label: 'Temperature of the shop',
      group: group.depth,
      help: 'Through the whole cure. A warmer shop bears less depth and leaves less time. Empty: as the sheet’s own figures.',
      dimension: 'temperature',
      minimum: 0,
      maximum: 45,
      examples: ['20 °C', '68 °F'],
    }),
  ),
  layers: z.optional(
    countField(
      {
        label: 'Layers',
        group: group.depth,
        help: 'Empty: as many as the greatest depth of one pour asks for. Fewer are not planned.',
        examples: ['2'],
      },
      { minimum: 1, maximum: 30 },
    ),
  ),
  sealCoat: z.optional(
    quantityField({
      label: 'Seal coat on bare wood',
      group: group.extra,
      help: `A thin first coat that soaks in: ${bareWoodTakes} is what bare wood takes, from memory. Empty: none.`,
      dimension: 'mass-per-area',
      minimum: 0,
      maximum: 1000,
      examples: ['150 g/m²', '0.5 oz/ft²'],
    }),
  ),
  bareArea: z.optional(
    quantityField({
      label: 'Bare wood to seal',
      group: group.extra,
      help: 'Empty: floor and walls of the shapes or the drawing.',
      dimension: 'area',
      minimum: 100,
      maximum: 2e7,
      examples: ['450 cm²', '70 in²'],
    }),
  ),
  drip: percent(
    'Runs over, or stands proud',
    'Of the fill: lost over an open edge, or poured above the face to be sanded off. 0 where it is dammed and level.',
    100,
    '5 %',
  ),
  residue: percent(
    'Stays in the cups',
    'Of what is mixed. Empty: 4 % where a place is filled, since small batches leave 3 to 5 %, from memory; nothing where you say how much is wanted.',
    40,
    '4 %',
  ),
  spare: percent('Spare', 'Empty: 5 % where a place is filled; nothing where you say how much is wanted.', 100, '5 %'),
  colours: z.optional(coloursField(group.colour)),
  measureBy: z.optional(
    choiceField({
      label: 'Parts are measured by',
      group: group.mixing,
      options: [
        { value: 'weight', label: 'Weight, on a scale' },
        { value: 'volume', label: 'Volume, in marked cups' },
      ],
      examples: ['weight', 'volume'],
    }),
  ),
  scaleDivision: z.optional(
    shownWhen(
      quantityField({
        label: 'Smallest division of the scale',
        group: group.mixing,
        dimension: 'mass',
        minimum: 0.001,
        maximum: 100,
        examples: ['1 g', '0.05 oz'],
      }),
      { field: 'measureBy', is: ['', 'weight'] },
    ),
  ),
  volumeDivision: z.optional(
    shownWhen(
      quantityField({
        label: 'Smallest mark of the cups',
        group: group.mixing,
        dimension: 'volume',
        minimum: 0.01,
        maximum: 500,
        examples: ['5 ml', '1/4 fl oz'],
      }),
      { field: 'measureBy', is: ['volume'] },
    ),
  ),
  cupMass: z.optional(
    quantityField({
      label: 'Most in one cup',
      group: group.mixing,
      help: 'Empty: the mass that the pot life is stated for; without one it is asked for. A larger cup gets hot sooner.',
      dimension: 'mass',
      unitAsked: true,
      minimum: 5,
      maximum: 50_000,
      examples: ['300 g', '10 oz'],
    }),
  ),
  timeFor100g: z.optional(
    quantityField({
      label: 'Time to mix and place 100 g',
      group: group.mixing,
      help: 'Empty: time limits no cup. Given, no cup holds more than you can place while it can be worked.',
      dimension: 'time',
      minimum: 10,
      maximum: 86_400,
      examples: ['8 min'],
    }),
  ),
  mixRatio: z.optional(
    readField(z.string(), parseMixRatio, {
      kind: 'text',
      label: 'Mix ratio',
      group: group.own,
      help: 'Resin first. Overrules the resin’s. Say below whether it is by weight or by volume.',
      examples: ['2:1', '100:43'],
    }),
  ),
  mixRatioBy: z.optional(
    choiceField({
      label: 'This ratio is by',
      group: group.own,
      options: [
        { value: 'volume', label: 'Volume' },
        { value: 'weight', label: 'Weight' },
      ],
      examples: ['volume', 'weight'],
    }),
  ),
  densityA: liquidDensity('Density of part A, resin', '1.16 g/ml'),
  densityB: liquidDensity('Density of part B, hardener', '1.00 g/ml'),
});

export type Inputs = z.output<typeof inputs>;

/** What is taken where an input is left empty. */
export const usual = { residue: 4, spare: 5, scaleDivision: 1, volumeDivision: 5 } as const;
