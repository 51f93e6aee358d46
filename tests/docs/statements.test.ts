import { describe, expect, test } from 'vitest';
import { calculatorById } from '../../src/calculators/index.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { RawInputs } from '../../src/calculators/kit/calculator.ts';
import { climateById, equilibriumMoisture, indoorAir, outdoorAir } from '../../src/model/moisture/index.ts';
import { speciesById } from '../../src/model/species/index.ts';
import { howTo } from './how-to.ts';
import { daysToRest } from './waiting.ts';

// Every number that a how-to page states in its own words, worked out again: where the model changes, the sentence must too.

/** A figure of a calculator, asked as a page would ask it. */
function figure(calculator: string, inputs: RawInputs, name: string): number {
  const asked = calculatorById(calculator);
  if (!asked) throw new Error(`no calculator ${calculator}`);
  const outcome = answer(asked, inputs);
  if (!outcome.ok) throw new Error(outcome.errors.map(({ field, message }) => `${field}: ${message}`).join('\n'));
  const found = outcome.value.result.figures[name];
  if (!found) throw new Error(`${calculator} gave no ${name}`);
  return found.value;
}

/** Millimetres by which a board changes its width, without the sign. */
function change(species: string, width: number, moistureFrom: number, moistureTo: number, cut = 'flatsawn'): number {
  const inputs = { species, width: `${width} mm`, moistureFrom: `${moistureFrom} %`, moistureTo: `${moistureTo} %`, cut };
  return Math.abs(figure('width-change', inputs, 'change'));
}

const coefficient = (species: string, name: 'radialCoefficient' | 'tangentialCoefficient') =>
  speciesById(species)?.figures[name]?.value ?? Number.NaN;
const tangential = (species: string) => coefficient(species, 'tangentialCoefficient');
const radial = (species: string) => coefficient(species, 'radialCoefficient');

const duluth = climateById('duluth-mn');
if (!duluth) throw new Error('the climate tables have no duluth-mn');
const outdoors = outdoorAir(duluth).map(({ temperature, humidity }) => equilibriumMoisture(temperature, humidity));
const warmedJanuary = indoorAir(duluth, { heatTo: 20, coolTo: 30, moistureGain: 0 })[0];

/** Radius of a ring from a chord across it and its rise, in mm. */
const ringRadius = (chord: number, rise: number) => (chord * chord) / (8 * rise) + rise / 2;

const statements: Record<string, [says: string, text: () => string][]> = {
  'choosing-a-wood': [
    [
      'cherry against maple, flatsawn and quartersawn',
      () =>
        `Cherry in the same place loses ${change('black-cherry', 300, 10, 6).toFixed(1)} mm where maple loses ${change('sugar-maple', 300, 10, 6).toFixed(1)} mm; quartersawn maple loses ${change('sugar-maple', 300, 10, 6, 'quartersawn').toFixed(1)} mm.`,
    ],
    [
      'the same in inches',
      () => {
        const inches = [
          [change('black-cherry', 300, 10, 6), 1 / 8],
          [change('sugar-maple', 300, 10, 6), 5 / 32],
          [change('sugar-maple', 300, 10, 6, 'quartersawn'), 5 / 64],
        ] as const;
        // A fraction called 'about' lies within a sixty-fourth.
        for (const [exact, fraction] of inches) expect(Math.abs(exact / 25.4 - fraction)).toBeLessThan(1 / 64);
        return 'In the shop’s inches: about 1/8, 5/32 and 5/64.';
      },
    ],
    [
      'the answer to the third question',
      () =>
        `(3) Quartersawn maple: ${change('sugar-maple', 300, 10, 6, 'quartersawn').toFixed(1)} mm against ${change('black-cherry', 300, 10, 6).toFixed(1)} mm.`,
    ],
  ],
  'salvaged-stock': [
    [
      'outdoor air through the Duluth year',
      () => `between ${Math.min(...outdoors).toFixed(1)} % in April and ${Math.max(...outdoors).toFixed(1)} % in September`,
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
    ['an offcut by weight', () => `weighs 54.0 g, and 50.0 g once dried until it loses no more, had ${(100 * (54 / 50 - 1)).toFixed(1)} %`],
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
    ['July in the shop', () => `(2) About ${equilibriumMoisture(20, 60).toFixed(0)} %.`],
    ...[10, 20, 25, 40].map((thickness): [string, () => string] => [
      `waiting for ${thickness} mm`,
      () => {
        const half = daysToRest(thickness, 0.5);
        const nearly = daysToRest(thickness, 0.95);
        const days = `${Math.round(half / 2)} to ${Math.round(half * 2)} days`;
        return nearly < 10
          ? `| ${days} | ${Math.round(nearly / 2)} to ${Math.round(nearly * 2)} days |`
          : `| ${days} | ${Math.round(nearly / 14)} to ${Math.round((nearly * 2) / 7)} weeks |`;
      },
    ]),
  ],
  'seasonal-movement': [
    ['maple, quartersawn', () => `300 mm, quartersawn: ${change('sugar-maple', 300, 10, 6, 'quartersawn').toFixed(1)} mm`],
    ['maple, flatsawn', () => `300 mm, flatsawn: ${change('sugar-maple', 300, 10, 6).toFixed(1)} mm`],
    ['along the grain', () => `600 mm of length: ${(600 * 0.001 * (4 / 30)).toFixed(1)} to ${(600 * 0.002 * (4 / 30)).toFixed(1)} mm`],
    ['a ring by chord and rise', () => `A chord of 80 mm with a rise of 8 mm gives ${ringRadius(80, 8)} mm.`],
    ['the exercise on a ring', () => `(1) ${ringRadius(120, 6)} mm from that ring.`],
    [
      'Eq. 13-2 by hand',
      () => `$$300 \\times ${tangential('sugar-maple')} \\times (-4) = ${(300 * tangential('sugar-maple') * -4).toFixed(1)}$$ mm`,
    ],
    [
      'Eq. 13-3 by hand',
      () => {
        const shrinkage = speciesById('sugar-maple')?.figures.tangentialShrinkage?.value ?? Number.NaN;
        const term = 3000 / shrinkage;
        return `a shrinkage of ${shrinkage} %, $$300 \\times (-4) / (${term.toFixed(1)} - 30 + 10) = ${(-1200 / (term - 20)).toFixed(1)}$$ mm`;
      },
    ],
    [
      'the exercise on cherry and maple',
      () => {
        const cherry = change('black-cherry', 200, 10, 6).toFixed(1);
        expect(change('sugar-maple', 300, 10, 6, 'quartersawn').toFixed(1)).toBe(cherry);
        return `(2) Neither by much: ${cherry} mm each.`;
      },
    ],
  ],
  'wide-boards-panels-and-inlays': [
    [
      'cherry as a part of maple',
      () => `flatsawn cherry moves ${(tangential('black-cherry') / tangential('sugar-maple')).toFixed(2)} of flatsawn hard maple`,
    ],
    ['quartersawn maple: less than half', () => `${radial('sugar-maple') < tangential('sugar-maple') / 2 ? 'less' : 'more'} than half`],
    [
      'a step between two cuts',
      () => `stands ${(20 * 4 * (tangential('sugar-maple') - radial('sugar-maple'))).toFixed(2)} mm proud or shy after four points`,
    ],
    ['two fixings', () => `200 mm apart across flatsawn hard maple see ${change('sugar-maple', 200, 10, 6).toFixed(1)} mm of difference`],
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
        `| as a part of the inlay’s width | ${[tangential('sugar-maple'), tangential('black-cherry'), radial('sugar-maple')]
          .map((each) => `${(400 * each).toFixed(1)} %`)
          .join(' | ')} |`,
    ],
    [
      'thickness beside a strip of resin',
      () => `20 mm of flatsawn hard maple changes ${(20 * 4 * radial('sugar-maple')).toFixed(2)} mm in thickness`,
    ],
    [
      'the exercise on a bar',
      () => `At ${(400 * tangential('sugar-maple')).toFixed(1)} % that is ${(200 * 4 * tangential('sugar-maple')).toFixed(1)} mm`,
    ],
  ],
};

/** Two decimals below a millimetre, one from there. */
function shown(value: number): string {
  return value.toFixed(value < 1 ? 2 : 1);
}

for (const [name, held] of Object.entries(statements)) {
  describe(name, () => {
    test.each(held)('%s', (_, text) => {
      expect(howTo(name).text).toContain(text());
    });
  });
}
