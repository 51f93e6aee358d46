import {
  type CslItem,
  licences,
  type SourceId,
  sourceById,
  type TableColumn,
  type TableDefinition,
} from '../../src/model/evidence/index.ts';

const profile = 'https://datapackage.org/profiles/2.0/';

/** A source as a data package lists it. */
function packageSource(id: SourceId): { title: string } {
  const source: CslItem = sourceById(id);
  const report = source.number ? `, ${source.number}` : '';
  const year = source.issued?.['date-parts'][0]?.[0];
  return { title: `${source.title}${report}${year ? ` (${year})` : ''}` };
}

function field(column: TableColumn) {
  return {
    name: column.name,
    type: column.kind === 'number' ? 'number' : 'string',
    title: column.title,
    ...(column.unit ? { unit: column.unit } : {}),
    constraints: {
      required: column.required,
      ...(column.kind === 'seen' ? { enum: ['source-text', 'quoted', 'memory'] } : {}),
    },
  };
}

/** The table as a resource of a data package: its file, what it holds and its table schema. */
function resource(definition: TableDefinition, path: string) {
  const { terms } = definition;
  const description = [definition.locator, terms?.credit, ...definition.notes].filter(Boolean).join(' ');
  return {
    name: definition.name,
    type: 'table',
    title: definition.title,
    ...(description ? { description } : {}),
    path,
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    ...(definition.source ? { sources: [packageSource(definition.source)] } : {}),
    ...(terms
      ? {
          licenses: [
            { name: terms.licence, path: licences[terms.licence].address, title: licences[terms.licence].title },
          ],
        }
      : {}),
    schema: {
      $schema: `${profile}tableschema.json`,
      fields: definition.columns.map(field),
      missingValues: [''],
    },
  };
}

/**
 * The descriptor of all tables as a Frictionless Data Package (2.0).
 *
 * @param definitions the tables
 * @param version version of the project
 * @param pathOf where the file of a table lies, from the descriptor
 */
export function dataPackage(
  definitions: readonly TableDefinition[],
  version: string,
  pathOf: (definition: TableDefinition) => string = ({ name }) => `${name}.csv`,
) {
  const used = [...new Set(definitions.flatMap((definition) => (definition.source ? [definition.source] : [])))];
  return {
    $schema: `${profile}datapackage.json`,
    name: 'kerf-and-cure-tables',
    title: 'Tables of Kerf & Cure',
    description:
      'Published figures about woods, moisture and movement, one file a table, transcribed row by row. The column seen says how each row was read: in the work itself, in a text that repeats it, or from memory.',
    version,
    licenses: [
      {
        name: 'LicenseRef-public-domain-facts',
        title:
          'Facts, in which no right is claimed: most transcribed from works of the United States government, in the public domain there, the others from the documents that each row or table names. A table whose document sets terms of its own carries them as its own licence. Please cite the document that a figure came from.',
      },
    ],
    sources: used.map(packageSource),
    resources: definitions.map((definition) => resource(definition, pathOf(definition))),
  };
}
