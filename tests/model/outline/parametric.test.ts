import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EdgeGrid } from '../../../src/model/outline/grid.ts';
import {
  boxAlongGrain,
  isInside,
  parametricOutline,
  parametricOutlines,
  prepare,
} from '../../../src/model/outline/index.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { drawn, sound } from './reference.ts';

describe('our own outlines', () => {
  test.each([
    ['rounded-rectangle', { length: 300, width: 180, cornerRadius: 40 }, 300, 180],
    ['rounded-rectangle', { length: 300, width: 180, cornerRadius: 90 }, 300, 180],
    ['oval', { length: 300, width: 180 }, 300, 180],
    ['half-moon', { length: 400, rise: 150, cornerRadius: 0 }, 400, 150],
    ['half-moon', { length: 400, rise: 200, cornerRadius: 0 }, 400, 200],
    ['leaf', { length: 400, width: 160, tipRadius: 0 }, 400, 160],
    ['paddle', { length: 300, width: 180, handleLength: 120 }, 420, 180],
  ])('%s with %j is %d × %d mm', (id, values, length, width) => {
    const box = boxAlongGrain(sound(drawn(id, values)), 0);
    expect(box.length).toBeCloseTo(length, 5);
    expect(box.width).toBeCloseTo(width, 5);
  });

  test('rounded tips and corners take off what the circle in them leaves', () => {
    // The tip circle touches both arcs from within: its far side lies R − r from each arc's centre, plus r.
    const radius = (400 * 400) / (4 * 160) + 160 / 4;
    const offset = radius - 80;
    const expected = 2 * (Math.sqrt((radius - 12) ** 2 - offset ** 2) + 12);
    expect(boxAlongGrain(sound(drawn('leaf', { length: 400, width: 160, tipRadius: 12 })), 0).length).toBeCloseTo(
      expected,
      5,
    );
  });

  test('a name that is not known gives none', () => {
    expect(parametricOutline('heart')).toBeUndefined();
  });

  test.each([
    [
      'rounded-rectangle',
      { width: 100, cornerRadius: 51 },
      'cornerRadius',
      'more than the 50 mm that half the shorter side allows',
    ],
    ['oval', { length: 5 }, 'length', 'outside 20 mm to 3000 mm'],
    ['oval', { width: Number.NaN }, 'width', 'that is not a number'],
    ['half-moon', { length: 300, rise: 160 }, 'rise', 'at most half a circle'],
    ['leaf', { length: 300, width: 290 }, 'width', 'a leaf of this length'],
    ['paddle', { handleWidth: 150 }, 'handleWidth', 'is left between the corners and shoulders'],
    ['paddle', { endRadius: 30 }, 'endRadius', 'half the handle’s width'],
    ['paddle', { holeDiameter: 42 }, 'holeDiameter', 'leaves 3 mm of wood'],
    ['paddle', { holeDiameter: 1 }, 'holeDiameter', 'or 0 for no hole'],
    ['paddle', { holeFromEnd: 8 }, 'holeFromEnd', 'leaves less than 3 mm of wood'],
    ['paddle', { holeFromEnd: 128 }, 'holeFromEnd', 'reaches past the handle'],
    ['paddle', { shoulderRadius: 120, width: 400 }, 'shoulderRadius', 'the handle’s length allows'],
  ])('%s with %j is refused at %s', (id, values, field, words) => {
    const outcome = parametricOutline(id)?.draw(values as Record<string, number>);
    expect(outcome?.ok).toBe(false);
    const error = outcome?.ok ? undefined : outcome?.errors.find((each) => each.field === field);
    expect(inReaderUnits(error?.message ?? '', defaultUnits)).toContain(words);
  });

  test('whatever the measures: a sound outline that does not cross itself, its holes inside, or a refusal', () => {
    let sounds = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...parametricOutlines).chain((outline) =>
          fc.tuple(
            fc.constant(outline),
            fc.record(
              Object.fromEntries(
                outline.parameters.map(({ name, minimum, maximum, usual }) => [
                  name,
                  fc.oneof(
                    {
                      weight: 6,
                      arbitrary: fc.double({ min: minimum, max: Math.min(maximum, usual * 2 + 5), noNaN: true }),
                    },
                    { weight: 1, arbitrary: fc.double() },
                  ),
                ]),
              ),
            ),
          ),
        ),
        ([outline, values]) => {
          const outcome = outline.draw(values);
          if (!outcome.ok) {
            expect(outcome.errors.length).toBeGreaterThan(0);
            for (const { field, message } of outcome.errors) {
              expect(outline.parameters.map(({ name }) => name)).toContain(field);
              expect(message).not.toMatch(/NaN|Infinity|undefined/);
            }
            return;
          }
          sounds++;
          const shape = prepare(outcome.value);
          expect(shape.ok).toBe(true);
          if (!shape.ok) return;
          expect(new EdgeGrid(shape.value.loops, 1).crossings()).toEqual([]);
          for (const hole of shape.value.holes) {
            for (let i = 0; i < hole.x.length; i++)
              expect(isInside(shape.value.outer, hole.x[i] as number, hole.y[i] as number)).toBe(true);
          }
        },
      ),
      { numRuns: 600 },
    );
    expect(sounds).toBeGreaterThan(50);
  });
});
