import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import type { FoodStatement } from '../../model/food/index.ts';
import type { Card, CardInputs } from './card.ts';
import { heldBackWords } from './verdict.ts';

/** What the maker must mind before the card goes out with a board. */
export function cautionsOf(card: Card, { finish, place, resin }: CardInputs, statement: FoodStatement): Caution[] {
  const { level, summary, waits } = statement;
  const heldBack = heldBackWords(card);
  const known = (id: string): Caution[] => {
    const caution = cautionById(id);
    return caution ? [caution] : [];
  };
  const never = waits.find((wait) => wait.never);
  return [
    ...(never
      ? [
          {
            id: 'never-cured',
            level: 'danger' as const,
            own: true,
            text: `Do not hand it over. ${never.text}`,
            basis: never.basis,
          },
        ]
      : []),
    ...(heldBack
      ? [
          {
            id: 'own-promise',
            level: 'warning' as const,
            own: true,
            text: `${heldBack} Leave it out, and the rest of your words is printed.`,
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...(level === 'better-not'
      ? [
          {
            id: 'food-level',
            level: 'warning' as const,
            own: true,
            text: `${summary}. The card says what the board is still good for.`,
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...(place
      ? [
          {
            id: 'resin-cure-first',
            level: 'warning' as const,
            own: true,
            text: resin
              ? 'Hand it over after the resin’s full cure, whatever the finish needs: count from the last pour.'
              : 'Hand it over only after the full cure on the resin’s own sheet: it was not named, so no day is given.',
            why: 'A finish that never cures, such as mineral oil, is ready within a day. The resin under or beside it is not: what has not reacted can make skin allergic and pass into food.',
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...(finish?.rags.hazard === 'self-heating' ? known('oily-rags') : []),
    ...(finish?.figures.fullCure ? known('finish-full-cure') : []),
  ];
}
