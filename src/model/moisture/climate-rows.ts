import type { Table, TableRow } from '../evidence/index.ts';
import { months } from './months.ts';

/**
 * A place in the file that a browser loads: id, place, country, other names, towns near it, data set, station,
 * pressure in Pa, monthly means of temperature (0.1 °C) and of relative humidity (0.1 %), and what to know of them.
 * Means are written as the first month and then the step to each next one: that weighs a tenth less.
 */
export type ClimateRow = [
  id: string,
  place: string,
  country: string,
  also: string,
  near: string,
  dataset: string,
  station: string,
  pressure: number,
  temperature: number[],
  humidity: number[],
  remark?: string,
];

const countries: Readonly<Record<string, string>> = { USA: 'United States', 'Korea (Republic of)': 'South Korea' };

/** Stations that report more vapour in frost than the air can hold; the table's notes name them. */
const tooDampInFrost = ['helsinki-fi', 'jyvaskyla-fi', 'jokioinen-fi', 'sodankyla-fi'];
/** With fewer years than this in some month a row is thin. */
const fewYears = 8;
/** With more faulty reports than this a row is named. */
const manyFaulty = 30;

const steps = (values: readonly number[]) => values.map((value, at) => value - (values[at - 1] ?? 0));

/** Values from the first and the step to each next one. */
export function fromSteps(written: readonly number[]): number[] {
  let sum = 0;
  return written.map((step) => {
    sum += step;
    return sum;
  });
}

/** What a reader should know of a place's figures, or nothing. */
function remarkOf(cells: TableRow['cells']): string {
  const faulty = Number(cells.reports_dropped ?? 0);
  const parts = [
    ...(tooDampInFrost.includes(String(cells.id))
      ? [
          'The station reports more vapour in frost than air can hold: its humidity from November to February is 4 to 8 points too high.',
        ]
      : []),
    ...(String(cells.rh_method ?? '').includes('uncorrected')
      ? [
          'The station does not report how far its days differ: its humidity is uncorrected, too high by some points in hard frost, too low where days swing widely.',
        ]
      : []),
    ...(Number(cells.years_min ?? fewYears) < fewYears
      ? [`Some months rest on ${cells.years_min} years of reports alone.`]
      : []),
    ...(faulty > manyFaulty ? [`${faulty} faulty reports of the station were left out.`] : []),
  ];
  return parts.join(' ');
}

function rowOf({ cells }: TableRow, dataset: string): ClimateRow {
  const country = String(cells.country);
  const means = (prefix: string) =>
    steps(months.map((month) => Math.round(Number(cells[`${prefix}${month.toLowerCase()}`]) * 10)));
  const remark = remarkOf(cells);
  const row: ClimateRow = [
    String(cells.id),
    String(cells.place),
    countries[country] ?? country.replace(/ \(.*\)$/, ''),
    String(cells.also ?? ''),
    String(cells.near ?? ''),
    dataset,
    String(cells.station).split(' ')[0] as string,
    Number(cells.pressure_Pa),
    means('t_'),
    means('rh_'),
  ];
  if (remark) row.push(remark);
  return row;
}

/**
 * The text of `climates.json`: one place a line, in the order of the tables. A place with a typical year keeps that: the
 * reports of the United States take the mean temperature half-way between the extremes.
 *
 * @param typicalYears `climate-monthly`, as read
 * @param reports `climate-reports`, as read
 */
export function climatesJson(typicalYears: Table, reports: Table): string {
  const held = new Set(typicalYears.rows.map(({ cells }) => cells.id));
  const rows = [
    ...typicalYears.rows.map((row) => rowOf(row, String(row.cells.dataset))),
    ...reports.rows.filter(({ cells }) => !held.has(cells.id)).map((row) => rowOf(row, 'CLIMAT')),
  ];
  return `[\n${rows.map((row) => JSON.stringify(row)).join(',\n')}\n]\n`;
}
