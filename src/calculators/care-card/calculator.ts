import * as z from 'zod/mini';
import { cautionById } from '../../model/evidence/cautions.ts';
import { answer, type Caution, type EvidenceNote, type Figure, type ResultTable } from '../../model/evidence/index.ts';
import type { Finish } from '../../model/finish/types.ts';
import type { FoodStatement } from '../../model/food/index.ts';
import { calculator } from '../kit/calculator.ts';
import { choiceField, excerpt, readField } from '../kit/fields.ts';
import { chosenFinish, finishChoice } from '../kit/food-board.ts';
import { marketField, papersField, resinPlaceField } from '../kit/food-fields.ts';
import { speciesField } from '../kit/species-field.ts';
import { type Card, type CardInputs, cardOf, promiseIn } from './card.ts';

/** Longest texts that a card has room for, characters. */
export const longest = { shop: 40, note: 160 };

/** A line of the reader's own: plain text of a bounded length, on one line. */
function lineField(words: { label: string; help: string; longest: number; examples: readonly string[] }) {
  return readField(
    z.string(),
    (text) => {
      // Tabs, line ends and other control characters would break the card's lines.
      const line = text.replace(/[\p{Cc}\p{Cf}\s]+/gu, ' ').trim();
      if ([...line].length <= words.longest) return { ok: true, value: line };
      return {
        ok: false,
        problem: `“${excerpt(line)}” has ${[...line].length} characters; the card has room for ${words.longest}`,
        wayOut: 'Shorten it.',
      };
    },
    { label: words.label, help: words.help, kind: 'text', examples: words.examples },
  );
}

export const careCardCalculator = calculator({
  id: 'care-card',
  title: 'Care card',
  question: 'What do I hand to whoever takes the board home?',
  summary:
    'Takes wood, finish, resin and the name of the shop, and writes a card for the buyer: washing, drying, renewing and how often, what never to do, allergies and what may be said of food. Prints four to a sheet.',
  inputs: z.strictObject({
    species: speciesField({ label: 'Wood' }),
    finish: finishChoice({ label: 'Finish' }),
    resinPlace: resinPlaceField(),
    market: marketField(),
    food: z.optional(
      choiceField({
        label: 'Food on it',
        options: [
          { value: 'dry', label: 'Dry: bread, biscuits' },
          { value: 'moist', label: 'Moist: fruit, vegetables' },
          { value: 'fatty', label: 'Fatty: cheese, sausage' },
        ],
        examples: ['dry', 'moist'],
      }),
    ),
    papers: papersField(),
    shop: z.optional(
      lineField({
        label: 'Name of the shop',
        help: `Up to ${longest.shop} characters.`,
        longest: longest.shop,
        examples: ['Lakeside workshop'],
      }),
    ),
    note: z.optional(
      lineField({
        label: 'A line of your own',
        help: `Up to ${longest.note} characters, printed as you type it.`,
        longest: longest.note,
        examples: ['Bring it back for new oil, any Saturday.'],
      }),
    ),
  }),
  example: {
    metric: {
      species: 'sugar-maple',
      finish: 'tung-oil',
      resinPlace: 'beside-food',
      market: 'eu',
      food: 'dry',
      papers: 'none',
      shop: 'Lakeside workshop',
      note: 'Bring it back for new oil, any Saturday.',
    },
    inch: {
      species: 'sugar-maple',
      finish: 'tung-oil',
      resinPlace: 'beside-food',
      market: 'us',
      food: 'dry',
      papers: 'none',
      shop: 'Lakeside workshop',
      note: 'Bring it back for new oil, any Saturday.',
    },
  },
  figures: {
    upkeep: { label: 'Renew the finish about every' },
    fullCure: { label: 'Hand it over so long after the last coat' },
    lines: { label: 'Lines of care on the card' },
  },
  compute(inputs) {
    const read = cardInputs(inputs);
    const { card, statement } = cardOf(read);
    return answer({
      figures: figuresOf(read.finish, card),
      tables: [cardTable(card)],
      cautions: cautionsOf(card, read.finish, statement),
      evidence: evidenceOf(card, statement),
    });
  },
});

type Inputs = z.output<(typeof careCardCalculator)['inputs']>;

/** What was asked, with what a choice stands for in its place. */
export function cardInputs(inputs: Inputs): CardInputs {
  const { market, food, species, finish, resinPlace, papers, shop, note } = inputs;
  return {
    market,
    food: food ?? 'dry',
    species,
    finish: chosenFinish(finish),
    place: resinPlace === 'none' ? undefined : resinPlace,
    declared: { finish: papers === 'finish' || papers === 'both', resin: papers === 'resin' || papers === 'both' },
    shop,
    note,
  };
}

function figuresOf(finish: Finish | undefined, card: Card): Record<string, Figure> {
  const { upkeep, fullCure } = finish?.figures ?? { upkeep: null, fullCure: null };
  const times: Record<string, Figure> = {
    ...(upkeep && finish?.wiped ? { upkeep: { ...upkeep, label: 'Renew the finish about every' } } : {}),
    ...(fullCure ? { fullCure: { ...fullCure, label: 'Hand it over so long after the last coat' } } : {}),
  };
  if (Object.keys(times).length > 0) return times;
  return {
    lines: {
      label: 'Lines of care on the card',
      value: card.sections.reduce((count, { lines }) => count + lines.length, 0),
      unit: '1',
      basis: 'shop-practice',
    },
  };
}

function cardTable({ shop, made, purpose, sections, allergies, note, foot }: Card): ResultTable {
  const rows: (readonly [string, string])[] = [
    ...(shop ? [['Shop', shop] as const] : []),
    ...made.map((line) => ['Board', line] as const),
    ['Use', purpose],
    ...sections.flatMap(({ heading, lines }) => lines.map((line) => [heading, line.text] as const)),
    ...allergies.map((line) => ['Allergies', line] as const),
    ...(note ? [['Note', note] as const] : []),
    ...foot.map((line) => ['Foot', line] as const),
  ];
  return {
    id: 'card',
    title: 'Words of the card',
    columns: [
      { id: 'part', label: 'Part' },
      { id: 'words', label: 'Words' },
    ],
    rows,
    basis: 'shop-practice',
  };
}

function cautionsOf(card: Card, finish: Finish | undefined, { level, summary }: FoodStatement): Caution[] {
  const promise = promiseIn(`${card.shop} ${card.note}`);
  const known = (id: string): Caution[] => {
    const caution = cautionById(id);
    return caution ? [caution] : [];
  };
  return [
    ...(promise
      ? [
          {
            id: 'own-promise',
            level: 'warning' as const,
            text: `Your own words say “${promise}”. Nothing here shows that it is true; leave it out.`,
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...(level === 'better-not'
      ? [
          {
            id: 'food-level',
            level: 'warning' as const,
            text: `${summary}. The card says what the board is still good for.`,
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...(finish?.rags.hazard === 'self-heating' && finish.wiped ? known('oily-rags') : []),
    ...(finish?.figures.fullCure ? known('finish-full-cure') : []),
  ];
}

function evidenceOf(card: Card, { rules }: FoodStatement): EvidenceNote[] {
  const cited = card.sections.flatMap(({ lines }) => lines.filter((line) => line.citation));
  return [
    ...cited.map(({ text, citation }) => ({ text, basis: 'published' as const, ...(citation ? { citation } : {}) })),
    ...rules.map(({ short, title, basis, citation }) => ({ text: `${short}: ${title}.`, basis, citation })),
    {
      text: 'Washing, drying, renewing and what never to do: common practice, but for the lines above.',
      basis: 'shop-practice' as const,
    },
  ];
}
