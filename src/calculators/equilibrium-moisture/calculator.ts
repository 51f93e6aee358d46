import { answer, type Caution, cite, type Outcome, refuse } from '../../model/evidence/index.ts';
import { equilibriumMoisture, equilibriumMoisture2021, relativeHumidityFor } from '../../model/moisture/index.ts';
import { sorptionCaution } from '../../model/moisture/sorption-caution.ts';
import { amount } from '../../model/quantity/index.ts';
import { type Answer, calculator, type FigureValue } from '../kit/calculator.ts';
import { alternatives, example, inputs } from './inputs.ts';

const figures = {
  moistureContent: { label: 'Moisture content at balance', unit: '%' },
  relativeHumidity: { label: 'Relative humidity at balance', unit: '%' },
  moistureContent2021: {
    label: 'By the newer equation',
    unit: '%',
    help: 'Moisture content in the same air by the sorption model that the 2021 edition prints beside it.',
  },
};

type Name = keyof typeof figures;

export const equilibriumMoistureCalculator = calculator({
  id: 'equilibrium-moisture',
  title: 'Equilibrium moisture',
  question: 'How dry will wood become in this air, or what air keeps it this dry?',
  summary:
    'From a temperature and either the humidity of the air or the moisture of the wood: the other of the two, at balance.',
  inputs,
  alternatives,
  example,
  figures,
  compute({ temperature, relativeHumidity, moistureContent }) {
    if (relativeHumidity !== undefined) return answer(woodIn(temperature, relativeHumidity));
    if (moistureContent !== undefined) return airFor(temperature, moistureContent);
    return refuse(
      'relativeHumidity',
      'Neither the humidity of the air nor the moisture content of the wood was given',
      'Give the relative humidity, such as 50 %, or the moisture content of the wood, such as 8 %.',
    );
  },
});

/** Relative humidity below which air counts as dry, %: the solver comes as near to none as it likes; nobody measures it. */
const leastHumidity = 0.05;

/** The moisture content that wood comes to in air of a humidity (%) and a temperature (°C). */
function woodIn(temperature: number, humidity: number): Answer<Name> {
  const moisture = equilibriumMoisture(temperature, humidity);
  return atBalance(temperature, humidity, {
    said: `Wood settles at about ${amount(moisture, '%', 2)} in air of ${amount(humidity, '%', 2)} relative humidity at ${amount(temperature, 'Cel')}.`,
    figures: { moistureContent: derived(moisture, 'Eq. 4-5') },
    how: 'Gives moisture content from temperature and humidity.',
  });
}

/** The air (°C) in which wood of a moisture content (%) is at rest; an error where no air brings it there. */
function airFor(temperature: number, moisture: number): Outcome<Answer<Name>> {
  const humidity = relativeHumidityFor(temperature, moisture);
  if (humidity === null) {
    return refuse(
      'moistureContent',
      `At this temperature no air, however damp, brings wood to ${moisture} %: the equation gives ${equilibriumMoisture(temperature, 100).toFixed(1)} % in saturated air`,
      'Give a lower moisture content.',
    );
  }
  const dry = humidity < leastHumidity;
  return answer(
    atBalance(temperature, humidity, {
      said: dry
        ? 'Wood so dry is at rest only in air without moisture.'
        : `Wood of ${amount(moisture, '%', 2)} is at rest in air of about ${amount(humidity, '%', 2)} relative humidity at ${amount(temperature, 'Cel')}.`,
      figures: { relativeHumidity: derived(dry ? 0 : humidity, 'Eq. 4-5, solved for humidity') },
      how: 'Solved for the humidity that gives this moisture content.',
    }),
  );
}

const derived = (value: number, locator: string): FigureValue => ({
  value,
  basis: 'derived',
  citation: { source: 'fpl-gtr-190', locator },
});

const oneSpecies: Caution = {
  id: 'sorption-one-species',
  level: 'note',
  text: 'The equation was fitted to one species and lies midway between wetting and drying. Real boards differ from it by about a point of moisture content, oily tropical woods by more. A board reaches it in weeks, not hours.',
  basis: 'memory',
  citation: { source: 'fpl-gtr-190', locator: 'Table 4-2, footnote' },
};

/** What is the same whichever was asked: the newer equation beside it, and where both end. */
function atBalance(
  temperature: number,
  humidity: number,
  { said, figures, how }: { said: string; figures: Answer<Name>['figures']; how: string },
): Answer<Name> {
  const outside = sorptionCaution([{ temperature, humidity }]);
  const newer = equilibriumMoisture2021(temperature, humidity);
  return {
    verdict: { level: outside.length > 0 ? 'care' : 'good', text: said },
    figures: {
      ...figures,
      ...(newer === null
        ? {}
        : {
            moistureContent2021: {
              value: newer,
              basis: 'derived',
              citation: { source: 'fpl-gtr-282', locator: 'Eq. 4-6' },
            },
          }),
    },
    cautions: [...outside, oneSpecies],
    evidence: [
      cite(equilibriumMoisture, how),
      cite(
        equilibriumMoisture2021,
        'The newer fit of the 2021 edition, shown beside it for comparison. The handbook’s table follows the older equation.',
      ),
    ],
  };
}
