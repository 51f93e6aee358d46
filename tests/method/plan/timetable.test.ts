import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { peopleNames } from '../../../src/method/plan/duties.ts';
import { sessionsOf } from '../../../src/method/plan/sessions.ts';
import { timetableOf } from '../../../src/method/plan/timetable.ts';
import { smallMethod, worked } from '../case/base.ts';
import { dutyFaultsOf, faultsOf } from './checker.ts';

interface Drawn {
  steps: {
    setUp: number;
    each: number;
    interrupt: 'anywhere' | 'between-pieces' | 'never';
    tool: boolean;
    people: number;
    least: number;
    window: number | undefined;
    counts: 'start' | 'end';
    back: number;
    missed: boolean;
  }[];
  holds: readonly [number, number] | undefined;
  pieces: number;
  people: number;
  tools: number;
  week: 'days' | 'evening';
}

const drawn: fc.Arbitrary<Drawn> = fc.record({
  steps: fc.array(
    fc.record({
      setUp: fc.integer({ min: 0, max: 20 }),
      each: fc.integer({ min: 0, max: 25 }),
      interrupt: fc.constantFrom('anywhere' as const, 'between-pieces' as const, 'never' as const),
      tool: fc.boolean(),
      people: fc.constantFrom(1, 1, 1, 2),
      least: fc.constantFrom(0, 0, 30, 600, 2880),
      window: fc.option(fc.constantFrom(40, 1200, 11_000, 11_000), { nil: undefined, freq: 2 }),
      counts: fc.constantFrom('start' as const, 'end' as const),
      back: fc.integer({ min: 1, max: 2 }),
      missed: fc.boolean(),
    }),
    { minLength: 2, maxLength: 5 },
  ),
  holds: fc.option(fc.tuple(fc.nat(4), fc.nat(4)), { nil: undefined }),
  pieces: fc.integer({ min: 1, max: 5 }),
  people: fc.integer({ min: 2, max: 3 }),
  tools: fc.integer({ min: 1, max: 2 }),
  week: fc.constantFrom('days' as const, 'evening' as const),
});

/** The text of a method with these steps: no calculations, so that only its times matter. */
function methodOf({ steps, holds, tools }: Drawn): string {
  const data = parse(smallMethod);
  const last = steps.length - 1;
  data.tools = { saw: { what: 'Saw', kind: 'other', count: tools }, clamp: { what: 'Clamp', kind: 'clamp', count: 2 } };
  data.materials = {};
  data.makes.pieces = { default: 1, least: 1, most: 9 };
  data.steps = Object.fromEntries(
    steps.map(({ setUp, each, interrupt, tool, people, least, window, counts, back, missed }, at) => [
      `s${at}`,
      {
        title: `Step ${at}`,
        act: 'gather',
        does: 'It.',
        hands: { setUp: `${setUp} min`, each: `${each} min` },
        interrupt,
        people,
        ...(tool ? { tools: ['saw'] } : {}),
        ...(holds && at === Math.min(holds[0], last)
          ? { holds: [{ tool: 'clamp', until: `s${Math.min(last, at + holds[1])}` }] }
          : {}),
        after:
          at === 0
            ? []
            : [
                {
                  step: `s${Math.max(0, at - back)}`,
                  counts,
                  least: `${least} min`,
                  ...(window === undefined ? {} : { most: `${least + window} min` }),
                  ...(window !== undefined && missed ? { missed: { do: 'Abrade it again', adds: '3 min' } } : {}),
                },
              ],
      },
    ]),
  );
  return stringify(data);
}

const hoursOf = (week: Drawn['week'], zone = 'Europe/Helsinki') => ({
  zone,
  week:
    week === 'evening'
      ? { tue: ['18:30-21:00'] }
      : { mon: ['09:00-17:00'], tue: ['09:00-12:00', '13:00-17:00'], thu: ['10:00-20:00'] },
});

describe('a timetable', () => {
  test('keeps hours, hands, tools, waits and windows, or says what it gave up, for any method', async () => {
    const seen = { planned: 0, none: 0 };
    await fc.assert(
      fc.asyncProperty(drawn, async (method) => {
        const case_ = await worked(methodOf(method), { pieces: method.pieces });
        const timetable = await timetableOf(case_, {
          start: '2027-03-23',
          hours: hoursOf(method.week),
          people: method.people,
          nodes: 200,
        });
        if (!timetable.ok) {
          seen.none += 1;
          if (timetable.why.proved) expect(timetable.why.constraints.length).toBeGreaterThan(0);
          return;
        }
        seen.planned += 1;
        expect(faultsOf(case_, timetable, method.people)).toEqual([]);
        const names = peopleNames(method.people);
        expect(dutyFaultsOf(case_, sessionsOf(timetable, names), names)).toEqual([]);
      }),
      { numRuns: Number(process.env.KERF_PLANS ?? 25) },
    );
    expect(seen.planned).toBeGreaterThan(5);
  }, 120_000);

  test('ends no later with one more pair of hands or one more tool', async () => {
    const method = (tools: number) =>
      methodOf({
        steps: [
          {
            setUp: 5,
            each: 20,
            interrupt: 'between-pieces',
            tool: true,
            people: 1,
            least: 0,
            window: undefined,
            counts: 'end',
            back: 1,
            missed: false,
          },
          {
            setUp: 0,
            each: 20,
            interrupt: 'between-pieces',
            tool: false,
            people: 1,
            least: 0,
            window: undefined,
            counts: 'end',
            back: 1,
            missed: false,
          },
        ],
        holds: undefined,
        pieces: 4,
        people: 1,
        tools,
        week: 'days',
      });
    const ends = async (people: number, tools: number) => {
      const timetable = await timetableOf(await worked(method(tools), { pieces: 4 }), {
        start: '2027-03-23',
        hours: hoursOf('days'),
        people,
      });
      return timetable.ok ? timetable.end - timetable.start : Number.NaN;
    };
    // By hand: one person works 5 + 8 × 20 = 165 min from nine to a quarter to twelve; two with one saw 5 + 80 + 20; two with two saws 5 + 40 + 40.
    expect(await ends(1, 1)).toBe(165);
    expect(await ends(2, 1)).toBeLessThanOrEqual(125);
    expect(await ends(2, 2)).toBe(85);
  });

  test('planned from a wanted end begins as late as it can and ends by it', async () => {
    const case_ = await worked(smallMethod, { pieces: 2 });
    const timetable = await timetableOf(case_, {
      start: '2027-03-22',
      end: '2027-04-02',
      hours: hoursOf('days'),
      people: 1,
    });
    expect(timetable.ok).toBe(true);
    if (!timetable.ok) return;
    expect(faultsOf(case_, timetable, 1)).toEqual([]);
    const early = await timetableOf(case_, { start: '2027-03-22', hours: hoursOf('days'), people: 1 });
    expect(early.ok && early.start).toBeLessThan(timetable.start);
    expect(timetable.momentAt(timetable.end).date <= '2027-04-02').toBe(true);
  });

  test('a cure counts hours and an evening its clock, over the change to winter time and the year’s end', async () => {
    const case_ = await worked(
      smallMethod.replace(
        'least: { from: /calculations/coats/figures/recoat }, most: 3 d, missed: { do: Wipe with a damp cloth and let it dry, adds: 2 min }',
        'least: 168 h',
      ),
    );
    const sessions = async (zone: string, start: string) => {
      const timetable = await timetableOf(case_, { start, hours: hoursOf('evening', zone), people: 1 });
      if (!timetable.ok) throw new Error('no timetable');
      return timetable.steps.map(({ id, start: at }) => [
        id,
        `${timetable.momentAt(at).date} ${timetable.momentAt(at).time}`,
      ]);
    };
    // In autumn the week has 169 h by the clock of the wall: 168 h after 18:54 is 17:54, and the evening begins at 18:30.
    expect(await sessions('Europe/Helsinki', '2027-10-26')).toContainEqual(['again', '2027-11-02 18:30']);
    // In spring it has 167: 168 h after a coat that ends at 18:59 is 19:59.
    const spring = await sessions('America/Chicago', '2027-03-09');
    const oiled = spring.find(([id]) => id === 'oil')?.[1];
    expect(oiled).toBe('2027-03-09 18:39');
    expect(spring.find(([id]) => id === 'again')?.[1]).toMatch(/^2027-03-16 (19|20):/);
    expect((await sessions('Asia/Tokyo', '2027-12-28')).find(([id]) => id === 'again')?.[1]).toMatch(/^2028-01-04 18:/);
  });
});
