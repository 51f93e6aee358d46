import { answer, type EvidenceNote } from '../../model/evidence/index.ts';
import { type FoodStatement, handOverFromLastWork } from '../../model/food/index.ts';
import { calculator } from '../kit/calculator.ts';
import { chosenFinish } from '../kit/finish-choice-field.ts';
import { roomOf } from '../kit/food-fields.ts';
import { type Card, type CardInputs, cardOf } from './card.ts';
import { cautionsOf } from './cautions.ts';
import { cardDocument } from './document.ts';
import { figures, figuresOf } from './figures.ts';
import { example, type Inputs, inputs } from './inputs.ts';
import { verdictOf } from './verdict.ts';

export const careCardCalculator = calculator({
  id: 'care-card',
  title: 'Care card',
  question: 'What do I hand to whoever takes the board home?',
  summary:
    'From wood, finish, resin and the name of your shop: a card of care for the buyer, in letters that can be read, two or four to a sheet.',
  heavy: 'at first',
  inputs,
  example,
  figures,
  compute(asked) {
    const where = roomOf(asked);
    if (!where.ok) return where;
    const read = cardInputs(asked);
    const { card, statement } = cardOf(read);
    const verdict = verdictOf(card, read, statement);
    const free = verdict.level === 'good' || verdict.level === 'care';
    const timeline = free ? handOverFromLastWork(statement, read.finish?.name) : undefined;
    return answer({
      verdict,
      figures: figuresOf(read, card, statement),
      ...(timeline ? { timeline } : {}),
      documents: [cardDocument(card)],
      cautions: cautionsOf(card, read, statement),
      evidence: evidenceOf(card, statement),
    });
  },
});

/** What was asked, with what a choice stands for in its place. */
function cardInputs(asked: Inputs): CardInputs {
  const { market, food, species, secondSpecies, finish, resinPlace, coatedLength, resin, papers, shop, note } = asked;
  const where = roomOf(asked);
  return {
    market,
    food: food ?? 'dry',
    species,
    secondSpecies: secondSpecies?.id === species.id ? undefined : secondSpecies,
    finish: chosenFinish(finish),
    place: resinPlace === 'none' ? undefined : resinPlace,
    coatedLength,
    resin,
    room: where.ok ? where.value : undefined,
    declared: { finish: papers === 'finish' || papers === 'both', resin: papers === 'resin' || papers === 'both' },
    shop,
    note,
  };
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
