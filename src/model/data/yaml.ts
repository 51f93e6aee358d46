import { Composer, type CST, type Document, isScalar, Lexer, type Node, Parser, YAMLParseError } from 'yaml';
import type * as z from 'zod/mini';
import { schemaFaults } from './issue.ts';
import type { DataProblem } from './problem.ts';
import { faultsOfLines, guardedTokens, longestYaml, type TextFault } from './yaml-guard.ts';
import { type Part, type Position, placesIn, type Span, type YamlPlaces } from './yaml-places.ts';
import { readPlainYaml } from './yaml-plain.ts';
import { strictFaults } from './yaml-strict.ts';
import { parserFault } from './yaml-words.ts';

export type { Part, Position, Span };

/** How many problems of one file are told at once. */
const mostProblems = 20;

/** How many of them are looked up in the text, to tell the first. */
const mostPlaced = 200;

/** A YAML text as data, with the place of every path in it. */
export interface YamlReading {
  /** Undefined where there are problems. */
  data: unknown;
  /** Where the value of a path starts; what is missing is looked for at the group around it. */
  positionOf(path: readonly PropertyKey[]): Position;
  places: YamlPlaces;
  problems: DataProblem[];
}

type ParserError = { message: string; pos: [number, number] };

/** Faults with each run of the same words told once, where it begins, with how many more follow: one slip of indent displaces what stands below it. */
function onceEach(faults: readonly TextFault[]): TextFault[] {
  const runs: { fault: TextFault; more: number }[] = [];
  for (const fault of [...faults].sort((one, other) => one.from - other.from)) {
    const last = runs.at(-1);
    if (last?.fault.message === fault.message) last.more++;
    else runs.push({ fault, more: 0 });
  }
  return runs.map(({ fault, more }) =>
    more === 0
      ? fault
      : {
          ...fault,
          message: `${fault.message} ${more === 1 ? 'One more line below says' : `${more} more lines below say`} the same and may come right with it.`,
        },
  );
}

/** What the parser refuses, one fault a line: what else it says of a line follows from the first. */
function parserFaults(text: string, errors: readonly ParserError[], places: YamlPlaces): TextFault[] {
  const faults: TextFault[] = [];
  const told = new Set<number>();
  for (const { message, pos } of errors) {
    const fault = parserFault(text, message, pos);
    const lines = [places.at(pos[0]).line, places.at(fault.from).line];
    if (!lines.some((line) => told.has(line))) faults.push(fault);
    for (const line of lines) told.add(line);
  }
  return onceEach(faults).slice(0, mostProblems);
}

/** What the parser makes of the tokens of a text, one after the other. */
function* parsed(tokens: readonly string[]): Generator<CST.Token> {
  const parser = new Parser();
  for (const token of tokens) yield* parser.next(token);
  yield* parser.end();
}

/** The first document of a text that was taken apart into tokens; a second one is an error of it. */
function documentOf(text: string, tokens: readonly string[]): Document.Parsed | undefined {
  const composer = new Composer({
    schema: 'core',
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: 'error',
    stringKeys: true,
  });
  let first: Document.Parsed | undefined;
  for (const document of composer.compose(parsed(tokens), true, text.length)) {
    if (first) {
      const [from, to] = document.range;
      const message = 'Source contains multiple documents; please use YAML.parseAllDocuments()';
      first.errors.push(new YAMLParseError([from, to], 'MULTIPLE_DOCS', message));
      break;
    }
    first = document;
  }
  return first;
}

/** Whether nothing was written, or only comments. */
function isEmpty(contents: Node | null): boolean {
  return contents === null || (isScalar(contents) && contents.source === '');
}

function problemAt(file: string, span: Span, path: readonly PropertyKey[], message: string): DataProblem {
  const { line, column, endLine, endColumn } = span;
  return { file, line, column, endLine, endColumn, field: path.map(String).join('.'), message };
}

/** The places in a text that was read without a parser: it is parsed as soon as one is asked for. */
function placesOnDemand(text: string): YamlPlaces {
  let made: YamlPlaces | undefined;
  const places = (): YamlPlaces => {
    made ??= placesIn(text, documentOf(text, [...new Lexer().lex(text)]));
    return made;
  };
  return {
    at: (offset) => places().at(offset),
    between: (from, to) => places().between(from, to),
    spanOf: (path, part) => places().spanOf(path, part),
    spanWithin: (path, from, to) => places().spanWithin(path, from, to),
    pathAt: (offset) => places().pathAt(offset),
  };
}

function readingOf(data: unknown, places: YamlPlaces, problems: DataProblem[]): YamlReading {
  const positionOf = (path: readonly PropertyKey[]) => {
    const { line, column } = places.spanOf(path);
    return { line, column };
  };
  return { data, positionOf, places, problems };
}

/** A text that is written plainly, read without the parser. */
function readQuickly(text: string, longest: number): YamlReading | undefined {
  if (text.length > longest || faultsOfLines(text).length > 0) return undefined;
  const data = readPlainYaml(text);
  return data && readingOf(data, placesOnDemand(text), []);
}

/**
 * Read a YAML text, whoever wrote it, and keep the place of each value.
 *
 * A text that the guard refuses is not parsed: it has no places but those of its faults.
 *
 * @param text the whole file
 * @param file path shown in problems
 * @param longest characters at most
 */
export function readYaml(text: string, file: string, longest = longestYaml): YamlReading {
  return readQuickly(text, longest) ?? parseYaml(text, file, longest);
}

/** The same by the parser, whatever the text: what a quick reading is held against. */
export function parseYaml(text: string, file: string, longest = longestYaml): YamlReading {
  const { faults: guarded, tokens } = guardedTokens(text, longest);
  const document = guarded.length > 0 ? undefined : documentOf(text, tokens);
  const places = placesIn(text, document);
  const broken = document ? parserFaults(text, [...document.errors, ...document.warnings], places) : guarded;
  const found = document && broken.length === 0 ? strictFaults(document, text, places.at) : [];
  if (document && broken.length === 0 && isEmpty(document.contents))
    found.push({ from: 0, to: 0, message: 'the file holds nothing yet. Write its first field, “name: value”.' });
  const problems = [...broken, ...found]
    .sort((one, other) => one.from - other.from)
    .slice(0, mostProblems)
    .map(({ from, to, message }) => {
      // A text that cannot be read has no fields yet.
      const path = broken.length > 0 ? [] : places.pathAt(from).path;
      return problemAt(file, places.between(from, to), path, message);
    });
  return readingOf(problems.length === 0 ? document?.toJS({ maxAliasCount: 0 }) : undefined, places, problems);
}

/**
 * Read a YAML text and check it against a schema.
 *
 * @returns the record, or undefined with everything wrong with it, the first twenty
 */
export function readYamlRecord<Schema extends z.ZodMiniType>(
  text: string,
  schema: Schema,
  file: string,
  longest = longestYaml,
): { record: z.output<Schema> | undefined; reading: YamlReading; problems: DataProblem[] } {
  const reading = readYaml(text, file, longest);
  if (reading.problems.length > 0) return { record: undefined, reading, problems: reading.problems };
  const parsed = schema.safeParse(reading.data);
  if (parsed.success) return { record: parsed.data, reading, problems: [] };
  const problems = schemaFaults(parsed.error.issues, reading.data, schema)
    .slice(0, mostPlaced)
    .map(({ path, part, message }) => problemAt(file, reading.places.spanOf(path, part), path, message))
    .sort((one, other) => one.line - other.line || one.column - other.column)
    .slice(0, mostProblems);
  return { record: undefined, reading, problems };
}
