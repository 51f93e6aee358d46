import { answer, cite, type EvidenceNote } from '../../model/evidence/index.ts';
import { formatNumber } from '../../model/quantity/index.ts';
import { capillaryLength, puddleThickness, usualAngle, usualResin } from '../../model/resin/flood.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import { shopAirCautions, steadyAir } from '../../model/resin/shop-air.ts';
import { calculator } from '../kit/calculator.ts';
import { cupWords, damWords, standing } from './cautions.ts';
import { coatOf, usesOf } from './coat.ts';
import { figures, figuresOf } from './figures.ts';
import { inputs } from './inputs.ts';
import { barredBy, coatLimitOf, limitEvidence, limitWords, unlikelyPotLife } from './limit.ts';
import { verdictOf } from './verdict.ts';

export const floodCoatCalculator = calculator({
  id: 'flood-coat',
  title: 'Flood coat',
  question: 'How thick will a poured coat stand on a level face, and does it need a dam?',
  summary:
    'From a resin and the face it is poured on: how thick it comes to rest, how much it takes, and what runs over the edge.',
  heavy: 'at first',
  inputs,
  taken: () => ({ surfaceTension: '0.04 N/m' }),
  example: {
    metric: { resin: 'fast-coating-1-1', wantedThickness: '3 mm', area: '1860 cm²', shopTemperature: '22 °C' },
    inch: { resin: 'fast-coating-1-1', wantedThickness: '1/8 in', area: '2 ft²', shopTemperature: '72 °F' },
  },
  figures,
  compute(given) {
    const { resin, shopTemperature } = given;
    const coat = coatOf(given);
    const { wanted, grams } = coat;
    const limit = coatLimitOf(resin, shopTemperature);
    // A coat of no thickness that anybody named comes to rest by itself, and its grams are poured all the same.
    const barred = barredBy(wanted ?? coat.rest, limit);
    const allGiven = [given.contactAngle, given.surfaceTension, given.density].every((each) => each !== undefined);
    const mass = barred || wanted === undefined ? undefined : grams?.(wanted);
    const own = [
      ...(resin ? [...sheetWarnings(resin), ...unlikelyPotLife(resin)] : []),
      ...(shopTemperature === undefined ? [] : shopAirCautions(steadyAir(shopTemperature))),
      ...(barred || wanted === undefined ? [] : [...limitWords(wanted, limit), ...damWords(wanted, coat)]),
      ...(mass === undefined ? [] : cupWords(mass, limit.resin, shopTemperature)),
    ];
    return answer({
      verdict: barred ?? verdictOf(wanted, mass, coat, own),
      figures: figuresOf(coat, allGiven ? 'derived' : 'memory', !barred),
      ...(mass === undefined ? {} : { uses: usesOf(mass, resin) }),
      cautions: [...own, ...standing()],
      evidence: [
        cite(
          puddleThickness,
          `At ${formatNumber(coat.angle)}°, ${coat.tension} N/m and ${formatNumber(coat.density)} kg/m³.`,
        ),
        cite(capillaryLength, 'Sets how high any puddle of the liquid can stand.'),
        ...limitEvidence(limit),
        ...assumed({
          contactAngle: given.contactAngle,
          surfaceTension: given.surfaceTension,
          ...(coat.density === usualResin.density ? { density: given.density } : {}),
        }),
      ],
    });
  },
});

/** What was not given and is assumed. */
function assumed(given: Readonly<Record<string, number | undefined>>): EvidenceNote[] {
  const words: Record<string, string> = {
    contactAngle: `a contact angle of ${usualAngle.value}°`,
    surfaceTension: `a surface tension of ${usualResin.surfaceTension.toFixed(3)} N/m`,
    density: `a density of ${usualResin.density} kg/m³`,
  };
  const missing = Object.keys(words).filter((name) => name in given && given[name] === undefined);
  if (missing.length === 0) return [];
  return [
    { text: `From memory, for coating resins: ${missing.map((name) => words[name]).join(', ')}.`, basis: 'memory' },
  ];
}
