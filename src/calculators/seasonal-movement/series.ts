import type { Series } from '../../model/evidence/index.ts';
import type { MoistureReading } from '../../model/moisture/index.ts';
import type { Banded } from '../../model/movement/index.ts';

/** One banded line by month. */
export function bandedSeries(
  id: string,
  title: string,
  description: string,
  points: readonly { label: string; at: Banded }[],
): Series {
  return {
    id,
    title,
    description,
    axis: { label: 'Month', values: points.map((point) => point.label) },
    lines: [
      {
        id,
        label: `${title}, with the band for nine boards in ten`,
        unit: 'mm',
        values: points.map((point) => point.at.value),
        low: points.map((point) => point.at.low),
        high: points.map((point) => point.at.high),
      },
    ],
  };
}

/** Moisture content and humidity by month. */
export function airSeries(readings: readonly MoistureReading[]): Series[] {
  const axis = { label: 'Month', values: readings.map((reading) => reading.label) };
  const span = (values: readonly number[]) =>
    `${Math.min(...values).toFixed(1)} % to ${Math.max(...values).toFixed(1)} %`;
  const moistures = readings.map((reading) => reading.moisture);
  const humidities = readings.map((reading) => reading.humidity);
  return [
    {
      id: 'moisture',
      title: 'Moisture content of the wood',
      description: `Moisture content at balance through the year, from ${span(moistures)}.`,
      axis,
      lines: [{ id: 'moisture', label: 'Moisture content at balance', unit: '%', values: moistures }],
    },
    {
      id: 'humidity',
      title: 'Relative humidity of the air',
      description: `Relative humidity where the board lives, from ${span(humidities)}.`,
      axis,
      lines: [{ id: 'humidity', label: 'Relative humidity', unit: '%', values: humidities }],
    },
  ];
}
