import * as z from 'zod/mini';
import { answer } from '../../model/evidence/index.ts';
import { finishPartOf, resinPartOf } from '../../model/finish/food-board.ts';
import { type BoardForFood, foodStatement, type UntoldPart } from '../../model/food/index.ts';
import { woodPartOf } from '../../model/species/wood-part.ts';
import { calculator } from '../kit/calculator.ts';
import { choiceField, quantityField, shownWhen } from '../kit/fields.ts';
import { chosenFinish, finishChoice } from '../kit/finish-choice-field.ts';
import { marketField, papersField, resinPlaceField, roomFields, roomOf } from '../kit/food-fields.ts';
import { resinField } from '../kit/resin-field.ts';
import { speciesField } from '../kit/species-field.ts';
import { labelDocuments } from './document.ts';
import { cautionsOf, evidenceOf, figuresOf, tablesOf, tooSoon } from './result.ts';
import { unknownsOf, verdictOf } from './verdict.ts';

const poured = { field: 'resinPlace', is: ['under-food', 'beside-food', 'underside'] };

const days = (label: string, help: string, examples: readonly string[]) =>
  quantityField({ label, help, dimension: 'number', minimum: 0, maximum: 3650, examples });

const room = roomFields();

export const foodContactCalculator = calculator({
  id: 'food-contact',
  title: 'What the label may say',
  question: 'What may I say of this board and food, and when may it leave the shop?',
  summary:
    'From wood, resin, finish, market and food: the days still to wait, what the label may say, and the papers to ask for.',
  inputs: z.strictObject({
    market: marketField(),
    food: choiceField({
      label: 'Food on it',
      help: 'The hardest that it will meet in normal use.',
      options: [
        { value: 'dry', label: 'Dry: bread, biscuits' },
        { value: 'moist', label: 'Moist: fruit, vegetables' },
        { value: 'fatty', label: 'Fatty: cheese, sausage' },
        { value: 'hot', label: 'Hot' },
      ],
      examples: ['dry', 'moist', 'fatty', 'hot'],
    }),
    species: z.optional(speciesField({ label: 'Wood' })),
    finish: z.optional(finishChoice({ label: 'Finish' })),
    daysSinceCoat: z.optional(
      days('Days since the last coat', 'Warm and dry days; cold ones count half at most.', ['10', '0']),
    ),
    fullCure: z.optional(
      quantityField({
        label: 'Full cure by the sheet of your finish, days',
        help: 'Wins over the usual days of its kind. Not the time until it is dry to the touch.',
        dimension: 'number',
        minimum: 0.25,
        maximum: 3650,
        examples: ['28', '10'],
      }),
    ),
    resinPlace: resinPlaceField(),
    resin: shownWhen(z.optional(resinField({ label: 'Resin', help: 'A kind, or your own data sheet.' })), poured),
    daysSincePour: shownWhen(
      z.optional(days('Days since the last pour', 'Left empty: as many as since the last coat.', ['14', '7'])),
      poured,
    ),
    roomTemperature: shownWhen(room.roomTemperature, poured),
    nightTemperature: shownWhen(room.nightTemperature, poured),
    papers: papersField(),
  }),
  example: {
    metric: {
      market: 'eu',
      food: 'moist',
      species: 'sugar-maple',
      finish: 'tung-oil',
      daysSinceCoat: '10',
      resinPlace: 'beside-food',
      resin: 'slow-casting-2-1',
      daysSincePour: '14',
      roomTemperature: '20 °C',
      papers: 'none',
    },
    inch: {
      market: 'eu',
      food: 'moist',
      species: 'sugar-maple',
      finish: 'tung-oil',
      daysSinceCoat: '10',
      resinPlace: 'beside-food',
      resin: 'slow-casting-2-1',
      daysSincePour: '14',
      roomTemperature: '68 °F',
      papers: 'none',
    },
  },
  figures: {
    daysLeft: { label: 'Days still to wait until full cure' },
    finishCure: { label: 'Full cure of the finish' },
    resinCure: { label: 'Full cure of the resin' },
    limit: { label: 'Limit on what passes out of resin or film' },
  },
  compute({
    market,
    food,
    species,
    finish,
    daysSinceCoat,
    fullCure,
    resinPlace,
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
              declared: holds('resin'),
              daysSince: daysSincePour ?? daysSinceCoat,
              room: where.value,
            }),
          }
        : {}),
    };
    const statement = foodStatement(board);
    const known = unknownsOf(statement).length === 0;
    return answer({
      verdict: verdictOf(statement),
      figures: known ? figuresOf(board, statement) : {},
      tables: tablesOf(board, statement),
      ...(known ? { documents: labelDocuments(board, statement) } : {}),
      cautions: [...tooSoon(chosen, fullCure), ...cautionsOf(board, statement)],
      evidence: evidenceOf(board, statement),
    });
  },
});
