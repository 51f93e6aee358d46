import { equation } from '../evidence/index.ts';
import { inch } from './lumber.ts';

export { cutterCautions } from '../evidence/machine-cautions.ts';

/** Speed of the outermost edge of a cutter, m/s. */
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
  /** Turns per minute that neither text goes beyond: the lower of the two. */
  turns: number;
  /** The most that either text allows, turns per minute. */
  most: number;
}

/** Usual highest speeds of router bits by diameter. Common practice; what is marked on the tool wins. */
export const routerCeilings: readonly SpeedCeiling[] = [
  { upTo: 1 * inch, turns: 22_000, most: 24_000 },
  { upTo: 2 * inch, turns: 18_000, most: 22_000 },
  { upTo: 2.5 * inch, turns: 12_000, most: 16_000 },
  { upTo: 3.5 * inch, turns: 8_000, most: 12_000 },
];

/** The usual ceiling for a bit, by its diameter in mm, or undefined where it is larger than any that the texts name. */
export function routerCeiling(diameter: number): SpeedCeiling | undefined {
  return routerCeilings.find((ceiling) => diameter <= ceiling.upTo + 1e-6);
}

/** The most that one pass of a straight bit takes, mm, however wide the bit. Common practice. */
export const mostDepthOfPass = inch / 4;

/**
 * Usual greatest depth of one pass of a straight bit: half its diameter, and no more than 1/4 in. Common practice.
 *
 * @param diameter mm
 * @returns mm
 */
export function usualDepthOfPass(diameter: number): number {
  return Math.min(diameter / 2, mostDepthOfPass);
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

/** How far an edge reaches beyond the wood, mm. Common practice. */
export const usualBeyond = 1;

/** Whether a template bit does the work, and in how many passes. */
export interface TemplateCutPlan {
  /** Whether the edge is long enough to trim the whole thickness against the template. */
  longEnough: boolean;
  /** Length that the edge lacks, mm. */
  shortBy: number;
  /**
   * Least depth of the first pass at which the bearing touches enough of the template, mm; 0 for a bearing at the tip. It may be more
   * than the stock: the edge then hangs out under it. Undefined where the template is too thin for any pass.
   */
  leastFirstPass?: number;
  /** Whether a first pass of the usual depth leaves the bearing on the template. */
  steadyFirstPass: boolean;
  /** Depths of the passes, mm, from the template side, the bearing on the template or the edge already cut at each; empty where there are none. */
  passes: readonly number[];
  /** Whether the last passes ride on the edge already cut, not on the template. */
  ridesOnCutEdge: boolean;
  /** Template thickness at which a first pass of the usual depth is steady, mm; undefined where it is steady already. */
  thickerTemplate?: number;
  /** Longest edge with which a first pass of the usual depth is steady on this template, mm; undefined where there is none, or it is steady already. */
  shorterEdge?: number;
}

/**
 * Template that the bearing touches when a bit with its bearing by the shank has gone to a depth, mm; less than 0 where it stands clear above.
 *
 * @param depth of the edge's tip below the face under the template, mm
 */
export function bearingContact(cut: Pick<TemplateCut, 'cuttingLength' | 'template'>, depth: number): number {
  return cut.template - (cut.cuttingLength - depth);
}

const slack = 1e-9;

/**
 * Plan a cut along a template.
 *
 * With the bearing by the shank the template lies on the router's side of the stock, and the bearing stands just above the edge: a shallow
 * pass lifts a long edge until the bearing clears a thin template. With the bearing at the tip the template lies on the far side
 * and the edge cuts all of the stock at once.
 */
export function templateCut(cut: TemplateCut): TemplateCutPlan {
  const needed = cut.stock + cut.beyond;
  const shortBy = Math.max(0, needed - cut.cuttingLength);
  const longEnough = shortBy === 0;
  if (cut.bearing === 'tip') {
    const steadyFirstPass = cut.template >= cut.contact - slack;
    // Stock above the edge would meet the shank.
    const reaches = cut.cuttingLength >= cut.stock - slack;
    return {
      longEnough,
      shortBy,
      leastFirstPass: 0,
      steadyFirstPass,
      passes: steadyFirstPass && reaches ? [cut.stock] : [],
      ridesOnCutEdge: false,
      ...(steadyFirstPass ? {} : { thickerTemplate: cut.contact }),
    };
  }
  // No pass may be deeper than the edge is long: the bearing would meet wood that is not cut yet.
  const first = Math.min(cut.depthOfPass, needed, cut.cuttingLength);
  const wayOut = { thickerTemplate: cut.cuttingLength - first + cut.contact };
  if (cut.template < cut.contact - slack) {
    return { longEnough, shortBy, steadyFirstPass: false, passes: [], ridesOnCutEdge: false, ...wayOut };
  }
  const leastFirstPass = Math.max(0, cut.cuttingLength - (cut.template - cut.contact));
  const steadyFirstPass = first >= leastFirstPass - slack;
  const passes = leastFirstPass <= needed + slack ? passesFrom(Math.max(first, leastFirstPass), needed, cut) : [];
  return {
    longEnough,
    shortBy,
    leastFirstPass,
    steadyFirstPass,
    passes,
    ridesOnCutEdge: shortBy > 0 && passes.length > 0,
    ...(steadyFirstPass ? {} : { ...wayOut, shorterEdge: cut.template - cut.contact + first }),
  };
}

/** Passes down to a depth: the first as given, the others of the usual depth, none deeper than the edge is long. */
function passesFrom(first: number, needed: number, { depthOfPass, cuttingLength }: TemplateCut): number[] {
  const passes = [Math.min(first, needed)];
  for (let done = passes[0] as number; done < needed - slack; ) {
    const next = Math.min(depthOfPass, cuttingLength, needed - done);
    passes.push(next);
    done += next;
  }
  return passes;
}
