import { expect, test } from 'vitest';
import { figureNames } from '../../src/model/species/types.ts';
import { gatherEvidence } from '../../src/site/plugin/reference.ts';
import { dossiers } from '../model/species/world.ts';

test('the page on where figures come from counts every figure of every wood once, and lists all from memory', () => {
  const { woods, counts, toCheck } = gatherEvidence(dossiers);
  expect(counts.map(({ name }) => name)).toEqual([...figureNames]);
  for (const { name, published, derived, memory, none } of counts)
    expect(published + derived + memory + none, name).toBe(woods);
  const remembered = counts.reduce((sum, { memory }) => sum + memory, 0);
  expect(remembered).toBeGreaterThan(0);
  expect(toCheck.reduce((sum, { figures }) => sum + figures.length, 0)).toBe(remembered);
});
