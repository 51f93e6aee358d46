import * as z from 'zod/mini';
import { excerpt, type FieldProblem, nearest } from '../../model/quantity/index.ts';
import { resinKinds, resinOf } from '../../model/resin/kinds.ts';
import { layResinSheet } from '../../model/resin/resin.ts';
import type { Resin } from '../../model/resin/types.ts';
import { readField } from './fields.ts';
import { entryLabel, readResinSheet } from './resin-sheet.ts';

type Read = { ok: true; value: Resin } | ({ ok: false } & FieldProblem);

/** Longest text of a data sheet that is read from an address or a file; a full sheet has about 900 characters. */
const longestSheet = 6000;
/** Errors of a sheet that are told at once. */
const toldAtOnce = 3;

/**
 * Read a resin: the id of a generic kind (`slow-casting-2-1`), or a data sheet as JSON text or as an object, so that an
 * address carries the whole sheet and means the same to every reader.
 */
export function readResin(value: string | Readonly<Record<string, unknown>>): Read {
  if (typeof value !== 'string') return readSheet(value);
  const text = value.trim();
  if (text.startsWith('{')) return readSheetText(text);
  const kind = resinOf(text.toLowerCase());
  if (kind) return { ok: true, value: kind };
  const ids = resinKinds.map(({ kind: id }) => id);
  const near = nearest(text, ids);
  return {
    ok: false,
    problem: `“${excerpt(text)}” is not a kind of resin; there are ${ids.join(', ')}`,
    wayOut: near ? `Did you mean ${near}?` : 'Pick one, or give your own data sheet as JSON.',
  };
}

function readSheetText(text: string): Read {
  if (text.length > longestSheet) {
    return {
      ok: false,
      problem: `The data sheet has ${text.length} characters, more than the ${longestSheet} that are read`,
      wayOut: 'Leave out what is not an entry of the sheet.',
    };
  }
  let sheet: unknown;
  try {
    sheet = JSON.parse(text);
  } catch {
    return {
      ok: false,
      problem: `The data sheet is not whole: “${excerpt(text)}” is not JSON`,
      wayOut: 'Copy the whole link again, or pick a kind or a sheet of yours instead.',
    };
  }
  return readSheet(sheet as Record<string, unknown>);
}

function readSheet(sheet: Readonly<Record<string, unknown>>): Read {
  const outcome = readResinSheet(sheet);
  if (outcome.ok) return { ok: true, value: layResinSheet(outcome.value) };
  const told = outcome.errors
    .slice(0, toldAtOnce)
    .map(({ field, message }) => `Data sheet, ${entryLabel(field)}: ${message}`);
  const more = outcome.errors.length - told.length;
  const text = `${more > 0 ? `${more + told.length} entries are to mend. ` : ''}${told.join(' ')}`;
  // The last sentence is the way out.
  const at = text.lastIndexOf('. ');
  return at < 0
    ? { ok: false, problem: text.replace(/\.$/, ''), wayOut: '' }
    : { ok: false, problem: text.slice(0, at), wayOut: text.slice(at + 2) };
}

/** A field for a resin: a generic kind or a data sheet. */
export function resinField(words: {
  label: string;
  help?: string;
  group?: string;
}): z.ZodMiniType<Resin, string | Record<string, unknown>> {
  return readField(z.union([z.string(), z.record(z.string(), z.unknown())]), readResin, {
    ...words,
    kind: 'resin',
    examples: ['slow-casting-2-1', 'fast-coating-1-1'],
  });
}
