import type { Verdict } from '../../model/evidence/index.ts';
import { amount, atMost, lookAlike, toldApart } from '../../model/quantity/index.ts';
import { hottestAnchor } from '../../model/resin/anchor.ts';
import { isAssumed } from '../../model/resin/assumed.ts';
import { statedAt } from '../../model/resin/greatest-pour.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import { coldShop, hotShop } from '../../model/resin/shop-air.ts';
import { ratiosAtWar, warIn } from '../../model/resin/told.ts';
import type { PourAnswer, SheetLimit } from './answer.ts';
import type { Setting } from './setting.ts';
import { coldestOf, hourMatters, shopInWords, warmestOf } from './shop-air.ts';
import { leansOnWalls } from './shop-cautions.ts';
import { evenLayers, layersInWords, length, pourInWords, temperature, time, untoldHeat, wrongFor } from './words.ts';

/** What a pour comes to, in the sentence that a maker would say. */
export function verdictOf(setting: Setting, found: PourAnswer): Verdict {
  // Of which mix a pot life is nobody knows; one whose other times contradict it still says what it makes of a hot pour.
  if (setting.resin && ratiosAtWar(setting.resin) && setting.noAnchor === 'sheet-at-war')
    return unknown(setting, found) as Verdict;
  return atWar(setting, found) ?? stop(setting, found) ?? unknown(setting, found) ?? onePour(setting, found);
}

/** Depth and pot life of the sheet contradict each other: nothing is said by either but how hot it may become. */
function atWar({ noAnchor, stated, resin, pour }: Setting, { run }: PourAnswer): Verdict | undefined {
  if (noAnchor !== 'at-war' || stated?.kind !== 'at-war') return undefined;
  const potLife = resin?.figures.potLife;
  const potLifeWords = amount(potLife?.value ?? 0, 's');
  const ofSheet = potLife?.basis === 'supplier-sheet';
  const which = ofSheet
    ? `its pot life of ${potLifeWords} or its depth of ${length(stated.depth)} is wrong`
    : `enter the sheet’s own pot life, or look at its depth of ${length(stated.depth)} again`;
  const by = ofSheet ? 'by its pot life' : 'by the pot life of its kind';
  if (run.outcome === 'runaway')
    return {
      level: 'stop',
      text: `Do not pour ${length(pour.depth)}: ${by} it runs away after ${time(run.timeToPeak)}; ${which}.`,
    };
  if (run.peakRise > hottestAnchor)
    return { level: 'stop', text: `Do not pour ${length(pour.depth)}: ${by} it grows too hot; ${which}.` };
  return {
    level: 'unknown',
    text: `Pot life and depth of the sheet contradict each other: ${which}.`,
  };
}

function stop(setting: Setting, found: PourAnswer): Verdict | undefined {
  const { pour, noAnchor, resin, untold } = setting;
  const { run, level, layers, cap, greatest, limits, bySheet } = found;
  if (noAnchor === 'no-pot-life') return undefined;
  // What the sheet states itself is firmer than the heat of a kind that stands in.
  if (bySheet?.beyond) return { level: 'stop', text: beyondSheet(setting, bySheet) };
  const tooMuch = limits.some(({ figure, here }) => here !== undefined && here > figure.value);
  if (!tooMuch && (level === undefined || level === 'inside' || level === 'edge')) return undefined;
  if (untold && level !== undefined)
    return { level: 'stop', text: `Do not pour ${pourInWords(pour)} in one go: ${untoldHeat(setting, found)}.` };
  const plan = layers
    ? layersInWords(layers)
    : greatest?.kind === 'none'
      ? 'the resin is too warm for any depth'
      : run.outcome === 'runaway'
        ? `it runs away ${time(run.timeToPeak)} after mixing`
        : cap
          ? `${cap.by === 'sheet' ? length(cap.depth) : atMost(cap.depth, 'mm')} is the most`
          : level === undefined
            ? 'that is more at once than the sheet allows'
            : 'by the model it grows too hot';
  const wrong = wrongFor(resin, { layers, cap });
  // A depth that a reader of inches would see as the very depth allowed says why it is too much.
  const near = cap !== undefined && pour.depth > cap.depth && lookAlike(pour.depth, cap.depth);
  const deep = near
    ? `${pourInWords(pour, { beside: cap.depth })} in one go, since ${toldApart(pour.depth, cap.depth)(cap.depth)} is the most`
    : `${pourInWords(pour, setting)} in one go`;
  return { level: 'stop', text: `Do not pour ${deep}: ${plan}.${wrong ? ` ${wrong}` : ''}` };
}

/** More at once than a sheet allows that names no pot life: what it allows, and that the waits are nobody's. */
function beyondSheet({ resin, pour }: Setting, { stated, beyond, layers, warmer }: SheetLimit): string {
  const near = lookAlike(pour.depth, stated.depth);
  const deep = pourInWords(pour, near ? { beside: stated.depth } : {});
  const most = near ? toldApart(pour.depth, stated.depth)(stated.depth) : length(stated.depth);
  const allows =
    beyond === 'amount'
      ? 'that is more at once than the sheet allows'
      : `the sheet of ${resin?.name} allows ${most} at ${statedAt(stated)}`;
  const then = layers ? `, so ${evenLayers(layers)} at least` : warmer ? ', and less where it is warmer, as here' : '';
  return `Do not pour ${deep} in one go: ${allows}${then}. How long a layer must wait for the next nobody can say: the sheet names no pot life.`;
}

/** Within the depth of such a sheet. */
function withinSheet({ resin }: Setting, { bySheet }: PourAnswer): string {
  if (!bySheet) return `The sheet of ${resin?.name} names no pot life: enter it, or ask the maker.`;
  const { stated, warmer } = bySheet;
  const allows = `The sheet of ${resin?.name} allows ${length(stated.depth)} in one pour at ${statedAt(stated)}`;
  return warmer
    ? `${allows}; it is warmer here, so less, and since it names no pot life nobody can say how much less. Enter the pot life, or ask the maker.`
    : `${allows}, but names no pot life, so nobody can say how warm this pour grows, or when it has set. Enter the pot life, or ask the maker.`;
}

function unknown(setting: Setting, found: PourAnswer): Verdict | undefined {
  const { noAnchor, resin, untold } = setting;
  const { run } = found;
  const text = {
    'no-resin': 'No resin was picked, so nothing says how deep it may be poured.',
    'sheet-at-war': `Not by this sheet: ${(resin && warIn(resin)) ?? ''}. Look at it again, or ask the maker.`,
    'no-depth': untold
      ? `The sheet of ${resin?.name} names neither a pot life nor a greatest depth of one pour. Both stand on the maker’s data sheet: enter them, or ask the maker.`
      : `The sheet of ${resin?.name} names no greatest depth: ask the maker.`,
    'no-sheet-pot-life': withinSheet(setting, found),
    'no-pot-life': `The pot life of ${resin?.name} is that of no resin for pouring: look at the sheet again.`,
    'two-pot-lives': `The two pot lives of ${resin?.name} contradict each other: look at the sheet again.`,
    'no-yardstick': 'With these figures of the cure, the pour that the sheet allows runs away or never warms.',
    'at-war': 'Pot life and depth of the sheet contradict each other.',
  };
  if (noAnchor) return { level: 'unknown', text: text[noAnchor] };
  if (run.outcome === 'unfinished' && run.timeToLastGel === null)
    return { level: 'unknown', text: 'With these figures it never gels: one of them is wrong.' };
  return undefined;
}

function onePour(setting: Setting, found: PourAnswer): Verdict {
  const { pour } = setting;
  const what = `One pour of ${pourInWords(pour, setting)}`;
  const [first, second] = doubts(setting, found);
  if (!first) return { level: 'good', text: `${what}: inside your sheet at ${shopInWords(pour)}.` };
  return {
    level: 'care',
    text: `${what} at ${shopInWords(pour)}. Mind: ${first}${second ? `; ${second}` : ''}.`,
  };
}

/** What stands between a pour within the sheet and a plain yes, the gravest first. */
function doubts(setting: Setting, found: PourAnswer): string[] {
  const { stated, resin, anchor, pour, own, day } = setting;
  if (stated?.kind !== 'stated' || !resin || !anchor) return ['it is not measured by a sheet'];
  const potLifeAssumed = (['potLife', 'potLifeMass', 'potLifeTemperature'] as const).some((name) =>
    isAssumed(resin, name),
  );
  const unchecked = found.limits.find(({ here }) => here === undefined);
  const all: readonly (readonly [holds: boolean, words: string])[] = [
    [!stated.ofSheet, 'the depth is a generic kind’s, from memory (enter your own sheet)'],
    [
      stated.ofSheet && stated.temperatureAssumed,
      `the sheet’s ${length(stated.depth)} are taken for ${temperature(stated.temperature)}, assumed`,
    ],
    [anchor.slowedBy > 1, 'pot life and depth of the sheet hardly go together'],
    [
      unchecked !== undefined,
      `the sheet’s limit of ${amount(unchecked?.figure.value ?? 0, unchecked?.figure.unit ?? 'mL')} was not checked`,
    ],
    [leansOnWalls(setting, found), `nowhere wider than ${length(pour.channel?.width ?? 0)}`],
    [hourMatters(setting), 'the hour counts: pour it at the one that you gave'],
    [found.level === 'edge', 'it is at the edge of the sheet, no deeper and no warmer'],
    [found.ifWarmed !== undefined, 'do not warm the shop before it has gelled through and cooled'],
    [coldestOf(pour) < coldShop, 'the shop is colder than most sheets allow'],
    [warmestOf(pour) > hotShop, 'the shop is hotter than most sheets allow'],
    [(day?.shop.cool ?? 0) > (day?.shop.warm ?? 0), 'the night is given as warmer than the day'],
    [found.leansOn.includes('fan'), 'keep the air moving'],
    [found.leansOn.includes('base'), 'the thickness of the base is assumed'],
    [found.unwarmed !== undefined, 'warm resin leaves less time'],
    [stated.ofSheet && potLifeAssumed, 'what its pot life is stated for is assumed'],
    [own.length > 0, 'it rests on figures of your own'],
    [sheetWarnings(resin).some(({ level }) => level !== 'note'), 'the sheet does not agree with itself'],
  ];
  return all.flatMap(([holds, words]) => (holds ? [words] : []));
}
