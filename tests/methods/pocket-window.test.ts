import { describe, expect, test } from 'vitest';
import { workMethod } from '../../src/method/case/work.ts';
import { methodFiles } from './files.ts';

// Whoever routs a pocket by a window has only the sheet: it must say how large the pocket is, and by how much the window is larger.

const routed = (
  await Promise.all(
    methodFiles.map(async ({ name, read }) => {
      const outcome = await workMethod(read);
      if (!outcome.ok) throw new Error(`${name} is not worked out.`);
      const { steps, tools } = outcome.worked;
      return steps.flatMap(({ act, record }) => {
        const own = (record.tools ?? []).flatMap((id) => tools[id] ?? []);
        const collar = own.find(({ record: { kind, what } }) => kind === 'plunge-router' && /collar/.test(what));
        const window = own.some(({ record: { kind, what } }) => kind === 'template' && /^Windows? for/.test(what));
        const bit = own.find(({ record: { kind } }) => kind === 'router-bit');
        return act.id === 'rout' && collar && window && bit ? [{ name, does: record.does, collar, bit }] : [];
      });
    }),
  )
).flat();

describe.each(routed)('the pocket of $name', ({ does, collar, bit }) => {
  test('is told by its length and width, with collar, bit and the offset that they make', () => {
    for (const measure of ['Length', 'Width'])
      expect(does).toMatch(new RegExp(`\\{/parameters/(?:pocket|channel)${measure}\\}`));
    const wide = Number(/(\d+) mm/.exec(collar.record.what)?.[1]);
    const cuts = Number(/(\d+) mm/.exec(String(bit.record.limits?.diameter))?.[1]);
    expect(does).toContain(`Collar ${wide} mm (5/8 in) and bit ${cuts} mm (3/8 in)`);
    expect(does).toContain(`half of the difference, {${(wide - cuts) / 2} mm}`);
  });
});

test('there are three such methods', () => {
  expect(routed.map(({ name }) => name)).toEqual([
    'class-of-twelve.yaml',
    'panel-moss-channel.yaml',
    'salvaged-ash-amber.yaml',
  ]);
});
