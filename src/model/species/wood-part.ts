import type { BoardForFood } from '../food/index.ts';
import type { Species } from './types.ts';

/** Genera whose trees bear the nuts that food law names: walnut, hickory and pecan, chestnut, hazel. */
const nutTrees = /^(?:Juglans|Carya|Castanea|Corylus)\b/;

/** A wood as the rules on food look at it: its own assessment, and whether its tree bears nuts. */
export function woodPartOf({
  name,
  botanical,
  food,
}: Pick<Species, 'name' | 'botanical' | 'food'>): NonNullable<BoardForFood['wood']> {
  return {
    name,
    level: food.level,
    summary: food.summary,
    reasons: food.reasons,
    nutTree: nutTrees.test(botanical ?? ''),
  };
}
