import type { Caution, Figure, Outcome, Result, ResultTable, Verdict } from '../../model/evidence/index.ts';
import { defaultUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import { startingInputs, withUnits, writeAddress } from './address.ts';
import { answerTo } from './answer.ts';
import { type AskedWords, askedWords } from './asked.ts';
import type { Calculator, RawInputs } from './calculator.ts';

/** Rows of a table that a page prints; the calculator's own page has them all. */
export const rowsOnPaper = 16;

/** A table of an answer as a page prints it. */
export interface ShortTable extends ResultTable {
  /** How many of its rows were left out. */
  left: number;
}

/**
 * An answer as a page holds it between its steps: the sentence, what it was worked for and what must not be shut away, and, for paper and
 * for a page without scripts, its figures and tables. It is plain data: a page that shows it needs no calculator.
 */
export interface FoldedAnswer {
  verdict: Verdict;
  /** What the page does not say already, the gravest first; of notes only those of this very case. */
  cautions: readonly Caution[];
  figures: readonly Figure[];
  tables: readonly ShortTable[];
  /** What was asked, in words. */
  asked: AskedWords;
  /** The same for a reader of inches, where it reads otherwise. */
  askedInch?: AskedWords;
  /** Names of the fields in which somebody typed something other than the page's own case; the build's answer has none. */
  typed?: readonly string[];
  /** The case as the query part of the address of the calculator's own page. */
  search: string;
}

/** Whether a caution stands in the open where its calculator is folded: what can hurt somebody or spoil the work, and what this case brought up. */
export const standsOpen = ({ own, level }: Caution): boolean => own === true || level !== 'note';

/** Whether the sentence of an answer says a caution word for word; a danger is said once more, as what it is. */
const isInVerdict = ({ level, text }: Caution, verdict: Verdict): boolean =>
  level !== 'danger' && verdict.text.includes(text.replace(/\.$/, ''));

/** What a folded calculator shows of a result. */
function shortened(
  { verdict, cautions, figures, tables = [] }: Result,
  said: readonly string[],
): Omit<FoldedAnswer, 'asked' | 'search'> {
  return {
    verdict,
    cautions: cautions.filter(
      (caution) => standsOpen(caution) && (caution.own || !said.includes(caution.id)) && !isInVerdict(caution, verdict),
    ),
    figures: Object.values(figures)
      .filter(({ minor }) => !minor)
      .map(({ help: _, note: __, band: ___, ...figure }) => figure),
    tables: tables.map((table) => ({
      ...table,
      rows: table.rows.slice(0, rowsOnPaper),
      left: Math.max(0, table.rows.length - rowsOnPaper),
    })),
  };
}

/**
 * What the build writes into a page of a worked case.
 *
 * @param preset what the page lays over the calculator's own worked case
 * @param said ids of the cautions that stand above it in the page
 * @returns the errors of the fields where the case has no answer
 */
export function foldedCase(
  calculator: Calculator,
  preset: RawInputs,
  said: readonly string[],
): FoldedAnswer | Extract<Outcome<never>, { ok: false }> {
  const caseFor = (units: ReaderUnits) => startingInputs(calculator, preset, units, '');
  const raw = caseFor(defaultUnits);
  const outcome = answerTo(calculator, withUnits(calculator, raw, defaultUnits));
  if (!outcome.ok) return outcome;
  const inches: ReaderUnits = { ...defaultUnits, system: 'inch' };
  const asked = askedWords(calculator, raw, defaultUnits);
  const askedInch = askedWords(calculator, caseFor(inches), inches);
  return {
    ...shortened(outcome.value, said),
    asked,
    ...(JSON.stringify(askedInch) === JSON.stringify(asked) ? {} : { askedInch }),
    search: writeAddress(calculator, raw, defaultUnits),
  };
}

/** The same of a case that a reader has typed. */
export function foldedOf(
  calculator: Calculator,
  raw: RawInputs,
  result: Result,
  units: ReaderUnits,
  said: readonly string[],
  preset: RawInputs = {},
): FoldedAnswer {
  const begun = startingInputs(calculator, preset, units, '');
  return {
    ...shortened(result, said),
    typed: Object.keys(raw).filter((name) => (raw[name] ?? '').trim() !== (begun[name] ?? '').trim()),
    asked: askedWords(calculator, raw, units),
    search: writeAddress(calculator, raw, units),
  };
}
