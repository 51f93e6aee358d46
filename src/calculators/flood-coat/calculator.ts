import * as z from 'zod/mini';
import { cautionById } from '../../model/evidence/cautions.ts';
import { answer, type Basis, type Caution, type EvidenceNote, type Figure } from '../../model/evidence/index.ts';
import { formatNumber } from '../../model/quantity/index.ts';
import { angleThatHolds, capillaryLength, puddleThickness, usualAngle, usualResin } from '../../model/resin/flood.ts';
import { lengthInBoth } from '../kit/both-units.ts';
import { calculator } from '../kit/calculator.ts';
import { cite } from '../kit/evidence.ts';
import { quantityField } from '../kit/fields.ts';

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
        help: 'Empty: 1100 kg/m³.',
        group: expert,
        dimension: 'density',
        minimum: 600,
        maximum: 3000,
        examples: ['1100 kg/m³', '1.1 g/cm³'],
      }),
    ),
  }),
  example: {
    metric: { wantedThickness: '3 mm', area: '1800 cm²' },
    inch: { wantedThickness: '1/8 in', area: '2 ft²' },
  },
  figures: {
    thickness: { label: 'Thickness at rest without a dam' },
    amountAtRest: { label: 'Resin for that thickness' },
    amountWanted: { label: 'Resin for the thickness wanted' },
    overEdge: { label: 'Of it over the edge without a dam' },
    holdingAngle: { label: 'Contact angle that would hold it' },
    capillaryLength: { label: 'Capillary length' },
  },
  compute({ wantedThickness: wanted, area, contactAngle, surfaceTension, density }) {
    const tension = surfaceTension ?? usualResin.surfaceTension;
    const heavy = density ?? usualResin.density;
    const at = (angle: number) => puddleThickness(tension, heavy, angle);
    const angle = contactAngle ?? usualAngle.value;
    const thickness = at(angle);
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
    if (area !== undefined) {
      const toGrams = (mm: number) => grams(area, mm, heavy);
      figures.amountAtRest = figure('Resin for that thickness', toGrams(thickness), 'g', {
        ...band(toGrams),
        digits: 2,
        note: 'On a face that drinks nothing: bare wood takes 100 to 200 g/m² first.',
      });
      if (wanted !== undefined) {
        figures.amountWanted = figure('Resin for the thickness wanted', toGrams(wanted), 'g', { digits: 3 });
        if (wanted > thickness) {
          const lost = (mm: number) => Math.max(0, toGrams(wanted - mm));
          figures.overEdge = figure('Of it over the edge without a dam', lost(thickness), 'g', {
            digits: 2,
            ...(contactAngle === undefined
              ? { low: lost(at(usualAngle.high)), high: lost(at(usualAngle.low)), band: 'The same two contact angles.' }
              : {}),
          });
        }
      }
    }
    const holding = wanted === undefined ? null : angleThatHolds(wanted, tension, heavy);
    if (holding !== null && wanted !== undefined && wanted > thickness)
      figures.holdingAngle = figure('Contact angle that would hold it', holding, 'deg', {
        digits: 2,
        note: `Resin on wood or cured resin shows about ${usualAngle.low} to ${usualAngle.high}°.`,
      });
    return answer({
      figures,
      cautions: [...damWords(wanted, thickness, at(usualAngle.low), contactAngle === undefined), ...standing()],
      evidence: [
        cite(puddleThickness, `At ${formatNumber(angle)}°, ${tension} N/m and ${formatNumber(heavy)} kg/m³.`),
        cite(capillaryLength, 'Sets how high any puddle of the liquid can stand.'),
        ...assumed({ contactAngle, surfaceTension, density }),
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
  const missing = Object.keys(words).filter((name) => given[name] === undefined);
  if (missing.length === 0) return [];
  return [
    { text: `From memory, for coating resins: ${missing.map((name) => words[name]).join(', ')}.`, basis: 'memory' },
  ];
}

/** Whether the wanted thickness stands by itself. */
function damWords(wanted: number | undefined, rest: number, least: number, unsure: boolean): Caution[] {
  if (wanted === undefined) return [];
  const own = (id: string, level: Caution['level'], text: string): Caution => ({ id, level, text, basis: 'derived' });
  if (wanted > rest) {
    return [
      own(
        'dam-needed',
        'warning',
        `${lengthInBoth(wanted)} does not stand by itself: the coat comes to rest at about ${lengthInBoth(rest)} and the rest runs over the edge. Build a dam higher than the coat, or pour it in coats that each stand.`,
      ),
      {
        id: 'sharp-edge',
        level: 'note',
        text: 'A crisp arris can hold the rim of a thicker coat for a while, until a drip, a bump or a rounded place lets it go. Do not count on it.',
        basis: 'memory',
      },
    ];
  }
  if (unsure && wanted > least) {
    return [
      own(
        'dam-perhaps',
        'warning',
        `${lengthInBoth(wanted)} stands by itself on some faces and runs off others. Try it on an offcut of the same face, or build a dam.`,
      ),
    ];
  }
  return [
    own(
      'no-dam',
      'note',
      `${lengthInBoth(wanted)} stands without a dam. Poured thinner than it would rest, resin draws back into puddles unless it is spread to the edges and the face is clean.`,
    ),
  ];
}

const level: Caution = {
  id: 'level-face',
  level: 'warning',
  text: 'Level the board in both directions before you mix: 1 mm (0.04 in) out of level from edge to edge is most of a coat of this thickness.',
  basis: 'shop-practice',
};

const usual = ['resin-skin', 'resin-air', 'heat-tool'];

function standing(): Caution[] {
  return [level, ...usual.flatMap((id) => cautionById(id) ?? [])];
}
