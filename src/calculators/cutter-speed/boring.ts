import { cautionById } from '../../model/evidence/cautions.ts';
import { answer, cite, type Outcome, refuse } from '../../model/evidence/index.ts';
import { woodInSentence } from '../../model/food/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { Species } from '../../model/species/types.ts';
import { boringBits, boringPractice, boringSpeed, hardnessEnds, rimSpeed } from '../../model/stock/index.ts';
import type { Answer } from '../kit/calculator.ts';
import { boringFigures, type figures, turnsWords } from './figures.ts';
import type { Inputs } from './inputs.ts';

/** Side hardness of a wood at 12 %, N. */
function hardnessOf(species: Species | undefined): number | undefined {
  return species?.figures.sideHardness12?.value ?? species?.figures.sideHardnessGreen?.value;
}

/** A usual speed for a hole, and how to bore it clean. */
export function boringAnswer({ diameter, turns, bit: id, species }: Inputs): Outcome<Answer<keyof typeof figures>> {
  const bit = boringBits.find((one) => one.id === (id ?? 'forstner'));
  if (!bit) return refuse('bit', 'There is no such bit', 'Pick one of those listed.');
  const hardness = hardnessOf(species);
  const speed = boringSpeed(bit, diameter, hardness);
  const tooFast = turns !== undefined && turns > speed.high;
  return answer({
    verdict: {
      level: tooFast ? 'stop' : speed.usualDiameter ? 'good' : 'care',
      text: tooFast
        ? `Slow down first: bore this hole at about ${turnsWords(speed.turns)}, not at ${turnsWords(turns)}.`
        : `Bore the hole at about ${turnsWords(speed.turns)}, over a backing block.${
            speed.usualDiameter
              ? ''
              : ` A ${bit.name.toLowerCase()} is not usual in this size: see whether another kind serves better.`
          }`,
    },
    figures: boringFigures(
      diameter,
      turns,
      speed,
      `${bit.name}, ${hardness === undefined ? 'a hard wood' : `side hardness ${amount(hardness, 'N')}`}. ${bit.use}`,
    ),
    cautions: [
      ...(tooFast
        ? [
            {
              id: 'too-fast',
              level: 'danger' as const,
              text: `Turn the speed down to about ${speed.turns} before you switch on.`,
              why: `${turnsWords(turns)} are more than is usual for this hole: the bit burns and may grab the work.`,
              own: true,
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
              text: `${bit.name}s are usual from ${amount(bit.diameters[0], 'mm')} to ${amount(bit.diameters[1], 'mm')}. Another kind may serve better.`,
              own: true,
              basis: 'shop-practice' as const,
            },
          ]),
      ...['boring'].flatMap((standing) => cautionById(standing) ?? []),
      ...boringPractice.map(({ id: practice, text, why }) => ({
        id: practice,
        level: practice === 'hold-the-work' ? ('danger' as const) : ('warning' as const),
        text,
        ...(why ? { why } : {}),
        basis: 'shop-practice' as const,
      })),
      ...['wood-dust', 'noise'].flatMap((standing) => cautionById(standing) ?? []),
    ],
    evidence: [
      cite(rimSpeed, 'Relates speed, diameter and turns.'),
      {
        text: `Speeds by kind of bit and hardness are common practice, from soft wood (${amount(hardnessEnds.soft, 'N')} side hardness) to hard (${amount(hardnessEnds.hard, 'N')}). The maker’s chart wins.`,
        basis: 'shop-practice',
      },
      ...(species?.figures.sideHardness12
        ? [
            {
              text: `Side hardness of ${woodInSentence(species.name)}.`,
              basis: species.figures.sideHardness12.basis,
              ...(species.figures.sideHardness12.citation ? { citation: species.figures.sideHardness12.citation } : {}),
            },
          ]
        : []),
    ],
  });
}
