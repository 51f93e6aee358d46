import type { Block, Caution, Drawing, ResultDocument, ResultTable } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { YieldPlan, YieldRequest } from '../../model/stock/index.ts';
import { scaleFor, sheetRoom } from '../kit/drawing-scale.ts';
import { mostDrawn } from './drawing.ts';

/** What the list shows of an answer: its sentence, its cuts, its boards, its cautions. */
interface Shown {
  verdict: string;
  table: ResultTable;
  drawing: Drawing | undefined;
  cautions: readonly Caution[];
}

/** The plan to take to the saw: how it is measured, what to beware of, the cuts with boxes to tick, the boards drawn. */
export function cutListDocument(
  { first, boards }: YieldPlan,
  { kerf }: YieldRequest,
  { verdict, table, drawing, cautions }: Shown,
): ResultDocument {
  const order = first === 'rip' ? 'Rip first, then crosscut' : 'Crosscut first, then rip';
  return {
    id: 'cut-list',
    title: 'List for the saw',
    form: 'sheet',
    help: 'To take to the saw: tick each piece as it comes off.',
    folded: true,
    blocks: [
      { kind: 'text', text: verdict, large: true },
      {
        kind: 'text',
        text: `${order}. Along is measured from the left end of a board, across from its lower edge; each saw cut takes ${amount(kerf, 'mm')}.`,
      },
      ...cautions.map(({ level, text }): Block => ({ kind: 'warning', level, text })),
      { kind: 'table', table: { ...table, title: 'Cuts to tick' }, ticks: ['piece'] },
      ...(drawing ? [{ kind: 'drawing' as const, drawing, scale: scaleFor(drawing, sheetRoom) }] : []),
      ...(boards.length > mostDrawn
        ? [{ kind: 'text' as const, text: `The first ${mostDrawn} boards are drawn.`, small: true }]
        : []),
    ],
  };
}
