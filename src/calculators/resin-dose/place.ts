import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import { perimeterOfLoop, readDrawing } from '../../model/outline/index.ts';
import { signedArea } from '../../model/outline/shape.ts';
import { amount } from '../../model/quantity/index.ts';
import {
  type DepthProfile,
  deepest,
  type FillShape,
  type Footprint,
  footprintOf,
  meanDepth,
  sumFootprints,
} from '../../model/resin/shapes.ts';
import type { Inputs } from './inputs.ts';

/** What is to be filled, as far as it is known. */
export interface Place {
  /** How it was given. */
  from: 'shapes' | 'drawing' | 'water' | 'volume' | 'mass';
  /** mL that fill it, where a volume is known. */
  volume?: number;
  /** g of mixed resin, where that is what was asked for. */
  mass?: number;
  /** mL of it that stand above the face. */
  proud?: number;
  footprint?: Footprint;
  profile?: DepthProfile;
  /** The places one by one, where they were given as shapes. */
  pieces?: readonly Piece[];
  /** Floor and walls, mm². */
  bare?: number;
  /** How a drawing was read. */
  notes: readonly string[];
}

/** One of several places. */
export interface Piece {
  /** What it is called; by its number in the list of shapes where it has no name. */
  name?: string;
  shape: FillShape;
  /** Shares of the whole fill and of the bare wood. */
  fill: number;
  bare: number;
}

const wants = ['shapes', 'drawing', 'water', 'volume', 'mass'] as const;
/** The place that some inputs describe. Errors name the inputs. */
export function placeOf(given: Inputs): Outcome<Place> {
  // Two at once are refused before anything is worked out.
  const from = wants.find((want) => given[want] !== undefined);
  if (!from) {
    return refuse(
      'shapes',
      'Nothing says what is to be filled',
      'Give shapes, a drawing, water, a volume or an amount.',
    );
  }
  if (given.proud && from !== 'shapes' && from !== 'drawing') {
    return refuse(
      'proud',
      'How far it stands proud makes a volume only where the size of the place is known',
      'Leave it empty and add a tenth to what is wanted, or give shapes or a drawing.',
    );
  }
  const { pieceNames: names, shapes = [] } = given;
  if (names && names.length !== shapes.length) {
    return refuse(
      'pieceNames',
      from === 'shapes'
        ? `${names.length} ${names.length === 1 ? 'name stands' : 'names stand'} beside ${shapes.length} ${shapes.length === 1 ? 'shape' : 'shapes'}`
        : 'Pieces have names only where they are given as shapes',
      from === 'shapes' ? 'Name each of them, in their order, or leave the names empty.' : 'Leave the names empty.',
    );
  }
  const profile = profileOf(given);
  const depths = profile ? { profile } : {};
  if (from === 'mass') {
    if (given.displaced !== undefined) {
      return refuse(
        'displaced',
        'An amount of mixed resin is asked for, from which nothing is taken off',
        'Leave it empty, or give the volume of the place instead.',
      );
    }
    return answer({ from, mass: given.mass ?? 0, notes: [], ...depths });
  }
  if (from === 'volume' || from === 'water') {
    const left = without(given.displaced, given[from] ?? 0);
    return left.ok ? answer({ from, volume: left.value, notes: [], ...depths }) : left;
  }
  const found = from === 'shapes' ? fromShapes(given) : fromDrawing(given);
  if (!found.ok) return found;
  if (!profile) {
    return refuse('depth', 'Nothing says how deep it is', 'Give a depth, or depths at several places.');
  }
  const { footprint, notes } = found.value;
  const mean = meanDepth(profile);
  const { proud = 0 } = given;
  const volume = without(given.displaced, (footprint.area * (mean + proud)) / 1000);
  if (!volume.ok) return volume;
  const bareOf = ({ area, edge }: Footprint) => area + edge * mean;
  const bare = bareOf(footprint);
  return answer({
    from,
    volume: volume.value,
    ...(proud > 0 ? { proud: (footprint.area * proud) / 1000 } : {}),
    footprint,
    // What is poured in one go is as deep as the place and what stands above it.
    profile: profile.map((one) => ({ ...one, depth: one.depth + proud })),
    bare,
    ...(from === 'shapes' && given.shapes
      ? {
          pieces: given.shapes.map((shape, at) => {
            const own = footprintOf(shape);
            const name = given.pieceNames?.[at];
            return {
              ...(name === undefined ? {} : { name }),
              shape,
              fill: own.area / footprint.area,
              bare: bareOf(own) / bare,
            };
          }),
        }
      : {}),
    notes,
  });
}

/** mL to fill once what is set into it has taken its own. */
function without(displaced: number | undefined, volume: number): Outcome<number> {
  if (displaced === undefined) return answer(volume);
  if (displaced < volume) return answer(volume - displaced);
  return refuse(
    'displaced',
    `${amount(displaced, 'mL', 3, true)} set into a place of ${amount(volume, 'mL', 3, true)} leaves nothing to fill`,
    'Measure what is set in again, or correct the place.',
  );
}

function profileOf({ depth, depths }: Inputs): DepthProfile | undefined {
  return depths ?? (depth === undefined ? undefined : [{ depth, share: 1 }]);
}

function fromShapes({ shapes = [] }: Inputs): Outcome<{ footprint: Footprint; notes: string[] }> {
  return answer({ footprint: sumFootprints(shapes.map(footprintOf)), notes: [] });
}

function fromDrawing({
  drawing = '',
  drawingWidth,
  drawingFilled,
}: Inputs): Outcome<{ footprint: Footprint; notes: string[] }> {
  const read = readDrawing(drawing, {
    field: 'drawing',
    widthField: 'drawingWidth',
    ...(drawingWidth === undefined ? {} : { width: drawingWidth }),
    ...(drawing.trim().startsWith('<') ? {} : { unit: 'mm' as const }),
  });
  if (!read.ok) return read;
  const { shape, notes } = read.value;
  const filled = drawingFilled ?? (shape.holes.length > 0 ? 'holes' : 'inside');
  if (filled === 'holes' && shape.holes.length === 0) {
    return refuse(
      'drawingFilled',
      'The drawing has no region inside its outline',
      'Draw the inlay inside the board’s outline, or fill the outline itself.',
    );
  }
  const edge = (loops: typeof shape.loops) => loops.reduce((sum, loop) => sum + perimeterOfLoop(loop), 0);
  const size = (loops: typeof shape.loops) => Math.abs(loops.reduce((sum, loop) => sum + signedArea(loop.segments), 0));
  const loops = filled === 'holes' ? shape.holes : shape.loops;
  return answer({ footprint: { area: size(loops), edge: edge(loops) }, notes: [...notes] });
}

/** Greatest depth of a place in mm, where its depth is known. */
export function depthOf({ profile }: Place): number | undefined {
  return profile ? deepest(profile) : undefined;
}
