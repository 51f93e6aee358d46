import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import { formatQuantity } from '../../model/quantity/index.ts';
import { coolestAnchor, hottestAnchor } from '../../model/resin/anchor.ts';
import { runawayTemperature } from '../../model/resin/pour.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import { lengthInBoth, riseInBoth, temperatureInBoth } from '../kit/both-units.ts';
import type { PourAnswer } from './answer.ts';
import type { Setting } from './setting.ts';

const derived = (id: string, level: Caution['level'], text: string): Caution => ({
  id,
  level,
  text,
  basis: 'derived',
});

/** What must be said of a pour, heat build-up first. */
export function cautionsOf(setting: Setting, found: PourAnswer): Caution[] {
  const { resin } = setting;
  return [
    ...heat(setting, found),
    ...['deep-pour', 'resin-cup-heat'].flatMap((id) => cautionById(id) ?? []),
    ...depth(setting, found),
    ...yardstick(setting),
    ...warmth(setting),
    ...layers(found),
    ...unfinished(found),
    ...setting.cautions,
    ...(resin ? sheetWarnings(resin) : []),
    derived(
      'pour-estimate',
      'note',
      'Estimate from your data sheet’s figures, not a measurement; flat pour, no edge loss, bubbles, fillers or wood moisture, poured at once after mixing, the shop at one temperature. Follow the data sheet where they differ.',
    ),
  ];
}

/** What to do instead of a pour that is too hot. */
function instead({ layers, greatest }: PourAnswer): string {
  if (layers) return `Pour ${layers.count} layers of ${lengthInBoth(layers.depth)}, or cool the shop.`;
  if (greatest?.kind === 'none') return 'The resin is too warm for any depth: let it cool before it is mixed.';
  return 'Pour thinner, or cool the shop.';
}

function heat({ pour }: Setting, found: PourAnswer): Caution[] {
  const { run, level, index } = found;
  if (run.outcome === 'runaway') {
    return [
      derived(
        'pour-runaway',
        'danger',
        `Runaway: ${lengthInBoth(pour.depth)} poured in one go at ${temperatureInBoth(pour.shopTemperature)} passes ${temperatureInBoth(runawayTemperature)} about ${formatQuantity(run.timeToPeak, 's', undefined, { digits: 2 })} after mixing and grows hotter still. Such a pour foams, cracks, smokes and can scorch what it touches. Do not pour it. ${instead(found)}`,
      ),
    ];
  }
  if (level === 'runaway') {
    return [
      derived(
        'pour-expect-runaway',
        'danger',
        `Expect a runaway: by the model this pour warms ${(index ?? 0).toFixed(1)} times as much as the deepest that the sheet allows. Do not pour ${lengthInBoth(pour.depth)} in one go. ${instead(found)}`,
      ),
    ];
  }
  if (level === 'outside') {
    return [
      derived(
        'pour-outside',
        'warning',
        `Outside the sheet: this pour warms ${(index ?? 0).toFixed(1)} times as much as the deepest that the sheet allows, and a quarter more depth doubles the rise or worse. ${instead(found)}`,
      ),
    ];
  }
  return [];
}

function depth({ pour, resin, anchor }: Setting, { layers }: PourAnswer): Caution[] {
  const sheet = resin?.figures.greatestDepth;
  if (!resin?.fromSheet || !sheet || pour.depth <= sheet.value) return [];
  const temperature = anchor?.temperature ?? resin.figures.greatestDepthTemperature?.value;
  return [
    derived(
      'deeper-than-sheet',
      'warning',
      `${lengthInBoth(pour.depth)} is deeper than the ${lengthInBoth(sheet.value)} that ${resin.name} allows in one pour${
        temperature === undefined ? '' : ` at ${temperatureInBoth(temperature)}`
      }, whatever the index says: the sheet comes first. ${
        layers ? `Split it into ${layers.count} layers, or pick another resin.` : 'Split it, or pick another resin.'
      }`,
    ),
  ];
}

function yardstick({ anchor, noAnchor, resin }: Setting): Caution[] {
  if (noAnchor === 'no-resin') {
    return [
      derived(
        'no-index',
        'note',
        'No resin was picked, so there is no sheet to measure the pour by: no heat index, no greatest depth and no layers can be given, and a rise alone is good to a factor of two at best.',
      ),
    ];
  }
  if (noAnchor === 'no-depth') {
    return [
      derived(
        'no-sheet-depth',
        'warning',
        `${resin?.name} says nothing of its greatest depth, so no heat index and no layers can be given. Ask the maker how deep it may be poured at one time, and at what temperature, and enter both in the sheet.`,
      ),
    ];
  }
  if (noAnchor === 'too-hot') {
    return [
      derived(
        'no-yardstick',
        'warning',
        'With these figures of the cure the pour that the sheet allows would run away in the model, or not warm at all, so it cannot be a yardstick and no heat index is given. Leave the figures of the cure out, and they are fitted to the sheet.',
      ),
    ];
  }
  if (anchor && anchor.slowedBy > 1) {
    return [
      derived(
        'sheet-against-itself',
        'warning',
        `By its pot life alone, ${resin?.name} would warm by more than ${riseInBoth(hottestAnchor)} at the ${lengthInBoth(anchor.depth)} that its sheet allows. Somebody poured that depth, so the sheet stands, and the cure is taken as ${anchor.slowedBy.toFixed(1)} times slower. Times are good to no better than that: work by the shorter ends of the bands, wait by the longer. See what the pot life is stated for: mass, temperature, and whether it means gel or usable.`,
      ),
    ];
  }
  if (anchor && anchor.rise < coolestAnchor) {
    return [
      derived(
        'sheet-depth-cool',
        'note',
        `At the ${lengthInBoth(anchor.depth)} that the ${resin?.fromSheet ? 'sheet' : 'kind'} allows, the model warms by only ${riseInBoth(anchor.rise, anchor.rise < 2 ? 1 : 2)}, so that limit may stand for another reason than heat, such as bubbles, wrinkles or running off. Keep to it all the same.`,
      ),
    ];
  }
  return [];
}

function warmth({ pour }: Setting): Caution[] {
  if (pour.resinTemperature - pour.shopTemperature >= 5) {
    return [
      derived(
        'resin-warm',
        'note',
        'Warm resin changes the rise of a pour little once it lies in a cooler shop, but it leaves less time: it sets 4 to 6 % sooner for every 5 °C (9 °F).',
      ),
    ];
  }
  return [];
}

function layers({ layers: plan }: PourAnswer): Caution[] {
  if (!plan) return [];
  return [
    derived(
      'layers-over-base',
      'note',
      'Each layer is reckoned over the base itself. Later ones lie on cured resin, which takes up heat no worse than wood. Let every layer cool before the next, or the heats add.',
    ),
  ];
}

function unfinished({ run }: PourAnswer): Caution[] {
  if (run.outcome !== 'unfinished' || run.timeToLastGel !== null) return [];
  return [
    derived(
      'never-gels',
      'warning',
      'With these figures it has not gelled through within a month. No resin for pouring is so slow: look at the rate constant, the temperature and the energy again.',
    ),
  ];
}
