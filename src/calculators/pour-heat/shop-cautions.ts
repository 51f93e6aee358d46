import type { Caution } from '../../model/evidence/index.ts';
import { hottestAnchor } from '../../model/resin/anchor.ts';
import { baseMaterial } from '../../model/resin/base.ts';
import { shopAirCautions } from '../../model/resin/shop-air.ts';
import type { PourAnswer } from './answer.ts';
import type { Setting } from './setting.ts';
import { airOf, hourMatters, startInWords } from './shop-air.ts';
import { length, ofThisCase, pourInWords, rise, temperature, time, times } from './words.ts';

/** A pool that is hotter by less than this many times is as good as the channel. */
const worthSaying = 1.1;

/** True of a channel within the sheet whose depth would be outside it as a pool. */
export function leansOnWalls({ anchor }: Setting, { asPool, level }: PourAnswer): boolean {
  const within = level === 'inside' || level === 'edge';
  return within && asPool !== undefined && anchor !== undefined && asPool.run.peakRise > 1.01 * anchor.rise;
}

/** What must be said of the shop, the base and the warmth of the resin. */
export function shopCautions(setting: Setting, found: PourAnswer): Caution[] {
  return [
    ...hours(setting, found),
    ...warming(found),
    ...narrow(setting, found),
    ...shopAirCautions(airOf(setting), true),
    ...warmResin(setting, found),
    ...leaning(setting, found),
  ];
}

/** A shop that is cold at night: the hour at which it is poured. */
function hours(setting: Setting, { level }: PourAnswer): Caution[] {
  const { day, anchor } = setting;
  if (!day || !anchor) return [];
  const { worst, most, shop } = day;
  const hottest = worst.rise >= most ? 'runs away' : `rises by ${rise(worst.rise)}`;
  const within = level === 'inside' || level === 'edge';
  if (within && hourMatters(setting)) {
    return [
      ofThisCase(
        'another-hour-hotter',
        worst.rise > hottestAnchor ? 'danger' : 'warning',
        `Pour it ${startInWords(day.start)} and at no other hour: poured ${startInWords(worst.start)} it ${hottest}, outside the sheet.`,
        'Resin that lies cold and unset runs hot when the heating comes on. One late start, or one warm night, is another hour.',
      ),
    ];
  }
  if (day.asked) return [];
  const evening = day.starts.find(({ start }) => start === shop.warmHours);
  const coldFirst = evening && evening.rise > anchor.coarseRise && shop.warm > shop.cool;
  return [
    ofThisCase(
      'worst-hour',
      coldFirst ? 'warning' : 'note',
      `Every figure of this pour is for the worst hour to pour at, ${startInWords(worst.start)}, when it ${hottest}.`,
      coldFirst
        ? `Poured as the heating goes off it lies cold and unset, and then ${evening.rise >= most ? 'runs away' : `rises by ${rise(evening.rise)}`} when the heating comes on and nobody looks.`
        : 'The table shows the other hours.',
    ),
  ];
}

/** How much cooler a channel stays than a pool, which no sheet has promised; and that it must not be wider where that is what saves it. */
function narrow(setting: Setting, found: PourAnswer): Caution[] {
  const { pour } = setting;
  const { run, asPool, level } = found;
  if (!asPool || !pour.channel || run.outcome === 'runaway' || run.peakRise <= 0) return [];
  const pool = asPool.run;
  const cooler = pool.peakRise / run.peakRise;
  if (cooler < worthSaying) return [];
  const against =
    pool.outcome === 'runaway'
      ? 'a pool as deep runs away'
      : `a pool as deep rises by ${rise(pool.peakRise)}, ${times(cooler)} as much`;
  const why =
    'The wood at both sides takes up its heat. No sheet promises that: its depth stands, and wherever the channel opens into a pool, the pool’s depth holds.';
  if (leansOnWalls(setting, found)) {
    return [
      ofThisCase(
        'leans-on-walls',
        'warning',
        `Nowhere wider than ${length(pour.channel.width)}: by the model it rises by ${rise(run.peakRise)} there, and ${against}.`,
        why,
      ),
    ];
  }
  const words =
    level === 'deeper'
      ? `Ask the maker whether ${pourInWords(pour)} may be deeper than a pool: by the model it rises by ${rise(run.peakRise)}, and ${against}.`
      : `By the model ${pourInWords(pour)} rises by ${rise(run.peakRise)}; ${against}.`;
  return [ofThisCase('channel-cooler', 'note', words, why)];
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
