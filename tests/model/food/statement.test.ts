import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BoardForFood,
  foodKinds,
  foodLevels,
  foodRuleIds,
  foodStatement,
  markets,
  resinPlaces,
  strictestLevel,
} from '../../../src/model/food/index.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { boards, casting, listedOil, maple, mineralOil, sensitising } from './board.ts';

const plain: BoardForFood = { market: 'us', food: 'dry', wood: maple, finish: mineralOil };
const claims = /\bsafe(?:ly|ty)?\b|approved|non-?toxic|food.grade|harmless|certifies|guarantee/i;

describe('any board', () => {
  test('its label, findings and papers claim nothing', () => {
    fc.assert(
      fc.property(boards, (board) => {
        const { maySay, findings, summary, allergens } = foodStatement(board);
        for (const text of [...maySay, ...findings.map((each) => each.text), ...allergens.map((each) => each.text)]) {
          expect(text).not.toMatch(claims);
          expect(text).not.toMatch(/undefined|null|NaN|\.\./);
        }
        expect(summary).not.toMatch(/\bsafe\b|approved/);
      }),
    );
  });

  test('the strictest part wins', () => {
    fc.assert(
      fc.property(boards, (board) => {
        const { level, findings } = foodStatement(board);
        const worst = Math.max(0, ...findings.map((each) => foodLevels.indexOf(each.level)));
        expect(foodLevels.indexOf(level)).toBe(worst);
      }),
    );
  });

  test('taking a part away never makes it stricter', () => {
    fc.assert(
      fc.property(boards, (board) => {
        const whole = foodLevels.indexOf(foodStatement(board).level);
        for (const part of ['wood', 'resin', 'finish'] as const) {
          const { [part]: _taken, ...rest } = board;
          expect(foodLevels.indexOf(foodStatement(rest).level)).toBeLessThanOrEqual(whole);
        }
      }),
    );
  });

  test('a maker’s declaration never makes it stricter', () => {
    fc.assert(
      fc.property(boards, (board) => {
        const held = (declared: boolean): BoardForFood => ({
          ...board,
          ...(board.resin ? { resin: { ...board.resin, declared } } : {}),
          ...(board.finish ? { finish: { ...board.finish, declared } } : {}),
        });
        const [without, having] = [held(false), held(true)].map((each) => foodStatement(each).level);
        expect(strictestLevel([without ?? 'usual', having ?? 'usual'])).toBe(without);
      }),
    );
  });

  test('rules and papers are those of its market, and each rule stands once', () => {
    fc.assert(
      fc.property(boards, (board) => {
        const { rules, papers } = foodStatement(board);
        expect(rules.every(({ market }) => market === board.market)).toBe(true);
        expect(new Set(rules.map(({ id }) => id)).size).toBe(rules.length);
        for (const id of papers.flatMap((paper) => paper.rules)) {
          expect(foodRuleIds).toContain(id);
          expect(rules.map((rule) => rule.id)).toContain(id);
        }
      }),
    );
  });

  test('days left are whole, never negative, and unknown only where one part’s are', () => {
    fc.assert(
      fc.property(boards, (board) => {
        const { daysLeft, waits, level } = foodStatement(board);
        if (daysLeft === null) {
          expect(waits.some((wait) => wait.daysLeft === null)).toBe(true);
          return;
        }
        expect(Number.isInteger(daysLeft)).toBe(true);
        expect(daysLeft).toBe(Math.max(0, ...waits.map((wait) => wait.daysLeft ?? Number.NaN)));
        if (daysLeft > 0) expect(foodLevels.indexOf(level)).toBeGreaterThanOrEqual(foodLevels.indexOf('not-yet'));
      }),
    );
  });

  test('a board for decoration is never also for serving', () => {
    fc.assert(
      fc.property(boards, (board) => {
        const said = foodStatement(board).maySay;
        expect(said.filter((line) => /^For (?:serving|decoration)/.test(line))).toHaveLength(1);
      }),
    );
  });
});

describe('a plain board', () => {
  test('hard maple with listed oil is usual in the United States, and says what the Code says', () => {
    const statement = foodStatement(plain);
    expect(statement.level).toBe('usual');
    expect(statement.maySay[0]).toContain('sold as hard maple, a wood that the FDA Food Code names');
    expect(statement.daysLeft).toBe(0);
  });

  test('the same board in the Union asks the oil’s maker, and does not speak of the Code', () => {
    const statement = foodStatement({ ...plain, market: 'eu' });
    expect(statement.level).toBe('ask-the-maker');
    expect(statement.maySay.join(' ')).not.toContain('Food Code');
    expect(statement.maySay.join(' ')).toContain('Maker: (name and address)');
    expect(statement.mustNotSay.map(({ words }) => words)).toContain('for food contact, the glass-and-fork sign');
    expect(foodStatement(plain).mustNotSay.map(({ words }) => words)).toContain('FDA approved, FDA certified');
  });

  test('a wood that is not named by the Code is only named', () => {
    const { maySay } = foodStatement({ ...plain, wood: { ...maple, name: 'Black cherry', reasons: [] } });
    expect(maySay[0]).toBe('Made of black cherry.');
  });

  test('bare wood says so; a finish that is not told does not', () => {
    const { finish: _finish, ...untold } = plain;
    expect(foodStatement({ ...untold, bare: true }).maySay).toContain('No finish: bare wood.');
    expect(foodStatement(untold).maySay).not.toContain('No finish: bare wood.');
  });

  test('hot food asks for care', () => {
    expect(foodStatement({ ...plain, food: 'hot' }).level).toBe('with-care');
  });
});

describe('resin', () => {
  test.each([
    ['us', 'under-food', 'moist', 'ask-the-maker'],
    ['us', 'beside-food', 'dry', 'with-care'],
    ['us', 'beside-food', 'moist', 'ask-the-maker'],
    ['us', 'coat', 'dry', 'with-care'],
    ['us', 'coat', 'moist', 'ask-the-maker'],
    ['us', 'coat', 'hot', 'better-not'],
    ['us', 'underside', 'fatty', 'with-care'],
    ['us', 'under-food', 'hot', 'better-not'],
    ['eu', 'under-food', 'dry', 'better-not'],
    ['eu', 'beside-food', 'dry', 'ask-the-maker'],
    ['eu', 'coat', 'dry', 'ask-the-maker'],
    ['eu', 'underside', 'moist', 'with-care'],
  ] as const)('%s, %s, %s: %s', (market, place, food, level) => {
    const declaredOil = { ...mineralOil, declared: true };
    const board: BoardForFood = { market, food, wood: maple, finish: declaredOil, resin: { ...casting, place } };
    expect(foodStatement(board).level).toBe(level);
  });

  test('where it is not declared for food, the label keeps food off it', () => {
    for (const market of markets) {
      for (const place of resinPlaces) {
        for (const food of foodKinds) {
          const said = foodStatement({ ...plain, market, food, resin: { ...casting, place } }).maySay.join(' ');
          expect(said).toMatch(/keep food on the (?:bare )?wood|food on the other face only|keep food off it/);
        }
      }
    }
  });

  test('a coat is called one on the label, with the length of its end where that is known, and never an inlay', () => {
    const coat = { ...casting, place: 'coat' as const };
    const said = (resin: NonNullable<BoardForFood['resin']>, food: BoardForFood['food'] = 'dry') =>
      inReaderUnits(foodStatement({ ...plain, food, resin }).maySay.join(' '), defaultUnits);
    expect(said(coat)).toContain('The coated part is epoxy resin: keep food on the bare wood.');
    const end = said({ ...coat, coatedLength: 120 });
    expect(end).toContain('The coated end, 120 mm of the length, is epoxy resin: keep food on the bare wood.');
    expect(end).not.toMatch(/inlay/i);
    // A line that keeps food off the whole board sends it to no part of it.
    expect(said({ ...coat, coatedLength: 120 }, 'hot')).not.toContain('the inlay');
    expect(foodStatement({ ...plain, market: 'eu', resin: coat }).rules.map(({ id }) => id)).toContain('eu-2024-3190');
  });

  test('a declaration is spoken of as a paper to be seen, by the name that the market gives it', () => {
    const declared = { ...casting, declared: true };
    const said = (market: 'us' | 'eu') => foodStatement({ ...plain, market, resin: declared }).maySay.join(' ');
    expect(said('us')).toContain('letter on food contact can be seen at the shop');
    expect(said('eu')).toContain('declaration of compliance can be seen at the shop');
  });

  test('the Union’s rule on bisphenols and a full statement are asked for', () => {
    const statement = foodStatement({ ...plain, market: 'eu', resin: casting });
    expect(statement.rules.map(({ id }) => id)).toContain('eu-2024-3190');
    expect(statement.papers.find(({ id }) => id === 'bisphenols')?.rules).toContain('eu-2024-3190');
    expect(statement.mustNotSay.map(({ words }) => words)).toContain('BPA-free');
  });

  test('a film of epoxy stands as resin where food lies', () => {
    const film = {
      ...mineralOil,
      name: 'Epoxy film',
      epoxy: true,
      standing: { ...listedOil, level: 'ask-the-maker' as const },
    };
    expect(foodStatement({ ...plain, finish: film }).level).toBe('ask-the-maker');
    expect(foodStatement({ ...plain, market: 'eu', finish: film }).level).toBe('better-not');
  });

  test.each([
    ['dry', 'no test at the end'],
    ['moist', '120 °F (49 °C) for 24 hours'],
    ['fatty', 'heptane at 70 °F (21 °C) for 30 minutes, the result divided by five'],
    ['hot', 'water at 150 °F for 2 hours'],
  ] as const)('the test that an American report must show for %s food', (food, words) => {
    const { papers } = foodStatement({ ...plain, food, resin: casting });
    expect(papers.find(({ id }) => id === 'migration-test')?.says).toContain(words);
  });
});

describe('cure', () => {
  const oil = (daysSince?: number, fullCureDays?: number): BoardForFood => ({
    ...plain,
    finish: {
      ...mineralOil,
      name: 'Tung oil',
      cure: {
        basis: 'shop-practice',
        ...(daysSince === undefined ? {} : { daysSince }),
        ...(fullCureDays === undefined ? {} : { fullCureDays }),
      },
    },
  });

  test('days left are counted from the last coat', () => {
    expect(foodStatement(oil(10, 30))).toMatchObject({ daysLeft: 20, level: 'not-yet' });
    expect(foodStatement(oil(30, 30))).toMatchObject({ daysLeft: 0, level: 'usual' });
  });

  test('the longest wait counts', () => {
    const board = { ...oil(10, 30), resin: { ...casting, place: 'underside' as const } };
    expect(foodStatement(board).daysLeft).toBe(20);
  });

  test('what is not known is not guessed', () => {
    expect(foodStatement(oil(10))).toMatchObject({ daysLeft: null, level: 'not-enough-known' });
    expect(foodStatement(oil(undefined, 30))).toMatchObject({ daysLeft: null, level: 'not-enough-known' });
  });
});

test('what stays after the wait is said with it', () => {
  const board: BoardForFood = {
    ...plain,
    finish: { ...mineralOil, name: 'Tung oil', cure: { daysSince: 10, fullCureDays: 30, basis: 'shop-practice' } },
    resin: casting,
  };
  expect(foodStatement(board).summary).toBe(
    'Not yet cured. After that: ask the maker first, because of the resin (Slow casting epoxy)',
  );
});

test('days of cure that nobody told hide nothing of the rest', () => {
  const untold = {
    ...casting,
    place: 'beside-food' as const,
    cure: { fullCureDays: 7, basis: 'shop-practice' as const },
  };
  expect(foodStatement({ ...plain, resin: untold }).summary).toBe(
    'Not before full cure. After that: with care, because of the resin (Slow casting epoxy)',
  );
  const oil = { ...mineralOil, name: 'Tung oil', cure: { fullCureDays: 28, basis: 'shop-practice' as const } };
  expect(foodStatement({ ...plain, finish: oil }).summary).toBe('Not before full cure');
});

test('the tests of a report are spelt out once', () => {
  const oil = { ...mineralOil, name: 'Tung oil', cure: { fullCureDays: 28, basis: 'shop-practice' as const } };
  const said = (board: BoardForFood) =>
    foodStatement(board)
      .papers.map(({ says }) => says)
      .join(' ')
      .match(/Conditions of 21 CFR 175\.300\(d\)/g);
  expect(said({ ...plain, finish: oil })).toHaveLength(1);
  expect(said({ ...plain, finish: oil, resin: casting })).toHaveLength(1);
});

test.each([
  ['us', false, 'For serving bread, biscuits and whole fruit, on the wood only.'],
  ['us', true, 'For serving bread, fruit and vegetables.'],
  ['eu', false, 'For serving on a plate or paper.'],
  ['eu', true, 'For serving bread, fruit and vegetables.'],
] as const)('resin beside moist food, %s, declared %s: %s', (market, declared, words) => {
  const resin = { ...casting, place: 'beside-food' as const, declared };
  const finish = { ...mineralOil, declared: true };
  expect(foodStatement({ ...plain, market, food: 'moist', finish, resin }).maySay).toContain(words);
});

describe('wood that is better not', () => {
  test('a sensitiser keeps food off the bare wood, and warns whoever sands it', () => {
    const { maySay, allergens } = foodStatement({ ...plain, wood: sensitising });
    expect(maySay).toContain('For serving on a plate or paper, not for food on the bare wood.');
    expect(maySay.join(' ')).toContain('its dust can cause allergy');
    expect(allergens.map(({ id }) => id)).toEqual(['wood-sensitiser']);
  });

  test('a soft wood serves and is not cut on; a poisonous one holds no food', () => {
    const against = (rule: string): NonNullable<BoardForFood['wood']> => ({
      ...maple,
      level: 'better-not',
      reasons: [{ rule, speaks: 'against', text: 'A reason.', basis: 'memory' }],
    });
    expect(foodStatement({ ...plain, wood: against('hard-enough') }).maySay.join(' ')).toContain('not for cutting on');
    expect(foodStatement({ ...plain, wood: against('poison') }).maySay).toContain('For decoration. Not for food.');
  });
});

test('nut oil stands on the label; a blend is asked about first', () => {
  const walnut = foodStatement({ ...plain, finish: { ...mineralOil, name: 'Walnut oil', origin: 'nut-oil' } });
  expect(walnut.maySay).toContain('Walnut oil is made from a tree nut.');
  const blend = foodStatement({ ...plain, finish: { ...mineralOil, name: 'Oil blend', origin: 'blend' } });
  expect(blend.allergens.map(({ id }) => id)).toEqual(['oil-blend']);
  expect(blend.maySay.join(' ')).not.toContain('tree nut');
});

// FDA guidance on food allergens, 5th edition (January 2025), Table 1, and Regulation (EU) 1169/2011, Annex II, 8: neither names tung.
test('tung oil says what it is pressed from, and calls itself no tree nut', () => {
  const { maySay, allergens } = foodStatement({
    ...plain,
    finish: { ...mineralOil, name: 'Raw tung oil', origin: 'tung-oil' },
  });
  expect(allergens.map(({ id }) => id)).toEqual(['tung-oil']);
  expect(allergens[0]?.text).toMatch(/not among/);
  expect(allergens[0]?.citation?.source).toBe('fda-food-allergens');
  expect(maySay.join(' ')).toContain('seed of the tung tree');
  expect(maySay.join(' ')).not.toContain('tree nut');
});
