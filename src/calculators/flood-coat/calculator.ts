import * as z from 'zod/mini';
import { answer, type Basis, cite, type EvidenceNote, type Figure } from '../../model/evidence/index.ts';
import { formatNumber } from '../../model/quantity/index.ts';
import { angleThatHolds, capillaryLength, puddleThickness, usualAngle, usualResin } from '../../model/resin/flood.ts';
import { mixedDensity } from '../../model/resin/ratio.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import type { Resin } from '../../model/resin/types.ts';
import { calculator } from '../kit/calculator.ts';
import { quantityField } from '../kit/fields.ts';
import { resinField } from '../kit/resin-field.ts';
import { type Coat, cupWords, damWords, standing, verdictOf } from './coat.ts';
import { barredBy, coatLimitOf, limitEvidence, limitWords } from './limit.ts';

const expert = 'For experts';

/** g of liquid on an area in mm² at a thickness in mm and a density in kg/m³. */
const grams = (area: number, thickness: number, density: number) => (area * thickness * density) / 1e6;

export const floodCoatCalculator = calculator({
  id: 'flood-coat',
  title: 'Flood coat',
  question: 'How thick will a poured coat stand on a level face, and does it need a dam?',
  summary:
    'Gives the thickness at which liquid resin comes to rest on a level face without a dam, from its surface tension, density and contact angle; compares it with the thickness wanted, and gives the amount and what would run over the edge.',
  inputs: z.strictObject({
    resin: z.optional(
      resinField({
        label: 'Resin',
        help: 'How deep it may be poured in one go is its limit. Empty: that of a generic coating epoxy.',
      }),
    ),
    wantedThickness: z.optional(
      quantityField({
        label: 'Thickness wanted',
        dimension: 'length',
        minimum: 0.1,
        maximum: 50,
        examples: ['3 mm', '1/8 in'],
      }),
    ),
    area: z.optional(
      quantityField({
        label: 'Area of the face',
        help: 'Length times width. Leave empty where the amount does not matter.',
        dimension: 'area',
        minimum: 100,
        maximum: 1e8,
        examples: ['1800 cm²', '2 ft²'],
      }),
    ),
    shopTemperature: z.optional(
      quantityField({
        label: 'Temperature of the shop',
        help: 'A warmer shop bears a thinner coat. Empty: as the depth of the resin is stated for.',
        dimension: 'temperature',
        minimum: 0,
        maximum: 45,
        examples: ['22 °C', '72 °F'],
      }),
    ),
    contactAngle: z.optional(
      quantityField({
        label: 'Contact angle',
        help: 'Seen from the side, between the face and the rim of a drop at rest. Empty: 45°, and the band from 30 to 60°.',
        group: expert,
        dimension: 'angle',
        minimum: 0,
        maximum: 180,
        examples: ['45°', '60°'],
      }),
    ),
    surfaceTension: z.optional(
      quantityField({
        label: 'Surface tension of the mix',
        help: 'Empty: 0.040 N/m.',
        group: expert,
        dimension: 'surface-tension',
        minimum: 0.005,
        maximum: 0.1,
        examples: ['0.040 N/m', '40 mN/m'],
      }),
    ),
    density: z.optional(
      quantityField({
        label: 'Density of the mix',
        help: 'Empty: as the resin’s, or 1100 kg/m³.',
        group: expert,
        dimension: 'density',
        minimum: 600,
        maximum: 3000,
        examples: ['1100 kg/m³', '1.1 g/cm³'],
      }),
    ),
  }),
  example: {
    metric: { resin: 'fast-coating-1-1', wantedThickness: '3 mm', area: '1800 cm²', shopTemperature: '22 °C' },
    inch: { resin: 'fast-coating-1-1', wantedThickness: '1/8 in', area: '2 ft²', shopTemperature: '72 °F' },
  },
  figures: {
    thickness: { label: 'Thickness at rest without a dam' },
    amountAtRest: { label: 'Resin for that thickness' },
    amountWanted: { label: 'Resin for the thickness wanted' },
    overEdge: { label: 'Of it over the edge without a dam' },
    holdingAngle: { label: 'Contact angle that would hold it' },
    capillaryLength: { label: 'Capillary length' },
  },
  compute(given) {
    const { wantedThickness: wanted, area, contactAngle, surfaceTension, density } = given;
    const tension = surfaceTension ?? usualResin.surfaceTension;
    const heavy = density ?? mixDensity(given.resin) ?? usualResin.density;
    const at = (angle: number) => puddleThickness(tension, heavy, angle);
    const angle = contactAngle ?? usualAngle.value;
    const coat: Coat = { rest: at(angle), least: at(usualAngle.low), unsure: contactAngle === undefined };
    const thickness = coat.rest;
    const limit = coatLimitOf(given.resin, given.shopTemperature);
    const barred = wanted === undefined ? undefined : barredBy(wanted, limit);
    const ownAll = contactAngle !== undefined && surfaceTension !== undefined && density !== undefined;
    const basis: Basis = ownAll ? 'derived' : 'memory';
    const band = (scale: (thickness: number) => number): Partial<Figure> =>
      contactAngle === undefined
        ? {
            low: scale(at(usualAngle.low)),
            high: scale(at(usualAngle.high)),
            band: `Contact angles of ${usualAngle.low} and ${usualAngle.high}°: they differ from face to face and are not measured here.`,
          }
        : {};
    const figure = (label: string, value: number, unit: string, more: Partial<Figure> = {}): Figure => ({
      label,
      value,
      unit,
      basis,
      ...more,
    });
    const figures: Record<string, Figure> = {
      thickness: figure('Thickness at rest without a dam', thickness, 'mm', {
        ...band((mm) => mm),
        ...(contactAngle === undefined ? { digits: 2 } : {}),
      }),
      capillaryLength: figure('Capillary length', capillaryLength(tension, heavy), 'mm', { digits: 3 }),
    };
    const toGrams = (mm: number) => grams(area ?? 0, mm, heavy);
    // What must not be poured so has no amount.
    if (area !== undefined && !barred) {
      figures.amountAtRest = figure('Resin for that thickness', toGrams(thickness), 'g', {
        ...band(toGrams),
        digits: 2,
        kept: true,
        note: 'On a face that drinks nothing: bare wood takes 100 to 200 g/m² first.',
      });
      if (wanted !== undefined) {
        figures.amountWanted = figure('Resin for the thickness wanted', toGrams(wanted), 'g', {
          digits: 3,
          kept: true,
        });
        if (wanted > thickness) {
          const lost = (mm: number) => Math.max(0, toGrams(wanted - mm));
          figures.overEdge = figure('Of it over the edge without a dam', lost(thickness), 'g', {
            digits: 2,
            kept: true,
            ...(contactAngle === undefined
              ? { low: lost(at(usualAngle.high)), high: lost(at(usualAngle.low)), band: 'The same two contact angles.' }
              : {}),
          });
        }
      }
    }
    const holding = wanted === undefined ? null : angleThatHolds(wanted, tension, heavy);
    if (holding !== null && wanted !== undefined && wanted > thickness && !barred)
      figures.holdingAngle = figure('Contact angle that would hold it', holding, 'deg', {
        digits: 2,
        note: `Resin on wood or cured resin shows about ${usualAngle.low} to ${usualAngle.high}°.`,
      });
    const mass = figures.amountWanted?.value;
    const own = [
      ...(given.resin ? sheetWarnings(given.resin) : []),
      ...(barred || wanted === undefined ? [] : [...limitWords(wanted, limit), ...damWords(wanted, coat)]),
      ...(mass === undefined ? [] : cupWords(mass, limit.resin, given.shopTemperature)),
    ];
    return answer({
      verdict: barred ?? verdictOf(wanted, mass, coat, own),
      figures,
      cautions: [...own, ...standing()],
      evidence: [
        cite(puddleThickness, `At ${formatNumber(angle)}°, ${tension} N/m and ${formatNumber(heavy)} kg/m³.`),
        cite(capillaryLength, 'Sets how high any puddle of the liquid can stand.'),
        ...limitEvidence(limit),
        ...assumed({ contactAngle, surfaceTension, ...(heavy === usualResin.density ? { density } : {}) }),
      ],
    });
  },
});

/** kg/m³ of the mix of a resin, where its ratio and its densities are known. */
function mixDensity(resin: Resin | undefined): number | undefined {
  const { weightRatio, densityA, densityB } = resin?.figures ?? {};
  return weightRatio && densityA && densityB
    ? 1000 * mixedDensity(weightRatio.value, densityA.value, densityB.value)
    : undefined;
}

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
