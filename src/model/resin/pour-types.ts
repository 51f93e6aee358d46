import type { History } from './history.ts';
import type { Kinetics, ThermalProperties } from './kinetics.ts';

/** A flat pour over a base: a pool without loss at its edges, or a channel with wood at both sides. */
export interface Pour {
  kinetics: Kinetics;
  /** Of the mixed resin. */
  resin: ThermalProperties;
  /** mm. */
  depth: number;
  /** What the resin lies on; null where air meets its underside. */
  base: Base | null;
  /** Film coefficient over the resin, W/(m²·K). */
  filmTop: number;
  /** Film coefficient under the base, W/(m²·K). */
  filmBottom: number;
  /** Of the air as it is poured, and of the base, °C. */
  shopTemperature: number;
  /** Of the air from then on, where it does not keep that temperature. */
  air?: History;
  /** Of the mixed resin as it is poured, °C. */
  resinTemperature: number;
  /** Where it is poured between two walls near to each other; absent for a pool. */
  channel?: Channel;
}

/** A channel or groove, as deep as the pour and much longer than wide. */
export interface Channel {
  /** mm. */
  width: number;
  /** What stands at its sides, up to the upper face of the resin; the base goes on under it. */
  sides: ThermalProperties;
}

export interface Base extends ThermalProperties {
  /** mm. */
  thickness: number;
}

export interface PourOptions {
  /** Cells in the depth of resin, and in a base of 20 mm. */
  cells?: readonly [resin: number, base: number];
  /** Largest change of conversion in a step that is aimed at. */
  conversionStep?: number;
  /** Temperature at which the run stops, °C; `runawayTemperature` unless told. */
  stop?: number;
  /** Rise at which it stops, K; none unless told. */
  mostRise?: number;
  /** Whether temperatures through time and depth are kept for drawing. */
  record?: boolean;
  /** Whether the run may end once the peak is past, without waiting for the resin to gel through and to cool. */
  peakOnly?: boolean;
  /** Run to this time and no further, s. */
  until?: number;
}

/** Temperatures kept of a run, one entry a step. */
export interface PourRecord {
  /** s from mixing. */
  times: number[];
  /** °C: of the uppermost, the middle and the lowest cell of the resin. */
  top: number[];
  middle: number[];
  bottom: number[];
}

/** What a pour did. Times in s from mixing. */
export interface PourRun {
  /**
   * `settled`: it gelled through and cooled. `runaway`: some of it passed the stop, where the run ends.
   * `unfinished`: neither within `longestRun`.
   */
  outcome: 'settled' | 'runaway' | 'unfinished';
  /** Highest temperature anywhere in the resin, °C; in a runaway that of the stop. */
  peakTemperature: number;
  /** How far it was above the air, K; where the air changes, above the warmest that had been by then. */
  peakRise: number;
  timeToPeak: number;
  /** Middle of the hottest cell at that time above the underside of the resin, mm. */
  hottestHeight: number;
  /** First cell at the end of working time; null where the run ended before. */
  timeToWork: number | null;
  /** First and last cell to gel. */
  timeToFirstGel: number | null;
  timeToLastGel: number | null;
  /** The upper face has cured so far that a layer poured on it no longer bonds by itself. */
  timeToClose: number | null;
  /** After the last gel: the hottest cell is back within `coolWithin` of the air. */
  timeToCool: number | null;
  /** When the run ended. */
  end: number;
  /** Least and greatest conversion at the end. */
  conversion: { least: number; most: number };
  /** Heat per square metre of a pool, per metre of half a channel, J: made by the cure, held above the start, lost to the air. */
  heat: { made: number; held: number; lost: number };
  steps: number;
  /** Height of each cell above the underside of the base, mm, and its temperature at the time of the peak, °C. */
  profile: { heights: number[]; temperatures: number[]; resinFrom: number };
  /** Of a channel: distance of cells from its middle, mm, and their temperatures at the height and the time of the peak, °C. */
  across?: { places: number[]; temperatures: number[] };
  record: PourRecord;
}
