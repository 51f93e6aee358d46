import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import type { Finish } from '../../model/finish/types.ts';
import { type BoardForFood, type FoodStatement, notLegalAdvice } from '../../model/food/index.ts';

/** What stands above the figures: the level first. */
export function cautionsOf(board: BoardForFood, { level, summary, findings, waits }: FoodStatement): Caution[] {
  const strict = level === 'better-not' || level === 'not-yet';
  const worst = findings.filter((finding) => finding.level === level && level !== 'usual').map(({ text }) => text);
  const known = (id: string): Caution[] => {
    const caution = cautionById(id);
    return caution ? [caution] : [];
  };
  const resin = board.resin?.name ?? (board.finish?.epoxy ? board.finish.name : undefined);
  const uncured = waits.some(({ name, daysLeft }) => name === resin && daysLeft !== 0);
  return [
    {
      id: 'food-level',
      level: strict ? 'warning' : 'note',
      own: true,
      text: `${summary}.`,
      ...(worst.length > 0 ? { why: worst.join(' ') } : {}),
      basis: 'shop-practice',
    },
    ...(uncured ? known('resin-skin') : []),
    ...known('food-wording'),
    { id: 'not-legal-advice', level: 'note', text: notLegalAdvice, basis: 'shop-practice' },
  ];
}

/** A cure on a sheet that is far shorter than the least that is usual: it may be the time until dry to the touch. */
export function tooSoon(finish: Finish | undefined, sheetDays: number | undefined): Caution[] {
  const usual = finish?.figures.fullCure;
  const least = usual ? (usual.low ?? usual.value) / 86_400 : 0;
  if (!finish || !usual || sheetDays === undefined || sheetDays >= least / 2) return [];
  return [
    {
      id: 'cure-shorter-than-usual',
      level: 'warning',
      own: true,
      text: `Look at the sheet of the finish again: ${sheetDays} ${sheetDays === 1 ? 'day' : 'days'} may be until it is dry to the touch. ${finish.name} usually takes ${Math.round(least)} to ${Math.round((usual.high ?? usual.value) / 86_400)} days to full cure.`,
      basis: 'shop-practice',
    },
  ];
}
