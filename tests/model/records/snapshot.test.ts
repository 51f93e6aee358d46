import { describe, expect, test } from 'vitest';
import { finishKinds, sandingMethods, startSurfaces } from '../../../src/model/abrasive/surfaces.ts';
import { finishes } from '../../../src/model/finish/kinds.ts';
import { resinKinds } from '../../../src/model/resin/kinds.ts';

/** Every value in a record with its path, in order of the paths. */
function leaves(value: unknown, path: string): string[] {
  if (typeof value !== 'object' || value === null) return [`${path}: ${JSON.stringify(value)}`];
  if (Object.keys(value).length === 0) return [`${path}: ${JSON.stringify(value)}`];
  return Object.entries(value)
    .sort(([one], [other]) => one.localeCompare(other, 'en', { numeric: true }))
    .flatMap(([key, part]) => leaves(part, `${path}.${key}`));
}

/**
 * Every value that the records of finishes, resins and abrasives give the calculators, in the order in which they are listed, so that
 * the review of a changed record shows all that follows from it.
 * After a change that is meant: `npx vitest run tests/model/records/snapshot.test.ts -u`.
 */
describe('every value is as reviewed', () => {
  test.each<[string, readonly object[], (record: never) => string]>([
    ['finishes', finishes, ({ id }: { id: string }) => id],
    ['resins', resinKinds, ({ kind }: { kind: string }) => kind],
    ['surfaces', startSurfaces, ({ id }: { id: string }) => id],
    ['finishes-to-sand-for', finishKinds, ({ id }: { id: string }) => id],
    ['sanding-methods', sandingMethods, ({ id }: { id: string }) => id],
  ])('%s', async (name, records, idOf) => {
    const lines = records.flatMap((record) => leaves(record, idOf(record as never)));
    await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`${name}.txt`);
  });
});
