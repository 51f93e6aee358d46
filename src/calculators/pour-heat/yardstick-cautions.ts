import type { Caution } from '../../model/evidence/index.ts';
import { coolestAnchor, hottestAnchor } from '../../model/resin/anchor.ts';
import { depthAgainstPotLife } from '../../model/resin/greatest-pour.ts';
import { silentOn } from '../../model/resin/told.ts';
import type { NoAnchor, Setting } from './setting.ts';
import { length, ofThisCase, rise, temperature, times } from './words.ts';

/** What must be said of the sheet's own greatest pour: that there is none to measure by, or how far it can be trusted. */
export function yardstickCautions(setting: Setting): Caution[] {
  const { noAnchor, resin } = setting;
  if (noAnchor === 'at-war') return atWarByOwn(setting);
  if (noAnchor) return [...potLifeMissing(setting), ...missing[noAnchor](resin?.name ?? '', setting)];
  return [...assumedTemperature(setting), ...slowed(setting), ...cool(setting)];
}

const missing: Readonly<Record<Exclude<NoAnchor, 'at-war'>, (name: string, setting: Setting) => Caution[]>> = {
  'no-resin': () => [
    ofThisCase(
      'no-index',
      'warning',
      'Pick a resin: without a sheet no greatest depth and no layers can be given.',
      'A rise alone is good to a factor of two at best.',
    ),
  ],
  'no-depth': (name, { untold }) => [
    ofThisCase(
      'no-sheet-depth',
      'warning',
      `Ask the maker how deep ${name} may be poured at one time, and at what temperature, and enter both in the sheet.`,
      `Nothing is said of its greatest depth, so no depth and no layers can be given.${untold ? '' : ' That the model finds a pour cool is no leave to pour it.'}`,
    ),
  ],
  'no-sheet-pot-life': (_, { stated, resin }) => temperatureMissing(stated, resin?.name ?? ''),
  // The warnings of the sheet and of the fit say it themselves.
  'sheet-at-war': () => [],
  'no-pot-life': () => [],
  'two-pot-lives': () => [],
  'no-yardstick': () => [
    ofThisCase(
      'no-yardstick',
      'warning',
      'Leave the figures of the cure out, and they are fitted to the sheet.',
      'With those given here the pour that the sheet allows would run away in the model, or not warm at all, so nothing can be measured by it.',
    ),
  ],
};

/** A sheet without a pot life of its own: the kind's that lies under it is nobody's word of this resin. */
function potLifeMissing({ resin, untold }: Setting): Caution[] {
  if (!resin || !untold || !silentOn(resin, 'potLife')) return [];
  return [
    ofThisCase(
      'no-sheet-pot-life',
      'warning',
      `Enter the pot life of ${resin.name}, with the mass and the temperature that it is stated for: they stand on the data sheet, or the maker says them.`,
      'Without it nobody knows how fast this resin cures, so no rise, no hours and no wait between layers are given.',
    ),
  ];
}

/** The warning on the sheet itself says that it is at war; but where only figures of the reader's own make it so, there is none. */
function atWarByOwn({ resin, stated, pour }: Setting): Caution[] {
  if (!resin || stated?.kind !== 'at-war' || depthAgainstPotLife(resin).length > 0) return [];
  return [
    ofThisCase(
      'own-against-depth',
      'danger',
      `Do not pour ${length(pour.depth)} by these figures: with your own ones of the mix, the pot life and the ${length(stated.depth)} of the sheet contradict each other.`,
      'Leave your own figures out, or look at them and at the sheet again.',
    ),
  ];
}

function assumedTemperature({ stated, resin }: Setting): Caution[] {
  return temperatureMissing(
    stated,
    resin?.name ?? '',
    'Were they meant for a colder shop, this pour would be hotter than is shown here.',
  );
}

function temperatureMissing(stated: Setting['stated'], name: string, why?: string): Caution[] {
  if (stated?.kind !== 'stated' || !stated.temperatureAssumed) return [];
  return [
    ofThisCase(
      'depth-temperature-assumed',
      'warning',
      `Ask the maker at what temperature the ${length(stated.depth)} hold: ${temperature(stated.temperature)} is assumed, since ${name} names none.`,
      why,
    ),
  ];
}

function slowed({ anchor, resin }: Setting): Caution[] {
  if (!anchor || anchor.slowedBy === 1) return [];
  return [
    ofThisCase(
      'sheet-against-itself',
      'warning',
      'Work by the shorter ends of the times and wait by the longer: the pot life and the depth of this sheet hardly go together.',
      `By its pot life alone ${resin?.name} would warm by more than ${rise(hottestAnchor)} at its own ${length(anchor.depth)}. Somebody poured that depth, so the sheet stands, and the cure is taken as ${times(anchor.slowedBy)} slower. See what the pot life is stated for: mass, temperature, and whether it means gel or usable.`,
    ),
  ];
}

function cool({ anchor, stated }: Setting): Caution[] {
  if (!anchor || anchor.rise >= coolestAnchor) return [];
  const who = stated?.kind === 'stated' && stated.ofSheet ? 'sheet' : 'kind';
  return [
    ofThisCase(
      'sheet-depth-cool',
      'note',
      `Keep to the ${length(anchor.depth)} of the ${who}, though the model finds no heat in them.`,
      `It warms by only ${rise(anchor.rise)} there, so that limit may stand for another reason than heat, such as bubbles, wrinkles or running off.`,
    ),
  ];
}
