import { readSpecies } from '../../calculators/kit/species-field.ts';
import { finishes } from '../../model/finish/kinds.ts';
import { excerpt, nameKey, type Read } from '../../model/quantity/index.ts';
import { resinKinds } from '../../model/resin/kinds.ts';
import { orThese } from './or-these.ts';

/** What is named by an id or a name: a wood by any that it bears, a finish by its own, a resin by its kind. */
export type NamedKind = 'wood' | 'finish' | 'resin';

function among(kind: string, text: string, known: readonly { id: string; name: string }[]): Read<string> {
  const key = nameKey(text);
  const found = known.find(({ id, name }) => nameKey(id) === key || nameKey(name) === key);
  if (found) return { ok: true, value: found.id };
  const ids = known.map(({ id }) => id);
  return {
    ok: false,
    problem: `“${excerpt(text)}” is not a kind of ${kind}`,
    wayOut: orThese(text.trim().toLowerCase(), ids, `kind of ${kind}`),
  };
}

/** The id of a wood, finish or resin, by any name that it is known by: the same in a file and as set by a reader. */
export function idOfKind(kind: NamedKind, text: string): Read<string> {
  if (kind === 'wood') {
    const read = readSpecies(text);
    return read.ok ? { ok: true, value: read.value.id } : read;
  }
  if (kind === 'finish') return among(kind, text, [{ id: 'none', name: 'none' }, ...finishes]);
  return among(
    kind,
    text,
    resinKinds.map(({ kind: id, name }) => ({ id, name })),
  );
}

/** Whether a list of such names holds one, by whichever of its names either is written. */
export function isAmong(kind: NamedKind, id: string, among: readonly string[]): boolean {
  return among.some((text) => {
    const read = idOfKind(kind, text);
    return read.ok && read.value === id;
  });
}

/** What a wood, finish or resin is called, by its id or any name of it; the text itself where nothing is called so. */
export function nameOfKind(kind: NamedKind, text: string): string {
  const read = idOfKind(kind, text);
  if (!read.ok) return text;
  const id = read.value;
  if (kind === 'finish') return finishes.find((finish) => finish.id === id)?.name ?? 'None';
  if (kind === 'resin') return resinKinds.find((resin) => resin.kind === id)?.name ?? text;
  const wood = readSpecies(id);
  return wood.ok ? wood.value.name : text;
}
