import type { Basis } from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';
import { inch } from './lumber.ts';

/** A kind of bit for holes in wood. */
export interface BoringBit {
  id: string;
  name: string;
  /** What it is good for, and how it leaves the far side. */
  use: string;
  /** Usual diameters, mm. */
  diameters: readonly [least: number, most: number];
  /** Usual rim speed in soft and in hard wood, m/s, and the ceiling on turns per minute. */
  soft: number;
  hard: number;
  mostTurns: number;
}

/** Kinds of bit and their usual speeds. Common practice: the maker's chart wins. */
export const boringBits: readonly BoringBit[] = [
  {
    id: 'brad-point',
    name: 'Brad-point (lip-and-spur) bit',
    use: 'Small and middling holes with a clean rim: the spurs score the fibres before the lips lift them.',
    diameters: [2, 16],
    soft: 1,
    hard: 0.6,
    mostTurns: 3000,
  },
  {
    id: 'forstner',
    name: 'Forstner bit',
    use: 'Clean flat-bottomed holes, also overlapping and at an edge. It runs hot: go slowly, lift often.',
    diameters: [6, 80],
    soft: 1.2,
    hard: 0.6,
    mostTurns: 2400,
  },
  {
    id: 'spade',
    name: 'Spade bit',
    use: 'Quick rough holes. It tears the far side unless the hole is finished from there.',
    diameters: [6, 38],
    soft: 1.8,
    hard: 1.2,
    mostTurns: 2000,
  },
  {
    id: 'twist',
    name: 'Twist bit',
    use: 'Pilot holes. It wanders on end grain and lifts fibres at the rim.',
    diameters: [1, 13],
    soft: 1.3,
    hard: 0.8,
    mostTurns: 3000,
  },
  {
    id: 'hole-saw',
    name: 'Hole saw',
    use: 'Large through holes. Clear the dust often; bore half from each side.',
    diameters: [20, 150],
    soft: 1.2,
    hard: 0.7,
    mostTurns: 1000,
  },
];

/** Side hardness (N) at and below which wood counts as soft, and at and above which as hard; between them speeds slide. */
export const hardnessEnds = { soft: 2500, hard: 5500 };

/** A usual speed for a hole. */
export interface BoringSpeed {
  bit: BoringBit;
  /** Turns per minute, and the range that is as usual. */
  turns: number;
  low: number;
  high: number;
  /** Rim speed that gives it, m/s. */
  rim: number;
  /** Whether the diameter is one that the bit is made in. */
  usualDiameter: boolean;
  basis: Basis;
}

/** Charts differ by this factor either way. */
const spread = 1.5;

/** To the step of fifty in which charts and pulleys count. */
const rounded = (turns: number) => Math.max(50, Math.round(turns / 50) * 50);

/**
 * A usual speed for boring a hole. Common practice.
 *
 * @param bit the kind of bit
 * @param diameter mm
 * @param hardness side hardness of the wood, N; a hard wood where it is not known
 */
export function boringSpeed(bit: BoringBit, diameter: number, hardness: number = hardnessEnds.hard): BoringSpeed {
  const share = Math.min(1, Math.max(0, (hardness - hardnessEnds.soft) / (hardnessEnds.hard - hardnessEnds.soft)));
  const rim = bit.soft * (bit.hard / bit.soft) ** share;
  const free = (rim * 60_000) / (Math.PI * diameter);
  const turns = rounded(Math.min(free, bit.mostTurns));
  return {
    bit,
    turns,
    low: rounded(Math.min(free, bit.mostTurns) / spread),
    high: rounded(Math.min(free * spread, bit.mostTurns)),
    rim: (Math.PI * diameter * turns) / 60_000,
    usualDiameter: diameter >= bit.diameters[0] - 1e-6 && diameter <= bit.diameters[1] + 1e-6,
    basis: 'shop-practice',
  };
}

/** How holes are bored clean: what to do, and why. Common practice. */
export const boringPractice: readonly { id: string; text: string; why?: string }[] = [
  {
    id: 'backing-block',
    text: 'Clamp a backing block of waste wood under every through hole, a fresh place of it for each.',
    why: 'Tight against the far side, its fibres hold those of the work, which otherwise break out.',
  },
  {
    id: 'from-both-sides',
    text: 'Where no block fits, bore until the point just shows, turn the work over and finish from the point’s hole.',
  },
  {
    id: 'hold-the-work',
    text: 'Clamp the work to the table, or lay its long end to the left against the column or a fence behind it.',
    why: 'A bit that catches turns a loose board clockwise.',
  },
  {
    id: 'lift-often',
    text: 'Lift the bit each half diameter to clear chips.',
    why: 'Smoke or a dark rim means too fast, too slow a feed or a dull bit.',
  },
  {
    id: 'edge-distance',
    text: `Keep at least one diameter, and no less than ${amount(inch / 2, 'mm')}, between a hole and an edge or end.`,
  },
];
