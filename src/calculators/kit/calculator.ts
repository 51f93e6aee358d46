import type * as z from 'zod/mini';
import type { Outcome, Result } from '../../model/evidence/index.ts';

/** Raw texts by input name, as they stand in an address or in the fields of a form. */
export type RawInputs = Readonly<Record<string, string>>;

/**
 * Inputs of which a reader knows one set or another: a ring angle or a cut, a climate or own readings.
 * A form shows one set at a time; an address holds one.
 */
export interface Alternatives {
  /** What the sets have in common, for example `What you know`. */
  label: string;
  /** Names of the fields of each set, the usual one first. */
  sets: readonly { label: string; fields: readonly string[] }[];
}

/**
 * A calculator: what it asks, in a zod schema whose fields carry their label, help, unit and example, and how it answers.
 * Pages, the printer and the command line all use this one object; it holds no React.
 */
export interface Calculator<Schema extends z.ZodMiniType = z.ZodMiniType> {
  /** Also its address and its name on the command line. */
  id: string;
  title: string;
  /** The question it answers, as its user would ask it. */
  question: string;
  /** One or two sentences: what it takes, what it gives, what it rests on. */
  summary: string;
  /** An object schema made of the kit's fields. */
  inputs: Schema;
  /** Sets of inputs that exclude each other; `compute` refuses two at once. */
  alternatives?: readonly Alternatives[];
  /** Groups of fields that few readers need: the form shows them closed until something stands in one of them. */
  folded?: readonly string[];
  /** The worked case that the page opens with, in each system of units. */
  example: { metric: RawInputs; inch: RawInputs };
  /**
   * Figures that `compute` may give, in the order in which they are shown; the first is the answer's headline.
   * Those marked `minor` stand behind the tables and charts: they are for whoever looks twice.
   */
  figures: Readonly<Record<string, { label: string; help?: string; minor?: boolean }>>;
  /** Pure: the same inputs always give the same answer, and nothing that passes the schema makes it throw. */
  compute(inputs: z.output<Schema>): Outcome<Result>;
}

/** What a form asks and how it starts: a calculator without its answer, or the data sheet of a resin. */
export type Asking<Schema extends z.ZodMiniType = z.ZodMiniType> = Pick<
  Calculator<Schema>,
  'title' | 'inputs' | 'alternatives' | 'folded' | 'example'
>;

/** Keep a calculator's input type while declaring it. */
export function calculator<Schema extends z.ZodMiniType>(definition: Calculator<Schema>): Calculator<Schema> {
  return definition;
}
