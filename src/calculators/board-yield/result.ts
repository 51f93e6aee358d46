import type { Caution, EvidenceNote, Figure, ResultTable, Verdict } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import {
  worthKeeping,
  type YieldBlank,
  type YieldBoard,
  type YieldPlan,
  type YieldRequest,
} from '../../model/stock/index.ts';

const total = (counts: readonly number[]) => counts.reduce((sum, count) => sum + count, 0);
const several = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`;
const shortName = (name: string) => name.slice(0, 40);

/** What the plan lacks, in words: `2 × tray, 1 × paddle`. */
function missingWords(plan: YieldPlan, blanks: readonly YieldBlank[]): string {
  const missing = blanks.flatMap((blank, at) =>
    (plan.missing[at] as number) > 0 ? [`${plan.missing[at]} × ${shortName(blank.name)}`] : [],
  );
  return missing.length > 8 ? `${missing.slice(0, 8).join(', ')} and others` : missing.join(', ');
}

/** Whether a blank of this size fits on a bare board of the rack at all. */
const fitsNowhere = ({ boards }: YieldRequest, { length, width }: YieldBlank) =>
  boards.every((board) => board.length < length || board.width < width);

/** The sentence that the answer comes to. */
export function verdictOf(plan: YieldPlan, request: YieldRequest): Verdict {
  const [cut, missing] = [total(plan.cut), total(plan.missing)];
  const used = plan.boards.length;
  const from =
    used === request.boards.length
      ? used === 1
        ? 'the board'
        : `all ${used} boards`
      : `${used} of ${request.boards.length} boards`;
  if (missing === 0)
    return {
      level: 'good',
      text: cut === 1 ? `The blank comes from ${from}.` : `All ${cut} blanks come from ${from}.`,
    };
  const tooLarge = request.blanks.find((blank) => fitsNowhere(request, blank));
  const size = tooLarge
    ? ` No board is as large as ${shortName(tooLarge.name)}, ${amount(tooLarge.length, 'mm', 5)} × ${amount(tooLarge.width, 'mm', 5)}.`
    : '';
  const lacking = missingWords(plan, request.blanks);
  if (cut === 0)
    return {
      level: 'stop',
      text: `${missing === 1 ? 'The blank does not fit' : `None of the ${missing} blanks fits`} on this rack.${size}`,
    };
  return {
    level: 'stop',
    text: plan.mostYield
      ? `${cut} of ${cut + missing} blanks come from ${from}; ${lacking} will not fit in this order of cuts: another board is needed.${size}`
      : `${cut} of ${cut + missing} blanks were found a place on ${from}; no place was found for ${lacking}.${size}`,
  };
}

/** The figures of a plan. */
export function figuresOf(plan: YieldPlan, blanks: readonly YieldBlank[]): Record<string, Figure> {
  const counted = (label: string, value: number, note?: string): Figure => ({
    label,
    value,
    unit: '1',
    basis: 'derived',
    digits: 6,
    ...(note ? { note } : {}),
  });
  const missing = missingWords(plan, blanks);
  return {
    blanksCut: counted('Blanks cut', total(plan.cut), `Of ${total(plan.cut) + total(plan.missing)} wanted.`),
    blanksMissing: counted('Blanks missing', total(plan.missing), missing ? `${missing}.` : undefined),
    boardsUsed: counted('Boards cut into', plan.boards.length),
    yield: {
      label: 'Share of those boards that becomes blanks',
      value: plan.boardArea > 0 ? (100 * plan.blankArea) / plan.boardArea : 0,
      unit: '%',
      basis: 'derived',
      digits: 3,
      note: 'By face area.',
    },
    longestOffcut: {
      label: 'Longest piece left over',
      value: plan.longestOffcut,
      unit: 'mm',
      basis: 'derived',
      digits: 5,
      note: `Clear, on a board that is cut into, at least ${amount(worthKeeping.width, 'mm', 2)} wide.`,
    },
    ...(plan.proved || plan.boardArea === 0
      ? {}
      : {
          couldBeSaved: {
            label: 'Of the boards cut into, another plan might save at most',
            value: (100 * Math.max(0, plan.boardArea - plan.leastBoardArea)) / plan.boardArea,
            unit: '%',
            basis: 'derived',
            digits: 2,
            note: 'By face area, against a bound that no plan reaches: what is clear of the boards, without saw cuts.',
          },
        }),
  };
}

/** Where to cut: one row a piece, by board and by first cut. */
export function cutTable(plan: YieldPlan, boards: readonly YieldBoard[], blanks: readonly YieldBlank[]): ResultTable {
  const rip = plan.first === 'rip';
  return {
    id: 'cuts',
    title: 'Cutting list',
    columns: [
      { id: 'board', label: 'Board' },
      { id: 'section', label: rip ? 'Strip' : 'Section' },
      { id: 'piece', label: 'Piece' },
      { id: 'from', label: 'Along, from', unit: 'mm', digits: 6 },
      { id: 'to', label: 'to', unit: 'mm', digits: 6 },
      { id: 'low', label: 'Across, from', unit: 'mm', digits: 5 },
      { id: 'high', label: 'to', unit: 'mm', digits: 5 },
    ],
    rows: plan.boards.flatMap(({ board, cuts, offcuts }) => {
      const { name } = boards[board] as YieldBoard;
      return [
        ...cuts.map(({ blank, section, from, to, low, high }) => [
          name,
          section,
          (blanks[blank] as YieldBlank).name,
          from,
          to,
          low,
          high,
        ]),
        ...offcuts.map(({ from, to, low, high }) => [name, null, 'left over', from, to, low, high]),
      ];
    }),
    basis: 'derived',
  };
}

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
