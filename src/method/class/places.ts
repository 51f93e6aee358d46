import type { WorkedMethod, Working } from '../case/types.ts';
import { workMethod } from '../case/work.ts';
import type { MethodReading } from '../read.ts';
import type { Shop } from '../shop/index.ts';
import type { ClassPlace, ClassRecord } from './record.ts';
import { placeFaults } from './sheet.ts';

/** A place with its method worked out. */
export interface WorkedPlace {
  id: string;
  name?: string;
  /** What is common, with what is its own laid over it. */
  set: Readonly<Record<string, string>>;
  own: Readonly<Record<string, string>>;
  worked: WorkedMethod;
}

/** A place whose parameters cannot be used. */
export interface FaultyPlace {
  place: ClassPlace;
  problems: { field: string; message: string }[];
}

/** What every part of a class works with. */
export interface ClassCase {
  read: MethodReading & { record: NonNullable<MethodReading['record']> };
  shop: Shop | undefined;
  places: readonly WorkedPlace[];
  faulty: readonly FaultyPlace[];
  /** Pieces for which a place was worked out by itself: one, or those of the class where the method makes no single piece. */
  alone: number;
  /** The method worked out for so many pieces like those of a place. */
  work(place: WorkedPlace, pieces: number): Promise<WorkedMethod>;
}

/** Pieces for which a place of a class is worked out by itself. */
export function piecesAlone({ least, most }: { least: number; most: number }, places: number): number {
  return least <= 1 ? 1 : Math.min(most, Math.max(least, places));
}

/** The method with its range of pieces widened to take a part of a class, or the whole of it. */
export function forPieces<Read extends MethodReading>(read: Read, pieces: number): Read {
  const { record } = read;
  if (!record) return read;
  const range = record.makes.pieces;
  if (pieces >= range.least && pieces <= range.most) return read;
  const wider = { ...range, least: Math.min(range.least, pieces), most: Math.max(range.most, pieces) };
  return { ...read, record: { ...record, makes: { ...record.makes, pieces: wider } } };
}

const keyOf = (set: Readonly<Record<string, string>>) =>
  JSON.stringify(Object.entries(set).sort(([one], [other]) => (one < other ? -1 : 1)));

/**
 * Work the method out for each place of a class, and keep what was asked: places that are alike are worked out once, and calculators are asked
 * the same once.
 *
 * @param tell called with how many places are done
 * @param memo answers of calculators that are known already, and that are added to
 */
export async function workPlaces(
  read: ClassCase['read'],
  record: ClassRecord,
  shop: Shop | undefined,
  tell: (done: number) => void = () => {},
  memo = new Map<string, unknown>(),
): Promise<ClassCase> {
  const kept = new Map<string, Promise<Working>>();
  const workSet = (set: Readonly<Record<string, string>>, pieces: number): Promise<Working> => {
    const key = `${pieces} ${keyOf(set)}`;
    const before = kept.get(key);
    if (before) return before;
    const fresh = workMethod(forPieces(read, pieces), { set, pieces, memo, ...(shop ? { shop } : {}) });
    kept.set(key, fresh);
    return fresh;
  };
  const alone = piecesAlone(read.record.makes.pieces, record.places.length);
  const places: WorkedPlace[] = [];
  const faulty: FaultyPlace[] = [];
  for (const [at, place] of record.places.entries()) {
    tell(at);
    const set = { ...record.common.set, ...place.set };
    const working = await workSet(set, alone);
    if (working.ok) {
      const { id, name } = place;
      places.push({ id, ...(name ? { name } : {}), set, own: place.set, worked: working.worked });
      continue;
    }
    const faults = placeFaults(read.record, set, shop).map(({ key, message }) => ({ field: key, message }));
    faulty.push({
      place,
      problems: faults.length > 0 ? faults : working.problems.map(({ field, message }) => ({ field, message })),
    });
  }
  tell(record.places.length);
  return {
    read,
    shop,
    places,
    faulty,
    alone,
    work: async (place, pieces) => {
      const working = await workSet(place.set, pieces);
      // What a place can be worked out with does not depend on how many there are of it.
      if (!working.ok) throw new Error(working.problems.map(({ message }) => message).join(' '));
      return working.worked;
    },
  };
}
