import type { ResultTable, Series } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { minute } from '../../model/quantity/seconds.ts';
import { gelPoint, timeToConversion } from '../../model/resin/clock.ts';
import { type CupRun, type CupStart, cupOf, runCup } from '../../model/resin/cup.ts';
import type { ResinKinetics } from '../../model/resin/fit.ts';
import { workConversion } from '../../model/resin/kinetics.ts';

/** Masses of the table, g. */
const masses = [25, 50, 100, 200, 500, 1000];
/** Temperatures of the table, °C. */
const temperatures = [10, 15, 20, 25, 30];
const chartPoints = 49;

/** A time for a sentence. */
export const shown = (seconds: number) => amount(seconds, 's', 2);

/** When a resin stops being workable and when it gels, s. */
export interface Times {
  work: number;
  gel: number;
}

/** A thin layer, which keeps the temperature of the shop. */
export function thinLayer({ kinetics }: ResinKinetics, celsius: number): Times {
  return {
    work: timeToConversion(workConversion, celsius, kinetics),
    gel: timeToConversion(gelPoint, celsius, kinetics),
  };
}

/** A cup of a mass, g. */
export function cup({ kinetics, thermal }: ResinKinetics, mass: number, start: CupStart): CupRun | undefined {
  return runCup(cupOf(mass, thermal), kinetics, start);
}

/** Time until a thin layer is no longer workable, if the resin has this conversion already when it is spread; 0 where it is past that. */
export function leftOnceSpread({ kinetics }: ResinKinetics, celsius: number, conversion: number): number {
  if (conversion >= workConversion) return 0;
  return timeToConversion(workConversion, celsius, kinetics) - timeToConversion(conversion, celsius, kinetics);
}

/** Conversion of the part of a cup that is furthest on, at a time from mixing. */
export function conversionAt({ course }: CupRun, time: number): number {
  const after = course.findIndex((point) => point.time >= time);
  const end = course[after];
  const start = course[after - 1];
  if (!end) return course.at(-1)?.conversion ?? 1;
  if (!start) return end.conversion;
  return start.conversion + ((end.conversion - start.conversion) * (time - start.time)) / (end.time - start.time);
}

const time = (id: string, label: string) => ({ id, label, unit: 's', digits: 2 });

/** Air of the shop and temperature of the mixed resin where it was warmed or cooled, °C. */
export interface Start {
  air: number;
  resin?: number;
}

/** How a start is named behind a title: nothing where the resin is as the shop. */
const mixedAt = ({ resin }: Start) => (resin === undefined ? '' : `, the resin mixed at ${amount(resin, 'Cel')}`);

/** What other masses would do, started as the cup in question. */
export function massTable(resin: ResinKinetics, start: Start): ResultTable {
  return {
    id: 'masses',
    title: `Other masses at this temperature${mixedAt(start)}`,
    columns: [
      { id: 'mass', label: 'In the cup', unit: 'g', digits: 3, kept: true },
      time('work', 'Workable'),
      time('gel', 'Gels'),
    ],
    rows: masses.map((mass) => {
      const run = cup(resin, mass, start);
      return [mass, run?.work ?? null, run?.gel ?? null];
    }),
    basis: 'memory',
  };
}

/** What this mass would do, in the cup and spread thin, in other shops; the resin as mixed here where it was warmed or cooled. */
export function temperatureTable(resin: ResinKinetics, mass: number, start: Start): ResultTable {
  return {
    id: 'temperatures',
    title: start.resin === undefined ? 'This mass at other temperatures' : `This mass in other shops${mixedAt(start)}`,
    columns: [
      { id: 'temperature', label: 'Shop', unit: 'Cel', digits: 3 },
      time('cup-work', 'Cup: work'),
      time('cup-gel', 'Cup: gel'),
      time('thin-work', 'Thin: work'),
      time('thin-gel', 'Thin: gel'),
    ],
    rows: temperatures.map((celsius) => {
      const run = cup(resin, mass, { ...start, air: celsius });
      const thin = thinLayer(resin, celsius);
      return [celsius, run?.work ?? null, run?.gel ?? null, thin.work, thin.gel];
    }),
    basis: 'memory',
  };
}

/** How far the cure has gone, spread thin until that gels, and in the cup until it does: what a cup does beyond is no cure to be read off. */
export function cureSeries(resin: ResinKinetics, run: CupRun, celsius: number): Series {
  const thin = thinLayer(resin, celsius);
  // The thin layer's own clock, turned round: times of even steps of conversion, which crowd where it runs.
  const points = Array.from({ length: chartPoints }, (_, at) => (gelPoint * at) / (chartPoints - 1));
  const own = points.map((conversion) => timeToConversion(conversion, celsius, resin.kinetics));
  const marks = [...own, run.work, run.gel].filter((value) => value <= thin.gel * 1.0001).sort((a, b) => a - b);
  const percent = (value: number) => 100 * Math.min(gelPoint, value);
  const thinAt = (value: number) => {
    const after = own.findIndex((mark) => mark >= value);
    if (after <= 0) return after === 0 ? 0 : gelPoint;
    const [from, to] = [own[after - 1] as number, own[after] as number];
    return (points[after - 1] as number) + ((gelPoint / (chartPoints - 1)) * (value - from)) / (to - from);
  };
  const unit = thin.gel > 10 * 3600 ? ('h' as const) : ('min' as const);
  const scale = unit === 'h' ? 3600 : minute;
  return {
    id: 'cure',
    title: 'How far the cure has gone',
    axis: { label: 'Time from mixing', unit, values: marks.map((value) => Number((value / scale).toPrecision(4))) },
    lines: [
      {
        id: 'cup',
        label: run.ranAway ? 'In the cup, until it gels and runs away' : 'In the cup, until it gels',
        unit: '%',
        values: marks.filter((value) => value <= run.gel).map((value) => percent(conversionAt(run, value))),
      },
      { id: 'thin', label: 'Spread thin', unit: '%', values: marks.map((value) => percent(thinAt(value))) },
    ],
    description: `At 20 % resin is too thick to work and at 58 % it gels. The cup is there after ${words(run.work, scale)} and ${words(run.gel, scale)} ${unit}${run.gel <= thin.gel ? ', where its line ends' : ''}, a thin layer after ${words(thin.work, scale)} and ${words(thin.gel, scale)}.`,
  };
}

function words(value: number, scale: number): string {
  return Number((value / scale).toPrecision(2)).toString();
}
