import type { MaterialKind, ToolKind } from '../record/things.ts';
import type { ActId } from './ids.ts';

/** What an act gives off or leaves behind: the rules ask for what keeps it from people. */
export type Hazard = 'dust' | 'chips' | 'noise' | 'resin' | 'fumes' | 'heat' | 'rags' | 'solvent' | 'blade';

/** What an act gives off or leaves behind, as it is said. */
export const hazardWords: Readonly<Record<Hazard, string>> = {
  dust: 'dust',
  chips: 'chips',
  noise: 'noise',
  resin: 'uncured resin',
  fumes: 'vapour',
  heat: 'heat',
  rags: 'rags, which may take fire by themselves',
  solvent: 'solvent',
  blade: 'a sharp edge',
};

/** What is done in a step, in one word of the trade. */
export interface Act {
  id: ActId;
  /** What to do, as a heading: `Raise the grain`. */
  label: string;
  /** What it is, in a sentence for the list of acts. */
  about: string;
  hazards: readonly Hazard[];
  /** Ids of the cautions (`model/evidence`) that it always carries. */
  cautions: readonly string[];
  /** Those that it carries where wood had another life. */
  salvage?: readonly string[];
  /** Those that it carries where the piece has resin in it. */
  resin?: readonly string[];
  /** Those that it carries where a machine is listed whose drum, disc or belt draws things in, or no tool at all is. */
  drum?: readonly string[];
  /** Those that it carries where a dry powder is stirred in, or nothing says that the colour is none. */
  powder?: readonly string[];
  /** Those that it carries where a solvent is listed or named, or where nothing at all is listed. */
  solvent?: readonly string[];
  /** Those that it carries unless its step lists a can for rags, and nothing that dust or resin would come from: cloths are all that it clears away. */
  besideRags?: readonly string[];
  /** What lies open and wet from it on, where something does: what falls on it stays in it. */
  wet?: 'resin' | 'finish';
  /** What is worn or stands ready, whatever the case: kinds of tools and of materials. */
  protection: readonly (ToolKind | MaterialKind)[];
}
