import type { Caution } from '../../model/evidence/index.ts';
import { hottestAnchor } from '../../model/resin/anchor.ts';
import { baseMaterial } from '../../model/resin/base.ts';
import type { PourAnswer } from './answer.ts';
import type { Setting } from './setting.ts';
import { length, ofThisCase, rise, temperature, time } from './words.ts';

/** Below this most sheets say no, °C; common practice. */
export const coldShop = 15;

/** What must be said of the shop, the base and the warmth of the resin. */
export function shopCautions(setting: Setting, found: PourAnswer): Caution[] {
  return [...warming(found), ...cold(setting), ...warmResin(setting, found), ...leaning(setting, found)];
}

/** A shop that is heated while the pour still reacts. */
function warming({ ifWarmed, run, layers }: PourAnswer): Caution[] {
  if (!ifWarmed) return [];
  const { shop, rise: then } = ifWarmed;
  const hot = then > hottestAnchor;
  const gelled = (layers?.run ?? run).timeToLastGel;
  const until = gelled === null ? '' : `, about ${time(gelled)} after mixing`;
  const [what, pour] = layers ? ['each layer', 'one layer'] : ['it', 'the same pour'];
  return [
    ofThisCase(
      'keep-from-warming',
      hot ? 'danger' : 'warning',
      `Do not warm the shop before ${what} has gelled through${until}, and cooled.`,
      `At ${temperature(shop)} ${pour} would ${
        Number.isFinite(then) ? `rise by ${rise(then)} and lie` : 'run away, and lies'
      } outside the sheet: what counts is the warmest that the shop becomes while it reacts, the next morning too.`,
    ),
  ];
}

function cold({ pour }: Setting): Caution[] {
  if (pour.shopTemperature >= coldShop) return [];
  return [
    {
      id: 'cold-shop',
      level: 'warning',
      own: true,
      text: `Warm the shop, day and night, before you mix: below about ${temperature(coldShop)} most sheets say no.`,
      why: 'Resin thickens there and holds its bubbles, a damp waxy blush forms on it, and the cure stalls. Never warm it once the pour lies: then it would be too deep.',
      basis: 'shop-practice',
    },
  ];
}

/** Resin poured warmer than the shop, against the same pour with resin as the shop. */
function warmResin({ pour }: Setting, { run, unwarmed }: PourAnswer): Caution[] {
  if (!unwarmed) return [];
  const warmer = rise(pour.resinTemperature - pour.shopTemperature);
  if (run.outcome === 'runaway') {
    return [
      ofThisCase(
        'resin-warm',
        'danger',
        `Let the resin cool to the shop before you mix it: ${warmer} warmer, this pour runs away.`,
        unwarmed.outcome === 'runaway'
          ? 'It would do so at the temperature of the shop too, only later.'
          : `With resin as the shop it would rise by ${rise(unwarmed.peakRise)}.`,
      ),
    ];
  }
  const less = (here: number | null, there: number | null, what: string) =>
    here === null || there === null ? [] : [`${what} after ${time(here)} instead of ${time(there)}`];
  const changes = [
    `is ${rise(run.peakRise)} above the shop at its hottest instead of ${rise(unwarmed.peakRise)}`,
    ...less(run.timeToFirstGel, unwarmed.timeToFirstGel, 'begins to gel'),
    ...less(run.timeToWork, unwarmed.timeToWork, 'is too thick to work'),
  ];
  const much = run.peakRise > 1.1 * unwarmed.peakRise || (run.timeToWork ?? 0) < 0.8 * (unwarmed.timeToWork ?? 0);
  return [
    ofThisCase(
      'resin-warm',
      much ? 'warning' : 'note',
      `Resin ${warmer} warmer than the shop leaves less time: it ${changes.join(', ')}.`,
      'Worked out for this pour, against the same one with resin at the temperature of the shop.',
    ),
  ];
}

function leaning({ pour, baseId }: Setting, { leansOn }: PourAnswer): Caution[] {
  return leansOn.map((on) =>
    on === 'fan'
      ? ofThisCase(
          'leans-on-fan',
          'warning',
          'Keep the air moving until it has set and cooled: in still air this pour lies outside the sheet.',
        )
      : ofThisCase(
          'leans-on-base',
          'warning',
          `Give the thickness of the base: ${length(pour.base?.thickness ?? 0)} of ${baseMaterial(baseId).label.toLowerCase()} is assumed, and over a film or tape this pour lies outside the sheet.`,
          'A thick sheet takes up heat. A film or a tape takes none: then pick what lies under it, such as MDF.',
        ),
  );
}
