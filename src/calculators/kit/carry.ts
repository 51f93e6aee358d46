import type { CalculatorId } from '../registry.ts';
import { fieldsOf, isOptional } from './answer.ts';
import type { Calculator, RawInputs } from './calculator.ts';
import { fieldMeta } from './fields.ts';

/** An input that several calculators ask for in one meaning: what a maker calls it, and its field in each. */
interface SharedInput {
  what: string;
  fields: Readonly<Partial<Record<CalculatorId, string>>>;
}

/** The same field name in several calculators. */
const named = (field: string, calculators: readonly CalculatorId[]) =>
  Object.fromEntries(calculators.map((id) => [id, field]));

const moving: readonly CalculatorId[] = ['seasonal-movement', 'finish-and-moisture'];
const outlined: readonly CalculatorId[] = ['template-fit', 'finish-coats'];
const poured: readonly CalculatorId[] = ['resin-dose', 'pour-heat', 'working-time', 'cure-clock', 'flood-coat'];
const served: readonly CalculatorId[] = ['food-contact', 'care-card'];

const outline = [
  'rise',
  'cornerRadius',
  'tipRadius',
  'handleLength',
  'handleWidth',
  'shoulderRadius',
  'endRadius',
  'holeDiameter',
  'holeFromEnd',
  'drawing',
  'drawingWidth',
];

const airOfPlace = [
  'indoors',
  'heatTo',
  'coolTo',
  'moistureGain',
  'readings',
  'dryTemperature',
  'dryHumidity',
  'wetTemperature',
  'wetHumidity',
];

/**
 * What is carried from one calculator to another. A name alone does not make a meaning: the area of `finish-coats` is that of all faces,
 * that of `flood-coat` of one and that of `pour-heat` of the pour, so no area is carried; nor are lengths of a rough board taken for
 * those of the finished one.
 */
export const sharedInputs: readonly SharedInput[] = [
  {
    what: 'wood',
    fields: named('species', [
      'seasonal-movement',
      'width-change',
      'acclimatise',
      'cutter-speed',
      'finish-and-moisture',
      'food-contact',
      'care-card',
    ]),
  },
  // Of the finished board, across the grain.
  {
    what: 'width',
    fields: named('width', ['seasonal-movement', 'width-change', 'stock-order', 'finish-and-moisture']),
  },
  // Of the finished board.
  {
    what: 'thickness',
    fields: named('thickness', ['seasonal-movement', 'stock-order', 'finish-coats', 'finish-and-moisture']),
  },
  { what: 'cut', fields: named('cut', ['seasonal-movement', 'width-change', 'finish-and-moisture']) },
  { what: 'moisture content', fields: named('moistureNow', ['seasonal-movement', 'acclimatise']) },
  { what: 'place', fields: named('place', moving) },
  ...airOfPlace.map((field) => ({ what: 'air', fields: named(field, moving) })),
  { what: 'outline', fields: named('shape', outlined) },
  { what: 'length', fields: named('length', outlined) },
  { what: 'width', fields: named('width', outlined) },
  ...outline.map((field) => ({ what: 'outline', fields: named(field, outlined) })),
  { what: 'number of boards', fields: { 'stock-order': 'count', 'finish-coats': 'boards', 'grit-sequence': 'count' } },
  { what: 'saw cut', fields: named('kerf', ['stock-order', 'board-yield']) },
  { what: 'stock', fields: named('stock', ['template-fit', 'cutter-speed']) },
  { what: 'template', fields: named('template', ['template-fit', 'cutter-speed']) },
  { what: 'cutting length', fields: named('cuttingLength', ['template-fit', 'cutter-speed']) },
  { what: 'resin', fields: named('resin', [...poured, ...served]) },
  { what: 'temperature of the shop', fields: named('shopTemperature', poured) },
  ...['dayTemperature', 'nightTemperature', 'warmHours'].map((field) => ({
    what: 'temperature of the shop',
    fields: named(field, ['pour-heat', 'cure-clock']),
  })),
  { what: 'temperature of the resin', fields: named('resinTemperature', ['pour-heat', 'working-time']) },
  { what: 'depth', fields: named('depth', ['resin-dose', 'pour-heat']) },
  { what: 'height proud of the face', fields: named('proud', ['resin-dose', 'pour-heat']) },
  { what: 'finish', fields: named('finish', ['finish-coats', 'finish-and-moisture', ...served]) },
  { what: 'coats', fields: named('coats', ['finish-coats', 'finish-and-moisture']) },
  { what: 'market', fields: named('market', served) },
  { what: 'food', fields: named('food', served) },
  { what: 'place of the resin', fields: named('resinPlace', served) },
  { what: 'length of the coated end', fields: named('coatedLength', served) },
  ...['roomTemperature', 'nightTemperature'].map((field) => ({
    what: 'temperature of the room',
    fields: named(field, served),
  })),
  { what: 'papers', fields: named('papers', served) },
];

/** One input on its way: its field here, its field there, and what it is called. */
export interface CarriedInput {
  what: string;
  from: string;
  to: string;
  /** The values that the field there takes, where it takes a few only. */
  only?: readonly string[];
}

/** Another calculator that can go on with a case. */
export interface Onward {
  id: string;
  title: string;
  inputs: readonly CarriedInput[];
  /** Fields there that may be empty and stand by themselves: what is not carried begins empty, since the worked case is another board. */
  free: readonly string[];
}

/** The other calculators that share inputs with this one, and which. For the build: it needs every calculator at hand. */
export function onwardOf(calculator: Pick<Calculator, 'id'>, all: readonly Calculator[]): Onward[] {
  return all
    .filter(({ id }) => id !== calculator.id)
    .map((other) => {
      const inputs = sharedInputs.flatMap(({ what, fields }): CarriedInput[] => {
        const from = fields[calculator.id as CalculatorId];
        const to = fields[other.id as CalculatorId];
        if (from === undefined || to === undefined) return [];
        const schema = fieldsOf(other)[to];
        const options = schema && fieldMeta(schema)?.options?.map(({ value }) => value);
        return [{ what, from, to, ...(options ? { only: options } : {}) }];
      });
      return { id: other.id, title: other.title, inputs, free: freeOf(other) };
    })
    .filter(({ inputs }) => inputs.length > 0);
}

/** Fields that may be empty, but for those of which one way or another must be told. */
function freeOf(calculator: Calculator): string[] {
  const needed = new Set((calculator.alternatives ?? []).flatMap(({ sets }) => sets.flatMap(({ fields }) => fields)));
  return Object.keys(fieldsOf(calculator)).filter((name) => isOptional(calculator, name) && !needed.has(name));
}

/** A case on its way to another calculator: the inputs that it takes along, and what they are called. */
export interface CarriedCase {
  id: string;
  title: string;
  what: readonly string[];
  inputs: RawInputs;
}

/**
 * Where a case can go on, with what it takes along, the one that takes most first.
 *
 * @param asked inputs with their units
 */
export function carriedFrom(asked: RawInputs, onward: readonly Onward[]): CarriedCase[] {
  return onward
    .map(({ id, title, inputs, free }) => {
      const taken = inputs.filter(({ from, only }) => {
        const text = (asked[from] ?? '').trim();
        return text !== '' && (!only || only.includes(text.toLowerCase()));
      });
      return {
        id,
        title,
        what: [...new Set(taken.map(({ what }) => what))],
        inputs: {
          ...Object.fromEntries(free.map((field) => [field, ''])),
          ...Object.fromEntries(taken.map(({ from, to }) => [to, asked[from] as string])),
        },
      };
    })
    .filter(({ what }) => what.length > 0)
    .sort((one, other) => other.what.length - one.what.length);
}
