import { formatQuantity } from '../../model/quantity/index.ts';
import { type Glass, glassTransition } from '../../model/resin/clock.ts';
import type { CureEvent, Timetable } from '../../model/resin/timetable.ts';
import type { Resin } from '../../model/resin/types.ts';
import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';
import { eventLabels, originNote } from './words.ts';

const time = (label: string) => ({ label, unit: 's', digits: 2 });

/** What the calculator may tell, the headline first. */
export const figures = {
  recoatOpens: time(eventLabels.recoatOpens),
  recoatCloses: time(eventLabels.recoatCloses),
  sandable: time(eventLabels.sandable),
  lightUse: time(eventLabels.lightUse),
  fullCure: time(eventLabels.fullCure),
  oil: time(eventLabels.oil),
  foodService: time(eventLabels.foodService),
  work: time(eventLabels.work),
  gel: time(eventLabels.gel),
  conversion: {
    label: 'Cure reached at the full cure time',
    unit: '%',
    digits: 2,
    help: 'How much of the resin has reacted when the time to full cure is over.',
  },
  glass: {
    label: 'Glass transition at the full cure time',
    unit: 'Cel',
    digits: 2,
    help: 'Above it the resin turns leathery and takes prints.',
  },
} as const satisfies Record<string, FigureDeclaration>;

type Figures = Partial<Record<keyof typeof figures, FigureValue>>;

const clockBand =
  'The clock a quarter faster and slower; for the end of the window also the span from three quarters to four fifths of the cure.';
const energyBand = 'What the activation energy leaves open where the time is carried over to another temperature.';

const quarter = 'The clock a quarter slower and faster.';

/** The figures of a timetable: an event that lies too far off, or never comes, has none. */
export function figuresOf(timetable: Timetable, resin: Resin, glass: Glass): Figures {
  const events = timetable.events.flatMap((event) => {
    const value = eventFigure(event, resin);
    return value ? [[event.id, value] as const] : [];
  });
  return { ...Object.fromEntries(events), ...atFullCure(timetable, glass) };
}

/** The band of a figure of two digits; none where both its ends are written as the figure itself. */
function bandOf(
  value: number,
  low: number | null,
  high: number | null,
  unit: string,
  band: string,
): Pick<FigureValue, 'low' | 'high' | 'band'> {
  const shown = (each: number) => formatQuantity(each, unit, undefined, { digits: 2 });
  if (low === null || high === null || [low, high].every((end) => shown(end) === shown(value))) return {};
  return { low, high, band };
}

function eventFigure(event: CureEvent, resin: Resin): FigureValue | undefined {
  const { time: value, low, high } = event;
  if (value === null) return undefined;
  return {
    value,
    basis: event.basis,
    ...bandOf(value, low, high, 's', event.stated ? energyBand : clockBand),
    note: originNote(event, resin),
  };
}

function atFullCure({ cured, slower, faster, events }: Timetable, glass: Glass): Figures {
  const at = events.find(({ id }) => id === 'fullCure')?.time;
  if (!cured || typeof at !== 'number') return {};
  const [low, high] = [Math.min(slower.at(at), cured.here), Math.max(faster.at(at), cured.here)];
  const figure = (unit: string, of: (conversion: number) => number): FigureValue => ({
    value: of(cured.here),
    ...bandOf(of(cured.here), of(low), of(high), unit, quarter),
    basis: 'memory',
  });
  return {
    conversion: figure('%', (conversion) => 100 * conversion),
    glass: figure('Cel', (conversion) => glassTransition(conversion, glass)),
  };
}
