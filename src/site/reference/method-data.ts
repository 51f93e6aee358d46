import type { RuleWords } from '../../method/rules/rule.ts';
import type { Caution } from '../../model/evidence/index.ts';
import type { FormatField } from './format.ts';

/** A rule as its page tells it. */
export type RuleEntry = RuleWords;

/** Rules that concern the same thing. */
export interface RuleGroupEntry {
  id: string;
  title: string;
  rules: readonly RuleEntry[];
}

/** Cautions of an act: those that the page says here, and those that it has said at an act before. */
export interface ActCautions {
  here: readonly Caution[];
  before: readonly (Pick<Caution, 'id' | 'level'> & { act: string })[];
}

/** An act as its page tells it. */
export interface ActEntry {
  id: string;
  label: string;
  about: string;
  /** What it gives off or leaves behind, in words. */
  hazards: readonly string[];
  /** What is worn or stands ready, in words. */
  protection: readonly string[];
  always: ActCautions;
  /** Where wood had another life. */
  salvage: ActCautions;
  /** Where the piece has resin in it. */
  resin: ActCautions;
  /** At a drum, disc or belt machine. */
  drum: ActCautions;
  /** Where a dry powder is stirred in. */
  powder: ActCautions;
  /** Where a solvent is listed or named, or nothing is listed. */
  solvent: ActCautions;
  /** Unless cloths of a finish are all that is cleared away. */
  besideRags: ActCautions;
}

export interface ActGroupEntry {
  id: string;
  title: string;
  acts: readonly ActEntry[];
}

/** The format of a file that is written by hand. */
export interface FormatEntry {
  title: string;
  description: string;
  /** What else is said before the fields. */
  lead: string;
  /** Of its schema. */
  file: string;
  fields: readonly FormatField[];
  /** Where the words of a field are explained, by the path of the field: an address that the word completes. */
  wordPages: Readonly<Record<string, string>>;
  /** A whole file. */
  example?: { title: string; text: string };
}
