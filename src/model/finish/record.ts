import * as z from 'zod/mini';
import { citesWhatIsPublished, recordId, recordOrder, timeText, words } from '../data/fields.ts';
import { cautions } from '../evidence/cautions.ts';
import { basisShape, citationShape, named } from '../evidence/shape.ts';
import { oilOrigins } from '../food/allergens.ts';
import { type FoodStanding, foodRuleIds } from '../food/types.ts';
import { excludingClasses } from './excluding-classes.ts';

/** A value with the ends of what is usual, and how it is known. */
function usual(value: z.ZodMiniType<number>) {
  return z
    .strictObject({
      value,
      low: value,
      high: value,
      basis: basisShape,
      citation: z.exactOptional(citationShape),
      note: z.exactOptional(words),
    })
    .check(
      citesWhatIsPublished,
      z.refine(({ value, low, high }) => low <= value && value <= high, 'The value lies between low and high.'),
    );
}

const number = named('usualNumber', usual(z.number().check(z.positive())));
const time = named('usualTime', usual(timeText));

const figures = z.strictObject({
  coats: number.check(z.describe('How many coats.')),
  spreadingFirst: number.check(z.describe('Spreading rate of the first coat, m²/L.')),
  spreadingNext: number.check(z.describe('Spreading rate of further coats, m²/L.')),
  density: number.check(z.describe('As it comes from the can, g/mL.')),
  soak: z.exactOptional(
    time.check(z.describe('How long it stays on before it is wiped; left out where it is not wiped.')),
  ),
  recoat: time.check(z.describe('From one coat to the next.')),
  lightUse: time.check(z.describe('From the last coat to dry handling.')),
  fullCure: z.exactOptional(
    time.check(z.describe('From the last coat to food and water; left out where it never cures.')),
  ),
  upkeep: z.exactOptional(
    time.check(z.describe('From one renewal to the next in a home; left out where it is not renewed.')),
  ),
});

const standing: z.ZodMiniType<FoodStanding> = z
  .strictObject({
    level: z.enum(['listed', 'ask-the-maker', 'silent', 'better-not']),
    summary: words.check(z.describe('One line for a list, no full stop.')),
    conditions: z.array(words).check(z.describe('What must be true for the summary to hold, a sentence each.')),
    inUse: z.exactOptional(
      z.array(words).check(z.describe('Those of them that hold in use, whatever papers its maker gives.')),
    ),
    rules: z.array(z.enum(foodRuleIds)).check(z.describe('Rules that it rests on.')),
    basis: basisShape,
    citation: z.exactOptional(citationShape),
  })
  .check(citesWhatIsPublished);

/**
 * A generic kind of finish as entered, never a product, with everything that is known of it. The sheet of the finish at hand wins
 * over all of it.
 */
export const finishRecordSchema = z.strictObject({
  id: recordId,
  order: recordOrder,
  name: words.check(z.describe('Sentence case: Mineral oil.')),
  about: words.check(z.describe('What it is, in a line without a full stop.')),
  sets: z
    .enum(['never', 'by-oxygen', 'by-drying', 'by-reaction'])
    .check(
      z.describe('How it sets: not at all, by taking up oxygen, by losing its solvent, by a reaction of two parts.'),
    ),
  figures,
  application: words.check(z.describe('How a coat goes on, and what is done with what stays on top: sentences.')),
  wiped: z.boolean().check(z.describe('True where what has not sunk in is wiped off after the soak.')),
  food: standing,
  origin: z.enum(oilOrigins).check(z.describe('What in it may matter to somebody with an allergy.')),
  look: words.check(z.describe('One line, no full stop.')),
  washable: z
    .boolean()
    .check(z.describe('False where hot water and soap go through it, so that it is wiped and not washed.')),
  upkeepWords: words.check(z.describe('When and how to renew it, a sentence.')),
  rags: z.strictObject({
    hazard: z
      .enum(['self-heating', 'vapour', 'none-known'])
      .check(
        z.describe(
          'Whether cloths wet with it can take fire by themselves, give off vapour that takes fire, or neither.',
        ),
      ),
    words: words.check(z.describe('One line, no full stop.')),
  }),
  cautions: z
    .array(z.enum(cautions.map(({ id }) => id) as [string, ...string[]]))
    .check(z.describe('Cautions that belong beside every answer about it, the gravest first.')),
  overResin: z
    .strictObject({
      level: z.enum(['suits', 'after-sanding', 'test-first']),
      words: words.check(z.describe('Sentences.')),
    })
    .check(z.describe('On and beside cured resin.')),
  excluding: z
    .strictObject({
      class: z
        .nullable(z.enum(excludingClasses))
        .check(z.describe('Null where nothing in the table is like it: it is then taken as bare wood.')),
      measured: z.boolean().check(z.describe('False where the class is only the nearest to it.')),
      note: z.exactOptional(words.check(z.describe('A sentence for what is not measured.'))),
    })
    .check(z.describe('How it stands in the table of moisture-excluding effectiveness.')),
});
/** A finish as read from its record; times in s. */
export type FinishRecord = z.infer<typeof finishRecordSchema>;
