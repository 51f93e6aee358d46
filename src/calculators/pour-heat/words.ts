import type { Caution } from '../../model/evidence/index.ts';
import { amount, ofEach, sumOf, toldApart } from '../../model/quantity/index.ts';
import type { Pour } from '../../model/resin/pour.ts';
import { wrongForDepth } from '../../model/resin/pour-plan.ts';
import { silentOn, warIn } from '../../model/resin/told.ts';
import type { Resin } from '../../model/resin/types.ts';
import type { LayerPlan, PourAnswer } from './answer.ts';
import type { Setting } from './setting.ts';

/*
 * Quantities as the sentences of this calculator name them, in the reader's own units.
 */

/** @param mm */
export const length = (mm: number): string => amount(mm, 'mm', 2);
/** @param celsius °C */
export const temperature = (celsius: number): string => amount(celsius, 'Cel');
/** @param kelvin difference of temperatures, K */
export const rise = (kelvin: number): string => amount(kelvin, 'K', 2);
/** @param seconds */
export const time = (seconds: number): string => amount(seconds, 's', 2);
/** How many times as much; no more digits than it deserves. */
export const times = (factor: number | undefined): string => `${(factor ?? 0).toFixed(1)} times`;

/**
 * A pour by its depth, and by its width where it is a channel.
 *
 * @param beside another depth of the sentence, mm, from which its own must be told apart
 * @param parts what makes the depth, mm, where that stands beside it
 */
export const pourInWords = (
  { depth, channel }: Pick<Pour, 'depth' | 'channel'>,
  { beside, parts = [depth] }: { beside?: number; parts?: readonly number[] } = {},
): string => {
  const deep = beside === undefined ? sumOf(parts) : toldApart(depth, beside)(depth);
  return channel ? `${deep} in a channel ${length(channel.width)} wide` : deep;
};

const counts = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** For example `two layers of 10 mm`. */
export const evenLayers = ({ count, depth, most }: Pick<LayerPlan, 'count' | 'depth' | 'most'>): string =>
  `${counts[count] ?? count} layers of ${ofEach(count * depth, count, most)}`;

/** For example `two layers of 10 mm, 20 h apart`. */
export function layersInWords({ wait, ...plan }: LayerPlan): string {
  const many = evenLayers(plan);
  if (!wait) return many;
  return `${many}, ${time(wait.from)} apart${wait.abrade ? ' and sanded between' : ''}`;
}

/** What the model sees of a hot pour of which nothing else is told, and by whose pot life: a clause, without an hour or a rise. */
export function untoldHeat(
  { resin, noAnchor }: Pick<Setting, 'resin' | 'noAnchor'>,
  { run }: Pick<PourAnswer, 'run'>,
): string {
  const does = run.outcome === 'runaway' ? 'it runs away' : 'it grows too hot';
  if (!resin || !silentOn(resin, 'potLife'))
    return `by its pot life ${does}, and ${(resin && warIn(resin)) ?? contradiction}`;
  const war = noAnchor === 'sheet-at-war' ? warIn(resin) : undefined;
  return `the sheet of ${resin.name} names no pot life, and by that of a generic kind ${does}${war ? `; ${war}` : ''}`;
}

const contradiction = 'its two pot lives contradict each other';

/** That the resin is wrong for so deep a place, where its depth and not its amount asks for so many layers. */
export function wrongFor(
  resin: Resin | undefined,
  { layers, cap }: Pick<PourAnswer, 'layers' | 'cap'>,
): string | undefined {
  return cap?.by === 'amount' ? undefined : wrongForDepth(layers?.count ?? 1, resin);
}

/** A caution that this very case brings up: what to do, and why. */
export const ofThisCase = (id: string, level: Caution['level'], text: string, why?: string): Caution => ({
  id,
  level,
  text,
  ...(why ? { why } : {}),
  own: true,
  basis: 'derived',
});
