import { calculatorById, calculators } from '../calculators/index.ts';
import { withUnits } from '../calculators/kit/address.ts';
import { answer, fieldsOf, isOptional } from '../calculators/kit/answer.ts';
import type { Calculator } from '../calculators/kit/calculator.ts';
import { documentText } from '../calculators/kit/document-text.ts';
import { fieldMeta, rangeWords } from '../calculators/kit/fields.ts';
import { longestJson } from '../calculators/kit/limits.ts';
import { type Report, report } from '../calculators/kit/report.ts';
import { cautionWords, type ResultDocument, verdictWords } from '../model/evidence/index.ts';
import {
  defaultUnits,
  formatBand,
  formatQuantity,
  inReaderUnits,
  nearest,
  unitLabel,
} from '../model/quantity/index.ts';
import { readOptions } from './options.ts';
import { isTaken, takeAway, takeOptions, takeUsage } from './take-away.ts';
import type { Command } from './usage.ts';
import { UsageError } from './usage.ts';

type Inputs = Readonly<Record<string, unknown>>;

function exampleLine(calculator: Calculator): string {
  return `kerf calc ${calculator.id} --json '${JSON.stringify(calculator.example.metric)}'`;
}

/** Events and uses by name, as the calculator's own example has them: which there are depends on the case. */
function answerHelp(calculator: Calculator): string[] {
  const outcome = answer(calculator, calculator.example.metric);
  if (!outcome.ok) return [];
  const { timeline, uses = [] } = outcome.value.result;
  const events = (timeline?.events ?? []).map(({ id, label }) => `  ${id}: ${label}`);
  const used = uses.map(({ id, what, unit }) => `  ${id}: ${what} [${unitLabel(unit)}]`);
  return [
    ...(events.length > 0 ? ['', 'Events of the example:', ...events] : []),
    ...(used.length > 0 ? ['', 'Uses of the example:', ...used] : []),
  ];
}

/** Inputs of a calculator, each with its range or its choices and an example, for `--help`. */
function inputHelp(calculator: Calculator): string {
  const lines = Object.entries(fieldsOf(calculator)).map(([name, field]) => {
    const meta = fieldMeta(field);
    const takes = meta?.options
      ? meta.options.map((option) => option.value).join(' | ')
      : meta?.kind === 'quantity' && meta.minimum !== undefined
        ? `${rangeWords(meta)}, for example ${meta.examples[0]}`
        : `for example ${meta?.examples[0]}`;
    return `  ${name}${isOptional(calculator, name) ? ' (optional)' : ''}: ${meta?.label}; ${takes}`;
  });
  const choices = (calculator.alternatives ?? []).map(
    ({ label, sets }) => `  ${label}: ${sets.map((set) => set.fields.join(' + ')).join(', or ')}`,
  );
  return [
    `${calculator.title}. ${calculator.question}`,
    calculator.summary,
    '',
    'Inputs, as texts with a unit or numbers in the unit named:',
    ...lines,
    ...(choices.length > 0 ? ['', 'Give one set of:', ...choices] : []),
    '',
    'Figures of an answer:',
    ...Object.entries(calculator.figures).map(
      ([name, { label, unit }]) => `  ${name}: ${label} [${unitLabel(unit) || 'number'}]`,
    ),
    ...answerHelp(calculator),
    '',
    'Example:',
    `  ${exampleLine(calculator)}`,
  ].join('\n');
}

function findCalculator(id: string | undefined): Calculator {
  const known = calculators.map((calculator) => calculator.id);
  if (id === undefined) {
    throw new UsageError(
      `calc: no calculator was named; there are ${known.join(', ')}. Write kerf calc ${known[0]} --help.`,
    );
  }
  const found = calculatorById(id);
  if (found) return found;
  const near = nearest(id, known);
  const way = near ? `Did you mean ${near}?` : 'Pick one of them.';
  throw new UsageError(`calc: “${id}” is not a calculator; there are ${known.join(', ')}. ${way}`);
}

function readJson(text: string | undefined, calculator: Calculator): Inputs {
  const example = `Write, for example: ${exampleLine(calculator)}`;
  if (text === undefined) throw new UsageError(`calc ${calculator.id}: no inputs were given. ${example}`);
  if (text.length > longestJson)
    throw new UsageError(
      `--json: the text has ${text.length} characters; at most ${longestJson} are read. Give the inputs alone. ${example}`,
    );
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    throw new UsageError(`--json: the text is not JSON (${(error as Error).message}). ${example}`);
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw new UsageError(`--json: ${text.slice(0, 40)} is not an object of inputs by name. ${example}`);
  }
  return value as Inputs;
}

/** The inputs as the answer repeats them: every quantity with its unit. */
function explicit(calculator: Calculator, inputs: Inputs): Inputs {
  const texts = Object.entries(inputs).map(
    ([name, value]) => [name, typeof value === 'number' ? String(value) : value] as const,
  );
  const plain = Object.fromEntries(texts.filter((entry): entry is [string, string] => typeof entry[1] === 'string'));
  return { ...inputs, ...withUnits(calculator, plain, defaultUnits) };
}

/** An answer to read: the verdict first, then this case's cautions, the figures, what is printed of it, and the general cautions. */
function plainText({ verdict, figures, cautions }: Report, documents: readonly ResultDocument[]): string {
  const figureLines = Object.values(figures).map(({ label, value, unit, digits = 3, limit, low, high, basis }) => {
    const ends =
      low !== undefined && high !== undefined && formatBand(value, { low, high }, unit, defaultUnits, { digits });
    return `  ${label}: ${formatQuantity(value, unit, defaultUnits, { digits, limit })}${ends ? ` (${ends})` : ''}${basis === 'published' ? '' : ` [${basis}]`}`;
  });
  const lines = (own: boolean) =>
    cautions
      .filter((caution) => (caution.own ?? false) === own)
      .map(({ level, text }) => `  ${cautionWords[level]}. ${text}`);
  return `${[
    ...(verdict ? [`${verdictWords[verdict.level]}. ${verdict.text}`] : []),
    ...lines(true),
    ...figureLines,
    ...documents.map((document) => `\n== ${document.title} ==\n\n${bodyOf(document)}\n`),
    ...lines(false),
  ].join('\n')}\n`;
}

/** A document below a line that names it already. */
function bodyOf(document: ResultDocument): string {
  const text = documentText(document, defaultUnits);
  return text.startsWith(`${document.title}\n`) ? text.slice(document.title.length).trimStart() : text;
}

/** `kerf calc <calculator> --json '<inputs>'`: print the answer as one JSON object, with `--text` to be read, as CSV or a spreadsheet. */
export const calc: Command = async (args, { out, err }) => {
  const { values, positionals } = readOptions('calc', {
    args: [...args],
    options: {
      json: { type: 'string' },
      text: { type: 'boolean' },
      ...takeOptions,
      help: { type: 'boolean', short: 'h' },
    },
    allowPositionals: true,
  });
  if (values.help && positionals.length === 0) {
    out(`kerf calc <calculator> --json '<inputs>' [--text] ${takeUsage}\n`);
    for (const { id, question } of calculators) out(`  ${id}: ${question}\n`);
    return 0;
  }
  const [id, ...rest] = positionals;
  const calculator = findCalculator(id);
  if (values.help) {
    out(`${inputHelp(calculator)}\n`);
    return 0;
  }
  if (rest.length > 0) {
    throw new UsageError(
      `calc: “${rest[0]}” was not expected after ${id}. Put the inputs behind --json, in single quotes.`,
    );
  }
  const inputs = readJson(values.json, calculator);
  const outcome = answer(calculator, inputs);
  if (!outcome.ok)
    throw new UsageError(
      ...outcome.errors.map(
        ({ field, message }) => `${field || calculator.id}: ${inReaderUnits(message, defaultUnits)}`,
      ),
    );
  const told = report(calculator, explicit(calculator, inputs), outcome.value.result);
  if (isTaken(values)) {
    await takeAway({ calculator, inputs: told.inputs, result: outcome.value.result }, values, { out, err });
    return 0;
  }
  out(values.text ? plainText(told, outcome.value.result.documents ?? []) : `${JSON.stringify(told)}\n`);
  return 0;
};
