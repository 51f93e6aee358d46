import { answer, type Outcome, type Result, refuse } from '../../model/evidence/index.ts';
import type { Species } from '../../model/species/types.ts';
import { boringBits, boringPractice, boringSpeed, rimSpeed } from '../../model/stock/index.ts';
import { cite } from '../kit/evidence.ts';
import { perMinute, rimFigure } from './figures.ts';
import type { Inputs } from './inputs.ts';

/** Side hardness of a wood at 12 %, N. */
function hardnessOf(species: Species | undefined): number | undefined {
  return species?.figures.sideHardness12?.value ?? species?.figures.sideHardnessGreen?.value;
}

/** A usual speed for a hole, and how to bore it clean. */
export function boringAnswer({ diameter, turns, bit: id, species }: Inputs): Outcome<Result> {
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
