import { type Cup, type Measure, toDivisions } from './batches.ts';

/** Part A of one round and colour that takes its pigment all at once, before cups are filled from it. Grams. */
export interface ColourBatch {
  stage: string;
  colour: string;
  /** Part A of all its cups, and the pigment that is stirred into it, in whole divisions. */
  a: number;
  pigment: number;
  /** Grams of B to a gram of coloured A. */
  ratio: number;
}

/** A cup that is filled from such a batch: grams of coloured A, in whole divisions. */
export type FilledCup = Cup & { coloured?: number };

/**
 * Colour part A once for all cups of a round, so that they are of one colour, and say how much coloured A each then takes.
 *
 * B belongs to the A that is in a cup: the pigment weighs too, so that a cup takes more grams of coloured A than of A alone. A round in which
 * no colour fills two cups is left as it is: its pigment goes into the cup. By volume as well: nobody knows what room a pigment takes.
 *
 * @param cups as `cupsOf` gives them
 * @param measure how the parts are measured, by weight: `perGramA` and `perGramB` are 1
 * @returns the same cups in the same order, with how far off the ratio each then is, and the batches in the order of mixing
 */
export function colouredAtOnce(
  cups: readonly Cup[],
  { ratio, division }: Pick<Measure, 'ratio' | 'division'>,
): { cups: FilledCup[]; batches: ColourBatch[] } {
  const batches: ColourBatch[] = [];
  const whole = (value: number) => toDivisions(Math.round(value / division), division);
  for (const stage of new Set(cups.map((cup) => cup.stage))) {
    const round = cups.filter((cup) => cup.stage === stage && cup.pigment > 0);
    const groups = [...new Set(round.map(({ colour }) => colour))].map((colour) =>
      round.filter((cup) => cup.colour === colour),
    );
    if (!groups.some(({ length }) => length > 1)) continue;
    for (const group of groups) {
      const a = whole(group.reduce((sum, cup) => sum + cup.a, 0));
      const pigment = whole(group.reduce((sum, cup) => sum + cup.pigment, 0));
      if (a > 0)
        batches.push({ stage, colour: group[0]?.colour ?? '', a, pigment, ratio: (ratio * a) / (a + pigment) });
    }
  }
  const filled = cups.map((cup): FilledCup => {
    const batch = batches.find(({ stage, colour }) => stage === cup.stage && colour === cup.colour);
    if (!batch) return cup;
    const coloured = whole((cup.a * (batch.a + batch.pigment)) / batch.a);
    return { ...cup, coloured, off: 100 * (cup.b / (coloured * batch.ratio) - 1) };
  });
  return { cups: filled, batches };
}
