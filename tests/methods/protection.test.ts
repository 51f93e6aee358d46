import { expect, test } from 'vitest';
import { methodFiles } from './files.ts';

const kinds = ['eye-protection', 'hearing-protection', 'respirator'];

test.each(methodFiles)('$name asks for protection by who is there, not by a number of its own', ({ read }) => {
  const worn = Object.values(read.record?.tools ?? {}).filter(({ kind }) => kinds.includes(kind));
  expect(worn.length).toBeGreaterThan(0);
  for (const { what, count } of worn) {
    expect(what).toContain('for everybody');
    expect(count).toBeUndefined();
  }
});

const ofTheRoom = ['eye-wash', 'fire-extinguisher', 'ventilation', 'air-cleaner'];

test.each(methodFiles)('$name counts no more than one of what serves the whole room', ({ read }) => {
  const shared = Object.values(read.record?.tools ?? {}).filter(({ kind }) => ofTheRoom.includes(kind));
  expect(shared.length).toBeGreaterThan(0);
  for (const { what, count } of shared) expect(count, what).toBeUndefined();
});
