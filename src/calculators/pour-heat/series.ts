import type { ResultTable, Series } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { type PourRun, runawayTemperature } from '../../model/resin/pour.ts';
import type { LayerPlan, PourAnswer } from './answer.ts';
import type { Setting } from './setting.ts';

const shownPoints = 48;
const rounded = (value: number) => Number(value.toPrecision(3));
const hundredth = (value: number) => Math.round(100 * value) / 100;

/** Temperatures over time and over height. */
export function seriesOf(setting: Setting, { run }: PourAnswer): Series[] {
  return [timeSeries(setting, run), heightSeries(setting, run)];
}

/** Value of a line at a time, between the steps of the run. */
function at(time: number, times: readonly number[], values: readonly number[]): number {
  let [low, high] = [0, times.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((times[middle] as number) <= time) low = middle;
    else high = middle;
  }
  const [from, to] = [times[low] as number, times[high] as number];
  const share = to > from ? Math.min(1, (time - from) / (to - from)) : 0;
  return (values[low] as number) * (1 - share) + (values[high] as number) * share;
}

function timeSeries({ pour }: Setting, run: PourRun): Series {
  const { record, outcome } = run;
  const last = record.times.at(-1) as number;
  const end = outcome === 'runaway' ? run.timeToPeak : Math.min(last, 3 * (run.timeToLastGel ?? last));
  const unit = end > 3 * 3600 ? { code: 'h', seconds: 3600 } : { code: 'min', seconds: 60 };
  const even = Array.from({ length: shownPoints }, (_, index) => (end * index) / (shownPoints - 1));
  // The peak itself, which may be narrow, takes the place of the point nearest to it.
  const nearest = Math.round((run.timeToPeak / end) * (shownPoints - 1));
  const times = even.map((time, index) => (index === nearest ? run.timeToPeak : time));
  const line = (id: 'top' | 'middle' | 'bottom', label: string) => ({
    id,
    label,
    unit: 'Cel',
    values: times.map((time) => hundredth(Math.min(at(time, record.times, record[id]), runawayTemperature))),
  });
  const when = amount(run.timeToPeak, 's', 2);
  return {
    id: 'temperature-time',
    title: outcome === 'runaway' ? 'Temperature by the model, until it runs away' : 'Temperature by the model',
    axis: { label: 'Time from mixing', unit: unit.code, values: times.map((time) => rounded(time / unit.seconds)) },
    lines: [line('middle', 'In the middle'), line('top', 'At the upper face'), line('bottom', 'At the underside')],
    description:
      outcome === 'runaway'
        ? `A pour of ${amount(pour.depth, 'mm', 2)} runs away: it passes ${amount(runawayTemperature, 'Cel')} after ${when} and the lines end there.`
        : `A pour of ${amount(pour.depth, 'mm', 2)} in a shop of ${amount(pour.shopTemperature, 'Cel')} is hottest after ${when}, about ${amount(run.peakRise, 'K', 2)} above the air, and cools again. An estimate of the model.`,
  };
}

function heightSeries({ pour }: Setting, run: PourRun): Series {
  const { heights, temperatures } = run.profile;
  const thickness = pour.base?.thickness ?? 0;
  const where = pour.base ? 'below 0 lies the base' : 'air meets its underside';
  return {
    id: 'temperature-height',
    title:
      run.outcome === 'runaway'
        ? 'Temperature over the height as it runs away'
        : 'Temperature over the height at the hottest time',
    axis: {
      label: 'Height above the underside of the resin',
      unit: 'mm',
      values: heights.map((height) => rounded(height - thickness)),
    },
    lines: [
      {
        id: 'temperature',
        label: pour.base ? 'Resin, and below 0 the base' : 'Resin',
        unit: 'Cel',
        values: temperatures.map((temperature) => hundredth(Math.min(temperature, runawayTemperature))),
      },
    ],
    description: `The resin lies from 0 to ${amount(pour.depth, 'mm', 2)}; ${where}. It is hottest ${amount(run.hottestHeight, 'mm', 2)} above its underside.`,
  };
}

const mostRows = 12;

/** When to pour which layer, where the depth wants several. */
export function tablesOf({ layers }: PourAnswer): ResultTable[] {
  return layers ? [layerTable(layers)] : [];
}

function layerTable({ count, depth, wait, index }: LayerPlan): ResultTable {
  const rows = Array.from({ length: Math.min(count, mostRows) }, (_, layer) => {
    const first = layer === 0;
    const note = first
      ? 'Start here.'
      : !wait
        ? 'When the layer below has set and cooled.'
        : wait.abrade
          ? 'Abrade and wipe the layer below before you pour.'
          : '';
    return [
      String(layer + 1),
      depth,
      depth * (layer + 1),
      wait && !first ? layer * wait.from : null,
      first || !wait || wait.to === null || wait.abrade ? null : (layer - 1) * wait.from + wait.to,
      note,
    ];
  });
  return {
    id: 'layers',
    title: Number.isFinite(index)
      ? `Layers, each with a heat index of ${index.toPrecision(2)}; times from the first`
      : 'Layers, by the depth of the sheet; times from the first',
    columns: [
      { id: 'layer', label: 'Layer' },
      { id: 'depth', label: 'Depth', unit: 'mm', digits: 2 },
      { id: 'filled', label: 'Filled to', unit: 'mm', digits: 2 },
      { id: 'from', label: 'Not before', unit: 's', digits: 2 },
      { id: 'to', label: 'Bonds until', unit: 's', digits: 2 },
      { id: 'note', label: 'What to do' },
    ],
    rows:
      count > mostRows
        ? [...rows, [`to ${count}`, depth, depth * count, null, null, 'And so on, each after the same wait.']]
        : rows,
    basis: 'derived',
  };
}
