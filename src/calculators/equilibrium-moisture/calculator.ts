import * as z from 'zod/mini';
import { answer, cite, type EvidenceNote, refuse } from '../../model/evidence/index.ts';
import { equilibriumMoisture, equilibriumMoisture2021, relativeHumidityFor } from '../../model/moisture/index.ts';
import { sorptionCaution } from '../../model/moisture/sorption-caution.ts';
import { amount } from '../../model/quantity/index.ts';
import { calculator } from '../kit/calculator.ts';
import { quantityField } from '../kit/fields.ts';

/** Where Eq. 4-5 is solved for; the handbook's table, which it fits, runs from -1.1 to 132 °C. */
const temperatureRange = { minimum: -40, maximum: 130 };

/** Relative humidity below which air counts as dry, %. */
const leastHumidity = 0.05;

export const equilibriumMoistureCalculator = calculator({
  id: 'equilibrium-moisture',
  title: 'Equilibrium moisture',
  question: 'How dry will wood become in this air, or what air keeps it this dry?',
  summary:
    'From a temperature and either the humidity of the air or the moisture of the wood: the other of the two, at balance.',
  inputs: z.strictObject({
    temperature: quantityField({
      label: 'Temperature of the air',
      dimension: 'temperature',
      ...temperatureRange,
      examples: ['20 °C', '68 °F'],
    }),
    relativeHumidity: z.optional(
      quantityField({
        label: 'Relative humidity',
        help: 'As a hygrometer shows it.',
        dimension: 'percent',
        minimum: 0,
        maximum: 100,
        examples: ['50 %'],
      }),
    ),
    moistureContent: z.optional(
      quantityField({
        label: 'Moisture content of the wood',
        help: 'Water as a share of the ovendry mass, as a moisture meter shows it.',
        dimension: 'percent',
        minimum: 0,
        maximum: 30,
        examples: ['8 %'],
      }),
    ),
  }),
  alternatives: [
    {
      label: 'What you know',
      sets: [
        { label: 'The air', fields: ['relativeHumidity'] },
        { label: 'The wood', fields: ['moistureContent'] },
      ],
    },
  ],
  example: {
    metric: { temperature: '20 °C', relativeHumidity: '50 %' },
    inch: { temperature: '68 °F', relativeHumidity: '50 %' },
  },
  figures: {
    moistureContent: { label: 'Moisture content at balance' },
    relativeHumidity: { label: 'Relative humidity at balance' },
    moistureContent2021: { label: 'By the newer equation' },
  },
  compute({ temperature, relativeHumidity, moistureContent }) {
    if (relativeHumidity !== undefined && moistureContent !== undefined) {
      return refuse(
        'moistureContent',
        'Both the humidity of the air and the moisture content of the wood were given, and each follows from the other',
        'Leave one of them empty.',
      );
    }
    if (relativeHumidity === undefined && moistureContent === undefined) {
      return refuse(
        'relativeHumidity',
        'Neither the humidity of the air nor the moisture content of the wood was given',
        'Give relativeHumidity, such as 50 %, or moistureContent, such as 8 %.',
      );
    }
    const humidity = relativeHumidity ?? relativeHumidityFor(temperature, moistureContent as number);
    if (humidity === null) {
      return refuse(
        'moistureContent',
        `At this temperature no air, however damp, brings wood to ${moistureContent} %: the equation gives ${equilibriumMoisture(temperature, 100).toFixed(1)} % in saturated air`,
        'Give a lower moisture content.',
      );
    }
    const evidence: EvidenceNote[] = [
      cite(
        equilibriumMoisture,
        moistureContent === undefined
          ? 'Gives moisture content from temperature and humidity.'
          : 'Solved for the humidity that gives this moisture content.',
      ),
      cite(
        equilibriumMoisture2021,
        'The newer fit of the 2021 edition, shown beside it for comparison. The handbook’s table follows the older equation.',
      ),
    ];
    const outside = sorptionCaution([{ temperature, humidity }]);
    const cautions = [
      ...outside,
      {
        id: 'sorption-one-species',
        level: 'note' as const,
        text: 'The equation was fitted to one species and lies midway between wetting and drying. Real boards differ from it by about a point of moisture content, oily tropical woods by more. A board reaches it in weeks, not hours.',
        basis: 'memory' as const,
        citation: { source: 'fpl-gtr-190' as const, locator: 'Table 4-2, footnote' },
      },
    ];
    const newer = equilibriumMoisture2021(temperature, humidity);
    const figures =
      moistureContent === undefined
        ? {
            moistureContent: {
              label: 'Moisture content at balance',
              value: equilibriumMoisture(temperature, humidity),
              unit: '%',
              basis: 'derived' as const,
              citation: { source: 'fpl-gtr-190' as const, locator: 'Eq. 4-5' },
              digits: 3,
            },
          }
        : {
            relativeHumidity: {
              label: 'Relative humidity at balance',
              // The solver comes as near to none as it likes; nobody measures it.
              value: humidity < leastHumidity ? 0 : humidity,
              unit: '%',
              basis: 'derived' as const,
              citation: { source: 'fpl-gtr-190' as const, locator: 'Eq. 4-5, solved for humidity' },
              digits: 3,
            },
          };
    return answer({
      verdict: {
        level: outside.length > 0 ? 'care' : 'good',
        text:
          moistureContent === undefined
            ? `Wood settles at about ${amount(equilibriumMoisture(temperature, humidity), '%', 2)} in air of ${amount(humidity, '%', 2)} relative humidity at ${amount(temperature, 'Cel')}.`
            : humidity < leastHumidity
              ? 'Wood so dry is at rest only in air without moisture.'
              : `Wood of ${amount(moistureContent, '%', 2)} is at rest in air of about ${amount(humidity, '%', 2)} relative humidity at ${amount(temperature, 'Cel')}.`,
      },
      figures: {
        ...figures,
        ...(newer === null
          ? {}
          : {
              moistureContent2021: {
                label: 'By the newer equation',
                value: newer,
                unit: '%',
                basis: 'derived' as const,
                citation: { source: 'fpl-gtr-282' as const, locator: 'Eq. 4-6' },
                note: 'Moisture content in the same air by the sorption model that the 2021 edition prints beside it.',
                digits: 3,
              },
            }),
      },
      cautions,
      evidence,
    });
  },
});
