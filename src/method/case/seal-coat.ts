import type { Result, ResultDocument, ResultTable } from '../../model/evidence/index.ts';
import { fillName, sealCoatName } from '../../model/resin/dose.ts';
import type { WorkedStep } from './types.ts';

/*
 * Tables and papers of an answer as the step that asked means them. A dose that is asked for by its mass knows of no place and calls itself a fill;
 * where the step brushes a seal coat, that is what is mixed.
 */

type Asking = Pick<WorkedStep, 'act'> | undefined;

const seals = (step: Asking) => step?.act.id === 'seal';

/** The tables of an answer as the step that asked means them. */
export function tablesAt(step: Asking, result: Result | undefined): readonly ResultTable[] {
  const tables = result?.tables ?? [];
  if (!seals(step)) return tables;
  return tables.map((table) => {
    const at = table.columns.findIndex(({ id }) => id === 'stage');
    if (at < 0) return table;
    return {
      ...table,
      rows: table.rows.map((row) => row.with(at, row[at] === fillName ? sealCoatName : (row[at] ?? null))),
    };
  });
}

/** The papers of an answer as the step that asked means them. */
export function documentsAt(step: Asking, result: Result | undefined): readonly ResultDocument[] {
  const documents = result?.documents ?? [];
  if (!seals(step)) return documents;
  return documents.map((document) => ({
    ...document,
    blocks: document.blocks.map((block) =>
      block.kind === 'table' && block.table.title === fillName
        ? { ...block, table: { ...block.table, title: sealCoatName } }
        : block,
    ),
  }));
}
