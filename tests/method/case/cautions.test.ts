import { describe, expect, test } from 'vitest';
import { changed, inside, worked } from './base.ts';

/** Ids of the cautions of the step `again` of the small method, after a change of its data. */
async function saidOf(change: (step: Record<string, unknown>, data: Record<string, unknown>) => void) {
  const { steps } = await worked(changed((data) => change(inside(data, 'steps', 'again'), data)));
  return steps.find(({ id }) => id === 'again')?.cautions.map(({ id }) => id) ?? [];
}

describe('what draws in fingers and cuffs is said at the machine that does', () => {
  test.each([
    ['drum-sander', true],
    ['belt-sander', true],
    ['spindle-sander', true],
    ['sanding-block', false],
    ['random-orbit-sander', false],
  ] as const)('%s: %s', async (kind, said) => {
    for (const act of ['sand', 'level']) {
      const ids = await saidOf((step, data) => {
        Object.assign(data.tools as object, { own: { what: 'What it is sanded with', kind } });
        Object.assign(step, { act, tools: ['own'] });
      });
      expect(ids.includes('sander-guards'), act).toBe(said);
      expect(ids).toContain('wood-dust');
    }
  });

  test('and where no tool is listed', async () => {
    expect(await saidOf((step) => Object.assign(step, { act: 'sand' }))).toContain('sander-guards');
  });
});

describe('the dust of dry powders is said where one is stirred in', () => {
  const pigment = { what: 'Colour', kind: 'pigment', needs: [{ amount: '5 g', per: 'batch' }] };
  const dose = (colours: string) => ({
    dose: { use: 'resin-dose', with: { resin: 'slow-casting-2-1', volume: '50 ml', ...(colours ? { colours } : {}) } },
  });
  test.each([
    ['amber, 100 %, powder 3 %', true],
    ['amber, 100 %, paste 3 %', false],
    // Nothing says what the colour is.
    ['', true],
  ])('colours “%s”: %s', async (colours, said) => {
    const ids = await saidOf((step, data) => {
      Object.assign(data.materials as object, { pigment });
      Object.assign(step, { act: 'mix', calculations: dose(colours) });
    });
    expect(ids.includes('pigment-dust')).toBe(said);
    expect(ids).toContain('hardener-burns');
  });

  test('not where nothing is coloured', async () => {
    expect(await saidOf((step) => Object.assign(step, { act: 'mix' }))).not.toContain('pigment-dust');
  });
});

describe('what a solvent does is said where one is about', () => {
  const soap = { what: 'Washing-up liquid', kind: 'other', needs: [{ amount: 1, per: 'batch' }] };
  const spirit = { what: 'Spirit', kind: 'solvent', needs: [{ amount: '10 ml', per: 'batch' }] };
  const washed = (stuff: object, does: string) =>
    saidOf((step, data) => {
      Object.assign(data.materials as object, { stuff });
      Object.assign(step, { act: 'clean', does, uses: ['stuff'] });
    });
  test.each([
    ['listed', spirit, 'Wipe it off.', true],
    ['named', soap, 'Wipe it off with alcohol on a cloth.', true],
    ['nowhere', soap, 'Warm water and a brush.', false],
  ])('%s', async (_, stuff, does, said) => {
    const ids = await washed(stuff, does);
    expect(['solvent-use', 'alcohol-flash'].map((id) => ids.includes(id))).toEqual([said, said]);
    expect(ids).toContain('blowing-dust');
  });

  test('and where nothing is listed, since nobody has said that there is none', async () => {
    const ids = await saidOf((step) => {
      for (const list of ['uses', 'tools']) delete step[list];
      Object.assign(step, { act: 'clean', does: 'Clean it.' });
    });
    expect(ids).toContain('solvent-use');
  });
});

describe('where cloths are all that is cleared away, dust and resin are not spoken of', () => {
  const resin = { what: 'Resin', kind: 'resin', needs: [{ amount: '50 g', per: 'batch' }] };
  const cloths = { what: 'Cloths', kind: 'cloth', needs: [{ amount: 2, per: 'batch' }] };
  const discs = { what: 'Discs', kind: 'abrasive', needs: [{ amount: 2, per: 'batch' }] };
  const can = { what: 'Can with a lid', kind: 'rag-can' };
  const cleared = (uses: string[], tools: string[]) =>
    saidOf((step, data) => {
      Object.assign(data.materials as object, { resin, cloths, discs });
      Object.assign(data.tools as object, { can });
      Object.assign(step, {
        act: 'clear-up',
        ...(uses.length > 0 ? { uses } : {}),
        ...(tools.length > 0 ? { tools } : {}),
      });
    });
  const besides = ['sanding-dust-fire', 'blowing-dust', 'resin-waste', 'hardener-sawdust'];
  test.each([
    ['cloths into their can', ['cloths'], ['can'], []],
    ['cloths and resin', ['cloths', 'resin'], ['can'], besides],
    ['cloths and discs', ['cloths', 'discs'], ['can'], besides],
    ['no can', ['cloths'], [], besides],
    ['nothing listed', [], [], besides],
  ])('%s', async (_, uses, tools, said) => {
    const ids = await cleared(uses, tools);
    expect(besides.filter((id) => ids.includes(id))).toEqual(said);
    expect(ids).toContain('oily-rags');
  });
});
