import { equation } from '../evidence/index.ts';
import type { Climate } from './climates.ts';
import { months } from './months.ts';
import { humidityRatio, relativeHumidity } from './psychrometrics.ts';

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
  /** Water vapour that people, cooking, washing and plants add to a shut house, g a kg of dry air. */
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

/** Outdoor temperatures in °C at which a house stands shut and, at the other end, open: see `indoorAir`. */
const houseShut = 0;
const houseOpen = 20;

/** The part of the moisture gain that stays in the house at an outdoor temperature: 1 when shut, 0 when open. */
function shareKept(outdoors: number): number {
  return Math.min(1, Math.max(0, (houseOpen - outdoors) / (houseOpen - houseShut)));
}

/**
 * Indoor air by month, January first, from outdoor air that comes in, is heated or cooled, and takes up moisture.
 *
 * The room stands at the outdoor temperature, but no colder than `heatTo` and no warmer than `coolTo`. Its humidity
 * ratio is that of the outdoor air plus the gain, and its relative humidity follows at the station's pressure.
 * The gain counts whole at 0 °C outdoors and below, and less as the house is opened to the air, to nothing at 20 °C.
 * While the room is cooled the coil also dries it to `humidityCeiling`; no month exceeds 100 %. What was limited is
 * in the month's note. A steady balance of monthly means: no storage, no daily swing, no humidifier.
 *
 * @param climate the place
 * @param room temperatures from -40 to 60 °C with `heatTo` not above `coolTo`; outside that range, where the balance
 *   has no answer, a month carries the outdoor humidity and its note says so
 */
export const indoorAir = equation(
  {
    id: 'indoor-air',
    title: 'Indoor air from outdoor air',
    tex: String.raw`\begin{aligned}
t_i &= \min(\max(t_o,\,t_{heat}),\,t_{cool})\\
W_i &= W_o + s\,\Delta W \qquad s = \min\left(1,\,\max\left(0,\,\frac{20-t_o}{20}\right)\right)\\
\varphi_i &= \varphi(t_i, W_i, p)
\end{aligned}`,
    symbols: [
      { tex: 't_o,\\;t_i', meaning: 'outdoor and indoor temperature', unit: '°C' },
      { tex: 't_{heat},\\;t_{cool}', meaning: 'temperatures that the room is heated and cooled to', unit: '°C' },
      { tex: 'W_o,\\;W_i', meaning: 'outdoor and indoor humidity ratio', unit: 'g/kg' },
      { tex: String.raw`\Delta W`, meaning: 'moisture gain of the shut house', unit: 'g/kg' },
      { tex: 's', meaning: 'part of the gain that stays in the house', unit: '1' },
      {
        tex: String.raw`\varphi_i`,
        meaning: 'indoor relative humidity, limited to the ceiling while cooled',
        unit: '1',
      },
      { tex: 'p', meaning: 'pressure of the air at the station', unit: 'Pa' },
    ],
    validity:
      'Monthly means of a room that follows the outdoor air: no storage, no daily swing, no humidifier or dehumidifier. Measure the room where it matters.',
    basis: 'shop-practice',
    remarks:
      'The psychrometrics are published; the balance is a rule of thumb. A house is shut in the cold and open in the warm, so the gain is taken whole at 0 °C outdoors and below, falling in a straight line to nothing at 20 °C. Keeping it whole all year would put Boston’s August at 85 % instead of 73 %.',
  },
  airOfRoom,
);

function airOfRoom(climate: Climate, room: Room): RoomReading[] {
  const ceiling = room.humidityCeiling ?? usualRoom.humidityCeiling;
  return outdoorAir(climate).map((outdoor) => {
    const temperature = Math.min(Math.max(outdoor.temperature, room.heatTo), room.coolTo);
    const cooled = outdoor.temperature > room.coolTo;
    const notes: string[] = [];
    const incoming = humidityRatio(outdoor.temperature, outdoor.humidity, climate.pressure);
    let ratio = incoming === null ? null : incoming + shareKept(outdoor.temperature) * room.moistureGain;
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
