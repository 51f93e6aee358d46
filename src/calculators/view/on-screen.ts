import type { Block } from '../../model/evidence/index.ts';

/** What is read from half a metre, then the rows that are worked by, then the rest, and last what is written on with a pen. */
const rank = (block: Block): number => {
  if (block.kind === 'text' && block.large) return 0;
  if (block.kind === 'table') return 1;
  return block.kind === 'blanks' ? 3 : 2;
};

/**
 * A sheet as it stands on a screen, below the answer that it belongs to.
 *
 * On paper it stands alone, and begins with its cautions. On a screen those that the answer says already would stand twice, and push
 * the rows that one works by out of sight: the answer's are left out, and the rows come first. A sheet with headings keeps its order.
 *
 * @param said texts of the answer's cautions
 */
export function onScreen(blocks: readonly Block[], said: readonly string[]): readonly Block[] {
  const unsaid = blocks.filter((block) => block.kind !== 'warning' || !said.includes(block.text));
  if (unsaid.some(({ kind }) => kind === 'heading')) return unsaid;
  return [...unsaid].sort((one, other) => rank(one) - rank(other));
}
