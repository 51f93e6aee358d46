import type { Basis, Figure } from '../../model/evidence/index.ts';
import { areaOfShape, boxAlongGrain, leftToSand, perimeterOfShape } from '../../model/outline/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { usualBeyond } from '../../model/stock/index.ts';
import type { Found } from './found.ts';
import { templateFitLabels as labels } from './labels.ts';

const figure = (
  label: string,
  value: number,
  unit: string,
  note?: string,
  basis: Basis = 'derived',
  digits = 4,
): Figure => ({
  label,
  value,
  unit,
  basis,
  digits,
  ...(note ? { note } : {}),
});

const whole = (share: number) => Math.round(100 * share);

/** The figures of an answer, as far as the inputs allow them. */
export function figuresOf(found: Found): Record<string, Figure> {
  const { shape, grain, clearance, tears, necks, nest } = found;
  const box = boxAlongGrain(shape, grain);
  const neck = necks.necks.find(({ kind }) => kind === 'part');
  const shortest = necks.shortGrain[0];
  const { shares } = tears;
  return {
    ...reachFigures(found),
    uphill: figure(
      labels.uphill,
      100 * shares.uphill,
      '%',
      `Holes included. Turned over it would be ${whole(shares.downhill)} %; ${whole(shares.along)} % runs along the grain and ${whole(shares['end-grain'])} % is end grain.`,
      'shop-practice',
      2,
    ),
    ...(shortest
      ? {
          shortGrain: figure(
            labels.shortGrain,
            shortest.length,
            'mm',
            `The fibres cross it at ${Math.round(shortest.toGrain)}° to the line from side to side; a split along them takes the part off.`,
            'derived',
            3,
          ),
        }
      : {}),
    ...(neck
      ? {
          neck: figure(
            labels.neck,
            neck.length,
            'mm',
            neck.toGrain > 45 ? 'The grain runs along the part.' : 'The grain runs across the part.',
          ),
        }
      : {}),
    ...(necks.holeToEdge
      ? { holeToEdge: figure(labels.holeToEdge, necks.holeToEdge.length, 'mm', 'To the edge or to another hole.') }
      : {}),
    ...boardFigures(found),
    roughLength: figure(
      labels.roughLength,
      box.length + 2 * clearance,
      'mm',
      'With the clearance at both ends, without swing.',
    ),
    roughWidth: figure(
      labels.roughWidth,
      box.width + 2 * clearance,
      'mm',
      'With the clearance on both sides, without swing.',
    ),
    boxLength: figure(labels.boxLength, box.length, 'mm'),
    boxWidth: figure(labels.boxWidth, box.width, 'mm'),
    area: figure(labels.area, areaOfShape(shape), 'mm2', 'Without the holes.', 'derived', 3),
    perimeter: figure(labels.perimeter, perimeterOfShape(shape), 'mm', 'Of the outer edge.'),
    ...bitFigures(found),
    ...(nest
      ? {
          copies: figure(
            labels.copies,
            nest.placements.length,
            '1',
            'In straight rows, as drawn or turned by 180°. A patient hand may find room for more.',
            'derived',
            3,
          ),
        }
      : {}),
  };
}

function reachFigures({ inside, pockets, given }: Found): Record<string, Figure> {
  const figures: Record<string, Figure> = {};
  const [first] = pockets;
  const holes = pockets.filter(({ kind }) => kind === 'hole').length;
  const corners = pockets.length - holes;
  if (given.bitDiameter !== undefined) {
    const depth = Math.max(0, ...pockets.map((pocket) => pocket.depth ?? 0));
    const words = [
      ...(corners > 0 ? [`In ${corners === 1 ? 'one place' : `${corners} places`}.`] : []),
      ...(holes > 0
        ? [`It does not enter ${holes === 1 ? 'one hole' : `${holes} holes`}, which must be bored or sawn.`]
        : []),
      ...(first ? [] : [`It reaches every hollow; up to ${amount(leftToSand, 'mm')} is left to sanding.`]),
    ];
    figures.leftStanding = figure(labels.leftStanding, depth, 'mm', words.join(' '), 'derived', 2);
  }
  if (inside) {
    const kinds = {
      corner: 'A sharp inside corner: no bit reaches it. Round it, or cut it with a saw and a file.',
      curve: 'In a hollow of the edge or a hole.',
      gap: 'In a slot or hole that is too narrow for more.',
    };
    figures.insideRadius = figure(labels.insideRadius, inside.radius, 'mm', kinds[inside.kind], 'derived', 3);
  }
  return figures;
}

/** Board left over; where it fits and a hair of the clearance is given up for that, nothing is. */
function spare(label: string, over: number, fits: boolean): Figure {
  const given = fits && over < -1e-9;
  return figure(
    label,
    given ? 0 : over,
    'mm',
    given ? `The clearance is ${amount(-over / 2, 'mm', 1)} less on either side than asked.` : 'Beyond the clearance.',
    'derived',
    3,
  );
}

function boardFigures({ fit, shape, given }: Found): Record<string, Figure> {
  if (!fit) return {};
  const board = (given.boardLength ?? 0) * (given.boardWidth ?? 0);
  return {
    swing: figure(
      labels.swing,
      fit.swing,
      'deg',
      fit.fits ? 'The least that fits, counter-clockwise.' : 'The best try: it does not fit.',
      'derived',
      3,
    ),
    spareLength: spare(labels.spareLength, fit.spareLength, fit.fits),
    spareWidth: spare(labels.spareWidth, fit.spareWidth, fit.fits),
    ...(fit.fits
      ? {
          waste: figure(
            labels.waste,
            100 * (1 - areaOfShape(shape) / board),
            '%',
            'For one piece from this board.',
            'derived',
            2,
          ),
        }
      : {}),
  };
}

function bitFigures({ cut }: Found): Record<string, Figure> {
  if (!cut) return {};
  return {
    edgeShortBy: figure(
      labels.edgeShortBy,
      cut.shortBy,
      'mm',
      `For the stock and ${amount(usualBeyond, 'mm')} past it; where it is short, the last passes ride on the edge already cut.`,
      'derived',
      3,
    ),
  };
}
