import Papa from 'papaparse';

/** A field of a table schema, as far as the tables here use them. */
export interface SchemaField {
  name: string;
  type: 'string' | 'number' | 'integer' | 'datetime' | 'boolean';
  constraints?: { required?: boolean; unique?: boolean; enum?: readonly string[] };
}

/** A resource of a data package, as far as the tables here use it. */
export interface Resource {
  name: string;
  path: string;
  licenses?: readonly { name: string; path?: string }[];
  description?: string;
  schema?: { fields: readonly SchemaField[]; missingValues?: readonly string[] };
}

/**
 * How a value of each type is written where its field gives no format of its own.
 *
 * @see Open Knowledge Foundation, Data Package standard 2.0, Table Schema, “Field Types”: number and integer by the lexical forms of
 *   decimal and integer of XML Schema, with an exponent; datetime by ISO 8601 with date and time, then parts of a second and zone where
 *   there are any; boolean by `trueValues` and `falseValues`.
 */
const forms: Readonly<Record<SchemaField['type'], RegExp>> = {
  string: /^[\s\S]*$/,
  number: /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?%?$|^(?:NaN|-?INF)$/i,
  integer: /^[+-]?\d+$/,
  datetime:
    /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])T(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:\.\d+)?(?:Z|[+-]\d{2}:\d{2})?$/,
  boolean: /^(?:true|True|TRUE|1|false|False|FALSE|0)$/,
};

/**
 * What is wrong with a CSV file by the schema of its resource, a line for each fault.
 *
 * @param csv the whole file
 */
export function tableFaults({ path, schema }: Resource, csv: string): string[] {
  if (!schema) return [];
  const { data: rows, errors } = Papa.parse<string[]>(csv, { skipEmptyLines: true });
  const [header = [], ...body] = rows;
  const { fields, missingValues = [''] } = schema;
  const names = fields.map(({ name }) => name);
  const faults = errors.map(({ row, message }) => `${path}:${(row ?? 0) + 1} ${message}`);
  if (header.join('\n') !== names.join('\n'))
    faults.push(`${path}:1 has ${header.join(', ')}, its schema ${names.join(', ')}`);
  const seen = new Map(names.map((name) => [name, new Set<string>()]));
  body.forEach((row, at) => {
    const where = `${path}:${at + 2}`;
    if (row.length !== fields.length) faults.push(`${where} has ${row.length} cells, not ${fields.length}`);
    fields.forEach(({ name, type, constraints = {} }, column) => {
      const value = row[column] ?? '';
      if (missingValues.includes(value)) {
        if (constraints.required) faults.push(`${where} ${name} is empty and required`);
        return;
      }
      if (!forms[type].test(value)) faults.push(`${where} ${name}: “${value}” is no ${type}`);
      if (constraints.enum && !constraints.enum.includes(value))
        faults.push(`${where} ${name}: “${value}” is none of ${constraints.enum.join(', ')}`);
      if (constraints.unique && seen.get(name)?.has(value)) faults.push(`${where} ${name}: “${value}” is there twice`);
      seen.get(name)?.add(value);
    });
  });
  return faults;
}
