import * as z from 'zod/mini';
import { cautionById } from '../../model/evidence/cautions.ts';
import { answer, type Caution, type EvidenceNote, type Figure } from '../../model/evidence/index.ts';
import type { FoodStatement } from '../../model/food/index.ts';
import { excerpt } from '../../model/quantity/index.ts';
import { calculator } from '../kit/calculator.ts';
import { choiceField, readField, shownWhen } from '../kit/fields.ts';
import { chosenFinish, finishChoice } from '../kit/finish-choice-field.ts';
import { marketField, papersField, resinPlaceField, roomFields, roomOf } from '../kit/food-fields.ts';
import { resinField } from '../kit/resin-field.ts';
import { speciesField } from '../kit/species-field.ts';
import { type Card, type CardInputs, cardOf } from './card.ts';
import { cardDocument } from './document.ts';
import { heldBackWords, verdictOf } from './verdict.ts';

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

const poured = { field: 'resinPlace', is: ['under-food', 'beside-food', 'underside'] };
const room = roomFields();

export const careCardCalculator = calculator({
  id: 'care-card',
  title: 'Care card',
  question: 'What do I hand to whoever takes the board home?',
  summary: 'From wood, finish, resin and the name of your shop: a card of care for the buyer, four to a sheet.',
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
    resin: shownWhen(
      z.optional(resinField({ label: 'Resin', help: 'For the day of handing over. A kind, or your own data sheet.' })),
      poured,
    ),
    roomTemperature: shownWhen(room.roomTemperature, poured),
    nightTemperature: shownWhen(room.nightTemperature, poured),
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
        help: `Up to ${longest.note} characters, printed as you type it unless it promises what nobody has shown.`,
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
      resin: 'slow-casting-2-1',
      roomTemperature: '20 °C',
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
      resin: 'slow-casting-2-1',
      roomTemperature: '68 °F',
      market: 'eu',
      food: 'dry',
      papers: 'none',
      shop: 'Lakeside workshop',
      note: 'Bring it back for new oil, any Saturday.',
    },
  },
  figures: {
    fullCure: { label: 'Hand it over so long after the last coat' },
    resinCure: { label: 'And so long after the last pour' },
    upkeep: { label: 'Months from one renewal to the next, in a home' },
    lines: { label: 'Lines of care on the card' },
  },
  compute(inputs) {
    const where = roomOf(inputs);
    if (!where.ok) return where;
    const read = cardInputs(inputs);
    const { card, statement } = cardOf(read);
    return answer({
      verdict: verdictOf(card, read, statement),
      figures: figuresOf(read, card, statement),
      documents: [cardDocument(card)],
      cautions: cautionsOf(card, read, statement),
      evidence: evidenceOf(card, statement),
    });
  },
});

type Inputs = z.output<(typeof careCardCalculator)['inputs']>;

/** What was asked, with what a choice stands for in its place. */
export function cardInputs(inputs: Inputs): CardInputs {
  const { market, food, species, finish, resinPlace, resin, papers, shop, note } = inputs;
  const where = roomOf(inputs);
  return {
    market,
    food: food ?? 'dry',
    species,
    finish: chosenFinish(finish),
    place: resinPlace === 'none' ? undefined : resinPlace,
    resin,
    room: where.ok ? where.value : undefined,
    declared: { finish: papers === 'finish' || papers === 'both', resin: papers === 'resin' || papers === 'both' },
    shop,
    note,
  };
}

const month = 30.4 * 86_400;

function figuresOf({ finish, resin }: CardInputs, card: Card, { waits }: FoodStatement): Record<string, Figure> {
  const { upkeep, fullCure } = finish?.figures ?? { upkeep: null, fullCure: null };
  // A resin of which no days are known leaves no day to hand the board over, whatever its finish says.
  const known = waits.every(({ fullCureDays }) => fullCureDays !== null);
  const pour = known ? waits.find(({ name }) => name === resin?.name) : undefined;
  const months = (seconds: number) => Math.max(1, Math.round(seconds / month));
  const times: Record<string, Figure> = {
    ...(fullCure && known ? { fullCure: { ...fullCure, label: 'Hand it over so long after the last coat' } } : {}),
    ...(pour?.fullCureDays
      ? {
          resinCure: {
            label: 'And so long after the last pour',
            value: pour.fullCureDays,
            unit: 'd',
            basis: pour.basis,
            note: pour.text,
          },
        }
      : {}),
    ...(upkeep && finish?.wiped
      ? {
          upkeep: {
            ...upkeep,
            label: 'Months from one renewal to the next, in a home',
            value: months(upkeep.value),
            ...(upkeep.low === undefined || upkeep.high === undefined
              ? {}
              : { low: months(upkeep.low), high: months(upkeep.high) }),
            unit: '1',
          },
        }
      : {}),
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

function cautionsOf(card: Card, { finish, place, resin }: CardInputs, statement: FoodStatement): Caution[] {
  const { level, summary, waits } = statement;
  const heldBack = heldBackWords(card);
  const known = (id: string): Caution[] => {
    const caution = cautionById(id);
    return caution ? [caution] : [];
  };
  const never = waits.find((wait) => wait.never);
  return [
    ...(never
      ? [
          {
            id: 'never-cured',
            level: 'danger' as const,
            own: true,
            text: `Do not hand it over. ${never.text}`,
            basis: never.basis,
          },
        ]
      : []),
    ...(heldBack
      ? [
          {
            id: 'own-promise',
            level: 'warning' as const,
            own: true,
            text: `${heldBack} Leave it out, and the rest of your words is printed.`,
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...(level === 'better-not'
      ? [
          {
            id: 'food-level',
            level: 'warning' as const,
            own: true,
            text: `${summary}. The card says what the board is still good for.`,
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...(place
      ? [
          {
            id: 'resin-cure-first',
            level: 'warning' as const,
            own: true,
            text: resin
              ? 'Hand it over after the resin’s full cure, whatever the finish needs: count from the last pour.'
              : 'Hand it over only after the full cure on the resin’s own sheet: it was not named, so no day is given.',
            why: 'A finish that never cures, such as mineral oil, is ready within a day. The resin under or beside it is not: what has not reacted can make skin allergic and pass into food.',
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...(finish?.rags.hazard === 'self-heating' ? known('oily-rags') : []),
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
