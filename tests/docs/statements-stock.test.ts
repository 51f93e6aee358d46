import { expect } from 'vitest';
import { acclimatise, equilibriumMoisture, stillAirSurface, workingDiffusion } from '../../src/model/moisture/index.ts';
import { formatQuantity } from '../../src/model/quantity/index.ts';
import { densityAt } from '../../src/model/species/equations.ts';
import { speciesById } from '../../src/model/species/index.ts';
import {
  boardFeet,
  boardFoot,
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
import { hold, mm, settled, worked, workedCase } from './statements.ts';

// Numbers in the pages on buying, salvaging, acclimatising and flattening, worked out again.

/** Inches as the shop writes them. */
const inches = (millimetres: number) =>
  formatQuantity(millimetres, 'mm', { system: 'inch', inches: 'thirty-seconds' }, { digits: 6 });
const whole = (value: number) => value.toFixed(0);

const tray = { length: 420, width: 220, thickness: 19 };
const order = (more: Partial<OrderRequest> = {}) =>
  settled(
    stockOrder({
      finished: tray,
      count: 12,
      allowances: { ...defaultAllowances, planing: 4, spare: 0.15 },
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

const ashBoard = () => {
  const density = speciesById('white-ash')?.figures.density12?.value ?? Number.NaN;
  const balance = equilibriumMoisture(20, 40);
  const diffusion = workingDiffusion(density, 20, (14 + balance) / 2);
  const board = settled(acclimatise({ thickness: 27, start: 14, balance, diffusion, surface: stillAirSurface }));
  return { balance, board };
};

/** Grams of 100 cm³ of a wood at 12 %. */
const hundred = (id: string) =>
  whole(0.1 * densityAt(speciesById(id)?.figures.specificGravity12?.value ?? Number.NaN, 12));

hold({
  'choosing-a-wood': [
    [
      'what an offcut weighs',
      () =>
        `100 cm³ of hard maple at 12 % weigh about ${hundred('sugar-maple')} g, of red maple ${hundred('red-maple')} g, of silver maple ${hundred('silver-maple')} g`,
    ],
  ],
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
        expect(worked('buying-and-ordering-stock', 'pieces').value).toBe(pieces);
        expect(worked('buying-and-ordering-stock', 'roughLength').value).toBeCloseTo(rough.length, 6);
        const across = tray.width + 2 * 3;
        expect(across).toBeLessThanOrEqual(rough.width);
        return `all round it takes a width of ${across} mm, and fits its blank.`;
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
      'the thickness to ask for',
      () => {
        expect(inches(roughShortfall)).toBe('1/16 in');
        const { nominal, rough } = order();
        expect(nominal.rough - rough.thickness).toBeGreaterThan(roughShortfall);
        return `before planing: ${nominal.name}.`;
      },
    ],
    [
      'planed stock',
      () =>
        `To leave 1 mm a face in planed stock, order ${order({ surfacing: 's2s', allowances: { ...defaultAllowances, planing: 1, spare: 0.15 } }).nominal.name}.`,
    ],
    ['board feet in a cubic metre', () => `${whole(1e9 / boardFoot)} of them are a cubic metre`],
    [
      'the order and its price',
      () => {
        const { boards, boardFeetTally } = order();
        const asked = (name: string) => worked('buying-and-ordering-stock', name).value;
        expect([boards, asked('boards'), asked('boardFeet'), boardFeetTally]).toEqual([4, 4, 30, 30]);
        expect(Math.round(100 * (asked('used') / (asked('used') > 1 ? 100 : 1)))).toBeCloseTo(35, -1);
        return `Four boards at ${asked('boardFeet')} board feet cost $${whole(asked('cost'))}: $${(asked('cost') / 12).toFixed(2)} for each of the twelve trays.`;
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
        const count = (id: string) => ['', '', '', '', 'four', 'five', 'six'][order({ grade: grade(id) }).boards];
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
      'the exercise on a blank',
      () =>
        `3. ${inches(16 * inch + 2 * (defaultAllowances.endTrim + defaultAllowances.outlineClearance))}: two inches`,
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
      'the boards of the rack',
      () => {
        const boards = workedCase('salvaged-stock', { kerf: '3 mm' }).inputs['boards'] ?? '';
        const rows = boards.split(/[;\n]\s*/).map((line) => {
          const [name = '', length = '', width = '', ...faults] = line
            .split(', ')
            .map((each) => each.replace(/ mm$/, ''));
          const kinds = [...new Set(faults.map((fault) => fault.replace(/ [\d.]+ to [\d.]+$/, '')))];
          const spans = kinds.map((kind) => {
            const of = faults.filter((fault) => fault.startsWith(kind)).map((fault) => fault.slice(kind.length + 1));
            return `${kind === 'nails' ? `nail line${of.length > 1 ? 's' : ''}` : kind} ${of.join(', ')}`;
          });
          return `| ${name.replace('ash ', '')} | ${length} × ${width} | ${spans.join(', ')} |`;
        });
        return rows.join(' ');
      },
    ],
  ],
  'moisture-and-acclimatising': [
    [
      'the ash in the shop',
      () => {
        const { board } = ashBoard();
        const asked = worked('moisture-and-acclimatising', 'withinOne', { moistureNow: '14 %' });
        expect(asked.value).toBeCloseTo(board.withinOne, 0);
        return 'or half to twice as long.';
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
    [
      'the heights of the blank',
      () => {
        const grid = workedCase('flattening-a-wide-board').inputs['grid'] ?? '';
        // The unit of all of them stands before them.
        const rows = grid
          .replace(/^mm: /, '')
          .split(/[;\n]\s*/)
          .map((row) => row.split(/,\s*/).join(' | '));
        return ['0 mm', 'half-way', 'other end'].map((place, at) => `| ${place} | ${rows[at]} |`).join(' ');
      },
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
