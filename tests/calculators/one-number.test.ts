import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import { resinDoseCalculator } from '../../src/calculators/resin-dose/calculator.ts';
import { widthChangeCalculator } from '../../src/calculators/width-change/calculator.ts';
import type { Figure } from '../../src/model/evidence/index.ts';
import { defaultUnits, formatQuantity, inReaderUnits, type ReaderUnits } from '../../src/model/quantity/index.ts';

/*
 * Whoever reads an answer in a hurry meets one number for one thing: the sentence above and the figure below read the same, in whichever
 * unit they are read, and what is said to be allowed is allowed when it is typed.
 */

const readers: readonly ReaderUnits[] = [
  defaultUnits,
  ...(['sixteenths', 'thirty-seconds', 'sixty-fourths', 'decimal'] as const).map((style) => ({
    system: 'inch' as const,
    inches: style,
  })),
];

function resultOf(calculator: Calculator, raw: Record<string, string>) {
  const outcome = answer(calculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
}

const shown = (figure: Figure | undefined, units: ReaderUnits) =>
  figure ? formatQuantity(figure.value, figure.unit, units, figure) : 'no such figure';

describe.each(readers.map((units) => [units.system === 'metric' ? 'mm' : units.inches, units] as const))(
  'in %s',
  (_, units) => {
    const said = (text: string) => inReaderUnits(text, units);

    test('the change of a width', () => {
      fc.assert(
        fc.property(fc.integer({ min: 40, max: 400 }), fc.integer({ min: 1, max: 60 }), (width, change) => {
          const { verdict, figures } = resultOf(widthChangeCalculator, {
            species: 'sugar-maple',
            width: `${width} mm`,
            moistureFrom: '8 %',
            moistureTo: `${8 + change / 10} %`,
          });
          expect(said(verdict.text)).toContain(`by ${shown(figures['change'], units)}, from`);
        }),
        { numRuns: 60 },
      );
    });

    test.each(['1 1/4 in', '1 25/32 in', '45 mm', '50 mm', '2 1/8 in'])('the layers of a pour of %s', (depth) => {
      const { verdict, figures } = resultOf(pourHeatCalculator, {
        resin: 'slow-casting-2-1',
        depth,
        shopTemperature: '24 °C',
      });
      const [, layer] = /layers of (?:about |a little under )?(.*?), /.exec(said(verdict.text)) ?? [];
      expect(layer).toBe(shown(figures['layerDepth'], units));
    });

    test.each(['6.6 mm', '10 mm', '15 mm'])('the rise of a channel %s deep', (depth) => {
      const { cautions, figures } = resultOf(pourHeatCalculator, {
        resin: 'slow-casting-2-1',
        depth,
        width: '18 mm',
        shopTemperature: '18 °C',
      });
      const told = cautions.map(({ text, why = '' }) => said(`${text} ${why}`)).join(' ');
      const rises = [...told.matchAll(/ wide rises by (.*?); a pool/g)].map(([, rise]) => rise);
      expect(rises).toEqual([shown(figures['peakRise'], units)]);
    });

    test.each(['30 mm', '1 25/32 in', '50 mm'])('the layers of a dose for %s', (depth) => {
      const { verdict, figures } = resultOf(resinDoseCalculator, {
        resin: 'slow-casting-2-1',
        shapes: 'channel, 420 mm, 22 mm',
        depth,
        shopTemperature: '24 °C',
        scaleDivision: '0.1 g',
      });
      const [, layer] = /layers of (?:about |a little under )?(.*?)\. /.exec(said(verdict.text)) ?? [];
      expect(layer).toBe(shown(figures['layerThickness'], units));
    });

    test.each(['24 °C', '26 °C', '29 °C'])(
      'the greatest depth at %s may be poured as it is shown',
      (shopTemperature) => {
        const asked = { resin: 'slow-casting-2-1', shopTemperature };
        const { figures } = resultOf(pourHeatCalculator, { ...asked, depth: '40 mm' });
        const depth = shown(figures['greatestDepthHere'], units);
        expect(resultOf(pourHeatCalculator, { ...asked, depth }).verdict.level).not.toBe('stop');
      },
    );
  },
);
