import type { RuleWords } from '../rules/rule.ts';

/** Why no exception is made of what only a timetable finds. */
const anotherPlan = 'Another start, other hours or more hands take it away; there is nothing to depart from.';

/** What only a timetable can find, each by the name under which `findings.ts` asks it. */
export const timeRules = {
  secondWay: {
    id: 'second-way-taken',
    level: 'warn',
    title: 'Every window is kept in these hours',
    looksAt:
      'Each window of a step that has a second way, beside the hours in which somebody is there. It speaks where the window cannot be kept and the plan takes the second way.',
    why: 'The second way is more work and a weaker bond than to be there in time. Who sees it before the first pour may still open the shop for an hour.',
    neverExcepted: anotherPlan,
  },
  tight: {
    id: 'window-nearly-closed',
    level: 'note',
    title: 'A window leaves a quarter of an hour to spare',
    looksAt: 'The minutes between each step of the plan and the end of its window, for the piece that comes last.',
    why: 'Work runs late by a few minutes on any day. A window that leaves none of them is missed by the one thing that is not laid out.',
    neverExcepted: anotherPlan,
  },
  endsClosed: {
    id: 'wait-ends-closed',
    level: 'note',
    title: 'What is ready is ready while somebody is there',
    looksAt:
      'The moment at which each wait that has a window behind it is over, beside the hours in which somebody is there.',
    why: 'The window runs while the shop is closed, so that whoever opens must go to it first.',
    neverExcepted: anotherPlan,
  },
  waitMisses: {
    id: 'wait-just-too-long',
    level: 'note',
    title: 'No wait ends a few minutes too late for a session',
    looksAt:
      'The plan beside one in which every session is open up to an hour longer. It speaks where that plan is a day shorter or more, and a wait is what ends too late.',
    why: 'A wait of seven days counts by the clock. Work that ended twenty minutes into an evening is not ready when the next one begins, and the whole week is lost. The wait may be a cure, so that it is never shortened here.',
    neverExcepted: anotherPlan,
  },
  sessionMisses: {
    id: 'session-just-too-short',
    level: 'note',
    title: 'No session is a few minutes too short for the next step',
    looksAt:
      'The plan beside one in which every session is open up to an hour longer. It speaks where that plan is a day shorter or more, with the fewest minutes that do it.',
    why: 'Two minutes short on a Tuesday push a step by a week. Who knows it may stay, or lay things out before.',
    neverExcepted: anotherPlan,
  },
} as const satisfies Record<string, RuleWords>;

/** The same, in the order in which their page lists them. */
export const allTimeRules: readonly RuleWords[] = Object.values(timeRules);
