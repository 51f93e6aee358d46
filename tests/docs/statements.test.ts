import { expect } from 'vitest';
import { homesComparison } from '../../src/model/moisture/checks-homes.ts';
import { climateById } from '../../src/model/moisture/climates.ts';
import { scaledErfc } from '../../src/model/moisture/error-function.ts';
import {
  acclimatise,
  assumedDensity,
  equilibriumMoisture,
  indoorAir,
  moistureThroughYear,
  outdoorAir,
  stillAirSurface,
  usualRoom,
  workingDiffusion,
} from '../../src/model/moisture/index.ts';
import { tables as moistureTables } from '../../src/model/moisture/tables.ts';
import { assumedSection } from '../../src/model/movement/index.ts';
import { allSpecies, speciesById } from '../../src/model/species/index.ts';
import { readTable } from '../../src/store/index.ts';
import { recommendedMoisture } from '../model/moisture/recommended.ts';
import { figure, hold, mm, type Statements, worked, workedCase } from './statements.ts';

// Every number that a how-to page states in its own words, worked out again: where the model changes, the sentence must too.

/** How often a board of one wood is harder than one of another, by the spread that the handbook gives side hardness. */
function oftenHarder(one: string, other: string): number {
  const hardness = (id: string) => speciesById(id)?.figures.sideHardness12?.value ?? Number.NaN;
  const [a, b] = [hardness(one), hardness(other)];
  // Half of erfc(z) is the tail of the bell beyond z·√2 deviations.
  const z = (b - a) / (0.2 * Math.hypot(a, b) * Math.SQRT2);
  return (scaledErfc(z) * Math.exp(-z * z)) / 2;
}

/** Millimetres by which a board changes its width, without the sign. */
function change(species: string, width: number, moistureFrom: number, moistureTo: number, cut = 'flatsawn'): number {
  const inputs = {
    species,
    width: `${width} mm`,
    moistureFrom: `${moistureFrom} %`,
    moistureTo: `${moistureTo} %`,
    cut,
  };
  return Math.abs(figure('width-change', inputs, 'change').value);
}

const coefficient = (species: string, name: 'radialCoefficient' | 'tangentialCoefficient') =>
  speciesById(species)?.figures[name]?.value ?? Number.NaN;
const tangential = (species: string) => coefficient(species, 'tangentialCoefficient');
const radial = (species: string) => coefficient(species, 'radialCoefficient');

const recommended = moistureTables.find(({ name }) => name === 'recommended-moisture-content');
if (!recommended) throw new Error('the moisture room has no recommended-moisture-content');

const duluth = climateById('duluth-mn');
if (!duluth) throw new Error('the climate tables have no duluth-mn');
const outdoors = outdoorAir(duluth).map(({ temperature, humidity }) => equilibriumMoisture(temperature, humidity));
const warmedJanuary = indoorAir(duluth, { ...usualRoom, moistureGain: 0 })[0];
const indoors = moistureThroughYear(indoorAir(duluth, usualRoom)).map(({ moisture }) => moisture);

/** What the house as commonly kept gives where homes were measured. */
const home = (wanted: string) => homesComparison.values.find(({ id }) => id === wanted)?.ours() ?? Number.NaN;

/** A bare board of a hardwood of middling density, from 12 % into a room that holds it at 8 %. Times in days. */
function waiting(thickness: number) {
  const diffusion = workingDiffusion(assumedDensity, 20, 10);
  const outcome = acclimatise({ thickness, start: 12, balance: 8, diffusion, surface: stillAirSurface });
  if (!outcome.ok) throw new Error('no waiting time');
  const days = ([from, to]: readonly [number, number]) =>
    `${Math.round(from / 86_400)} to ${Math.round(to / 86_400)} days`;
  return { halfWay: days(outcome.value.band.halfWay), withinOne: days(outcome.value.band.withinOne) };
}

/** Radius of a ring from a chord across it and its rise, in mm. */
const ringRadius = (chord: number, rise: number) => (chord * chord) / (8 * rise) + rise / 2;

const statements: Statements = {
  'choosing-a-wood': [
    [
      'boards of two woods side by side',
      () => {
        expect(oftenHarder('white-ash', 'sugar-maple')).toBeCloseTo(0.4, 1);
        expect(oftenHarder('black-cherry', 'sugar-maple')).toBeLessThan(0.1);
        return 'harder than the hard maple about four times in ten, the cherry less than once in ten';
      },
    ],
    [
      'woods of which not enough is known',
      () => {
        const unknown = allSpecies.filter(({ food }) => food.level === 'not-enough-known').length;
        expect(unknown / allSpecies.length).toBeGreaterThan(0.42);
        expect(unknown / allSpecies.length).toBeLessThan(0.5);
        return 'Nearly half of the woods stop at ‘not enough known’';
      },
    ],
    [
      'woods without a side hardness',
      () => {
        for (const id of ['cocobolo', 'koa', 'zebrawood']) {
          expect(speciesById(id)?.figures.sideHardness12, id).toBeNull();
        }
        return 'Side hardness of several woods that are sold every day, cocobolo, koa and zebrawood among them.';
      },
    ],
    [
      'cherry against maple, flatsawn and quartersawn',
      () =>
        `Cherry in the same place loses ${change('black-cherry', 300, 10, 6).toFixed(1)} mm where maple loses ${change('sugar-maple', 300, 10, 6).toFixed(1)} mm; quartersawn maple loses ${change('sugar-maple', 300, 10, 6, 'quartersawn').toFixed(1)} mm.`,
    ],
    [
      'the answer to the third question',
      () =>
        `3. Quartersawn maple: ${change('sugar-maple', 300, 10, 6, 'quartersawn').toFixed(1)} mm against ${change('black-cherry', 300, 10, 6).toFixed(1)} mm.`,
    ],
  ],
  'salvaged-stock': [
    [
      'outdoor air through the Duluth year',
      () =>
        `between ${Math.min(...outdoors).toFixed(1)} % in April and ${Math.max(...outdoors).toFixed(1)} % in September`,
    ],
    ['ash from barn to shop', () => `It loses ${change('white-ash', 240, 14, 8).toFixed(1)} mm of width on the way.`],
    ['ash, the exercise', () => `8 % into the calculator above: ${change('white-ash', 300, 13, 8).toFixed(1)} mm`],
    ['paint at 0.4 % against the second rule', () => `still ${(0.4 / 0.009).toFixed(0)} times the limit of the second`],
  ],
  'moisture-and-acclimatising': [
    ...[10, 20, 30, 40, 50, 60, 70, 80, 90].map((humidity): [string, () => string] => [
      `moisture at 20 °C and ${humidity} %`,
      () => `| ${humidity} % | ${equilibriumMoisture(20, humidity).toFixed(1)} % |`,
    ]),
    [
      'the part of temperature',
      () => {
        expect(equilibriumMoisture(10, 50) - equilibriumMoisture(30, 50)).toBeCloseTo(0.5, 1);
        return 'From 10 °C to 30 °C the figure at 50 % changes by half a point';
      },
    ],
    ...recommendedMoisture(readTable(recommended))
      .filter(({ use }) => use.startsWith('interior'))
      .map(({ area, figure }): [string, () => string] => [
        `the handbook’s average for ${area}`,
        () => `| ${figure.value} % | ${figure.low} to ${figure.high} % |`,
      ]),
    [
      'measured homes in winter',
      () => {
        const canada = home('canada-winter-humidity');
        return `gives ${canada.toFixed(0)} % for that country’s winter. Thirty-four New York apartments held 6.7 hPa of vapour in winter`;
      },
    ],
    [
      'measured apartments in winter',
      () => `where it gives ${home('new-york-winter-vapour').toFixed(1)}: it is a little too damp`,
    ],
    [
      'measured homes through the year',
      () =>
        `where it gives ${home('boston-moisture-slope').toFixed(2)}: real summers indoors are somewhat drier than it says`,
    ],
    [
      'an offcut by weight',
      () => `weighs 54.0 g, and 50.0 g once dried until it loses no more, had ${(100 * (54 / 50 - 1)).toFixed(1)} %`,
    ],
    [
      'a point of moisture by weight',
      () => `gains ${(100 / 108).toFixed(2)} % of its weight: ${(2000 / 108).toFixed(1)} g on a board of 2 kg`,
    ],
    [
      'January air warmed indoors',
      () =>
        `falls to about ${warmedJanuary?.humidity.toFixed(0)} % relative humidity, where wood comes to rest below ${Math.ceil(equilibriumMoisture(20, warmedJanuary?.humidity ?? Number.NaN))} %`,
    ],
    [
      'an unheated shed',
      () => `${Math.min(...outdoors).toFixed(0)} to ${Math.max(...outdoors).toFixed(0)} % through the Duluth year`,
    ],
    ['July in the shop', () => `2. About ${equilibriumMoisture(20, 60).toFixed(0)} %.`],
    [
      'a house through the year',
      () =>
        `January comes to ${Math.min(...indoors).toFixed(1)} % and August to ${Math.max(...indoors).toFixed(1)} %: the middle of that year is near ${((Math.min(...indoors) + Math.max(...indoors)) / 2).toFixed(0)} %`,
    ],
    ['the gain of a house', () => `With the ${usualRoom.moistureGain} g of water to a kilogram of air`],
    ...[10, 20, 25, 40].map((thickness): [string, () => string] => [
      `waiting for ${thickness} mm`,
      () => `| ${waiting(thickness).halfWay} | ${waiting(thickness).withinOne} |`,
    ]),
    [
      'the working values',
      () =>
        `density ${assumedDensity} kg/m³, a diffusion coefficient of ${(workingDiffusion(assumedDensity, 20, 10) * 1e10).toFixed(2)} × 10⁻¹⁰ m²/s and a surface coefficient of ${(stillAirSurface * 1e7).toFixed(2)} × 10⁻⁷ m/s`,
    ],
  ],
  'seasonal-movement': [
    [
      'maple, quartersawn',
      () => `300 mm, quartersawn: ${change('sugar-maple', 300, 10, 6, 'quartersawn').toFixed(1)} mm`,
    ],
    ['maple, flatsawn', () => `300 mm, flatsawn: ${change('sugar-maple', 300, 10, 6).toFixed(1)} mm`],
    [
      'along the grain',
      () => `600 mm of length: ${(600 * 0.001 * (4 / 30)).toFixed(1)} to ${(600 * 0.002 * (4 / 30)).toFixed(1)} mm`,
    ],
    [
      'the tray through its year',
      () => {
        const like = { species: 'sugar-maple', indoors: 'heated' };
        expect(worked('seasonal-movement', 'cup', like).note).toContain('Hollow on the bark side, in Jan');
        expect(worked('seasonal-movement', 'changeFromNow', like).note).toContain('in Jan and in Aug');
        return 'Here it is hollow on the bark side, in January.';
      },
    ],
    [
      'the room as commonly kept',
      () =>
        `no warmer than ${usualRoom.coolTo} °C in summer, and ${usualRoom.moistureGain} g of water added to each kilogram of air`,
    ],
    [
      'the boathouse',
      () => {
        const indoorsAt = moistureThroughYear(indoorAir(duluth, usualRoom));
        expect(indoorsAt.filter(({ moisture }, month) => moisture >= (outdoors[month] ?? 0))).toEqual([]);
        return 'It is damper there than in the house in every month';
      },
    ],
    [
      'the tray in the boathouse',
      () => {
        const change = worked('seasonal-movement', 'changeFromNow', { indoors: 'unheated' });
        expect(change.note).toContain('in Apr and in Sep');
        return `${mm(change.low)} mm wider even in April, ${mm(change.high)} mm in September`;
      },
    ],
    [
      'the pith that is assumed',
      () => {
        const near = assumedSection(60, 20, 0);
        const far = assumedSection(300, 20, 0);
        expect(far.pithDepth + 10).toBe(300);
        return `as far from the middle of the board as the board is wide, and at least ${near.pithDepth + 10} mm`;
      },
    ],
    ['a ring by chord and rise', () => `A chord of 80 mm with a rise of 8 mm gives ${ringRadius(80, 8)} mm.`],
    ['the exercise on a ring', () => `1. ${ringRadius(120, 6)} mm from that ring.`],
    [
      'Eq. 13-2 by hand',
      () => `300 × ${tangential('sugar-maple')} × (−4) = ${minus(300 * tangential('sugar-maple') * -4)} mm`,
    ],
    [
      'Eq. 13-3 by hand',
      () => {
        const shrinkage = speciesById('sugar-maple')?.figures.tangentialShrinkage?.value ?? Number.NaN;
        const term = 3000 / shrinkage;
        return `a shrinkage of ${shrinkage} %, 300 × (−4) / (${term.toFixed(1)} − 30 + 10) = ${minus(-1200 / (term - 20))} mm`;
      },
    ],
    [
      'the exercise on cherry and maple',
      () => {
        const cherry = change('black-cherry', 200, 10, 6).toFixed(1);
        expect(change('sugar-maple', 300, 10, 6, 'quartersawn').toFixed(1)).toBe(cherry);
        return `2. Neither by much: ${cherry} mm each.`;
      },
    ],
  ],
  'wide-boards-panels-and-inlays': [
    [
      'cherry as a part of maple',
      () =>
        `flatsawn cherry moves ${(tangential('black-cherry') / tangential('sugar-maple')).toFixed(2)} of flatsawn hard maple`,
    ],
    [
      'quartersawn maple: less than half',
      () => `${radial('sugar-maple') < tangential('sugar-maple') / 2 ? 'less' : 'more'} than half`,
    ],
    [
      'a step between two cuts',
      () =>
        `differs from it by ${(20 * 4 * (tangential('sugar-maple') - radial('sugar-maple'))).toFixed(2)} mm after four points`,
    ],
    [
      'two fixings',
      () =>
        `200 mm apart across flatsawn hard maple see ${change('sugar-maple', 200, 10, 6).toFixed(1)} mm of difference`,
    ],
    ...[10, 40, 100].map((width): [string, () => string] => [
      `an inlay of ${width} mm`,
      () => {
        const cells = [tangential('sugar-maple'), tangential('black-cherry'), radial('sugar-maple')].map(
          (each) => `${shown(width * 4 * each)} mm`,
        );
        return `| ${width} mm | ${cells.join(' | ')} |`;
      },
    ]),
    [
      'an inlay as a part of its width',
      () =>
        `| as a part of the inlay’s width | ${[
          tangential('sugar-maple'),
          tangential('black-cherry'),
          radial('sugar-maple'),
        ]
          .map((each) => `${(400 * each).toFixed(1)} %`)
          .join(' | ')} |`,
    ],
    [
      'thickness beside a strip of resin',
      () => `20 mm of flatsawn hard maple changes ${(20 * 4 * radial('sugar-maple')).toFixed(2)} mm in thickness`,
    ],
    [
      'the panel beside one board',
      () => {
        const { inputs } = workedCase('wide-boards-panels-and-inlays', { inlayWidth: '18 mm', species: '' });
        const { staves = '', ...rest } = inputs;
        const width = [...staves.matchAll(/, ([\d.]+) mm/g)].reduce((sum, [, stave]) => sum + Number(stave), 0);
        const board = figure(
          'seasonal-movement',
          { ...rest, species: 'sugar-maple', width: `${width} mm`, cut: 'flatsawn' },
          'swing',
        );
        return `One flatsawn board of hard maple, as wide, would move ${mm(board.value)} mm`;
      },
    ],
    [
      'the channel turned across the grain',
      () => {
        expect(280 / 18).toBeGreaterThan(15);
        expect(280 / 18).toBeLessThan(16);
        return 'the channel would meet more than fifteen times that';
      },
    ],
    [
      'the exercise on a bar',
      () =>
        `At ${(400 * tangential('sugar-maple')).toFixed(1)} % that is ${(200 * 4 * tangential('sugar-maple')).toFixed(1)} mm`,
    ],
  ],
};

/** A number with one decimal, with the minus of print. */
function minus(value: number): string {
  return value.toFixed(1).replace('-', '−');
}

/** Two decimals below a millimetre, one from there. */
function shown(value: number): string {
  return value.toFixed(value < 1 ? 2 : 1);
}

hold(statements);
