import type { Caution, EvidenceNote } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { worthKeeping, type YieldPlan, type YieldRequest } from '../../model/stock/index.ts';
import { several, total } from './words.ts';

/** What this plan, and any plan of cuts, must beware of. */
export function cautionsOf(plan: YieldPlan, { planed }: YieldRequest, other: YieldPlan | undefined): Caution[] {
  const more = other ? total(other.cut) - total(plan.cut) : 0;
  return [
    ...(more > 0
      ? [
          {
            id: 'other-cut-first',
            level: 'note' as const,
            own: true,
            text: `${plan.first === 'rip' ? 'Crosscut' : 'Ripped'} first, this rack gives ${several(more, 'blank')} more.`,
            basis: 'derived' as const,
          },
        ]
      : []),
    ...(total(plan.missing) > 0 && !plan.mostYield
      ? [
          {
            id: 'rack-too-small',
            level: 'warning' as const,
            own: true,
            text: 'Not all blanks were found a place, and a better plan may exist: try blanks a little shorter, fewer sizes at once, or another board.',
            basis: 'derived' as const,
          },
        ]
      : []),
    ...(planed === 'blanks'
      ? [
          {
            id: 'short-blanks',
            level: 'danger' as const,
            own: true,
            text: 'Plane the boards before you cut them up, unless every blank is longer than the least length in the planer’s manual.',
            why: 'A piece shorter than the distance of the feed rollers is not held: it tips into the cutters and is thrown back.',
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    {
      id: 'rip-by-hand-machine',
      level: 'danger',
      text: 'Rip only from an edge that is straight, along the fence, with riving knife, guard and push stick; never freehand.',
      why: 'A crooked edge pinches the blade and throws the board back. Joint one edge first, or rip it against a straight batten.',
      basis: 'shop-practice',
    },
    {
      id: 'find-defects-first',
      level: 'warning',
      text: 'Look at both faces and both edges before you mark, and let the saw pass through nothing that hides metal.',
      why: 'A knot on one face, a check or a nail may run through under a clear one: the plan knows only what was entered.',
      basis: 'shop-practice',
    },
  ];
}

/** What the plan rests on, and its limits. */
export function evidenceOf(plan: YieldPlan): EvidenceNote[] {
  return [
    {
      text: plan.proved
        ? 'Every other plan by these rules was ruled out: none gives more blank area, or the same from less board.'
        : `This rack has more plans than were compared: it was planned board by board. ${
            plan.mostYield
              ? 'All blanks have a place; a plan that cuts into less board may exist.'
              : 'A better plan may exist.'
          }`,
      basis: 'derived',
      citation: { source: 'kerf-and-cure', locator: 'all sets of blanks of each board, board after board' },
    },
    {
      text: `Rules: ${
        plan.first === 'rip'
          ? 'boards are ripped right along into strips, strips crosscut, and a piece narrower than its strip is ripped once more'
          : 'boards are crosscut into sections, sections ripped right through, and a piece shorter than its section is trimmed'
      }; blanks keep their length along the grain; a saw cut parts every two pieces; nothing is cut out of the middle of a piece. A plan with more turns between saws may give more.`,
      basis: 'derived',
      citation: { source: 'kerf-and-cure', locator: 'rules of the cutting plan' },
    },
    {
      text: `Pieces left over are listed from ${amount(worthKeeping.length, 'mm', 3)} × ${amount(worthKeeping.width, 'mm', 2)} on.`,
      basis: 'shop-practice',
    },
  ];
}
