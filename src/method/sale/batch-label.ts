import type { ResultDocument } from '../../model/evidence/index.ts';
import type { MethodPage } from '../page/types.ts';
import { saleFacts, woodWords } from './facts.ts';

/** What stands on the label that tells one batch from another; what is not known yet is a line to write on. */
export interface BatchLabelWords {
  what: string;
  woods: readonly string[];
  resin?: string;
  finishes: readonly string[];
  /** Local days, 2027-01-12. */
  made?: string;
  cured?: string;
  batch?: string;
  /** Lot of the resin, as it stands on the can. */
  resinLot?: string;
}

/** A line of it: a name, and what stands behind it; nothing where a pencil fills it in. */
export interface LabelLine {
  name: string;
  text?: string;
}

const line = (name: string, text: string | undefined): LabelLine =>
  text === undefined || text.trim() === '' ? { name } : { name, text };

/** The lines of the label in their order, for whatever prints them. */
export function batchLabelLines(words: BatchLabelWords): LabelLine[] {
  const { what, woods, resin, finishes, made, cured, batch, resinLot } = words;
  return [
    line('What', what),
    line('Wood', woods.join(', ')),
    ...(resin === undefined ? [] : [line('Resin', resin), line('Lot of the resin', resinLot)]),
    ...(finishes.length > 0 ? [line('Finish', finishes.join(', '))] : []),
    line('Made on', made),
    ...(resin === undefined ? [] : [line('Cured on', cured)]),
    line('Batch', batch),
  ];
}

/** What is known of a batch before it is made: what it will be of, and no day. */
export function batchLabelOf(page: MethodPage): BatchLabelWords {
  const { what, woods, inlay, finishes } = saleFacts(page);
  return { what, woods: woods.map(woodWords), ...(inlay === undefined ? {} : { resin: inlay }), finishes };
}

/** The label, a sheet of them. */
export function batchLabelDocument(words: BatchLabelWords): ResultDocument {
  const lines = batchLabelLines(words);
  return {
    id: 'batch-label',
    title: 'The batch label',
    form: 'labels',
    help: 'It says which batch a piece is of. It says nothing of food: the label for the buyer does.',
    blocks: [
      ...lines.flatMap(({ name, text }) => (text === undefined ? [] : [{ kind: 'text' as const, lead: name, text }])),
      ...(lines.some(({ text }) => text === undefined)
        ? [{ kind: 'blanks' as const, labels: lines.flatMap(({ name, text }) => (text === undefined ? [name] : [])) }]
        : []),
    ],
  };
}
