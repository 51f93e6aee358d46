import type { Result } from '../../model/evidence/index.ts';
import { fillName, sealCoatName } from '../../model/resin/dose.ts';
import type { WorkedStep } from './types.ts';

type Told = Required<Pick<Result, 'tables' | 'documents'>>;

/**
 * Tables and papers of an answer as the step that asked means them. A dose that is asked for by its mass knows of no place and calls itself a fill;
 * where the step brushes a seal coat, that is what is mixed.
 */
export function toldAt(step: Pick<WorkedStep, 'act'> | undefined, result: Result | undefined): Told {
  const told = { tables: result?.tables ?? [], documents: result?.documents ?? [] };
  if (step?.act.id !== 'seal') return told;
  return {
    tables: told.tables.map((table) => {
      const at = table.columns.findIndex(({ id }) => id === 'stage');
      if (at < 0) return table;
      return {
        ...table,
        rows: table.rows.map((row) => row.with(at, row[at] === fillName ? sealCoatName : (row[at] ?? null))),
      };
    }),
    documents: told.documents.map((document) => ({
      ...document,
      blocks: document.blocks.map((block) =>
        block.kind === 'table' && block.table.title === fillName
          ? { ...block, table: { ...block.table, title: sealCoatName } }
          : block,
      ),
    })),
  };
}
