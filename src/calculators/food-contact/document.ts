import type { ResultDocument } from '../../model/evidence/index.ts';
import type { BoardForFood, FoodStatement } from '../../model/food/index.ts';

/** What only the maker knows, with a line to write on; the wood stands above them. */
const blanks = ['Maker, address', 'Batch', 'Made on'];

/** Labels, a sheet of them; none where what must be known before anything is said is not. */
export function labelDocuments(
  { market }: BoardForFood,
  { maySay, label: { made, purpose, allergies, avoid, closing } }: FoodStatement,
): ResultDocument[] {
  if (maySay.length === 0) return [];
  return [
    {
      id: 'label',
      title: 'The label',
      form: 'labels',
      help: 'Fill in what stands in brackets. Shorten it if you must, but leave no ‘not’ out.',
      blocks: [
        ...made.map((text) => ({ kind: 'text' as const, text })),
        { kind: 'text', text: purpose, strong: true },
        ...allergies.map((text) => ({ kind: 'text' as const, text, strong: true })),
        { kind: 'text', text: avoid },
        // In the Union the closing words are the maker and the batch, which stand below as lines to write on.
        ...(market === 'us' ? [{ kind: 'text' as const, text: closing, small: true }] : []),
        { kind: 'blanks', labels: blanks },
      ],
    },
  ];
}
