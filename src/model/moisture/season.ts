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
