import type { Figure } from '../evidence/index.ts';
import committed from './finishes.json' with { type: 'json' };
import type { FinishRecord } from './record.ts';
import type { Finish, FinishFigureName, FinishOptionalName } from './types.ts';

/** Label, unit and digits of every figure of a finish. */
const figureWords: Readonly<
  Record<FinishFigureName | FinishOptionalName, { label: string; unit: string; digits: number }>
> = {
  coats: { label: 'Coats', unit: '1', digits: 1 },
  spreadingFirst: { label: 'Spreading rate, first coat', unit: 'm2/L', digits: 2 },
  spreadingNext: { label: 'Spreading rate, further coats', unit: 'm2/L', digits: 2 },
  density: { label: 'Density', unit: 'g/mL', digits: 3 },
  recoat: { label: 'Wait between coats', unit: 's', digits: 2 },
  lightUse: { label: 'Until it may be handled', unit: 's', digits: 2 },
  soak: { label: 'Soak', unit: 's', digits: 2 },
  fullCure: { label: 'Until it has cured for food and water', unit: 's', digits: 2 },
  upkeep: { label: 'Until it wants renewing', unit: 's', digits: 2 },
};

const band = 'What is usual in the trade; the sheet of the finish decides.';

function finishOf({ order: _order, figures, ...rest }: FinishRecord): Finish {
  const whole = Object.entries(figureWords).map(([name, words]): [string, Figure | null] => {
    const usual = figures[name as keyof typeof figures];
    return [name, usual ? { ...words, band, ...usual } : null];
  });
  return { ...rest, figures: Object.fromEntries(whole) as Finish['figures'] };
}

/** Every generic kind of finish: oils from those that never dry, then films. */
export const finishes: readonly Finish[] = (committed as unknown as FinishRecord[]).map(finishOf);

/** Their ids, in the same order. */
export const finishIds: readonly string[] = finishes.map(({ id }) => id);

const byId = new Map(finishes.map((finish) => [finish.id, finish]));

/** The finish of this id, for example `mineral-oil`. */
export function finishById(id: string): Finish | undefined {
  return byId.get(id);
}
