import { expect, test } from 'vitest';
import { timetableOf } from '../../../src/method/plan/timetable.ts';
import { readMethodTexts } from '../../../src/store/index.ts';
import { worked } from '../case/base.ts';

const hours = {
  zone: 'America/Chicago',
  week: Object.fromEntries(['mon', 'tue', 'wed', 'thu', 'fri'].map((day) => [day, ['09:00-17:00']])),
};

/** Minutes between mixing and what is done with the mix: a breath, or the walk from the scale to the work. */
const stands = 5;

// A class of twelve has evenings of its own, and no window on its seal coat.
const poured = readMethodTexts().filter(({ id, text }) => /act: mix$/m.test(text) && id !== 'class-of-twelve');

test.each(poured.map(({ id, text }) => [id, text] as const))(
  '%s: what is mixed does not stand waiting, on whatever day it is begun',
  async (_, text) => {
    let looked = 0;
    for (const pieces of [undefined, 2]) {
      const method = await worked(text, pieces === undefined ? {} : { pieces });
      for (const start of ['2026-11-30', '2027-01-12', '2027-02-19']) {
        const timetable = await timetableOf(method, { start, hours, people: 3, nodes: 100 });
        if (!timetable.ok) continue;
        const planned = new Map(timetable.steps.map((step) => [step.id, step]));
        for (const { id, after } of method.steps) {
          for (const { step, counts, most } of after) {
            const mixed = method.steps.find((each) => each.id === step);
            if (counts !== 'start' || most === undefined || mixed?.record.act !== 'mix') continue;
            looked += 1;
            const waited = (planned.get(id)?.start ?? 0) - (planned.get(step)?.end ?? 0);
            expect(waited, `${id} after ${step}, ${start}, ${pieces} pieces`).toBeLessThanOrEqual(stands);
          }
        }
      }
    }
    expect(looked).toBeGreaterThan(0);
  },
  60_000,
);
