import type * as z from 'zod/mini';
import type { Figure, Outcome, Result } from '../../model/evidence/index.ts';

/** Raw texts by input name, as they stand in an address or in the fields of a form. */
export type RawInputs = Readonly<Record<string, string>>;

/**
 * Inputs of which a reader knows one set or another: a ring angle or a cut, a climate or own readings.
 * A form shows one set at a time; an address holds one.
 */
export interface Alternatives {
  /** What the sets have in common, for example `What you know`. */
  label: string;
  /** The usual one first. */
  sets: readonly AlternativeSet[];
}

/** One of several sets of inputs, of which a reader knows one. */
export interface AlternativeSet {
  label: string;
  /** Names of its fields. */
  fields: readonly string[];
  /**
   * Those that make the set a given one, where not all do: how a house is kept says nothing beside own readings, but does not
   * contradict them. All of its fields unless told.
   */
  deciding?: readonly string[];
  /** Texts of its fields that leave the answer to another set, as `own` does where own readings follow. */
  yields?: Readonly<Record<string, string>>;
}

/** Inputs that say nothing without each other. */
export interface Together {
  fields: readonly string[];
  /** Why, as a sentence that a refusal begins with: `A width of the place says nothing without its length`. */
  why: string;
}

/** What a figure of an answer is, said once: its label and unit, how finely it is known, what it means. */
export interface FigureDeclaration {
  /** Sentence case. */
  label: string;
  /** UCUM code of one of the units of `model/quantity`; a figure has one unit, whatever was asked. */
  unit: string;
  /** Significant digits that it deserves; 3 unless told. */
  digits?: number;
  /** What it means, for a reader who meets it first. */
  help?: string;
  /** Behind the tables and charts, for whoever looks twice. */
  minor?: boolean;
  /** In its metric unit for every reader, as grams on a scale. */
  kept?: boolean;
  /** Only the seasons show it: a sheet tells it, and has no line for what was measured on the day. */
  foretold?: boolean;
}

/** What `compute` says of a figure that its calculator has declared: the value and what is peculiar to this case. */
export type FigureValue = Pick<Figure, 'value' | 'low' | 'high' | 'band' | 'basis' | 'citation' | 'note' | 'limit'>;

/** What a figure of a record says of itself, where the calculator's declaration says what it is; both are in the same unit. */
export function figureValueOf({ value, low, high, band, basis, citation, note }: Figure): FigureValue {
  return {
    value,
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
    ...(band === undefined ? {} : { band }),
    basis,
    ...(citation === undefined ? {} : { citation }),
    ...(note === undefined ? {} : { note }),
  };
}

/** What `compute` gives: a result whose figures are values by declared name. */
export type Answer<Name extends string = string> = Omit<Result, 'figures'> & {
  figures: Readonly<Partial<Record<Name, FigureValue>>>;
};

/**
 * A calculator: what it asks, in a zod schema whose fields carry their label, help, unit and example, and how it answers.
 * Pages, the printer and the command line all use this one object; it holds no React.
 */
export interface Calculator<Schema extends z.ZodMiniType = z.ZodMiniType, Name extends string = string> {
  /** Also its address and its name on the command line. */
  id: string;
  title: string;
  /** The question it answers, as its user would ask it. */
  question: string;
  /** One or two sentences: what it takes, what it gives, what it rests on. */
  summary: string;
  /** An object schema made of the kit's fields. */
  inputs: Schema;
  /** Sets of inputs that exclude each other; two at once are refused before anything is worked out. */
  alternatives?: readonly Alternatives[];
  /** Inputs that say nothing without each other: all of a group are given, or none. */
  together?: readonly Together[];
  /** Groups of fields that few readers need: the form shows them closed until something stands in one of them. */
  folded?: readonly string[];
  /**
   * Its answer takes more than a few milliseconds, always or at first, until what it looks things up in is made: a page asks a worker, so that typing
   * never waits.
   */
  heavy?: 'always' | 'at first';
  /** The worked case that the page opens with, in each system of units. */
  example: { metric: RawInputs; inch: RawInputs };
  /**
   * What is reckoned with where a field was left empty, as texts that the field reads: a form shows no more than a hint of it, and paper
   * must say it. Only what depends on nothing but other texts; a test gives each of them and looks whether the answer stays the same.
   */
  taken?: (asked: RawInputs) => RawInputs;
  /** Figures that `compute` may give, in the order in which they are shown; the first is the answer's headline. */
  figures: Readonly<Record<Name, FigureDeclaration>>;
  /** Pure: the same inputs always give the same answer, and nothing that passes the schema makes it throw. */
  compute(inputs: z.output<Schema>): Outcome<Answer<NoInfer<Name>>>;
}

/** What a form asks and how it starts: a calculator without its answer, or the data sheet of a resin. */
export type Asking<Schema extends z.ZodMiniType = z.ZodMiniType> = Pick<
  Calculator<Schema>,
  'title' | 'inputs' | 'alternatives' | 'together' | 'folded' | 'example'
>;

/** Keep a calculator's types while declaring it: those of its inputs, and the names of its figures. */
export function calculator<Schema extends z.ZodMiniType, Name extends string>(
  definition: Calculator<Schema, Name>,
): Calculator<Schema, Name> {
  return definition;
}
