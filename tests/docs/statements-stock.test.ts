import { expect } from 'vitest';
import { acclimatise, equilibriumMoisture, stillAirSurface, workingDiffusion } from '../../src/model/moisture/index.ts';
import { formatQuantity } from '../../src/model/quantity/index.ts';
import { speciesById } from '../../src/model/species/index.ts';
import {
  boardFeet,
  boardFoot,
  boardYield,
  defaultAllowances,
  defaultMachines,
  flattenPlan,
  foot,
  gradeById,
  inch,
  netOfGrossTally,
  nominalFor,
  nominalThicknesses,
  type OrderRequest,
  roughShortfall,
  stockOrder,
  surfaceMeasure,
  tallyBoardFeet,
} from '../../src/model/stock/index.ts';
import { hold, mm, settled, worked } from './statements.ts';

// Numbers in the pages on buying, salvaging, acclimatising and flattening, worked out again.

/** Inches as the shop writes them. */
const inches = (millimetres: number) =>
  formatQuantity(millimetres, 'mm', { system: 'inch', inches: 'thirty-seconds' }, { digits: 6 });
const whole = (value: number) => value.toFixed(0);

const tray = { length: 24 * inch, width: 9 * inch, thickness: 0.75 * inch };
const order = (more: Partial<OrderRequest> = {}) =>
  settled(
    stockOrder({
      finished: tray,
      count: 12,
      allowances: defaultAllowances,
      surfacing: 'rough',
      kerf: inch / 8,
      price: { rate: 9, per: 'board-foot' },
      ...more,
    }),
  );
const grade = (id: string) => {
  const found = gradeById(id);
  if (!found) throw new Error(`no grade ${id}`);
  return found;
};
const printedGrade = (id: string) => {
  const { name, leastWidth, leastLength, clearPoorer } = grade(id);
  const thirds = Math.round(clearPoorer * 300);
  const share = thirds % 3 === 0 ? `${thirds / 3}` : `${Math.floor(thirds / 3)} ${thirds % 3}/3`;
  return `| ${name} | ${whole(leastWidth / inch)} in × ${whole(leastLength / foot)} ft | ${share} % |`;
};

const rack = (endTrim: number) =>
  settled(
    boardYield({
      boards: [
        {
          name: '1',
          length: 2400,
          width: 240,
          defects: [
            [300, 330],
            [1180, 1210],
            [2060, 2090],
          ],
        },
        {
          name: '2',
          length: 1900,
          width: 250,
          defects: [
            [0, 220],
            [900, 960],
          ],
        },
        { name: '3', length: 1500, width: 235, defects: [[740, 770]] },
        { name: '4', length: 2100, width: 180, defects: [[1000, 1080]] },
      ].map((board) => ({ ...board, defects: board.defects.map(([from = 0, to = 0]) => ({ from, to })) })),
      blanks: [
        { name: 'tray', length: 720, width: 235, count: 5 },
        { name: 'bread board', length: 400, width: 180, count: 5 },
      ],
      kerf: 3,
      endTrim,
      edgeTrim: 0,
      first: 'crosscut',
      snipe: 0,
      planed: 'boards',
    }),
  );

/** One row across the board for each place along it. */
const ashHeights = [
  [29.5, 34, 30],
  [30, 33.5, 30],
  [27, 32.5, 29.5],
];
const ash = (target: number) =>
  settled(
    flattenPlan({
      points: ashHeights.flatMap((row, along) =>
        row.map((height, across) => ({ x: along * 350, y: across * 120, height })),
      ),
      thickness: 27,
      target,
      depthOfCut: defaultMachines.depthOfCut,
    }),
  );

const ashBoard = () => {
  const density = speciesById('white-ash')?.figures.density12?.value ?? Number.NaN;
  const balance = equilibriumMoisture(20, 45);
  const diffusion = workingDiffusion(density, 20, (14 + balance) / 2);
  const board = settled(acclimatise({ thickness: 27, start: 14, balance, diffusion, surface: stillAirSurface }));
  return { balance, board };
};

hold({
  'buying-and-ordering-stock': [
    [
      'the allowances',
      () => {
        const { endTrim, outlineClearance, planing, spare } = defaultAllowances;
        expect([endTrim, outlineClearance, planing].map(inches)).toEqual(['2 in', '1/8 in', '3/32 in']);
        expect(spare).toBe(0.1);
        return `| length | 2 in (${whole(endTrim)} mm) at each end |`;
      },
    ],
    ['the line', () => `| the line | 1/8 in (${mm(defaultAllowances.outlineClearance)} mm) all round |`],
    ['planing', () => `| thickness | 3/32 in (${mm(defaultAllowances.planing)} mm) off each face |`],
    [
      'the rough size',
      () => {
        const { rough, pieces } = order();
        expect(pieces).toBe(14);
        expect(worked('buying-and-ordering-stock', 'pieces').value).toBe(pieces);
        expect(worked('buying-and-ordering-stock', 'roughLength').value).toBeCloseTo(rough.length, 6);
        return `cut ${inches(rough.length)} long, ${inches(rough.width)} wide and ${inches(rough.thickness)} thick, and fourteen are cut`;
      },
    ],
    ...['4/4', '5/4', '6/4', '8/4'].map((name): [string, () => string] => [
      `the thickness of ${name}`,
      () => {
        const found = nominalThicknesses.find((nominal) => nominal.name === name);
        if (!found) throw new Error(`no ${name}`);
        return `| ${name} | ${inches(found.rough)} (${mm(found.rough)} mm) | ${inches(found.s2s)} (${mm(found.s2s)} mm) |`;
      },
    ]),
    [
      'what 4/4 leaves over',
      () => {
        const { nominal, spareThickness } = order();
        expect(inches(roughShortfall)).toBe('1/16 in');
        return `**Rough** ${nominal.name} holds the workshop’s 15/16 in, with ${inches(spareThickness)} over.`;
      },
    ],
    [
      'planed stock',
      () => `To have the whole allowance in planed stock, order ${order({ surfacing: 's2s' }).nominal.name}.`,
    ],
    ['board feet in a cubic metre', () => `${whole(1e9 / boardFoot)} of them are a cubic metre`],
    [
      'the guide’s example',
      () => {
        const board = { length: 8 * foot, width: 6.25 * inch };
        return `surface measure of 4 1/6, which is rounded to ${surfaceMeasure(board.length, board.width)}, and so ${tallyBoardFeet([board], 2 * inch)} board feet; with fractions it would be ${boardFeet(board.length, board.width, 2 * inch).toFixed(2)}`;
      },
    ],
    [
      'the order counted twice',
      () => {
        const { along, across, boards } = order();
        const asked = (name: string) => worked('buying-and-ordering-stock', name).value;
        expect([along * across, boards, asked('perBoard'), asked('boards')]).toEqual([3, 5, 3, 5]);
        return `With fractions that is ${asked('boardFeet').toFixed(1)} board feet, by tally ${asked('boardFeetTally')}: at a price of 9 a board foot ${whole(asked('cost'))} against ${whole(asked('costTally'))}`;
      },
    ],
    ['lumber tallied before drying', () => `about ${whole(100 * (1 - netOfGrossTally))} % fewer board feet`],
    ...['fas', '1-common', '2a-common'].map((id): [string, () => string] => [
      `the grade ${id}`,
      () => printedGrade(id),
    ]),
    [
      'the order by grade',
      () => {
        const count = (id: string) => ['', '', '', '', '', 'five', 'six'][order({ grade: grade(id) }).boards];
        return `takes ${count('fas')} boards of FAS and ${count('1-common')} of No. 1 Common`;
      },
    ],
    ['the tally in the letter', () => `about ${order().boardFeetTally} board feet net tally`],
    [
      'the first exercise',
      () => {
        const board = { length: (9 + 8 / 12) * foot, width: 7.5 * inch };
        const exact = boardFeet(board.length, board.width, 1.5 * inch).toFixed(2);
        return `With fractions ${exact}; by tally the length counts as 9 ft, surface measure 5.6 rounds to ${surfaceMeasure(board.length, board.width)}, times 1 1/2 is ${tallyBoardFeet([board], 1.5 * inch)}.`;
      },
    ],
    [
      'the second exercise',
      () => {
        const needed = (5 / 8) * inch + 2 * defaultAllowances.planing;
        return `2. ${nominalFor(needed, 'rough')?.name}: with 3/32 in off each face it needs ${inches(needed)}`;
      },
    ],
  ],
  'salvaged-stock': [
    [
      'what the rack gives',
      () => {
        const plan = rack(25);
        expect(plan.cut).toEqual([3, 5]);
        expect(plan.mostYield).toBe(true);
        expect(worked('salvaged-stock', 'blanksCut', { snipe: '0 mm' }).value).toBe(3 + 5);
        expect(worked('salvaged-stock', 'blanksMissing', { snipe: '0 mm' }).value).toBe(2);
        expect(plan.boards.map(({ board }) => board)).not.toContain(2);
        return 'The rack gives three trays and all five bread boards, whether it is crosscut or ripped first, and no plan of cuts gives more.';
      },
    ],
    ['what board 3 misses', () => `are ${740 - 25} mm, ${720 - (740 - 25)} mm too few`],
    [
      'what a smaller trim gives',
      () => {
        expect(rack(20).cut).toEqual([4, 5]);
        return 'trimmed by 20 mm instead of 25 mm, the rack gives four trays';
      },
    ],
  ],
  'moisture-and-acclimatising': [
    [
      'the ash in the shop',
      () => {
        const { balance, board } = ashBoard();
        const asked = worked('moisture-and-acclimatising', 'withinOne', { thickness: '27 mm' });
        expect(asked.value).toBeCloseTo(board.withinOne, 0);
        const days = (seconds: number) => whole(seconds / 86_400);
        return `half-way to the room’s ${balance.toFixed(1)} % after about ${days(board.halfWay)} days and within one point after about ${days(board.withinOne)}`;
      },
    ],
    [
      'skin and middle',
      () => {
        const { shell, core } = ashBoard().board.at(7 * 86_400);
        return `After a week the **skin** stands at ${shell.toFixed(1)} % and the **middle** still at ${core.toFixed(1)} %`;
      },
    ],
  ],
  'flattening-a-wide-board': [
    [
      'the limits to start from',
      () => {
        const { jointerLeastLength, planerLeastLength, jointerLeastThickness, planerLeastThickness } = defaultMachines;
        expect(planerLeastLength).toBe(jointerLeastLength);
        return `${inches(jointerLeastLength)} on either machine | ${inches(jointerLeastThickness)} on the jointer, ${inches(planerLeastThickness)} through the planer`;
      },
    ],
    ...ashHeights.map((row, at): [string, () => string] => [
      `heights at ${350 * at} mm`,
      () => `| ${350 * at} mm | ${row.map((height) => height.toFixed(1)).join(' | ')} |`,
    ]),
    [
      'the plan of the ash',
      () => {
        const plan = ash(20);
        expect([plan.passes, plan.passesBelow]).toEqual([4, 4]);
        expect(plan.deepestBelow).toBeCloseTo(plan.deepest, 6);
        for (const name of ['thicknessLeft', 'deepest', 'passes', 'highestShim'] as const) {
          expect(worked('flattening-a-wide-board', name).value).toBeCloseTo(plan[name], 6);
        }
        return `The best plane leaves ${mm(plan.thicknessLeft)} mm of the 27 mm, so the 20 mm of an ash tray can be had, with ${mm(plan.thicknessLeft - 20)} mm over. Planed down to 20 mm, the deepest cut is ${mm(plan.deepest)} mm on each face: four passes of 1/16 in (${mm(defaultMachines.depthOfCut)} mm) a face. On the sled the highest shim is ${mm(plan.highestShim)} mm.`;
      },
    ],
    [
      'what it does not give',
      () => `A board of 23 mm could${ash(23).meetsTarget ? '' : ' not'} have been had from it.`,
    ],
    [
      'the exercise on twist',
      () => {
        const corners = [30, 30, 30, 34].map((height, at) => ({ x: (at % 2) * 600, y: at > 1 ? 200 : 0, height }));
        const plan = settled(flattenPlan({ points: corners, thickness: 27, target: 20, depthOfCut: 1.6 }));
        return `it shares it out, and ${mm(plan.thicknessLeft)} mm are left`;
      },
    ],
  ],
});
