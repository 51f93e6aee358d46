import * as z from 'zod/mini';
import { type Cut, cuts } from '../../model/movement/index.ts';
import { excerpt, type Read } from '../../model/quantity/index.ts';
import {
  listUnits,
  readAll,
  readListLength,
  splitEntries,
  splitParts,
  withCommas,
} from '../../model/quantity/lists.ts';
import type { Species } from '../../model/species/types.ts';
import { readField } from './fields.ts';
import { readSpecies } from './species-field.ts';

/** One stave of a glued panel as asked for; a cut left out is that of the panel. */
export interface StaveInput {
  species: Species;
  /** mm across the panel. */
  width: number;
  cut?: Cut;
}

/** A stave as it stands in a text: `white-ash, 60 mm, flatsawn`. */
export interface StaveText {
  species: string;
  width: string;
  cut: string;
}

const staveCount = { most: 60 };
const staveWidth = { minimum: 5, maximum: 1000 };

/** The staves of a text, one after another, parted by `;` or a line end. */
export function splitStaves(text: string): StaveText[] {
  return splitEntries(text).map((line) => {
    const [species = '', width = '', cut = ''] = splitParts(line);
    return { species, width, cut };
  });
}

/** The text that `splitStaves` reads back. */
export function joinStaves(staves: readonly StaveText[]): string {
  return staves
    .map(({ species, width, cut }) => [species, width, cut].map((part) => part.trim()).join(', '))
    .map((line) => line.replace(/(, )+$/, ''))
    .join('; ');
}

/**
 * Parts of a stave that no comma parts: the very text with commas put in. Widths alone are a stave each, and want the wood of each.
 */
function noCommas({ species, width, cut }: StaveText, at: number): ReturnType<typeof refused> | undefined {
  const text = [species, width, cut].filter(Boolean).join(', ');
  const parts = splitParts(withCommas(text, cuts));
  if (parts.length < 2 || parts.length === splitParts(text).length) return undefined;
  const problem = `Stave ${at}: “${excerpt(text)}” has no commas between its parts`;
  if (parts.every((part) => /^\d/.test(part))) {
    const each = parts.map((part) => `white-ash, ${part}`).join('; ');
    return refused(problem, `Give each stave its wood and its width, such as ${excerpt(each, offered)}.`);
  }
  return refused(problem, `Write ${excerpt(parts.join(', '), offered)}.`);
}

/** A text to be copied is cut only where it would fill the page. */
const offered = 200;

const refused = (problem: string, wayOut: string) => ({ ok: false, problem, wayOut }) as const;

function readStave(stave: StaveText, at: number): Read<StaveInput> {
  const blanks = noCommas(stave, at);
  if (blanks) return blanks;
  const species = readSpecies(stave.species);
  if (!species.ok) return { ...species, problem: `Stave ${at}: ${species.problem}` };
  const width = readListLength(stave.width, `Stave ${at}, width`, staveWidth);
  if (!width.ok) return width;
  const cut = stave.cut.toLowerCase();
  if (cut === '') return { ok: true, value: { species: species.value, width: width.value } };
  const known = cuts.find((candidate) => candidate === cut);
  if (!known) {
    return {
      ok: false,
      problem: `Stave ${at}: “${excerpt(stave.cut)}” is not a cut; the cuts are ${cuts.join(', ')}`,
      wayOut: 'Pick one, or leave it out to use the cut of the panel.',
    };
  }
  return { ok: true, value: { species: species.value, width: width.value, cut: known } };
}

/** Read the staves of a panel from a text such as `white-ash, 60 mm, flatsawn; black-cherry, 40 mm`. */
export function readStaves(staves: readonly StaveText[]): Read<StaveInput[]> {
  if (staves.length === 0 || staves.length > staveCount.most) {
    return {
      ok: false,
      problem: `${staves.length} staves were read; a panel has 1 to ${staveCount.most}`,
      wayOut: 'Give each as species, width, cut, for example white-ash, 60 mm, flatsawn.',
    };
  }
  return readAll(staves, readStave);
}

const staveObject = z.strictObject({
  species: z.string(),
  width: z.union([z.string(), z.number()]),
  cut: z.optional(z.string()),
});

/** A field for the staves of a panel: a text, or in a file a list of objects with species, width and cut. */
export function stavesField(meta: {
  label: string;
  help?: string;
  group?: string;
}): z.ZodMiniType<StaveInput[], string | z.input<typeof staveObject>[]> {
  return readField(
    z.union([z.string(), z.array(staveObject)]),
    (value) =>
      readStaves(
        typeof value === 'string'
          ? splitStaves(value)
          : value.map(({ species, width, cut }) => ({ species, width: String(width), cut: cut ?? '' })),
      ),
    {
      ...meta,
      kind: 'staves',
      explicit: listUnits(() => [undefined, 'length']),
      examples: [
        'white-ash, 60 mm, flatsawn; black-cherry, 40 mm, quartersawn; white-ash, 60 mm, flatsawn',
        'white-ash, 2 1/2 in, flatsawn; black-cherry, 1 1/2 in, quartersawn; white-ash, 2 1/2 in, flatsawn',
      ],
    },
  );
}
