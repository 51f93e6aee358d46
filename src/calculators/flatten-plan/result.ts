import {
  type Caution,
  cite,
  type Drawing,
  type EvidenceNote,
  type ResultTable,
  type Verdict,
} from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { type FlattenPlan, type MachineDefault, thickestSlab } from '../../model/stock/index.ts';
import type { PlacedHeight } from './fields.ts';

/** What two flat faces leave, and whether that is enough. */
export function verdictOf(plan: FlattenPlan, target: number, cautions: readonly Caution[]): Verdict {
  const left = `Two flat faces leave ${amount(plan.thicknessLeft, 'mm')}`;
  if (!plan.meetsTarget) {
    return {
      level: 'stop',
      text: `${left}, ${amount(plan.shortfall, 'mm', 2)} too little for ${amount(target, 'mm')}: make the piece thinner, or cut the board to blanks before flattening.`,
    };
  }
  const minded = cautions.find((caution) => caution.own && caution.level !== 'note');
  return minded
    ? { level: 'care', text: `${left}: enough for ${amount(target, 'mm')}. ${minded.text}` }
    : {
        level: 'good',
        text: `${left}: enough for ${amount(target, 'mm')}. ${plan.passes === 0 ? 'Nothing comes off the measured face' : `${plan.passes} ${plan.passes === 1 ? 'pass' : 'passes'} on the measured face`}, ${plan.passesBelow} on the other.`,
      };
}

/** What is done at each place. */
export function placesTable(plan: FlattenPlan, measured: readonly PlacedHeight[]): ResultTable {
  const column = (id: string, label: string, digits = 3) => ({ id, label, unit: 'mm', digits });
  return {
    id: 'places',
    title: 'Cuts and shims, place by place',
    columns: [
      { id: 'place', label: 'Place', digits: 5 },
      column('along', 'Along', 4),
      column('across', 'Across', 4),
      column('measured', 'Measured'),
      column('shim', 'Shim under it'),
      column('cut', 'Cut, this face'),
      column('cutBelow', 'Cut, other face'),
    ],
    rows: plan.points.map((point, at) => [
      at + 1,
      point.x,
      point.y,
      measured[at]?.height ?? 0,
      tidy(point.shim),
      tidy(point.cut),
      tidy(point.cutBelow),
    ]),
    basis: 'derived',
  };
}

/** A thousandth of a millimetre is the noise of rounding, not of a board. */
const tidy = (value: number) => Math.round(value * 1000) / 1000;

/** Places up to so many carry their shims in the drawing; more would lie on one another. */
const fewPlaces = 20;

/** The board from above with its places numbered as in the table, and the shim under each. */
export function planDrawing(plan: FlattenPlan, length: number, width: number): Drawing {
  const size = Math.max(length, width) * 0.006;
  const label = (shim: number, at: number) =>
    plan.points.length > fewPlaces ? `${at + 1}` : `${at + 1}: ${tidy(shim) === 0 ? '0' : amount(tidy(shim), 'mm', 2)}`;
  return {
    id: 'places',
    title: 'Places, seen from above',
    description: `The board from above with ${plan.points.length} places, numbered as in the table${plan.points.length > fewPlaces ? '' : ', each with the shim under it'}. The highest shim is ${amount(plan.highestShim, 'mm', 2)}, the deepest cut ${amount(plan.deepest, 'mm', 2)}.`,
    shapes: [
      {
        role: 'board',
        closed: true,
        points: [
          [0, 0],
          [length, 0],
          [length, width],
          [0, width],
        ],
      },
      ...plan.points.map(({ x, y, shim }, at) => ({
        role: 'place' as const,
        closed: true,
        label: label(shim, at),
        points: [
          [x - size, y],
          [x, y + size],
          [x + size, y],
          [x, y - size],
        ] as [number, number][],
      })),
    ],
  };
}

/**
 * What the plan rests on.
 *
 * @param taken machine settings that stand in for sizes nobody gave
 * @param depthOfCut mm, where it was taken and not given
 */
export function evidenceOf(taken: readonly MachineDefault[], depthOfCut: number | undefined): EvidenceNote[] {
  return [
    cite(thickestSlab, 'Finds both faces at once, exactly at the places measured.'),
    {
      text: 'Where the board is thicker than wanted, both faces are cut by the same amount more.',
      basis: 'shop-practice',
    },
    ...(depthOfCut === undefined
      ? []
      : [
          {
            text: `Depth of one pass: ${amount(depthOfCut, 'mm')}, since none was given.`,
            basis: 'shop-practice' as const,
          },
        ]),
    ...taken.map(({ label, value, why, basis }) => ({
      text: `${label}: ${amount(value, 'mm')}, since none was given. ${why}`,
      basis,
    })),
  ];
}
