import { lazy, Suspense } from 'react';
import type { FoodContactProps } from '../food/FoodContact.tsx';

// Only pages that show them fetch them.
const Panel = lazy(() => import('../food/FoodContact.tsx').then(({ FoodContact }) => ({ default: FoodContact })));
const Papers = lazy(() =>
  import('../food/HygienePapers.tsx').then(({ HygienePapers }) => ({ default: HygienePapers })),
);

interface NamedBoard {
  /** Ids of a wood and a finish; where resin lies. */
  wood?: string;
  finish?: string;
  resin?: string;
  food?: string;
  /** One market; both unless told. */
  market?: 'us' | 'eu';
  /** The board as JSON, written by the build from the names above. */
  resolved?: string;
}

/** What may and may not be said of a board and food, in a few lines. */
export function FoodContact({ wood, finish, resin, food, market, resolved }: NamedBoard) {
  if (resolved === undefined) throw new Error('<FoodContact /> was not resolved by the build.');
  const query = new URLSearchParams({
    ...(wood ? { species: wood } : {}),
    ...(finish ? { finish } : {}),
    ...(resin ? { resinPlace: resin } : {}),
    ...(food ? { food } : {}),
    ...(market ? { market } : {}),
  });
  return (
    <Suspense>
      <Panel
        board={JSON.parse(resolved) as FoodContactProps['board']}
        markets={market ? [market] : undefined}
        query={query.toString()}
      />
    </Suspense>
  );
}

/** Papers on boards and hygiene, in a table. */
export function HygienePapers() {
  return (
    <Suspense>
      <Papers />
    </Suspense>
  );
}
