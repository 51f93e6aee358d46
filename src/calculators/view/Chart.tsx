import { scaleLinear, scalePoint } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { Series, SeriesLine } from '../../model/evidence/index.ts';
import {
  convert,
  formatQuantity,
  type ReaderUnits,
  readerUnit,
  unitByCode,
  unitLabel,
} from '../../model/quantity/index.ts';
import styles from './chart.module.css';
import unseen from './unseen.module.css';

// Small units, so that the letters stay readable where the chart is as narrow as a phone.
const width = 420;
const height = 230;
const margin = { top: 12, right: 8, bottom: 30, left: 46 };

/** Line patterns by order, so that lines differ without colour. */
const dashes = ['', '8 4', '2 4', '10 3 2 3'];

/** A chart of a series, drawn on the server too, with a text alternative and the table behind it. */
export function Chart({ series, units }: { series: Series; units: ReaderUnits }) {
  const unit = series.lines[0] ? shownUnit(series.lines[0].unit, units) : '';
  const inReader = (values: readonly number[], own: string) => values.map((value) => convert(value, own, unit));
  const lines = series.lines.map((one) => ({
    ...one,
    values: inReader(one.values, one.unit),
    ...(one.low ? { low: inReader(one.low, one.unit) } : {}),
    ...(one.high ? { high: inReader(one.high, one.unit) } : {}),
  }));
  const all = lines.flatMap((one) => [...one.values, ...(one.low ?? []), ...(one.high ?? [])]);
  const [least, most] = padded(
    Math.min(...all),
    Math.max(...all),
    lines[0]?.unit === '%' ? 100 : Number.POSITIVE_INFINITY,
  );
  const y = scaleLinear([least, most], [height - margin.bottom, margin.top]).nice(5);
  const axis = shownAxis(series.axis, units);
  const x = xScale(axis.values);
  const { at } = x;
  // Where points stand close the line says it all.
  const few = axis.values.length <= 14;
  const ticks = y.ticks(5);
  const tickFormat = y.tickFormat(5);
  const stroke = (one: SeriesLine) =>
    line<number>(
      (_, index) => at(index),
      (value) => y(value),
    )(one.values as number[]) ?? '';
  const band = (one: SeriesLine) =>
    area<number>(
      (_, index) => at(index),
      (_, index) => y(one.low?.[index] ?? 0),
      (_, index) => y(one.high?.[index] ?? 0),
    )(one.values as number[]) ?? '';

  return (
    <figure className={styles.figure}>
      <figcaption className={styles.title}>
        {series.title}, {unitLabel(unit)}
        {axis.unit && (
          <small>
            {' '}
            against {axis.label.toLowerCase()}, {unitLabel(axis.unit)}
          </small>
        )}
      </figcaption>
      <svg viewBox={`0 0 ${width} ${height}`} className={styles.chart} role="img" aria-label={series.description}>
        {ticks.map((tick) => (
          <g key={tick}>
            <line className={styles.grid} x1={margin.left} x2={width - margin.right} y1={y(tick)} y2={y(tick)} />
            <text className={styles.tick} x={margin.left - 8} y={y(tick)} dy="0.32em" textAnchor="end">
              {tickFormat(tick)}
            </text>
          </g>
        ))}
        {x.ticks.map((tick) => (
          <text
            key={tick.words}
            className={styles.tick}
            x={tick.at}
            y={height - margin.bottom + 20}
            textAnchor="middle"
          >
            {tick.words}
          </text>
        ))}
        {lines.map((one) => (one.low && one.high ? <path key={one.id} className={styles.band} d={band(one)} /> : null))}
        {lines.map((one, index) => (
          <path key={one.id} className={styles.line} d={stroke(one)} strokeDasharray={dashes[index % dashes.length]} />
        ))}
        {lines.map((one) =>
          (few ? one.values : []).map((value, index) => (
            <circle key={`${one.id}${axis.values[index]}`} className={styles.dot} cx={at(index)} cy={y(value)} r={3} />
          )),
        )}
      </svg>
      <ul className={styles.legend}>
        {lines.map((one, index) => (
          <li key={one.id}>
            <svg viewBox="0 0 32 8" className={styles.key} aria-hidden="true">
              <line
                className={styles.line}
                x1="0"
                x2="32"
                y1="4"
                y2="4"
                strokeDasharray={dashes[index % dashes.length]}
              />
            </svg>
            {one.label}
          </li>
        ))}
      </ul>
      <details className={styles.table}>
        <summary>
          The numbers<span className={unseen.unseen}>: {series.title}</span>
        </summary>
        <SeriesTable series={series} axis={axis} units={units} />
      </details>
    </figure>
  );
}

/** The unit in which the reader sees values of this unit; a unit without another system stays as it is. */
function shownUnit(code: string, units: ReaderUnits): string {
  const unit = unitByCode(code);
  return unit && !unit.kept ? readerUnit(unit.dimension, units) : code;
}

/**
 * The axis in the reader's units, where the two systems differ in them; times stay as they are. Like every axis
 * of numbers it keeps three digits.
 */
function shownAxis(axis: Series['axis'], units: ReaderUnits): Series['axis'] {
  const unit = unitByCode(axis.unit ?? '');
  if (!unit || unit.kept) return axis;
  const inch = readerUnit(unit.dimension, { ...units, system: 'inch' });
  if (inch === readerUnit(unit.dimension, { ...units, system: 'metric' })) return axis;
  const target = readerUnit(unit.dimension, units);
  return {
    ...axis,
    unit: target,
    values: axis.values.map((value) =>
      typeof value === 'number' ? inThreeDigits(convert(value, unit.code, target)) : value,
    ),
  };
}

/** A list that is longer is read by nobody, and takes a phone a while to lay out. */
const longestList = 25;

/**
 * The places in a series whose values stand in the list behind its chart: all of a short one, one in so many of a long one, and the last in any case.
 *
 * @param count how many values the series has
 * @returns the places, and that one in `every` of them is listed
 */
export function listedPlaces(count: number): { places: readonly number[]; every: number } {
  const every = Math.max(1, Math.ceil((count - 1) / (longestList - 1)));
  const places = Array.from({ length: count }, (_, place) => place);
  return { places: places.filter((place) => place % every === 0 || place === count - 1), every };
}

/** Rows of a list from which on paper prints every second one: `print-calculators.css` counts alike. */
const longOnPaper = 20;

/** A number of an axis as it is read. */
const inThreeDigits = (value: number) => Number(value.toPrecision(3));

/** A place on an axis as it is read; words stay as they are. */
const asRead = (value: string | number | undefined) => (typeof value === 'number' ? inThreeDigits(value) : value);

function SeriesTable({ series, axis, units }: { series: Series; axis: Series['axis']; units: ReaderUnits }) {
  const { places, every } = listedPlaces(axis.values.length);
  const onPaper = places.length < longOnPaper ? every : 2 * every;
  const format = (value: number | undefined, unit: string) =>
    value === undefined ? '' : formatQuantity(value, unit, units, { digits: 4 });
  return (
    // A region that scrolls must be reachable by keyboard.
    // biome-ignore lint/a11y/noNoninteractiveTabindex: see above
    <section className={styles.scroll} tabIndex={0} aria-label={`${series.title}, the numbers`}>
      <table>
        <thead>
          <tr>
            <th scope="col">
              {axis.label}
              {axis.unit && `, ${unitLabel(axis.unit)}`}
            </th>
            {series.lines.map((one) => (
              <th key={one.id} scope="col">
                {one.label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {places.map((index) => (
            <tr key={`${axis.values[index]}`}>
              <th scope="row">{asRead(axis.values[index])}</th>
              {series.lines.map((one) => (
                <td key={one.id}>
                  {format(one.values[index], one.unit)}
                  {one.low && one.high && (
                    <small>
                      {' '}
                      ({format(one.low[index], one.unit)} to {format(one.high[index], one.unit)})
                    </small>
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {every > 1 && (
        <p className={`${styles.legend} no-print`}>
          One in {every} of {axis.values.length} values: “Take it away” has them all.
        </p>
      )}
      {onPaper > 1 && (
        <p className={`${styles.legend} print-only`}>
          One in {onPaper} of {axis.values.length} values.
        </p>
      )}
    </section>
  );
}

interface XScale {
  /** Horizontal place of a value by its index. */
  at: (index: number) => number;
  ticks: { at: number; words: string }[];
}

/** Values evenly spaced and named where the axis holds names or a few numbers, to scale with round numbers where it holds many. */
function xScale(values: readonly (string | number)[]): XScale {
  const range: [number, number] = [margin.left + 14, width - margin.right - 14];
  const numbers = values.filter((value): value is number => typeof value === 'number');
  if (numbers.length === values.length && numbers.length > 1) {
    const linear = scaleLinear([Math.min(...numbers), Math.max(...numbers)], range);
    const shown = numbers.length > 14 ? linear.ticks(7) : numbers;
    return {
      at: (index) => linear(numbers[index] ?? 0),
      ticks: shown.map((value) => ({ at: linear(value), words: `${value}` })),
    };
  }
  const points = scalePoint<number>(
    values.map((_, index) => index),
    range,
  );
  const at = (index: number) => points(index) ?? range[0];
  const every = values.length > 14 ? 2 : 1;
  return {
    at,
    ticks: values.flatMap((value, index) => (index % every === 0 ? [{ at: at(index), words: `${value}` }] : [])),
  };
}

/**
 * A little air above and below, so that a line that hardly moves does not fill the chart; none beyond zero and, for a
 * share, beyond all of it, where no value lies beyond either.
 */
function padded(least: number, most: number, all: number): [number, number] {
  const room = Math.max((most - least) * 0.08, Math.abs(most) * 0.0005, 1e-9);
  return [
    least >= 0 ? Math.max(0, least - room) : least - room,
    most <= all ? Math.min(all, most + room) : most + room,
  ];
}
