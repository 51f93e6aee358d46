import type { Caution, Result, ResultDocument, ResultTable } from '../../model/evidence/index.ts';
import { fillName, sealCoatName } from '../../model/resin/dose.ts';
import type { WorkedStep } from './types.ts';

/*
 * Tables and papers of an answer as the step that asked means them. A dose that is asked for by its mass knows of no place and calls itself a fill;
 * where the step brushes a seal coat, that is what is mixed, and how deep a pour of it may be is no matter of that step.
 */

type Asking = Pick<WorkedStep, 'act'> | undefined;

const seals = (step: Asking) => step?.act.id === 'seal';

/** What is to be minded of a mix that is brushed on, where its answer speaks of the depth of a pour. */
const thin: Caution = {
  id: 'seal-coat-thin',
  level: 'warning',
  text: 'Brush the seal coat on thin and take up every puddle: what stands deep is a pour, and heats like one.',
  own: true,
  basis: 'shop-practice',
};

const atASeal = (caution: Caution): Caution => (caution.id === 'no-depth' ? thin : caution);

/** The cautions of an answer as the step that asked means them. */
export function cautionsAt(step: Asking, result: Result | undefined): readonly Caution[] {
  const cautions = result?.cautions ?? [];
  return seals(step) ? cautions.map(atASeal) : cautions;
}

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
  const ofAPour = result?.cautions.find(({ id }) => id === 'no-depth')?.text;
  return documents.map((document) => ({
    ...document,
    blocks: document.blocks.map((block) => {
      if (block.kind === 'table' && block.table.title === fillName)
        return { ...block, table: { ...block.table, title: sealCoatName } };
      return block.kind === 'warning' && block.text === ofAPour ? { ...block, text: thin.text } : block;
    }),
  }));
}
