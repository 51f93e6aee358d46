import type { Series } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { day, hour } from '../../model/quantity/seconds.ts';
import { type Glass, glassTransition } from '../../model/resin/clock.ts';
import type { History } from '../../model/resin/history.ts';
import type { Timetable } from '../../model/resin/timetable.ts';

const points = 60;
/** Corners of the history that a chart shows; a log with more is shown by its course alone. */
const mostCorners = 40;

/** Times of a chart: crowded at the start, where the cure runs, and on either side of each corner of the temperature. */
function chartTimes(history: History, end: number): number[] {
  const times = Array.from({ length: points + 1 }, (_, at) => end * (at / points) ** 2);
  let corner = history.nextCorner(0);
  const corners: number[] = [];
  while (corner < end && corners.length < 2 * mostCorners) {
    corners.push(corner - 60, corner + 60);
    corner = history.nextCorner(corner + 60);
  }
  return [...times, ...corners].filter((time) => time >= 0 && time <= end).sort((one, other) => one - other);
}

/** Conversion with its band, and the glass transition beside the temperature of the shop, from mixing to the end of the timetable. */
export function cureSeries({ course, slower, faster, cured }: Timetable, glass: Glass, history: History): Series[] {
  const times = chartTimes(history, course.end);
  const unit = course.end > 3 * day ? ('d' as const) : ('h' as const);
  const scale = unit === 'd' ? day : hour;
  const axis = { label: 'Time from mixing', unit, values: times.map((time) => Number((time / scale).toPrecision(5))) };
  const percent = (one: Timetable['course']) => times.map((time) => 100 * one.at(time));
  const glassAt = (time: number) => glassTransition(course.at(time), glass);
  const end = course.end;
  return [
    {
      id: 'conversion',
      title: 'How far the cure has gone',
      axis,
      lines: [
        {
          id: 'conversion',
          label: 'Cure, with its band',
          unit: '%',
          values: percent(course),
          low: percent(slower),
          high: percent(faster),
        },
        ...(cured
          ? [{ id: 'asks', label: 'What full cure asks for', unit: '%', values: times.map(() => 100 * cured.asks) }]
          : []),
      ],
      description: `The cure runs fast at first and then stalls: it stands at ${Math.round(100 * course.at(end))} % at the end. It gels at 58 %.`,
    },
    {
      id: 'glass',
      title: 'Softening point of the resin, and shop temperature',
      axis,
      lines: [
        {
          id: 'glass',
          label: 'Softening point of the resin (glass transition)',
          unit: 'Cel',
          values: times.map(glassAt),
        },
        { id: 'shop', label: 'Temperature of the shop', unit: 'Cel', values: times.map((time) => history.at(time)) },
      ],
      description: `Below the shop’s temperature the resin is liquid or rubbery. Where its glass transition passes it, the resin turns hard and the cure slows. At the end it stands at ${amount(glassAt(end), 'Cel', 2)}.`,
    },
  ];
}
