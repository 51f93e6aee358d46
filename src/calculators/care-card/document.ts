import type { Block, ResultDocument } from '../../model/evidence/index.ts';
import type { Card } from './card.ts';

/** The card for the buyer, folded where it must be. What the maker typed stands in it as text. */
export function cardDocument({ shop, made, purpose, sections, allergies, note, foot }: Card): ResultDocument {
  const blocks: readonly Block[] = [
    shop ? { kind: 'text', text: shop, large: true } : { kind: 'blanks', labels: ['Shop'] },
    { kind: 'heading', text: 'Care of your board' },
    { kind: 'text', text: made.join(' ') },
    { kind: 'text', text: purpose, strong: true },
    ...sections.map(({ heading, lines }) => ({
      kind: 'list' as const,
      heading,
      items: lines.map(({ text }) => text),
    })),
    ...allergies.map((text) => ({ kind: 'text' as const, text, strong: true })),
    ...(note ? [{ kind: 'text' as const, text: note }] : []),
    ...(foot.words ? [{ kind: 'text' as const, text: foot.words, small: true }] : []),
    { kind: 'blanks', labels: foot.blanks },
  ];
  return { id: 'card', title: 'The card', form: 'card', blocks };
}
