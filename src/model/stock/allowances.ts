import type { Basis } from '../evidence/index.ts';
import { inch } from './lumber.ts';

/** Wood that is bought and not kept. */
export interface Allowances {
  /** Extra length at each end of a blank, mm; the boards that blanks are cut from are not trimmed besides. */
  endTrim: number;
  /** Left outside the finished outline on every side until it is trimmed, mm. */
  outlineClearance: number;
  /** Taken off each face, mm. */
  planing: number;
  /** Share of pieces made over, 0 to 1; at least one piece where it is not 0. */
  spare: number;
}

/** Width of the cut of a circular saw's blade, mm, where none is given. Common practice. */
export const usualKerf = 3.2;

/**
 * What the ends of a board lose before it is cut up where blanks bring no end trim of their own, mm: end checks and sealer. Common
 * practice.
 */
export const usualBoardTrim = 25;

/** Length that a planer cuts too deep at an end, mm. Common practice. */
export const usualSnipe = 50;

/** What an allowance is for and how much is usual. */
export interface AllowanceDefault {
  id: keyof Allowances;
  label: string;
  value: number;
  /** `mm`, or `1` for a share. */
  unit: 'mm' | '1';
  basis: Basis;
  why: string;
}

/**
 * Usual allowances. Those of common practice have no source; the planing allowance is what the trade's own surfacing
 * takes off, half of 3/16 in on each face.
 */
export const usualAllowances: readonly AllowanceDefault[] = [
  {
    id: 'endTrim',
    label: 'Extra length, each end of a blank',
    value: 2 * inch,
    unit: 'mm',
    basis: 'shop-practice',
    why: 'Several inches of extra length on a two-foot blank take up end checks, planer snipe and the marks of clamps.',
  },
  {
    id: 'outlineClearance',
    label: 'Clearance outside the template line',
    value: inch / 8,
    unit: 'mm',
    basis: 'shop-practice',
    why: 'An eighth of an inch left outside the line keeps the saw off the work and gives the router a light, even cut.',
  },
  {
    id: 'planing',
    label: 'Planing, each face',
    value: (3 / 32) * inch,
    unit: 'mm',
    basis: 'derived',
    why: 'Half of the 3/16 in that surfacing both faces takes off rough lumber up to 1 1/2 in thick. A cupped or twisted board needs more.',
  },
  {
    id: 'spare',
    label: 'Spare pieces',
    value: 0.1,
    unit: '1',
    basis: 'shop-practice',
    why: 'One piece in ten, and at least one: a check that opens, a tear-out at the router, a test of the finish.',
  },
];

/** The usual allowances as one object. */
export const defaultAllowances: Allowances = Object.fromEntries(
  usualAllowances.map(({ id, value }) => [id, value]),
) as unknown as Allowances;

/** A piece before it is worked, mm. */
export interface RoughSize {
  length: number;
  width: number;
  thickness: number;
}

/**
 * The size to cut a piece to before it is worked.
 *
 * @param finished length along the grain, width and thickness, mm
 */
export function roughSize(finished: RoughSize, allowances: Allowances): RoughSize {
  return {
    length: finished.length + 2 * (allowances.endTrim + allowances.outlineClearance),
    width: finished.width + 2 * allowances.outlineClearance,
    thickness: finished.thickness + 2 * allowances.planing,
  };
}

/** Pieces to make so that `count` are good. */
export function piecesWithSpares(count: number, spare: number): number {
  return spare > 0 ? count + Math.max(1, Math.ceil(count * spare - 1e-9)) : count;
}
