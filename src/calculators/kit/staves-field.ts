import type * as z from 'zod/mini';
import { type Cut, cuts } from '../../model/movement/index.ts';
import { asTyped, excerpt, type Read } from '../../model/quantity/index.ts';
import { readAll, readListLength, splitParts, withCommas } from '../../model/quantity/lists.ts';
import type { Species } from '../../model/species/types.ts';
import { type ListColumn, type ListEntry, type ListRow, listField } from './list-field.ts';
import { readSpecies, speciesOptions } from './species-field.ts';

/** One stave of a glued panel as asked for; a cut left out is that of the panel. */
export interface StaveInput {
  species: Species;
  /** mm across the panel. */
  width: number;
  cut?: Cut;
}

type Part = 'species' | 'width' | 'cut';

const columns: readonly ListColumn<Part>[] = [
  { name: 'species', label: 'Wood', example: 'white-ash', pick: speciesOptions },
  { name: 'width', label: 'Width', example: '60 mm', measure: 'length' },
  {
    name: 'cut',
    label: 'Cut',
    example: 'flatsawn',
    optional: true,
    options: cuts.map((cut) => ({ value: cut, label: cut })),
  },
];

const mostStaves = 60;
const staveWidth = { minimum: 5, maximum: 1000 };

/** A text to be copied is cut only where it would fill the page. */
const offered = 200;

/**
 * Parts of a stave that no comma parts: the very text with commas put in. Widths alone are a stave each, and want the wood of each.
 */
function noCommas(entry: string, at: number): Read<never> | undefined {
  const parts = splitParts(withCommas(entry, cuts));
  if (parts.length < 2 || parts.length === splitParts(entry).length) return undefined;
  const each = parts.map((part) => `white-ash, ${part}`).join('; ');
  return {
    ok: false,
    problem: `Stave ${at}: “${excerpt(entry)}” has no commas between its parts`,
    wayOut: parts.every((part) => /^\d/.test(part))
      ? `Give each stave its wood and its width, such as ${excerpt(each, offered)}.`
      : `Write ${excerpt(parts.join(', '), offered)}.`,
  };
}

function readStave({ cells, entry }: ListRow<Part>, at: number): Read<StaveInput> {
  const blanks = noCommas(entry, at);
  if (blanks) return blanks;
  const species = readSpecies(cells.species);
  if (!species.ok) return { ...species, problem: `Stave ${at}: ${species.problem}` };
  const width = readListLength(cells.width, `Stave ${at}, width`, staveWidth);
  if (!width.ok) return width;
  if (cells.cut === '') return { ok: true, value: { species: species.value, width: width.value } };
  const cut = cuts.find((known) => known === cells.cut.toLowerCase());
  if (!cut) {
    return {
      ok: false,
      problem: `Stave ${at}: “${excerpt(cells.cut)}” is not a cut; the cuts are ${cuts.join(', ')}`,
      wayOut: 'Pick one, or leave it out to use the cut of the panel.',
    };
  }
  return { ok: true, value: { species: species.value, width: width.value, cut } };
}

/** A field for the staves of a panel, from edge to edge: `white-ash, 60 mm, flatsawn; black-cherry, 40 mm`. */
export function stavesField(meta: {
  label: string;
  help?: string;
  group?: string;
}): z.ZodMiniType<StaveInput[], string | ListEntry[]> {
  return listField(
    {
      ...meta,
      noun: 'stave',
      columns,
      examples: [
        'white-ash, 60 mm, flatsawn; black-cherry, 40 mm, quartersawn; white-ash, 60 mm, flatsawn',
        'white-ash, 2 1/2 in, flatsawn; black-cherry, 1 1/2 in, quartersawn; white-ash, 2 1/2 in, flatsawn',
      ],
    },
    (staves) => {
      if (staves.length > 0 && staves.length <= mostStaves) return readAll(staves, readStave);
      return {
        ok: false,
        problem: `${staves.length} staves were read; a panel has 1 to ${mostStaves}`,
        wayOut: `Give each as species, width, cut, for example white-ash, ${asTyped({ metric: '60 mm', inch: '2 1/2 in' })}, flatsawn.`,
      };
    },
  );
}
