import type { Basis } from '../../model/evidence/index.ts';
import { areaOfShape, boxAlongGrain, leftToSand, perimeterOfShape } from '../../model/outline/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { usualBeyond } from '../../model/stock/index.ts';
import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';
import type { Found } from './found.ts';

/** What the figures of an outline, its bit and its board are. */
export const figures = {
  leftStanding: {
    label: 'Left standing by this bit',
    unit: 'mm',
    digits: 2,
    help: 'The deepest wood that the bit leaves in a hollow.',
  },
  insideRadius: { label: 'Least inside radius', unit: 'mm' },
  uphill: {
    label: 'Edge that runs uphill',
    unit: '%',
    digits: 2,
    help: 'Where the cut lifts the fibres. Holes included.',
  },
  shortGrain: { label: 'Narrowest short-grained place', unit: 'mm' },
  neck: { label: 'Narrowest neck', unit: 'mm', digits: 4 },
  holeToEdge: { label: 'Least wood beside a hole', unit: 'mm', digits: 4, help: 'To the edge or to another hole.' },
  swing: { label: 'Swing off the grain on this board', unit: 'deg' },
  spareLength: { label: 'Spare length', unit: 'mm' },
  spareWidth: { label: 'Spare width', unit: 'mm' },
  waste: { label: 'Wood wasted', unit: '%', digits: 2, help: 'For one piece from this board.' },
  roughLength: {
    label: 'Rough length along the grain',
    unit: 'mm',
    digits: 4,
    help: 'With the clearance at both ends, without swing.',
  },
  roughWidth: {
    label: 'Rough width across the grain',
    unit: 'mm',
    digits: 4,
    help: 'With the clearance on both sides, without swing.',
  },
  boxLength: { label: 'Length along the grain', unit: 'mm', digits: 4 },
  boxWidth: { label: 'Width across the grain', unit: 'mm', digits: 4 },
  area: { label: 'Area of a face', unit: 'mm2', help: 'Without the holes.' },
  perimeter: { label: 'Length of the edge', unit: 'mm', digits: 4, help: 'Of the outer edge.' },
  edgeShortBy: {
    label: 'Bit length missing',
    unit: 'mm',
    help: 'Where it is short, the last passes ride on the edge already cut.',
  },
  windowLength: { label: 'Length of the window in the template', unit: 'mm', digits: 3 },
  windowWidth: {
    label: 'Width of the window in the template',
    unit: 'mm',
    digits: 3,
    help: 'Its ends are round, its middle lines those of the outline.',
  },
  copies: {
    label: 'Copies on the template blank',
    unit: '{count}',
    help: 'In straight rows, as drawn or turned by 180°. A patient hand may find room for more.',
  },
} as const satisfies Record<string, FigureDeclaration>;

type Figures = Partial<Record<keyof typeof figures, FigureValue>>;

const found = (value: number, note?: string, basis: Basis = 'derived'): FigureValue => ({
  value,
  basis,
  ...(note ? { note } : {}),
});

const whole = (share: number) => Math.round(100 * share);

/** The figures of an answer, as far as the inputs allow them. */
export function figuresOf(all: Found): Figures {
  const { shape, grain, clearance, nest, window } = all;
  const box = boxAlongGrain(shape, grain);
  return {
    ...reachFigures(all),
    ...grainFigures(all),
    ...boardFigures(all),
    roughLength: found(box.length + 2 * clearance),
    roughWidth: found(box.width + 2 * clearance),
    boxLength: found(box.length),
    boxWidth: found(box.width),
    area: found(areaOfShape(shape)),
    perimeter: found(perimeterOfShape(shape)),
    ...bitFigures(all),
    ...(window ? { windowLength: found(window.length), windowWidth: found(window.width) } : {}),
    ...(nest ? { copies: found(nest.placements.length) } : {}),
  };
}

/** How the edge meets the grain, and where wood is thin. */
function grainFigures({ tears, necks }: Found): Figures {
  const { shares } = tears;
  const neck = necks.necks.find(({ kind }) => kind === 'part');
  const shortest = necks.shortGrain[0];
  return {
    uphill: found(
      100 * shares.uphill,
      `Turned over it would be ${whole(shares.downhill)} %; ${whole(shares.along)} % runs along the grain and ${whole(shares['end-grain'])} % is end grain.`,
      'shop-practice',
    ),
    ...(shortest
      ? {
          shortGrain: found(
            shortest.length,
            `The fibres cross it at ${Math.round(shortest.toGrain)}° to the line from side to side; a split along them takes the part off.`,
          ),
        }
      : {}),
    ...(neck
      ? {
          neck: found(
            neck.length,
            neck.toGrain > 45 ? 'The grain runs along the part.' : 'The grain runs across the part.',
          ),
        }
      : {}),
    ...(necks.holeToEdge ? { holeToEdge: found(necks.holeToEdge.length) } : {}),
  };
}

const insideWords = {
  corner: 'A sharp inside corner: no bit reaches it. Round it, or cut it with a saw and a file.',
  curve: 'In a hollow of the edge or a hole.',
  gap: 'In a slot or hole that is too narrow for more.',
};

function reachFigures({ inside, pockets, given }: Found): Figures {
  return {
    ...(given.bitDiameter === undefined
      ? {}
      : { leftStanding: found(Math.max(0, ...pockets.map(({ depth }) => depth ?? 0)), leftWords(pockets)) }),
    ...(inside ? { insideRadius: found(inside.radius, insideWords[inside.kind]) } : {}),
  };
}

/** Where a bit leaves wood, in words. */
function leftWords(pockets: Found['pockets']): string {
  const holes = pockets.filter(({ kind }) => kind === 'hole').length;
  const corners = pockets.length - holes;
  return [
    corners > 0 ? `In ${corners === 1 ? 'one place' : `${corners} places`}.` : '',
    holes > 0 ? `It does not enter ${holes === 1 ? 'one hole' : `${holes} holes`}, which must be bored or sawn.` : '',
    pockets.length > 0 ? '' : `It reaches every hollow; up to ${amount(leftToSand, 'mm')} is left to sanding.`,
  ]
    .filter(Boolean)
    .join(' ');
}

/** Board left over; where it fits and a hair of the clearance is given up for that, nothing is. */
function spare(over: number, fits: boolean): FigureValue {
  const given = fits && over < -1e-9;
  return found(
    given ? 0 : over,
    given ? `The clearance is ${amount(-over / 2, 'mm', 1)} less on either side than asked.` : 'Beyond the clearance.',
  );
}

function boardFigures({ fit, shape, given }: Found): Figures {
  if (!fit) return {};
  const board = (given.boardLength ?? 0) * (given.boardWidth ?? 0);
  return {
    swing: found(fit.swing, fit.fits ? 'The least that fits, counter-clockwise.' : 'The best try: it does not fit.'),
    spareLength: spare(fit.spareLength, fit.fits),
    spareWidth: spare(fit.spareWidth, fit.fits),
    ...(fit.fits ? { waste: found(100 * (1 - areaOfShape(shape) / board)) } : {}),
  };
}

function bitFigures({ cut }: Found): Figures {
  return cut ? { edgeShortBy: found(cut.shortBy, `For the stock and ${amount(usualBeyond, 'mm')} past it.`) } : {};
}
