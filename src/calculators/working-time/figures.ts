import type { Timeline } from '../../model/evidence/index.ts';
import { asTyped } from '../../model/quantity/index.ts';
import type { CupRun } from '../../model/resin/cup.ts';
import type { Resin } from '../../model/resin/types.ts';
import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';
import type { Inputs } from './inputs.ts';
import type { Times } from './times.ts';

/** What the calculator may tell, the headline first. */
export const figures = {
  cupWork: {
    label: 'Working time in the cup',
    unit: 's',
    digits: 2,
    help: 'Until the part of the cup that is furthest on is about twice as thick as when it was mixed.',
  },
  leftAfterSpreading: { label: 'Left once spread thin', unit: 's', digits: 2 },
  cupGel: { label: 'The cup gels after', unit: 's', digits: 2, help: 'From then on it no longer flows.' },
  filmWork: { label: 'Working time of a thin layer', unit: 's', digits: 2 },
  filmGel: { label: 'A thin layer gels after', unit: 's', digits: 2 },
  stretch: { label: 'Times longer, spread thin at once', unit: '1', digits: 2 },
} as const satisfies Record<string, FigureDeclaration>;

/** Band of every time: a quarter either way. */
const bandShare = 0.25;
const band =
  'A quarter either way: how far such a clock may be off with the pot life of a sheet alone. Plan by the low end.';

const ends = (value: number) => ({ low: value * (1 - bandShare), high: value * (1 + bandShare) });

/** What a cup comes to. */
export interface CupTimes {
  run: CupRun;
  thin: Times;
  /** s left once it is spread; undefined where nobody said when. */
  left: number | undefined;
}

/** The figures of a cup. */
export function figuresOf(
  inputs: Inputs,
  { run, thin, left }: CupTimes,
): Partial<Record<keyof typeof figures, FigureValue>> {
  const time = (value: number, more: Partial<FigureValue> = {}): FigureValue => ({
    value,
    ...ends(value),
    band,
    basis: 'memory',
    ...more,
  });
  const own = statedFor(inputs);
  return {
    cupWork: time(run.work, own === 'usable' ? asStated(inputs.resin) : {}),
    ...(left === undefined
      ? {}
      : {
          leftAfterSpreading: time(left, {
            note: 'Counted from spreading, by the part of the cup that is furthest on.',
          }),
        }),
    cupGel: time(run.gel, own === 'gel' ? asStated(inputs.resin) : {}),
    filmWork: time(thin.work, {
      note: `Spread at once, ${asTyped({ metric: 'a few millimetres', inch: '1/8 in' })} deep at most.`,
    }),
    filmGel: time(thin.gel),
    stretch: { value: thin.work / run.work, basis: 'memory' },
  };
}

/** What happens when, from mixing: the cup's own times, those of a thin layer, and when it is spread. */
export function timelineOf({ spreadAfter }: Inputs, { run, thin }: CupTimes): Timeline {
  const at = (id: string, label: string, value: number) => ({
    id,
    label,
    at: value,
    ...ends(value),
    basis: 'memory' as const,
  });
  const events = [
    at('cup-work', 'The cup is too thick to work', run.work),
    at('cup-gel', 'The cup gels', run.gel),
    at('work', 'Spread thin at once: too thick to work', thin.work),
    // The cure clock waits for the slower of two clocks where a sheet gives two; that gel is another event.
    at('film-gel', 'Spread thin at once: gelled', thin.gel),
    ...(spreadAfter === undefined
      ? []
      : [{ id: 'spread', label: 'Spread thin', at: spreadAfter, basis: 'derived' as const }]),
  ];
  return { zero: 'mixing', events: events.sort((one, other) => one.at - other.at) };
}

/** What the pot life means, where it was stated for just this cup. */
function statedFor({
  resin,
  mass,
  shopTemperature: celsius,
  resinTemperature: warmed,
}: Inputs): Resin['potLifeMeans'] | undefined {
  const { potLife, potLifeMass, potLifeTemperature } = resin.figures;
  if (!potLife || !potLifeMass || !potLifeTemperature || warmed !== undefined) return undefined;
  const same = Math.abs(mass / potLifeMass.value - 1) < 0.01 && Math.abs(celsius - potLifeTemperature.value) < 0.5;
  return same ? resin.potLifeMeans : undefined;
}

function asStated({ figures: { potLife }, fromSheet }: Resin): Partial<FigureValue> {
  return {
    ...(potLife ? { basis: potLife.basis } : {}),
    note: `The pot life of the ${fromSheet ? 'sheet' : 'kind'} is stated for just this cup.`,
  };
}
