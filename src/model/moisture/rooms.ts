import type { Climate } from './climates.ts';
import { humidityRatio, relativeHumidity } from './psychrometrics.ts';
import { months } from './tables.ts';

/** The air of one month, week or day. */
export interface AirReading {
  /** For example `Jan`. */
  label: string;
  /** °C. */
  temperature: number;
  /** Relative humidity, %. */
  humidity: number;
}

/** The air of a room in one month, and what was limited to arrive at it. */
export interface RoomReading extends AirReading {
  note?: string;
}

/** How a room is kept. */
export interface Room {
  /** Heated to at least this, °C. */
  heatTo: number;
  /** Cooled to at most this, °C. */
  coolTo: number;
  /** Water vapour that people, cooking, washing and plants add, g a kg of dry air. */
  moistureGain: number;
  /** Relative humidity that a cooling coil does not let the room exceed while it cools, %; 60 unless told. */
  humidityCeiling?: number;
}

/** A house as commonly kept: 20 to 26 °C, 2 g/kg added by living in it, 60 % at most while cooled. Basis: shop practice. */
export const usualRoom: Readonly<Required<Room>> = { heatTo: 20, coolTo: 26, moistureGain: 2, humidityCeiling: 60 };

/** Outdoor air by month, January first: also that of an unheated shed, out of the rain. */
export function outdoorAir(climate: Climate): AirReading[] {
  return months.map((label, month) => ({
    label,
    temperature: climate.temperature[month] as number,
    humidity: climate.humidity[month] as number,
  }));
}

/**
 * Indoor air by month, January first, from outdoor air that comes in, is heated or cooled, and takes up moisture.
 *
 * The room stands at the outdoor temperature, but no colder than `heatTo` and no warmer than `coolTo`. Its humidity
 * ratio is that of the outdoor air plus the gain, and its relative humidity follows at the station's pressure.
 * While the room is cooled the coil also dries it to `humidityCeiling`; no month exceeds 100 %. What was limited is
 * in the month's note. A steady balance of monthly means: no storage, no daily swing, no humidifier.
 *
 * @param climate the place
 * @param room temperatures from -40 to 60 °C with `heatTo` not above `coolTo`; outside that range, where the balance
 *   has no answer, a month carries the outdoor humidity and its note says so
 */
export function indoorAir(climate: Climate, room: Room): RoomReading[] {
  const ceiling = room.humidityCeiling ?? usualRoom.humidityCeiling;
  return outdoorAir(climate).map((outdoor) => {
    const temperature = Math.min(Math.max(outdoor.temperature, room.heatTo), room.coolTo);
    const cooled = outdoor.temperature > room.coolTo;
    const notes: string[] = [];
    const incoming = humidityRatio(outdoor.temperature, outdoor.humidity, climate.pressure);
    let ratio = incoming === null ? null : incoming + room.moistureGain;
    if (ratio !== null && ratio < 0) {
      ratio = 0;
      notes.push('More moisture is taken out than the air brings in: taken as perfectly dry.');
    }
    const balanced = ratio === null ? null : relativeHumidity(temperature, ratio, climate.pressure);
    let humidity = balanced ?? outdoor.humidity;
    if (balanced === null) notes.push('The balance has no answer for such a room: the outdoor humidity is shown.');
    if (cooled && humidity > ceiling) {
      notes.push(`Cooling dries the air: ${percent(humidity)} limited to ${percent(ceiling)} (common practice).`);
      humidity = ceiling;
    }
    if (humidity > 100) {
      notes.push(`Moisture would condense in the room: ${percent(humidity)} limited to 100 %.`);
      humidity = 100;
    }
    return { label: outdoor.label, temperature, humidity, ...(notes.length > 0 ? { note: notes.join(' ') } : {}) };
  });
}

function percent(value: number): string {
  return `${Math.round(value)} %`;
}
