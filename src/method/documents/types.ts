import type { PaperBlock, PaperDocument } from '../../model/evidence/index.ts';
import type { PaperName } from '../../model/outline/tiles.ts';
import type { QuoteTyped } from '../sale/typed.ts';

/** Whom a packet is made for, and on what. */
export interface PacketOptions {
  paper: PaperName;
  /** Address of the page that shows exactly this case; without one there is no code on the paper. */
  address?: string;
  /** Day of the printing, 2027-01-12: it comes from whoever prints, so that the same case makes the same packet. */
  made: string;
  /** Whom it is for; else a line to write on. */
  for?: string;
  /** Names of the sheets that are wanted; all where left out. */
  only?: readonly string[];
  /** What a seller typed, where a quote is wanted too. */
  quote?: QuoteTyped;
}

/** A document of a packet. */
export interface SheetDocument extends PaperDocument {
  /** By which name it is asked for: `student`, `teacher`, or the id that its calculation has for it, such as `mixing-sheet`. */
  sheet: string;
  /** Numbers of the steps that it is for; none where it is for all. */
  steps: readonly number[];
  /** Of cards and labels that are all alike: how many are needed, one for each piece. As many sheets are filled with them. */
  needed?: number;
  /** Cards of one kind that are cut from the same paper, one for each place; its own blocks four times where left out. */
  cards?: readonly (readonly PaperBlock[])[];
}

/** All that is printed of a method for one case. */
export interface MethodPacket {
  title: string;
  paper: PaperName;
  made: string;
  version?: string;
  language: string;
  /** The line that stands on every page. */
  running: string;
  documents: readonly SheetDocument[];
  /** Every name that this method has a sheet for, whether it was asked for or not. */
  sheets: readonly { sheet: string; title: string }[];
}
