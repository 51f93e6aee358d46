import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { climateById, climates } from '../../../src/model/moisture/climates.ts';
import {
  type Climate,
  humidityRatio,
  indoorAir,
  outdoorAir,
  type Room,
  relativeHumidity,
  usualRoom,
} from '../../../src/model/moisture/index.ts';

const place = (id: string) => climateById(id) as Climate;
const anyClimate = fc.constantFrom(...climates);
const anyRoom: fc.Arbitrary<Room> = fc.record({
  heatTo: fc.double({ min: 5, max: 25, noNaN: true }),
  coolTo: fc.double({ min: 25, max: 35, noNaN: true }),
  moistureGain: fc.double({ min: -5, max: 15, noNaN: true }),
  humidityCeiling: fc.double({ min: 20, max: 100, noNaN: true }),
});

describe('outdoor air', () => {
  test('is the climate as it stands', () => {
    const duluth = place('duluth-mn');
    expect(outdoorAir(duluth)).toHaveLength(12);
    expect(outdoorAir(duluth)[0]).toEqual({ label: 'Jan', temperature: -13, humidity: 71.8 });
    expect(outdoorAir(duluth)[11]?.label).toBe('Dec');
  });
});

describe('indoor air', () => {
  test('keeps to the set-points', () => {
    fc.assert(
      fc.property(anyClimate, anyRoom, (climate, room) => {
        for (const { temperature } of indoorAir(climate, room)) {
          expect(temperature).toBeGreaterThanOrEqual(room.heatTo);
          expect(temperature).toBeLessThanOrEqual(room.coolTo);
        }
      }),
    );
  });

  test('is finite, from 0 to 100 %, for any climate and any numbers', () => {
    const anyNumber = fc.double({ noNaN: true, noDefaultInfinity: true });
    const wildRoom = fc.record({ heatTo: anyNumber, coolTo: anyNumber, moistureGain: anyNumber });
    fc.assert(
      fc.property(anyClimate, fc.oneof(anyRoom, wildRoom), (climate, room) => {
        for (const { humidity } of indoorAir(climate, room)) {
          expect(humidity).toBeGreaterThanOrEqual(0);
          expect(humidity).toBeLessThanOrEqual(100);
        }
      }),
    );
  });

  test('more moisture gain never makes it drier, and makes it damper in the cold', () => {
    fc.assert(
      fc.property(anyClimate, anyRoom, fc.double({ min: 0.1, max: 5, noNaN: true }), (climate, room, more) => {
        const start = indoorAir(climate, room);
        const damper = indoorAir(climate, { ...room, moistureGain: room.moistureGain + more });
        for (const [month, { humidity }] of start.entries()) {
          const then = damper[month]?.humidity as number;
          expect(then).toBeGreaterThanOrEqual(humidity);
          const cold = (climate.temperature[month] as number) <= 0;
          if (cold && humidity > 0 && then < 100) expect(then).toBeGreaterThan(humidity);
        }
      }),
    );
  });

  test('in the cold is the outdoor air with the whole gain, warmed', () => {
    const duluth = place('duluth-mn');
    const ratio = (humidityRatio(-13, 71.8, duluth.pressure) as number) + 2;
    const [january] = indoorAir(duluth, usualRoom);
    expect(january?.temperature).toBe(20);
    expect(january?.humidity).toBeCloseTo(relativeHumidity(20, ratio, duluth.pressure) as number, 10);
    expect(january?.note).toBeUndefined();
  });

  test('half the gain stays at 10 °C outdoors, none at 20 °C and above', () => {
    const flat = (t: number): Climate => ({
      ...place('duluth-mn'),
      temperature: Array(12).fill(t),
      humidity: Array(12).fill(40),
    });
    const room: Room = { heatTo: 22, coolTo: 40, moistureGain: 4 };
    const added = (t: number) => {
      const climate = flat(t);
      const [first] = indoorAir(climate, room);
      const inside = humidityRatio(first?.temperature as number, first?.humidity as number, climate.pressure) as number;
      return inside - (humidityRatio(t, 40, climate.pressure) as number);
    };
    expect(added(-5)).toBeCloseTo(4, 8);
    expect(added(0)).toBeCloseTo(4, 8);
    expect(added(10)).toBeCloseTo(2, 8);
    expect(added(20)).toBeCloseTo(0, 8);
    expect(added(30)).toBeCloseTo(0, 8);
  });

  test('a cooled room is limited to the ceiling, and says so', () => {
    const july = indoorAir(place('miami-fl'), usualRoom)[6];
    expect(july).toMatchObject({ temperature: 26, humidity: 60 });
    expect(july?.note).toBe('Cooling dries the air: 84 % limited to 60 % (common practice).');
    expect(indoorAir(place('miami-fl'), { ...usualRoom, humidityCeiling: 50 })[6]?.humidity).toBe(50);
  });

  test('a cooled room in the desert needs no limit', () => {
    const june = indoorAir(place('phoenix-az'), usualRoom)[5];
    expect(june?.temperature).toBe(26);
    expect(june?.humidity as number).toBeLessThan(60);
    expect(june?.note).toBeUndefined();
  });

  test('condensation is capped and said', () => {
    const [january] = indoorAir(place('duluth-mn'), { heatTo: 20, coolTo: 26, moistureGain: 30 });
    expect(january?.humidity).toBe(100);
    expect(january?.note).toMatch(/^Moisture would condense in the room: \d+ % limited to 100 %\.$/);
  });

  test('taking out more water than there is leaves dry air, and says so', () => {
    const [january] = indoorAir(place('duluth-mn'), { heatTo: 20, coolTo: 26, moistureGain: -10 });
    expect(january?.humidity).toBe(0);
    expect(january?.note).toContain('perfectly dry');
  });

  test('a room for which there is no balance shows the outdoor humidity, and says so', () => {
    const [january] = indoorAir(place('duluth-mn'), { heatTo: 300, coolTo: 400, moistureGain: 2 });
    expect(january).toMatchObject({ humidity: 71.8 });
    expect(january?.note).toContain('no answer');
  });
});
