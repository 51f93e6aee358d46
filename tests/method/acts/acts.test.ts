import { describe, expect, test } from 'vitest';
import { actIds, actOf, acts } from '../../../src/method/acts/index.ts';
import { materialKinds, toolKinds } from '../../../src/method/record/index.ts';
import { cautionById } from '../../../src/model/evidence/cautions.ts';

test('every act is told once, in the order of the work', () => {
  expect(acts.map(({ id }) => id)).toEqual([...actIds]);
  expect(actOf('raise-the-grain').label).toBe('Raise the grain');
});

describe.each(acts.map((act) => [act.id, act] as const))('%s', (_, act) => {
  test('has a heading of its own and one sentence', () => {
    expect(acts.filter(({ label }) => label === act.label)).toHaveLength(1);
    expect(act.label).not.toMatch(/[.:]$/);
    expect(act.about).toMatch(/^[A-Z][^.]+\.$/);
  });

  test('carries cautions that exist, each once', () => {
    const all = [
      ...act.cautions,
      ...(act.salvage ?? []),
      ...(act.resin ?? []),
      ...(act.drum ?? []),
      ...(act.powder ?? []),
      ...(act.solvent ?? []),
      ...(act.besideRags ?? []),
    ];
    expect(all.filter((id) => cautionById(id) === undefined)).toEqual([]);
    expect(new Set(all).size).toBe(all.length);
  });

  test('asks for protection by kinds that a method can list', () => {
    const kinds: readonly string[] = [...toolKinds, ...materialKinds];
    expect(act.protection.filter((kind) => !kinds.includes(kind))).toEqual([]);
  });

  test('names a caution wherever it names a hazard', () => {
    if (act.hazards.length > 0) expect(act.cautions.length).toBeGreaterThan(0);
  });
});

const withHazard = (hazard: string) => acts.filter(({ hazards }) => hazards.some((each) => each === hazard));

test('uncured resin in the hand asks for gloves, eye protection and moving air', () => {
  for (const id of ['seal', 'mix', 'pour'] as const)
    expect(actOf(id).protection).toEqual(expect.arrayContaining(['gloves', 'eye-protection', 'ventilation']));
});

test('what makes fine dust asks for an extractor and a mask, what makes noise for hearing protection', () => {
  for (const id of ['sand', 'level', 'make-a-template'] as const)
    expect(actOf(id).protection).toEqual(expect.arrayContaining(['dust-extractor', 'respirator']));
  for (const act of withHazard('noise')) expect(act.protection).toContain('hearing-protection');
});

test('what leaves oily rags says so', () => {
  for (const act of withHazard('rags')) expect(act.cautions).toContain('oily-rags');
});

test('what cuts with a router says that it is never fed with the rotation', () => {
  for (const id of ['rout', 'round-over'] as const) expect(actOf(id).cautions).toContain('table-feed');
});

test('what speaks of resin alone is carried where there is resin', () => {
  const always = (['coat', 'clear-up', 'label', 'hand-over'] as const).flatMap((id) => actOf(id).cautions);
  expect(always.filter((id) => /resin|hardener/.test(id))).toEqual([]);
  expect(actOf('clear-up').resin).toEqual(['resin-waste', 'hardener-sawdust']);
  expect(actOf('label').resin).toEqual(['resin-food']);
});
