import * as z from 'zod/mini';
import {
  answer,
  type Caution,
  type EvidenceNote,
  type Figure,
  type Outcome,
  type Result,
  refuse,
} from '../../model/evidence/index.ts';
import type { Species } from '../../model/species/types.ts';
import {
  boringBits,
  boringPractice,
  boringSpeed,
  cutterCautions,
  rimSpeed,
  routerCeiling,
  routerCeilings,
  templateCut,
  usualBeyond,
  usualContact,
  usualDepthOfPass,
} from '../../model/stock/index.ts';
import { calculator } from '../kit/calculator.ts';
import { cite } from '../kit/evidence.ts';
import { choiceField, shownWhen } from '../kit/fields.ts';
import { speciesField } from '../kit/species-field.ts';
import { countField, lengthField } from '../kit/stock-fields.ts';

const routing = { field: 'work', is: ['', 'routing'] };
const boring = { field: 'work', is: ['boring'] };

const inputs = z.strictObject({
  work: z.optional(
    choiceField({
      label: 'Work',
      options: [
        { value: 'routing', label: 'Routing to a template' },
        { value: 'boring', label: 'Boring a hole' },
      ],
      examples: ['routing', 'boring'],
    }),
  ),
  diameter: lengthField(
    { label: 'Diameter of the bit', examples: ['12.7 mm', '1/2 in'] },
    { minimum: 0.5, maximum: 200 },
  ),
  turns: z.optional(
    countField(
      { label: 'Turns a minute', help: 'As the machine is set.', examples: ['18000'] },
      { minimum: 50, maximum: 60_000 },
    ),
  ),
  cuttingLength: z.optional(
    shownWhen(
      lengthField(
        { label: 'Cutting length of the bit', help: 'Without its bearing.', examples: ['25 mm', '1 in'] },
        { minimum: 1, maximum: 150 },
      ),
      routing,
    ),
  ),
  bearing: z.optional(
    shownWhen(
      choiceField({
        label: 'Bearing',
        options: [
          { value: 'shank', label: 'By the shank, template on top' },
          { value: 'tip', label: 'At the tip, template below' },
        ],
        examples: ['shank', 'tip'],
      }),
      routing,
    ),
  ),
  stock: z.optional(
    shownWhen(
      lengthField({ label: 'Thickness of the stock', examples: ['20 mm', '3/4 in'] }, { minimum: 1, maximum: 150 }),
      routing,
    ),
  ),
  template: z.optional(
    shownWhen(
      lengthField({ label: 'Thickness of the template', examples: ['12 mm', '1/2 in'] }, { minimum: 1, maximum: 60 }),
      routing,
    ),
  ),
  depthOfPass: z.optional(
    shownWhen(
      lengthField(
        {
          label: 'Depth of one pass',
          help: 'Half the diameter and at most 1/4 in, unless given.',
          examples: ['6 mm', '1/4 in'],
        },
        { minimum: 0.5, maximum: 60 },
      ),
      routing,
    ),
  ),
  bit: z.optional(
    shownWhen(
      choiceField({
        label: 'Kind of bit',
        options: boringBits.map((one) => ({ value: one.id, label: one.name })),
        examples: ['forstner'],
      }),
      boring,
    ),
  ),
  species: z.optional(
    shownWhen(
      speciesField({ label: 'Wood', help: 'Its hardness decides the speed; a hard wood, unless given.' }),
      boring,
    ),
  ),
});
type Inputs = z.output<typeof inputs>;

export const cutterSpeedCalculator = calculator({
  id: 'cutter-speed',
  title: 'Cutters and their speed',
  question: 'How fast may this bit turn, how deep may it cut, and is it long enough for the template?',
  summary:
    'Takes a bit, its speed, the stock and the template, and gives the rim speed, the usual ceiling for its size, the passes, and whether the bearing rides on the template; for holes, a usual speed by kind of bit and hardness of the wood.',
  inputs,
  example: {
    metric: {
      work: 'routing',
      diameter: '12.7 mm',
      turns: '18000',
      cuttingLength: '25 mm',
      bearing: 'shank',
      stock: '20 mm',
      template: '12 mm',
    },
    inch: {
      work: 'routing',
      diameter: '1/2 in',
      turns: '18000',
      cuttingLength: '1 in',
      bearing: 'shank',
      stock: '3/4 in',
      template: '1/2 in',
    },
  },
  figures: {
    usualTurns: { label: 'Usual speed', help: 'The highest for a router bit; for a hole, the usual one.' },
    rim: { label: 'Rim speed' },
    rimAtCeiling: { label: 'Rim speed at that ceiling' },
    passes: { label: 'Passes' },
    depthOfPass: { label: 'Depth of one pass' },
    leastFirstPass: { label: 'Least first pass with the bearing on the template' },
    thickerTemplate: { label: 'Template that keeps the bearing on it' },
    shortBy: { label: 'Edge too short by' },
  },
  compute(given) {
    return (given.work ?? 'routing') === 'boring' ? boringAnswer(given) : routingAnswer(given);
  },
});

const perMinute = (label: string, value: number, rest: Partial<Figure> = {}): Figure => ({
  label,
  value,
  unit: '/min',
  basis: 'shop-practice',
  digits: 5,
  ...rest,
});

function rimFigure(label: string, diameter: number, turns: number): Figure {
  return {
    label,
    value: rimSpeed(diameter, turns),
    unit: 'm/s',
    basis: 'derived',
    digits: 3,
    note: `${(rimSpeed(diameter, turns) * (60 / 0.3048)).toFixed(0)} feet a minute.`,
  };
}

function routingAnswer(given: Inputs): Outcome<Result> {
  const { diameter, turns, cuttingLength, bearing = 'shank', stock, template } = given;
  const ceiling = routerCeiling(diameter);
  const depthOfPass = given.depthOfPass ?? usualDepthOfPass(diameter);
  const cautions: Caution[] = [];
  const figures: Record<string, Figure> = {};
  if (turns !== undefined) figures.rim = rimFigure('Rim speed', diameter, turns);
  if (ceiling) {
    figures.usualTurns = perMinute('Usual highest speed', ceiling.turns, {
      low: Math.min(ceiling.turns, ceiling.otherTexts[0]),
      high: Math.max(ceiling.turns, ceiling.otherTexts[1]),
      band: 'What two general how-to texts give for this size.',
      note: `For bits up to ${(ceiling.upTo / 25.4).toFixed(1)} in across. The mark on the tool wins.`,
    });
    figures.rimAtCeiling = rimFigure('Rim speed at that ceiling', diameter, ceiling.turns);
    if (turns !== undefined && turns > ceiling.turns) {
      cautions.push({
        id: 'too-fast',
        level: 'danger',
        text: `${turns} turns a minute are more than the usual ceiling of ${ceiling.turns} for a bit of this size. Slow the router down before it is switched on.`,
        basis: 'shop-practice',
      });
    }
  } else {
    cautions.push({
      id: 'no-usual-ceiling',
      level: 'danger',
      text: `The bit is larger than the ${((routerCeilings.at(-1)?.upTo ?? 0) / 25.4).toFixed(1)} in for which common practice names a speed. Only its maker can say how fast it may turn.`,
      basis: 'shop-practice',
    });
  }
  figures.depthOfPass = {
    label: 'Depth of one pass',
    value: depthOfPass,
    unit: 'mm',
    basis: 'shop-practice',
    digits: 3,
  };
  const evidence: EvidenceNote[] = [
    cite(rimSpeed, 'Gives the rim speed.'),
    {
      text: 'Ceilings by diameter are common practice: two general texts give them, and they differ for large bits.',
      basis: 'shop-practice',
    },
    { text: 'Depth of one pass: half the diameter, and at most 1/4 in, unless given.', basis: 'shop-practice' },
  ];
  const sizes = { cuttingLength, stock, template };
  const missing = (Object.keys(sizes) as (keyof typeof sizes)[]).filter((name) => sizes[name] === undefined);
  if (missing.length > 0 && missing.length < 3) {
    return refuse(
      missing[0] as string,
      'To judge the cut the cutting length, the stock and the template are all needed, and one is missing',
      'Give all three, or leave all three empty.',
    );
  }
  if (cuttingLength !== undefined && stock !== undefined && template !== undefined) {
    const plan = templateCut({
      diameter,
      cuttingLength,
      bearing,
      stock,
      template,
      contact: usualContact,
      beyond: usualBeyond,
      depthOfPass,
    });
    const count = plan.passes.length;
    figures.passes = {
      label: 'Passes',
      value: count,
      unit: '1',
      basis: 'shop-practice',
      digits: 4,
      note: `${plan.passes
        .slice(0, 8)
        .map((depth) => depth.toFixed(1))
        .join(', ')}${count > 8 ? ' …' : ''} mm deep.`,
    };
    figures.shortBy = {
      label: 'Edge too short by',
      value: plan.shortBy,
      unit: 'mm',
      basis: 'derived',
      digits: 3,
      note: `For the stock and ${usualBeyond} mm past it in one setting.`,
    };
    if (bearing === 'shank') {
      figures.leastFirstPass = {
        label: 'Least first pass with the bearing on the template',
        value: plan.leastFirstPass,
        unit: 'mm',
        basis: 'derived',
        digits: 3,
      };
    }
    if (plan.thickerTemplate !== undefined) {
      figures.thickerTemplate = {
        label: 'Template that keeps the bearing on it',
        value: plan.thickerTemplate,
        unit: 'mm',
        basis: 'derived',
        digits: 3,
        note: 'For a first pass of the usual depth.',
      };
    }
    cautions.push(...templateCautions(plan.longEnough, plan.steadyFirstPass, bearing));
    evidence.push({
      text: `The bearing must touch at least ${usualContact} mm of template, and the edge reach ${usualBeyond} mm past the stock.`,
      basis: 'shop-practice',
    });
  }
  return answer({ figures, cautions: [...cautions, ...cutterCautions], evidence });
}

function templateCautions(longEnough: boolean, steady: boolean, bearing: 'shank' | 'tip'): Caution[] {
  const made: Caution[] = [];
  if (!steady) {
    made.push({
      id: 'bearing-off-template',
      level: 'danger',
      text:
        bearing === 'shank'
          ? 'At a first pass of the usual depth the bearing stands clear of the template and the bit would dig in. Use a shorter bit first, or a thicker template, or a spacer under it; saw close to the line so that a deep first pass takes little.'
          : 'The template is too thin for the bearing to ride on. Make it thicker, or put a spacer under it.',
      basis: 'shop-practice',
    });
  }
  if (!longEnough) {
    made.push({
      id: 'edge-too-short',
      level: 'warning',
      text:
        bearing === 'shank'
          ? 'The edge does not reach through the stock. Cut as deep as it goes, take the template off, and let the bearing ride on the edge already cut.'
          : 'The edge does not reach through the stock. Cut what it reaches, turn the work over, and trim the rest with a bearing by the shank riding on the edge already cut.',
      basis: 'shop-practice',
    });
  }
  return made;
}

/** Side hardness of a wood at 12 %, N. */
function hardnessOf(species: Species | undefined): number | undefined {
  return species?.figures.sideHardness12?.value ?? species?.figures.sideHardnessGreen?.value;
}

function boringAnswer({ diameter, turns, bit: id, species }: Inputs): Outcome<Result> {
  const bit = boringBits.find((one) => one.id === (id ?? 'forstner'));
  if (!bit) return refuse('bit', 'There is no such bit', 'Pick one of those listed.');
  const hardness = hardnessOf(species);
  const speed = boringSpeed(bit, diameter, hardness);
  const rim = turns === undefined ? speed.turns : turns;
  return answer({
    figures: {
      usualTurns: perMinute('Usual speed for the hole', speed.turns, {
        low: speed.low,
        high: speed.high,
        band: 'What is as usual: charts differ by half either way.',
        note: `${bit.name}, ${hardness === undefined ? 'a hard wood' : `side hardness ${hardness.toFixed(0)} N`}. ${bit.use}`,
      }),
      rim: rimFigure('Rim speed', diameter, rim),
    },
    cautions: [
      ...(turns !== undefined && turns > speed.high
        ? [
            {
              id: 'too-fast',
              level: 'warning' as const,
              text: `${turns} turns a minute are more than is usual for this hole: the bit will burn and may grab.`,
              basis: 'shop-practice' as const,
            },
          ]
        : []),
      ...(speed.usualDiameter
        ? []
        : [
            {
              id: 'unusual-diameter',
              level: 'note' as const,
              text: `${bit.name}s are usual from ${bit.diameters[0]} to ${bit.diameters[1]} mm. Another kind may serve better.`,
              basis: 'shop-practice' as const,
            },
          ]),
      ...boringPractice.map(({ id: practice, text }) => ({
        id: practice,
        level: practice === 'hold-the-work' ? ('danger' as const) : ('warning' as const),
        text,
        basis: 'shop-practice' as const,
      })),
    ],
    evidence: [
      cite(rimSpeed, 'Relates speed, diameter and turns.'),
      {
        text: 'Speeds by kind of bit and hardness are common practice, from soft wood (2500 N side hardness) to hard (5500 N). The maker’s chart wins.',
        basis: 'shop-practice',
      },
      ...(species?.figures.sideHardness12
        ? [
            {
              text: `Side hardness of ${species.name.toLowerCase()}.`,
              basis: species.figures.sideHardness12.basis,
              ...(species.figures.sideHardness12.citation ? { citation: species.figures.sideHardness12.citation } : {}),
            },
          ]
        : []),
    ],
  });
}
