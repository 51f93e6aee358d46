import type { Figure, Table } from '../evidence/index.ts';
import { basisOfSeen, type Seen } from '../evidence/index.ts';
import type { AirReading } from './rooms.ts';
import { equilibriumMoisture } from './sorption.ts';

/** The air of a month and the moisture content, in % of the ovendry mass, that wood comes to in it. */
export interface MoistureReading extends AirReading {
  moisture: number;
}

/**
 * Moisture content at balance for each reading, by Eq. 4-5.
 *
 * A thin board follows the months closely; a thick or finished one lags and moves less than this.
 *
 * @param readings temperatures from -40 to 130 °C, humidity from 0 to 100 %
 */
export function moistureThroughYear(readings: readonly AirReading[]): MoistureReading[] {
  return readings.map(({ label, temperature, humidity }) => ({
    label,
    temperature,
    humidity,
    moisture: equilibriumMoisture(temperature, humidity),
  }));
}

/** A region of the handbook's table, the use, and what it recommends. */
export interface RecommendedMoisture {
  area: string;
  use: string;
  /** Average of a lot, with the range of single pieces as its band. */
  figure: Figure;
}

/**
 * The handbook's recommended moisture contents as figures, with the basis that each row is marked with.
 *
 * @param table `recommended-moisture-content`, as read
 */
export function recommendedMoisture(table: Table): RecommendedMoisture[] {
  return table.rows.map(({ cells }) => {
    const seen = cells.seen as Seen;
    return {
      area: String(cells.area),
      use: String(cells.use),
      figure: {
        label: 'Recommended moisture content',
        value: Number(cells.average_pct),
        low: Number(cells.individual_low_pct),
        high: Number(cells.individual_high_pct),
        band: 'The value is the average of a lot; single pieces may lie within the band.',
        unit: '%',
        basis: basisOfSeen(seen),
        citation: { source: 'fpl-gtr-190', locator: 'Table 13-2 and Figure 13-1', seen },
        note: String(cells.evidence),
        digits: 2,
      },
    };
  });
}
