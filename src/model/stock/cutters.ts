import { equation } from '../evidence/index.ts';
import { inch } from './lumber.ts';

export { cutterCautions } from '../evidence/machine-cautions.ts';

export const rimSpeed = equation(
  {
    id: 'rim-speed',
    title: 'Speed of a cutting edge',
    tex: 'v = \\pi d n',
    symbols: [
      { tex: 'v', meaning: 'speed of the outermost edge', unit: 'm/s' },
      { tex: 'd', meaning: 'diameter of the cutter', unit: 'm' },
      { tex: 'n', meaning: 'turns per second', unit: '1/s' },
    ],
    validity: 'Any cutter, bit or blade that turns.',
    basis: 'derived',
    citation: { source: 'kerf-and-cure', locator: 'geometry of a turning edge' },
  },
  /**
   * Speed of the outermost edge of a turning cutter.
   *
   * @param diameter mm
   * @param turns per minute
   * @returns m/s
   */
  (diameter: number, turns: number): number => (Math.PI * diameter * turns) / 60_000,
);

/** A usual highest speed for router bits of a size: two texts give it, and they differ. */
export interface SpeedCeiling {
  /** Greatest diameter that it is for, mm. */
  upTo: number;
  /** Turns per minute: the first text, which is used, and the range that the second gives. */
  turns: number;
  otherTexts: readonly [low: number, high: number];
}

/** Usual highest speeds of router bits by diameter. Common practice; what is marked on the tool wins. */
export const routerCeilings: readonly SpeedCeiling[] = [
  { upTo: 1 * inch, turns: 24_000, otherTexts: [22_000, 24_000] },
  { upTo: 2 * inch, turns: 18_000, otherTexts: [18_000, 22_000] },
  { upTo: 2.5 * inch, turns: 16_000, otherTexts: [12_000, 16_000] },
  { upTo: 3.5 * inch, turns: 12_000, otherTexts: [8_000, 12_000] },
];

/** The usual ceiling for a bit, or undefined where it is larger than any that the texts name. */
export function routerCeiling(diameter: number): SpeedCeiling | undefined {
  return routerCeilings.find((ceiling) => diameter <= ceiling.upTo + 1e-6);
}

/**
 * Usual greatest depth of one pass of a straight bit: half its diameter, and no more than 1/4 in. Common practice.
 *
 * @param diameter mm
 * @returns mm
 */
export function usualDepthOfPass(diameter: number): number {
  return Math.min(diameter / 2, inch / 4);
}

/** Where the guide bearing of a template bit sits: by the shank, over the edge, or at the tip, under it. */
export type Bearing = 'shank' | 'tip';

/** A template bit, the template and the stock under or over it, mm. */
export interface TemplateCut {
  diameter: number;
  /** Length of the cutting edge. */
  cuttingLength: number;
  bearing: Bearing;
  stock: number;
  template: number;
  /** Height of template that the bearing must touch to be steady. */
  contact: number;
  /** How far the edge should reach past the stock. */
  beyond: number;
  depthOfPass: number;
}

/** Contact and reach that are usual. Common practice. */
export const usualContact = 3;
export const usualBeyond = 1;

/** Whether a template bit does the work, and in how many passes. */
export interface TemplateCutPlan {
  /** Whether the edge is long enough to trim the whole thickness against the template. */
  longEnough: boolean;
  /** Length that the edge lacks, mm. */
  shortBy: number;
  /** Least depth of the first pass at which the bearing still touches the template, mm; 0 for a bearing at the tip. */
  leastFirstPass: number;
  /** Whether a first pass of the usual depth leaves the bearing on the template. */
  steadyFirstPass: boolean;
  /** Depths of the passes, mm, from the template side; one for a bearing at the tip, which can only cut full depth. */
  passes: readonly number[];
  /** Whether the last passes ride on the edge already cut, not on the template. */
  ridesOnCutEdge: boolean;
  /** Template thickness at which a first pass of the usual depth is steady, mm; undefined where it is steady already. */
  thickerTemplate?: number;
}

/**
 * Plan a cut along a template.
 *
 * With the bearing by the shank the template lies over the stock, and the bearing stands just above the edge: a shallow pass
 * lifts a long edge until the bearing clears a thin template. With the bearing at the tip the template lies under the stock
 * and the edge cuts all of it at once.
 */
export function templateCut(cut: TemplateCut): TemplateCutPlan {
  const needed = cut.stock + cut.beyond;
  const shortBy = Math.max(0, needed - cut.cuttingLength);
  if (cut.bearing === 'tip') {
    return {
      longEnough: shortBy === 0,
      shortBy,
      leastFirstPass: 0,
      steadyFirstPass: cut.template >= cut.contact,
      passes: [Math.min(cut.stock, cut.cuttingLength)],
      ridesOnCutEdge: false,
    };
  }
  const room = cut.template - cut.contact;
  const leastFirstPass = Math.max(0, cut.cuttingLength - room);
  const first = Math.min(cut.depthOfPass, needed);
  const steadyFirstPass = room >= 0 && first >= leastFirstPass - 1e-9;
  const start = Math.min(needed, Math.max(first, leastFirstPass));
  const passes = [start];
  for (let done = start; done < needed - 1e-9; ) {
    const next = Math.min(cut.depthOfPass, needed - done);
    passes.push(next);
    done += next;
  }
  return {
    longEnough: shortBy === 0,
    shortBy,
    leastFirstPass: Math.min(leastFirstPass, needed),
    steadyFirstPass,
    passes,
    ridesOnCutEdge: shortBy > 0,
    ...(steadyFirstPass ? {} : { thickerTemplate: cut.cuttingLength - first + cut.contact }),
  };
}
