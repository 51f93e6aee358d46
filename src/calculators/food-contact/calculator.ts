import { answer } from '../../model/evidence/index.ts';
import { finishPartOf, resinPartOf } from '../../model/finish/food-board.ts';
import {
  type BoardForFood,
  foodStatement,
  handOverFromLastWork,
  handOverFromToday,
  type UntoldPart,
} from '../../model/food/index.ts';
import { woodPartOf } from '../../model/species/wood-part.ts';
import { calculator } from '../kit/calculator.ts';
import { chosenFinish } from '../kit/finish-choice-field.ts';
import { roomOf } from '../kit/food-fields.ts';
import { cautionsOf, tooSoon } from './cautions.ts';
import { labelDocuments } from './document.ts';
import { evidenceOf } from './evidence.ts';
import { figures, figuresOf } from './figures.ts';
import { example, inputs } from './inputs.ts';
import { tablesOf } from './tables.ts';
import { unknownsOf, verdictOf } from './verdict.ts';

export const foodContactCalculator = calculator({
  id: 'food-contact',
  title: 'What the label may say',
  question: 'What may I say of this board and food, and when may it leave the shop?',
  summary:
    'From wood, resin, finish, market and food: the days still to wait, what the label may say, and the papers to ask for.',
  heavy: 'at first',
  inputs,
  example,
  figures,
  compute({
    market,
    food,
    species,
    secondSpecies,
    finish,
    daysSinceCoat,
    fullCure,
    resinPlace,
    coatedLength,
    resin,
    daysSincePour,
    papers,
    ...given
  }) {
    const where = roomOf(given);
    if (!where.ok) return where;
    const chosen = chosenFinish(finish);
    const holds = (part: 'finish' | 'resin') => papers === part || papers === 'both';
    const untold: UntoldPart[] = [
      ...(species ? [] : ['wood' as const]),
      ...(finish === undefined ? ['finish' as const] : []),
      ...(resinPlace === undefined ? ['resin' as const] : []),
    ];
    const board: BoardForFood = {
      market,
      food,
      bare: finish === 'none',
      untold,
      ...(species ? { wood: woodPartOf(species) } : {}),
      ...(secondSpecies && secondSpecies.id !== species?.id ? { secondWood: woodPartOf(secondSpecies) } : {}),
      ...(chosen
        ? {
            finish: finishPartOf(chosen, {
              declared: holds('finish'),
              daysSince: daysSinceCoat,
              fullCureDays: fullCure,
            }),
          }
        : {}),
      ...(resinPlace && resinPlace !== 'none'
        ? {
            resin: resinPartOf(resin, resinPlace, {
              coatedLength,
              declared: holds('resin'),
              daysSince: daysSincePour ?? daysSinceCoat,
              room: where.value,
            }),
          }
        : {}),
    };
    const statement = foodStatement(board);
    const verdict = verdictOf(statement);
    // A part that was not told, or days that nobody knows, leave no label, no figure and no day.
    const known = unknownsOf(statement).length === 0;
    const free = verdict.level === 'good' || verdict.level === 'care';
    const timeline = free ? (handOverFromToday(statement) ?? handOverFromLastWork(statement, chosen?.name)) : undefined;
    return answer({
      verdict,
      figures: known ? figuresOf(board, statement) : {},
      tables: tablesOf(board, statement),
      ...(timeline ? { timeline } : {}),
      ...(known ? { documents: labelDocuments(board, statement) } : {}),
      cautions: [...tooSoon(chosen, fullCure), ...cautionsOf(board, statement)],
      evidence: evidenceOf(board, statement),
    });
  },
});
