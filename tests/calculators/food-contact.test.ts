import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foodContactCalculator } from '../../src/calculators/food-contact/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import { documentText } from '../../src/calculators/kit/document-text.ts';
import { chosenFinish } from '../../src/calculators/kit/finish-choice-field.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { finishPartOf, resinPartOf } from '../../src/model/finish/food-board.ts';
import { finishIds } from '../../src/model/finish/kinds.ts';
import {
  type BoardForFood,
  foodKinds,
  foodLevels,
  foodStatement,
  markets,
  resinPlaces,
} from '../../src/model/food/index.ts';
import { defaultUnits, formatQuantity, inReaderUnits } from '../../src/model/quantity/index.ts';
import { resinKinds } from '../../src/model/resin/kinds.ts';
import { allSpecies } from '../../src/model/species/index.ts';
import { woodPartOf } from '../../src/model/species/wood-part.ts';
import { addresses } from './arbitrary.ts';
import { runs } from './runs.ts';

const plain = { market: 'us', food: 'moist', species: 'sugar-maple', finish: 'mineral-oil', resinPlace: 'none' };
const casting = { resin: 'slow-casting-2-1' };
const calc = (raw: Record<string, unknown> = {}): Result => {
  const outcome = answer(foodContactCalculator, { ...plain, ...raw });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const rows = (result: Result, id: string) => result.tables?.find((table) => table.id === id)?.rows ?? [];
const label = (result: Result) =>
  (result.documents ?? []).map((document) => documentText(document, defaultUnits).replaceAll('\n', ' ')).join(' ');

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

  test('the verdict counts them once', () => {
    expect(calc({ finish: 'tung-oil', daysSinceCoat: '10' }).verdict).toEqual({
      level: 'stop',
      text: 'Not yet: 18 days more until everything has cured. Label then: For serving bread, fruit and vegetables.',
    });
    expect(calc({ market: 'eu', finish: 'tung-oil', daysSinceCoat: '10' }).verdict?.text).toBe(
      'Not yet: 18 days more until everything has cured. After that: ask the maker first, because of the finish (Raw tung oil). Label then: For serving on a plate or paper.',
    );
  });

  test('the sheet of the finish wins over its kind', () => {
    const result = calc({ finish: 'tung-oil', daysSinceCoat: '10', fullCure: '40' });
    expect(result.figures.daysLeft?.value).toBe(30);
    expect(result.figures.finishCure?.basis).toBe('supplier-sheet');
  });

  test('resin waits from its pour, or from the last coat where no pour is told', () => {
    const poured = { ...casting, resinPlace: 'underside', daysSinceCoat: '5' };
    expect(calc(poured).figures.daysLeft?.value).toBe(2);
    expect(calc({ ...poured, daysSincePour: '6' }).figures.daysLeft?.value).toBe(1);
  });

  test('a data sheet that gives days for food is waited for', () => {
    const sheet = JSON.stringify({
      name: 'Food safe resin',
      mixByVolume: '2:1',
      cure: '7 d',
      foodService: '30 d',
      cureTemperature: '22 °C',
    });
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

describe('when it may go', () => {
  const days = (result: Result) => result.timeline?.events.map(({ id, at }) => [id, at / 86_400]);

  test('today, where everything has cured; counted from the last coat where nobody said when that was', () => {
    expect(calc().timeline?.zero).toBe('today');
    expect(days(calc())).toEqual([
      ['food', 0],
      ['hand-over', 0],
    ]);
    const open = calc({ ...casting, finish: 'tung-oil', resinPlace: 'underside' });
    expect(open.timeline?.zero).toBe('the last coat');
    expect(days(open)).toEqual([
      ['food', 28],
      ['hand-over', 28],
    ]);
  });

  test('no day stands beside a stop or beside what is not known', () => {
    for (const raw of [
      { finish: 'tung-oil', daysSinceCoat: '10' },
      { species: '' },
      { finish: 'shellac', food: 'hot' },
    ])
      expect(calc(raw).timeline, JSON.stringify(raw)).toBeUndefined();
  });

  test('days are written as days, none and two of them too', () => {
    const { daysLeft } = calc().figures;
    expect(formatQuantity(daysLeft?.value ?? 1, daysLeft?.unit ?? '', defaultUnits)).toBe('0 d');
    const two = calc({ ...casting, resinPlace: 'underside', daysSinceCoat: '5' }).figures.daysLeft;
    expect(formatQuantity(two?.value ?? 0, two?.unit ?? '', defaultUnits)).toBe('2 d');
  });
});

describe('what it shows', () => {
  test('the limit is that of the market, in one unit for both, the other beside it', () => {
    const resin = { ...casting, resinPlace: 'under-food' };
    const { limit } = calc(resin).figures;
    // 21 CFR 175.300 (c)(4) prints 18 mg/in²; an inch is 0.254 dm.
    expect(limit?.value).toBeCloseTo(18 / 0.254 ** 2, 9);
    expect(limit?.unit).toBe('mg/dm2');
    expect(inReaderUnits(limit?.note ?? '', defaultUnits)).toMatch(/^18 mg\/in² as the rule prints it/);
    const union = calc({ ...resin, market: 'eu' }).figures.limit;
    // (EU) 10/2011, Article 12: 10 mg/dm².
    expect(union).toMatchObject({ value: 10, unit: 'mg/dm2' });
    expect(inReaderUnits(union?.note ?? '', defaultUnits)).toMatch(/^0\.645 mg\/in²: overall migration/);
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
    expect(label(calc({ finish: '' }))).toBe('');
    expect(label(calc())).toContain('Finished with mineral oil.');
  });

  test('walnut oil on walnut names the nut once on the label', () => {
    const result = calc({ species: 'black-walnut', finish: 'walnut-oil', daysSinceCoat: '60' });
    expect(label(result).match(/tree nut/g)).toHaveLength(1);
    expect(rows(result, 'allergens')).toHaveLength(2);
  });

  test('declarations are taken for the part that they are for', () => {
    const board = { ...casting, market: 'eu', resinPlace: 'beside-food', daysSinceCoat: '60' };
    const level = (papers: string) => calc({ ...board, papers }).cautions[0]?.text;
    expect(level('none')).toMatch(/^Ask the maker first, because of the resin \(.+\) and the finish \(.+\)\./);
    expect(level('finish')).toMatch(/^Ask the maker first, because of the resin \([^)]+\)\./);
    expect(level('both')).toMatch(/^With care, because of the resin \([^)]+\)\./);
  });

  test('conditions of a finish that only its kind vouches for are shown; a declaration replaces them', () => {
    expect(rows(calc(), 'conditions').flat().join(' ')).toContain('172.878');
    expect(rows(calc({ papers: 'finish' }), 'conditions')).toEqual([]);
  });
});

describe('what was not told', () => {
  const nothing = { species: '', finish: '', resinPlace: '' };
  test('nothing told is not the usual materials: no label, no days', () => {
    for (const [market, food] of [
      ['us', 'fatty'],
      ['eu', 'moist'],
    ]) {
      const result = calc({ ...nothing, market, food });
      expect(result.verdict).toMatchObject({ level: 'unknown' });
      expect(result.figures).toEqual({});
      expect(label(result)).toBe('');
      expect(result.cautions[0]?.text).toMatch(/^Not enough known/);
    }
  });
  test.each(['species', 'finish', 'resinPlace'])('%s alone leaves no label and no days', (part) => {
    const result = calc({ [part]: '' });
    expect(result.verdict?.level).toBe('unknown');
    expect(result.figures.daysLeft).toBeUndefined();
    expect(label(result)).toBe('');
  });
  test('all told, and nothing in the way, is good', () => {
    expect(calc().verdict).toMatchObject({ level: 'good' });
    expect(calc({ finish: 'none' }).verdict?.level).toBe('good');
  });
});

describe('the cure of the resin', () => {
  const sheet = (more: object) => JSON.stringify({ name: 'Ours', mixByVolume: '2:1', potLife: '6 h', ...more });
  const poured = (daysSincePour: string, resin: string, more: object = {}) =>
    calc({ resinPlace: 'beside-food', daysSincePour, resin, ...more });

  test('is waited for though the sheet says food sooner', () => {
    const early = sheet({ cure: '7 d', foodService: '3 d', cureTemperature: '22 °C' });
    expect(poured('4', early, { roomTemperature: '22 °C' }).figures.daysLeft?.value).toBe(3);
    expect(poured('4', early).figures.daysLeft?.value).toBe(3);
  });
  test('of an oven is not had on a shelf', () => {
    const baked = sheet({ cure: '4 h', cureTemperature: '60 °C' });
    const untold = poured('1', baked);
    expect(untold.verdict?.level).toBe('unknown');
    expect(untold.figures.daysLeft).toBeUndefined();
    const shelf = poured('1', baked, { roomTemperature: '20 °C' });
    expect(shelf.verdict?.level).toBe('stop');
    expect(shelf.figures.daysLeft).toBeUndefined();
  });
  test('counts cold nights, by the cure clock', () => {
    const april = { roomTemperature: '20 °C', nightTemperature: '12 °C' };
    expect(poured('9', 'slow-casting-2-1', { roomTemperature: '22 °C' }).figures.daysLeft?.value).toBe(0);
    expect(poured('9', 'slow-casting-2-1', april).figures.daysLeft?.value).toBeGreaterThan(5);
    expect(poured('90', 'slow-casting-2-1', { roomTemperature: '8 °C' }).verdict?.level).toBe('stop');
  });
  test('of a resin that was not named is not guessed', () => {
    const unnamed = poured('90', '');
    expect(unnamed.verdict?.level).toBe('unknown');
    expect(unnamed.figures).toEqual({});
    expect(label(unnamed)).toBe('');
  });
  test('a finish whose sheet claims far less than is usual is asked about', () => {
    const ids = (fullCure: string) =>
      calc({ finish: 'tung-oil', daysSinceCoat: '3', fullCure }).cautions.map(({ id }) => id);
    expect(ids('1')).toContain('cure-shorter-than-usual');
    expect(ids('28')).not.toContain('cure-shorter-than-usual');
    expect(answer(foodContactCalculator, { ...plain, finish: 'tung-oil', fullCure: '0' }).ok).toBe(false);
  });
});

describe('a board of two woods', () => {
  test('names both on the label, and no code that names one of them', () => {
    expect(label(calc())).toContain('a wood that the FDA Food Code names');
    const both = label(calc({ secondSpecies: 'black-cherry' }));
    expect(both).toMatch(/Made of [a-z ]*maple and [a-z ]*cherry\./);
    expect(both).not.toContain('FDA Food Code names');
    expect(calc({ secondSpecies: 'sugar-maple' })).toEqual(calc());
  });
  test('is judged by the stricter, whichever comes first', () => {
    for (const { id } of allSpecies) {
      const alone = [calc(), calc({ species: id })].map(({ verdict }) => verdict?.level);
      const worst = (['stop', 'unknown', 'care', 'good'] as const).find((level) => alone.includes(level));
      for (const [species, secondSpecies] of [
        ['sugar-maple', id],
        [id, 'sugar-maple'],
      ])
        expect(calc({ species, secondSpecies }).verdict?.level, `${species}, ${secondSpecies}`).toBe(worst);
    }
  });
  test('says what may matter to somebody with an allergy of either', () => {
    const told = (raw: Record<string, unknown>) => rows(calc(raw), 'allergens').flat().join(' ');
    expect(told({})).not.toContain('nuts');
    expect(told({ secondSpecies: 'black-walnut' })).toContain('bears nuts');
  });
  test('is not known while its first wood was not told', () => {
    const { verdict, documents } = calc({ species: '', secondSpecies: 'sugar-maple' });
    expect(verdict?.level).toBe('unknown');
    expect(documents).toBeUndefined();
  });
});

describe('films and hot food', () => {
  const told = { ...casting, daysSinceCoat: '90', daysSincePour: '90' };
  test('papers do not take away what a film bears', () => {
    const film = { ...told, finish: 'film-epoxy', papers: 'both', food: 'fatty' };
    const result = calc(film);
    expect(result.verdict?.level).toBe('care');
    expect(rows(result, 'conditions').flat().join(' ')).toContain('not under hot dishes');
  });
  test('hot food lies on no film and beside no inlay', () => {
    for (const finish of ['film-epoxy', 'shellac', 'varnish'])
      expect(calc({ ...told, finish, papers: 'both', food: 'hot' }).verdict?.level, finish).toBe('stop');
    for (const resinPlace of ['under-food', 'beside-food'])
      expect(calc({ ...told, resinPlace, papers: 'both', food: 'hot' }).verdict?.level, resinPlace).toBe('stop');
  });
});

describe('any address', () => {
  const of = addresses(foodContactCalculator);
  test('a part that was not told, or days that nobody knows, leave no label, no days and nothing good', () => {
    fc.assert(
      fc.property(of, (raw) => {
        const outcome = answer(foodContactCalculator, raw);
        if (!outcome.ok) return;
        const { verdict, figures, documents, evidence } = outcome.value.result;
        const untold = ['species', 'finish', 'resinPlace'].some((name) => !raw[name]);
        if (untold) expect(verdict?.level).not.toBe('good');
        if (verdict?.level !== 'unknown' && !untold) return;
        expect(figures).toEqual({});
        expect(documents).toBeUndefined();
        expect(evidence.length).toBeGreaterThan(0);
      }),
      { numRuns: runs },
    );
  });
});
