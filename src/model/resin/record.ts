import * as z from 'zod/mini';
import { citesWhatIsPublished, recordId, recordOrder, timeText, words } from '../data/fields.ts';
import { basisShape, citationShape, named } from '../evidence/shape.ts';
import type { ResinFigureName } from './types.ts';

/** Parts of hardener to parts of resin, `1 to 2`; read as parts of hardener to one of resin. */
const ratioText = z.pipe(
  z
    .string()
    .check(
      z.regex(/^[1-9]\d*(\.\d+)? to [1-9]\d*(\.\d+)?$/, 'Write parts of hardener to parts of resin, such as 1 to 2.'),
    ),
  z.transform((text: string) => {
    const [hardener, resin] = text.split(' to ').map(Number);
    return (hardener ?? Number.NaN) / (resin ?? Number.NaN);
  }),
);

/** A figure that may be left out: its value, and how it is known. */
function known(id: string, value: z.ZodMiniType<number>) {
  const figure = z.strictObject({
    value,
    basis: basisShape,
    citation: z.exactOptional(citationShape),
    note: z.exactOptional(words),
  });
  return z.exactOptional(named(id, figure.check(citesWhatIsPublished)));
}

const ratio = known('ratio', ratioText);
const time = known('time', timeText);
const positive = known('number', z.number().check(z.positive()));
const celsius = known('temperature', z.number().check(z.minimum(-40), z.maximum(200)));

/** What is known of a kind, in the units of `resinFigureNames`; what is not known is left out. The ratio by weight follows. */
const figures = z.strictObject({
  volumeRatio: ratio,
  densityA: positive,
  densityB: positive,
  viscosity: positive,
  potLife: time,
  potLifeMass: positive,
  potLifeTemperature: celsius,
  secondPotLife: time,
  secondPotLifeTemperature: celsius,
  greatestDepth: positive,
  greatestDepthTemperature: celsius,
  greatestVolume: positive,
  greatestMass: positive,
  recoatOpens: time,
  recoatCloses: time,
  sandable: time,
  cure: time,
  foodService: time,
  cureTemperature: celsius,
  pigmentLimit: positive,
} satisfies Record<Exclude<ResinFigureName, 'weightRatio'>, z.ZodMiniType>);

/**
 * A generic kind of two-part resin as entered. None is a product: each stands for what resins of its kind usually are. What only a
 * maker can say (a limit of pigment, food contact, a second pot life) is not known of a kind.
 */
export const resinRecordSchema = z.strictObject({
  id: recordId,
  order: recordOrder,
  name: words.check(z.describe('Sentence case: Slow casting epoxy, 2:1 by volume.')),
  kinetics: z
    .enum(['fast', 'slow'])
    .check(z.describe('Which of the two class sets of kinetics it starts from, before it is fitted to its pot life.')),
  potLifeMeans: z
    .enum(['gel', 'usable'])
    .check(z.describe('Whether its pot life ends with a gel, or when it is too thick to use.')),
  figures,
});
/** A kind of resin as read from its record; times in s, ratio as parts of hardener to one of resin. */
export type ResinRecord = z.infer<typeof resinRecordSchema>;
