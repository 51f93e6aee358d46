import type { Series } from '../../model/evidence/index.ts';
import type { MoistureYear } from '../../model/finish/year.ts';
import { amount } from '../../model/quantity/index.ts';
import type { Found, Three } from './found.ts';
import { ends, type Widths } from './widths.ts';

/** The year as charts: moisture of the air’s balance, of the bare and of the finished board; and both widths. */
export function seriesOf(found: Found, widths: Widths): Series[] {
  const { labels, axis, balance, bare, coated, finish } = found;
  const finished = `Finished: ${finish.name.toLowerCase()}`;
  const wide = (moisture: number) => amount(widths.at(moisture), 'mm', 4);
  const span = (years: Three<MoistureYear>) =>
    `from ${years.value.driest.toFixed(1)} to ${years.value.wettest.toFixed(1)} %`;
  const pointEnds = (years: Three<MoistureYear>) =>
    labels.map((_, at) =>
      ends({
        value: years.value.points[at] as number,
        slow: years.slow.points[at] as number,
        quick: years.quick.points[at] as number,
      }),
    );
  const line = (id: string, label: string, years: Three<MoistureYear>) => {
    const points = pointEnds(years);
    return {
      id,
      label,
      unit: '%',
      values: points.map(({ value }) => value),
      low: points.map(({ low }) => low),
      high: points.map(({ high }) => high),
    };
  };
  const widthLine = (id: string, label: string, years: Three<MoistureYear>) => ({
    id,
    label,
    unit: 'mm',
    values: years.value.points.map(widths.at),
  });
  return [
    {
      id: 'moisture',
      title: 'Moisture content of the board',
      description: `Mean moisture through the year: bare ${span(bare)}, finished ${span(coated)}, around the same mean of ${bare.value.mean.toFixed(1)} %.`,
      axis: { label: axis, values: labels },
      lines: [
        line('finished', `${finished}, with its band`, coated),
        line('bare', 'Bare, with its band', bare),
        { id: 'balance', label: 'At balance with the air', unit: '%', values: balance },
      ],
    },
    {
      id: 'width',
      title: 'Width',
      description: `Width through the year: bare between ${wide(bare.value.driest)} and ${wide(bare.value.wettest)}, finished between ${wide(coated.value.driest)} and ${wide(coated.value.wettest)}.`,
      axis: { label: axis, values: labels },
      lines: [widthLine('finished', finished, coated), widthLine('bare', 'Bare', bare)],
    },
  ];
}
