import { describe, expect, test } from 'vitest';
import { foodContactCalculator } from '../../src/calculators/food-contact/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import { chosenFinish, finishPartOf, resinPartOf } from '../../src/calculators/kit/food-board.ts';
import { woodPartOf } from '../../src/calculators/kit/wood-part.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { finishIds } from '../../src/model/finish/types.ts';
import {
  type BoardForFood,
  foodKinds,
  foodLevels,
  foodStatement,
  markets,
  resinPlaces,
} from '../../src/model/food/index.ts';
import { resinKinds } from '../../src/model/resin/kinds.ts';
import { allSpecies } from '../../src/model/species/index.ts';

const plain = { market: 'us', food: 'moist', species: 'sugar-maple', finish: 'mineral-oil' };
const calc = (raw: Record<string, unknown> = {}): Result => {
  const outcome = answer(foodContactCalculator, { ...plain, ...raw });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const rows = (result: Result, id: string) => result.tables?.find((table) => table.id === id)?.rows ?? [];
const label = (result: Result) => rows(result, 'label').flat().join(' ');

describe('every wood, finish, resin and place, in both markets', () => {
  const claims = /\bsafe(?:ly|ty)?\b|approved|non-?toxic|food.grade|harmless/i;

  test('gives a label without a promise, and the strictest of its parts', () => {
    let count = 0;
    for (const species of allSpecies) {
      const wood = woodPartOf(species);
      for (const id of [...finishIds, 'none'] as const) {
        const finish = chosenFinish(id);
        for (const place of [...resinPlaces, undefined]) {
          for (const market of markets) {
            const food = foodKinds[count % foodKinds.length] ?? 'dry';
            const resin = resinKinds[count % resinKinds.length];
            const declared = count % 3 === 0;
            const board: BoardForFood = {
              market,
              food,
              wood,
              bare: finish === undefined,
              ...(finish ? { finish: finishPartOf(finish, { declared, daysSince: 60 }) } : {}),
              ...(place ? { resin: resinPartOf(resin, place, { declared, daysSince: 60 }) } : {}),
            };
            const { maySay, level, findings } = foodStatement(board);
            const said = maySay.join(' ');
            if (claims.test(said) || /undefined|null/.test(said)) throw new Error(`${species.id}, ${id}: ${said}`);
            const worst = Math.max(...findings.map((finding) => foodLevels.indexOf(finding.level)));
            if (foodLevels.indexOf(level) !== worst) throw new Error(`${species.id}, ${id}: ${level}`);
            if (foodLevels.indexOf(level) < foodLevels.indexOf(species.food.level as 'usual'))
              throw new Error(`${species.id} is freer than its own assessment`);
            count += 1;
          }
        }
      }
    }
    expect(count).toBe(allSpecies.length * (finishIds.length + 1) * (resinPlaces.length + 1) * markets.length);
  });
});

describe('days', () => {
  test('a drying oil is waited for; one that never dries is not', () => {
    expect(calc({ finish: 'tung-oil', daysSinceCoat: '10' }).figures.daysLeft?.value).toBe(18);
    expect(calc().figures.daysLeft?.value).toBe(0);
  });

  test('the sheet of the finish wins over its kind', () => {
    const result = calc({ finish: 'tung-oil', daysSinceCoat: '10', fullCure: '40' });
    expect(result.figures.daysLeft?.value).toBe(30);
    expect(result.figures.finishCure?.basis).toBe('supplier-sheet');
  });

  test('resin waits from its pour, or from the last coat where no pour is told', () => {
    const poured = { resinPlace: 'underside', daysSinceCoat: '5' };
    expect(calc(poured).figures.daysLeft?.value).toBe(2);
    expect(calc({ ...poured, daysSincePour: '6' }).figures.daysLeft?.value).toBe(1);
  });

  test('a data sheet that gives days for food is waited for', () => {
    const sheet = JSON.stringify({ name: 'Food safe resin', mixByVolume: '2:1', foodService: '30 d' });
    const result = calc({ resinPlace: 'underside', resin: sheet, daysSincePour: '10' });
    expect(result.figures.daysLeft?.value).toBe(20);
    // What the reader calls the sheet never comes onto the label.
    expect(label(result)).toContain('epoxy resin');
    expect(label(result)).not.toMatch(/safe/);
  });

  test('without the days since the last coat there is no count, and it says so', () => {
    const result = calc({ finish: 'tung-oil' });
    expect(result.figures.daysLeft).toBeUndefined();
    expect(result.cautions[0]?.text).toContain('Not before full cure');
  });
});

describe('what it shows', () => {
  test('the limit is that of the market, and never both', () => {
    const resin = { resinPlace: 'under-food' };
    expect(calc(resin).figures.limit).toMatchObject({ value: 18, unit: 'mg/[sin_i]' });
    expect(calc({ ...resin, market: 'eu' }).figures.limit).toMatchObject({ value: 10, unit: 'mg/dm2' });
    expect(calc().figures.limit).toBeUndefined();
    expect(
      calc(resin)
        .evidence.map(({ text }) => text)
        .join(' '),
    ).toContain('cannot be set beside each other');
  });

  test('rules of the market stand in the table, with the copy that was read', () => {
    const named = rows(calc({ market: 'eu', resinPlace: 'under-food' }), 'rules').map(([rule]) => rule);
    expect(named).toContain('Regulation (EU) 2024/3190');
    expect(named.filter((rule) => String(rule).includes('CFR'))).toEqual([]);
    const [table] = (calc().tables ?? []).filter(({ id }) => id === 'rules');
    expect(table?.columns.map(({ id }) => id)).toEqual(['rule', 'asks']);
  });

  test('bare wood, no finish told and a finish are three things', () => {
    expect(label(calc({ finish: 'none' }))).toContain('No finish: bare wood.');
    expect(label(calc({ finish: '' }))).not.toMatch(/finish/i);
    expect(label(calc())).toContain('Finished with mineral oil.');
  });

  test('walnut oil on walnut names the nut once on the label', () => {
    const result = calc({ species: 'black-walnut', finish: 'walnut-oil', daysSinceCoat: '60' });
    expect(label(result).match(/tree nut/g)).toHaveLength(1);
    expect(rows(result, 'allergens')).toHaveLength(2);
  });

  test('declarations are taken for the part that they are for', () => {
    const board = { market: 'eu', resinPlace: 'beside-food', daysSinceCoat: '60' };
    const level = (papers: string) => calc({ ...board, papers }).cautions[0]?.text;
    expect(level('none')).toMatch(/^Ask the maker first, because of the resin and the finish/);
    expect(level('finish')).toMatch(/^Ask the maker first, because of the resin\./);
    expect(level('both')).toMatch(/^With care, because of the resin\./);
  });

  test('conditions of a finish that only its kind vouches for are shown; a declaration replaces them', () => {
    expect(rows(calc(), 'conditions').flat().join(' ')).toContain('172.878');
    expect(rows(calc({ papers: 'finish' }), 'conditions')).toEqual([]);
  });
});
