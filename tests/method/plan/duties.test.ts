import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Duty, dutiesOf, freeOf, freeWords, peopleNames, whoWords } from '../../../src/method/plan/duties.ts';
import type { Work } from '../../../src/method/plan/timetable.ts';

const work = (
  step: string,
  start: number,
  end: number,
  people = 1,
  pieces: readonly [number, number] = [1, 1],
): Work => ({
  step,
  pieces,
  start,
  end,
  people,
});
const told = (duties: readonly Duty[]) => duties.map(({ step, by }) => `${step}: ${by.join(', ')}`);

/** Most who work at once, counted minute by minute. */
function mostAtOnce(works: readonly Work[]): number {
  const last = Math.max(0, ...works.map(({ end }) => end));
  let most = 0;
  for (let minute = 0; minute < last; minute++)
    most = Math.max(
      most,
      works.reduce((sum, { start, end, people }) => sum + (start <= minute && minute < end ? people : 0), 0),
    );
  return most;
}

describe('who does what', () => {
  test('nobody does two things at once, and each stretch has as many as it takes, for any timetable', () => {
    const drawn = fc.array(
      fc.record({
        step: fc.constantFrom('saw', 'rout', 'sand', 'oil'),
        start: fc.nat(60),
        length: fc.integer({ min: 1, max: 30 }),
        people: fc.integer({ min: 1, max: 3 }),
      }),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(drawn, (drawnWorks) => {
        const works = drawnWorks.map(({ step, start, length, people }) => work(step, start, start + length, people));
        const names = Array.from({ length: mostAtOnce(works) }, (_, at) => `P${at}`);
        const duties = dutiesOf(works, names);
        expect(duties).toHaveLength(works.length);
        for (const { by, people } of duties) {
          expect(by).toHaveLength(people);
          expect(new Set(by).size).toBe(people);
        }
        for (const name of names) {
          const own = duties.filter(({ by }) => by.includes(name));
          for (let minute = 0; minute < 100; minute++)
            expect(own.filter(({ start, end }) => start <= minute && minute < end).length).toBeLessThan(2);
        }
      }),
    );
  });

  test('whoever has been at a step goes on with it, and else the first who is free takes it', () => {
    const works = [work('saw', 0, 60), work('rout', 0, 30), work('rout', 60, 90, 1, [2, 2]), work('oil', 90, 100)];
    expect(told(dutiesOf(works, ['Maker', 'Helper']))).toEqual([
      'saw: Maker',
      'rout: Helper',
      'rout: Helper',
      'oil: Maker',
    ]);
  });

  test('pieces that closing time interrupts go on in the next stretch', () => {
    const [first, second] = dutiesOf([work('sand', 0, 60), work('sand', 500, 530)], ['Maker']);
    expect([first?.goesOn, second?.goesOn]).toEqual([false, true]);
  });
});

describe('who has nothing to do', () => {
  const names = ['Maker', 'Helper 1', 'Helper 2'];
  const session = dutiesOf([work('saw', 0, 60), work('rout', 20, 50), work('plane', 75, 120, 2)], names);

  test('for longer than a quarter of an hour, between the first work of a session and its last', () => {
    expect(freeOf(session, names)).toEqual([
      { who: ['Helper 1'], start: 0, end: 20 },
      { who: ['Helper 2'], start: 0, end: 120 },
      { who: ['Helper 1'], start: 50, end: 75 },
    ]);
    // By hand: the maker rests 15 min before the planer, which is a rest.
    expect(freeOf(session, ['Maker'])).toEqual([]);
  });

  test('is said in one line, those first whom the session does not need', () => {
    const clock = (minutes: number) => `${minutes}′`;
    expect(freeWords({ work: session, free: freeOf(session, names) }, names, clock)).toBe(
      'Free: Helper 2 all the time; Helper 1 from 0′ to 20′; Helper 1 from 50′ to 75′.',
    );
    expect(freeWords({ work: session, free: [] }, names, clock)).toBeUndefined();
  });

  test('a wait in which all stand by is said of all', () => {
    const oil = dutiesOf([work('oil', 0, 30, 3), work('wipe', 55, 70, 3)], names);
    expect(freeOf(oil, names)).toEqual([{ who: names, start: 30, end: 55 }]);
  });
});

describe('names', () => {
  test('are those of the shop record, and a number for whom it does not name', () => {
    const shop = {
      people: [
        { id: 'maker', name: 'Maker', count: 1 },
        { id: 'helper', count: 2 },
      ],
    };
    expect(peopleNames(4, shop)).toEqual(['Maker', 'helper 1', 'helper 2', 'Person 4']);
    expect(peopleNames(1, shop)).toEqual(['Maker']);
    expect(peopleNames(2)).toEqual(['Person 1', 'Person 2']);
  });

  test.each<[string[], string]>([
    [['Maker'], 'Maker'],
    [['Maker', 'Helper 1'], 'Maker and Helper 1'],
    [['Helper 1', 'Helper 2'], 'Helper 1 and 2'],
    [['Maker', 'Helper 1', 'Helper 2', 'Helper 3'], 'Maker, Helper 1 to 3'],
    [['Helper 1', 'Helper 3'], 'Helper 1 and Helper 3'],
    [['Maker', 'Helper 1', 'Helper 2', 'Helper 3', 'Helper 4'], 'all 5'],
  ])('%j are told as %s', (who, words) => {
    expect(whoWords(who, ['Maker', 'Helper 1', 'Helper 2', 'Helper 3', 'Helper 4'])).toBe(words);
  });
});
