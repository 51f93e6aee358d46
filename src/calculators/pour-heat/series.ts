import type { ResultTable, Series } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { heatIndex } from '../../model/resin/anchor.ts';
import { type PourRun, runawayTemperature } from '../../model/resin/pour.ts';
import type { LayerPlan, PourAnswer } from './answer.ts';
import type { Setting } from './setting.ts';
import { shopInWords } from './shop-air.ts';
import { pourInWords } from './words.ts';

const shownPoints = 48;
const rounded = (value: number) => Number(value.toPrecision(3));
const hundredth = (value: number) => Math.round(100 * value) / 100;

/** Temperatures over time, over height and, of a channel, over its width. */
export function seriesOf(setting: Setting, { run }: PourAnswer): Series[] {
  return [timeSeries(setting, run), heightSeries(setting, run), ...widthSeries(setting, run)];
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
    lines: [
      line('middle', 'In the middle'),
      line('top', 'At the upper face'),
      line('bottom', 'At the underside'),
      ...(pour.air
        ? [{ id: 'air', label: 'Air of the shop', unit: 'Cel', values: times.map((time) => pour.air?.at(time) ?? 0) }]
        : []),
    ],
    description:
      outcome === 'runaway'
        ? `A pour of ${pourInWords(pour)} runs away: it passes ${amount(runawayTemperature, 'Cel')} after ${when} and the lines end there.`
        : `A pour of ${pourInWords(pour)} in a shop of ${shopInWords(pour)} is hottest after ${when}, about ${amount(run.peakRise, 'K', 2)} above the air, and cools again. An estimate of the model.`,
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

function widthSeries({ pour }: Setting, { across, outcome, peakTemperature }: PourRun): Series[] {
  if (!across || !pour.channel) return [];
  return [
    {
      id: 'temperature-width',
      title:
        outcome === 'runaway'
          ? 'Temperature across the channel as it runs away'
          : 'Temperature across the channel at the hottest time',
      axis: { label: 'Distance from the middle of the channel', unit: 'mm', values: across.places.map(rounded) },
      lines: [
        {
          id: 'temperature',
          label: 'Resin, and beyond it the wood',
          unit: 'Cel',
          values: across.temperatures.map((temperature) => hundredth(Math.min(temperature, runawayTemperature))),
        },
      ],
      description: `Resin reaches ${amount(pour.channel.width / 2, 'mm', 2)} from the middle, and then the wood begins. It is ${amount(peakTemperature, 'Cel')} in the middle and cools through the wood to the temperature of the shop.`,
    },
  ];
}

const mostRows = 12;

/** When to pour which layer, where the depth wants several. */
export function tablesOf(setting: Setting, { layers }: PourAnswer): ResultTable[] {
  return [...(layers ? [layerTable(layers)] : []), ...hourTable(setting)];
}

/** What the pour does by the hour at which it is poured, in a shop that changes. */
function hourTable({ day, anchor }: Setting): ResultTable[] {
  // Without a yardstick a list of rises would only look like an answer.
  if (!day || !anchor) return [];
  const { starts, worst, most } = day;
  const all = [...new Map([...starts, worst].map((one) => [one.start, one])).values()].sort(
    (one, other) => one.start - other.start,
  );
  return [
    {
      id: 'hours',
      title: 'By the hour of pouring, after the heating comes on',
      columns: [
        { id: 'start', label: 'Poured after', unit: 's', digits: 2 },
        { id: 'rise', label: 'Rise above the air', unit: 'K', digits: 2 },
        { id: 'index', label: 'Heat index', digits: 2 },
        { id: 'note', label: 'Then' },
      ],
      rows: all.map(({ start, rise }) => [
        3600 * start,
        rise >= most ? null : Math.max(0, rise),
        rise >= most ? null : heatIndex(rise, anchor.coarseRise),
        [
          rise >= most ? 'It runs away.' : rise > anchor.coarseRise ? 'Outside the sheet.' : '',
          start === day.shop.warmHours ? 'As the heating goes off.' : '',
          start === worst.start ? 'The worst hour.' : '',
        ]
          .filter(Boolean)
          .join(' '),
      ]),
      basis: 'memory',
    },
  ];
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
