import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { ErrorObject, ValidateFunction } from 'ajv';
import Ajv2020 from 'ajv/dist/2020.js';
import { sources, type Table } from '../model/evidence/index.ts';
import { nearest } from '../model/quantity/index.ts';
import { allSpecies } from '../model/species/index.ts';
import type { SpeciesRecord } from '../model/species/record.ts';
import { indexRows, missingRows, type RowIndex } from '../model/species/rows.ts';
import {
  type DataProblem,
  inspectRecords,
  inspectTable,
  problemLine,
  type RecordKind,
  type RecordReading,
  recordKinds,
  root,
  shownPath,
  speciesRecords,
  tableDefinitions,
  tableFile,
} from '../store/index.ts';
import { readOptions } from './options.ts';
import type { Command } from './usage.ts';
import { readMethods } from './validate-methods.ts';

const ajv = new Ajv2020({ strict: true, allErrors: true, logger: false });

const schemaFolder = join(root, 'schemas');

/** The check of a published schema, by the name of its file. Schemas refer to each other, so all are known before one is asked. */
function schemaNamed(name: string): ValidateFunction {
  if (!ajv.schemas[name]) {
    for (const file of readdirSync(schemaFolder)) {
      ajv.addSchema(JSON.parse(readFileSync(join(schemaFolder, file), 'utf8')), basename(file, '.json'));
    }
  }
  const validate = ajv.getSchema(name);
  if (!validate) throw new Error(`There is no schema ${name} in schemas/; run npm run generate`);
  return validate as ValidateFunction;
}

/** Path of the value that a validator refused, for example `['rows', 'other-sources']`. */
function pathOf(error: ErrorObject): string[] {
  const path = error.instancePath
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'));
  const extra = error.params.additionalProperty ?? error.params.missingProperty;
  return typeof extra === 'string' ? [...path, extra] : path;
}

/** Branches of an alternative fail one by one; the alternative itself says all of it. */
function tellingErrors(validate: ValidateFunction): ErrorObject[] {
  const all = validate.errors ?? [];
  return all.filter((error) => !/\/(anyOf|oneOf)\/\d+\//.test(error.schemaPath));
}

function refusal(error: ErrorObject, schema: string): string {
  return `the value ${error.message} (schemas/${schema}.json). Correct it, or run npm run generate where the schema is out of date.`;
}

function tableProblems(): { tables: Map<string, Table>; problems: DataProblem[] } {
  const tables = new Map<string, Table>();
  const all = tableDefinitions.flatMap((definition) => {
    const { table, problems, columnAt } = inspectTable(definition);
    tables.set(definition.name, table);
    const schema = `table-${definition.name}`;
    const validate = schemaNamed(schema);
    const refused = table.rows.flatMap((row) => {
      if (validate(row.cells)) return [];
      return tellingErrors(validate).map((error): DataProblem => {
        const field = pathOf(error).join('.');
        const column = columnAt(row.line, field);
        return {
          file: shownPath(tableFile(definition)),
          line: row.line,
          column,
          field,
          message: refusal(error, schema),
        };
      });
    });
    return [...problems, ...refused];
  });
  return { tables, problems: all };
}

/** Labels that a record names and no table has, each at its place in the record. */
function missingLabels({ file, record, yaml }: RecordReading<SpeciesRecord>, index: RowIndex): DataProblem[] {
  if (!record) return [];
  return missingRows(record, index).map(({ table, label }): DataProblem => {
    const holds = (join: 'rows' | 'groupRows') => record[join]?.[table]?.indexOf(label) ?? -1;
    const join = holds('rows') >= 0 ? 'rows' : 'groupRows';
    const field = `${join}.${table}`;
    const known = [...(index.get(table)?.keys() ?? [])];
    const near = nearest(label, known);
    const way = near ? `Did you mean “${near}”?` : `Copy the label as it stands in ${table}.csv.`;
    return {
      file,
      ...yaml.positionOf([join, table, holds(join)]),
      field,
      message: `no row of the table is labelled “${label}”. ${way}`,
    };
  });
}

/** Problems of the records of one kind, by the reading that found them and by the published schema. */
function recordProblems(kind: RecordKind): { count: number; problems: DataProblem[] } {
  const validate = schemaNamed(kind.name);
  const readings = inspectRecords(kind);
  const problems = readings.flatMap(({ file, yaml, problems: found }) => {
    // What zod refused is already told in words; ajv is asked where zod had nothing to say.
    if (found.length > 0) return found;
    const refused = validate(yaml.data) ? [] : tellingErrors(validate);
    return refused.map((error): DataProblem => {
      const path = pathOf(error);
      return { file, ...yaml.positionOf(path), field: path.join('.'), message: refusal(error, kind.name) };
    });
  });
  return { count: readings.length, problems };
}

/** Problems of files that hold a list of items with ids; each is given the file and line on which its id stands. */
function listProblems(schema: string, files: readonly string[], items: readonly { id: string }[]): DataProblem[] {
  const validate = schemaNamed(schema);
  const accepted: boolean = validate(items);
  if (accepted) return [];
  const texts = files.map((file) => ({ file, lines: readFileSync(join(root, file), 'utf8').split('\n') }));
  const placeOf = (id: string) =>
    texts
      .map(({ file, lines }) => ({
        file,
        line: 1 + lines.findIndex((line) => line.includes(`id: '${id}'`) || line === `id: ${id}`),
      }))
      .find(({ line }) => line > 0);
  return tellingErrors(validate).map((error): DataProblem => {
    const [index = '', ...path] = pathOf(error);
    const id = items[Number(index)]?.id ?? '';
    const { file, line } = placeOf(id) ?? { file: files[0] ?? '', line: 1 };
    const field = [id, ...path].filter(Boolean).join('.');
    return { file, line, column: 1, field, message: refusal(error, schema) };
  });
}

/** Every file in which sources are listed. */
function sourceFiles(): string[] {
  const folder = 'src/model/evidence/sources';
  return readdirSync(join(root, folder))
    .sort()
    .map((name) => `${folder}/${name}`);
}

/** `kerf validate`: check all records, tables and methods that lie in the project; exit code 1 where something is wrong. */
export const validate: Command = async (args, { out, err }) => {
  const { values } = readOptions('validate', { args: [...args], options: { help: { type: 'boolean', short: 'h' } } });
  if (values.help) {
    out(
      'kerf validate\n  Check every record and table against the published schemas, and read every method, shop record and calendar of methods/; problems come as file:line:column. Rules are asked by kerf check.\n',
    );
    return 0;
  }
  const tables = tableProblems();
  const records = recordKinds.map(recordProblems);
  const index = indexRows(tables.tables);
  const woods = inspectRecords(speciesRecords);
  const methods = await readMethods(join(root, 'methods'), 'methods');
  const problems = [
    ...tables.problems,
    ...records.flatMap((each) => each.problems),
    ...woods.flatMap((wood) => missingLabels(wood, index)),
    ...listProblems('sources', sourceFiles(), sources),
    ...listProblems(
      'species-list',
      woods.map(({ file }) => file),
      allSpecies,
    ),
    ...methods.problems,
  ];
  for (const problem of problems) err(`${problemLine(problem)}\n`);
  const count = (number: number, word: string) => `${number} ${word}${number === 1 ? '' : 's'}`;
  const counts = [
    count(tableDefinitions.length, 'table'),
    ...recordKinds.map(({ title }, at) => count(records[at]?.count ?? 0, title.toLowerCase())),
    count(methods.methods, 'method'),
    count(methods.shops, 'shop record'),
    count(methods.calendars, 'calendar'),
  ];
  out(
    `${counts.join(', ')} and ${count(sources.length, 'source')}: ${problems.length === 0 ? 'nothing wrong' : count(problems.length, 'problem')}\n`,
  );
  return problems.length === 0 ? 0 : 1;
};
