import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../../src/calculators/kit/answer.ts';
import { widthChangeCalculator } from '../../../src/calculators/width-change/calculator.ts';
import { orderByNeed } from '../../../src/method/case/circles.ts';
import { changed, inside, problemsOf, smallMethod, worked } from './base.ts';

describe('a worked method', () => {
  test('gives the very figures of its calculators', async () => {
    const { at } = await worked(smallMethod);
    const own = answer(widthChangeCalculator, {
      species: 'sugar-maple',
      width: '250 mm',
      moistureFrom: '8 %',
      moistureTo: '6 %',
    });
    expect(own.ok && own.value.result.figures.change?.value).toBe(
      (at('/calculations/change/figures/change') as { value: number }).value,
    );
  });

  test('needs what its figures and its pieces ask for', async () => {
    const one = await worked(smallMethod, { pieces: 1 });
    const six = await worked(smallMethod, { pieces: 6 });
    expect(six.materials.cloths?.needs).toEqual([{ amount: 12, unit: '{count}', step: 'oil', from: undefined }]);
    const oil = (from: typeof one) => from.materials.oil?.needs[0];
    expect(oil(six)?.amount).toBeCloseTo(6 * (oil(one)?.amount ?? 0), 9);
    expect(oil(six)).toMatchObject({ unit: 'mL', step: 'oil', from: '/calculations/coats/uses/finish' });
    expect(six.materials.oil?.spare).toBeCloseTo(0.1, 12);
  });

  test('waits as the reference says, in whole minutes, and follows the step above where it says nothing', async () => {
    const { steps, at } = await worked(smallMethod);
    const recoat = at('/calculations/coats/figures/recoat') as { value: number };
    const [, oil, again] = steps;
    expect(again?.after).toMatchObject([
      { step: 'oil', counts: 'end', least: Math.ceil(recoat.value / 60), most: 4320, missed: { addsMinutes: 2 } },
    ]);
    expect(oil?.after).toMatchObject([{ step: 'read', counts: 'end' }]);
  });

  test('takes what a reader sets, and what the shop holds before its own default', async () => {
    const text = changed((data) => {
      inside(data, 'steps', 'read', 'calculations', 'change', 'with').width = { from: '/parameters/width' };
    });
    const set = await worked(text, { set: { width: '12 in', 'outline.length': '16 in' } });
    expect(set.parameters.width).toMatchObject({ from: 'reader', raw: '12 in' });
    expect(set.calculations.change?.raw.width).toBe('12 in');
    expect(set.calculations.coats?.raw.length).toBe('16 in');
    expect(set.calculations.coats?.raw.width).toBe('250 mm');
  });

  test('says where a reference reaches nothing in this case, and works all the same', async () => {
    const text = changed((data) => {
      inside(data, 'steps', 'give').does = 'Cured after {/calculations/coats/events/never-named}.';
    });
    const { gaps } = await worked(text);
    expect(gaps).toHaveLength(1);
    expect(gaps[0]?.message).toContain('tells of no event “never-named”');
  });

  test('holds what a calculator refuses as its errors, and what leans on it as well', async () => {
    const text = changed((data) => {
      inside(data, 'steps', 'read', 'calculations', 'change', 'with').moistureTo = '500 %';
      inside(data, 'steps', 'give').calculations = {
        later: {
          use: 'width-change',
          with: {
            species: 'sugar-maple',
            width: { from: '/calculations/change/figures/widthAfter' },
            moistureFrom: '8 %',
            moistureTo: '6 %',
          },
        },
      };
    });
    const { calculations } = await worked(text);
    expect(calculations.change?.errors?.[0]?.field).toBe('moistureTo');
    expect(calculations.later?.errors?.[0]).toMatchObject({ field: 'width' });
    expect(calculations.later?.errors?.[0]?.message).toContain('“change” has no answer');
  });
});

describe('faults of a method have a place and a way out', () => {
  const cases: [what: string, change: (data: Record<string, unknown>) => void, found: RegExp][] = [
    [
      'a step that is not there',
      (data) => {
        inside(data, 'steps', 'give').after = ['agian'];
      },
      /steps\.give\.after\.0: “agian” is not a step of this method\. Did you mean again\?/,
    ],
    [
      'a step that waits for itself',
      (data) => {
        inside(data, 'steps', 'give').after = ['give'];
      },
      /waits for itself/,
    ],
    [
      'steps in a circle',
      (data) => {
        inside(data, 'steps', 'read').after = ['give'];
      },
      /in a circle/,
    ],
    [
      'a material that is not listed',
      (data) => {
        inside(data, 'steps', 'give').uses = ['clots'];
      },
      /“clots” is not a material of this method\. Did you mean cloths\?/,
    ],
    [
      'a tool that is not listed',
      (data) => {
        inside(data, 'steps', 'give').tools = ['plane'];
      },
      /Did you mean planer\?/,
    ],
    [
      'a figure that its calculator does not give',
      (data) => {
        inside(data, 'steps', 'give').does = 'It is {/calculations/change/figures/chang}.';
      },
      /width-change gives no figure “chang”\. Did you mean change\?/,
    ],
    [
      'a parameter that is not there',
      (data) => {
        inside(data, 'steps', 'read', 'calculations', 'change', 'with').width = { from: '/parameters/with' };
      },
      /steps\.read\.calculations\.change\.with\.width\.from: \/parameters\/with: “with” is not a parameter\. Did you mean width\?/,
    ],
    [
      'a moisture where a width belongs',
      (data) => {
        inside(data, 'steps', 'read', 'calculations', 'change', 'with').width = { from: '/parameters/from' };
      },
      /asks for a length, and this is a percent/,
    ],
    [
      'a wood where a width belongs',
      (data) => {
        inside(data, 'steps', 'read', 'calculations', 'change', 'with').width = { from: '/parameters/wood' };
      },
      /asks for a length, and this is no quantity/,
    ],
    [
      'a width where a time belongs',
      (data) => {
        inside(data, 'steps', 'give').after = [{ step: 'again', least: { from: '/parameters/width' } }];
      },
      /a time is needed here, and this is a length/,
    ],
    [
      'an input that its calculator does not have',
      (data) => {
        inside(data, 'steps', 'read', 'calculations', 'change', 'with').breadth = '10 mm';
      },
      /width-change has no input “breadth”/,
    ],
    [
      'calculations that need each other',
      (data) => {
        inside(data, 'steps', 'read', 'calculations', 'change', 'with').width = {
          from: '/calculations/change/figures/widthAfter',
        };
      },
      /need each other in a circle/,
    ],
    [
      'a default out of its range',
      (data) => {
        inside(data, 'parameters', 'width').default = '500 mm';
      },
      /500 mm is more than the method allows/,
    ],
    [
      'a range in another unit',
      (data) => {
        inside(data, 'parameters', 'width').least = '10 g';
      },
      /do not measure the same|backwards/,
    ],
    [
      'a wood that nobody knows',
      (data) => {
        inside(data, 'parameters', 'wood').default = 'sugar-mapel';
      },
      /sugar-mapel/,
    ],
    [
      'pieces out of range',
      (data) => {
        inside(data, 'makes', 'pieces').default = 40;
      },
      /40 pieces are not within 1 to 12/,
    ],
    [
      'a window that closes before the wait is over',
      (data) => {
        inside(data, 'steps', 'give').after = [{ step: 'again', least: '3 h', most: '40 min' }];
      },
      /at least 3 h and at most 40 min, and nothing lies in between/,
    ],
    [
      'one name for two calculations',
      (data) => {
        inside(data, 'steps', 'give').calculations = { change: { use: 'width-change', with: {} } };
      },
      /has a calculation “change” already/,
    ],
  ];
  test.each(cases)('%s', async (_, change, found) => {
    const problems = await problemsOf(changed(change));
    expect(problems.join('\n')).toMatch(found);
    for (const problem of problems) expect(problem).toMatch(/^\d+:\d+ /);
  });

  test('points at the very place of the file', async () => {
    const text = smallMethod.replace('from: /parameters/width }\n', 'from: /parameters/with }\n');
    const line = text.split('\n').findIndex((each) => each.includes('/parameters/with '));
    const [problem] = await problemsOf(text);
    expect(problem).toMatch(new RegExp(`^${line + 1}:${(text.split('\n')[line]?.indexOf('/parameters') ?? 0) + 1} `));
  });

  test('what a reader sets is judged as what stands in the file', async () => {
    expect((await problemsOf(smallMethod, { set: { width: '900 mm' } })).join()).toContain(
      'as set: 900 mm is more than the method allows',
    );
    expect((await problemsOf(smallMethod, { set: { widht: '300 mm' } })).join()).toContain('Did you mean width?');
    expect((await problemsOf(smallMethod, { set: { wood: 'walnut' } })).join()).toMatch(/black walnut|names? of/i);
    expect((await problemsOf(smallMethod, { pieces: 13 })).join()).toContain('written for 1 to 12');
  });
});

describe('order by need', () => {
  test('puts everything behind what it needs, or names a true circle', () => {
    const graphs = fc
      .integer({ min: 1, max: 12 })
      .chain((count) =>
        fc.array(fc.tuple(fc.nat(count - 1), fc.nat(count - 1)), { maxLength: 30 }).map((edges) => ({ count, edges })),
      );
    fc.assert(
      fc.property(graphs, ({ count, edges }) => {
        const names = Array.from({ length: count }, (_, at) => `n${at}`);
        const needs = (name: string) => edges.filter(([from]) => `n${from}` === name).map(([, to]) => `n${to}`);
        const sorted = orderByNeed(names, needs);
        if ('circle' in sorted) {
          const { circle } = sorted;
          for (const [at, name] of circle.entries()) expect(needs(name)).toContain(circle[(at + 1) % circle.length]);
          return;
        }
        expect([...sorted.order].sort()).toEqual([...names].sort());
        for (const [at, name] of sorted.order.entries())
          for (const need of needs(name)) expect(sorted.order.indexOf(need)).toBeLessThan(at);
      }),
    );
  });
});
