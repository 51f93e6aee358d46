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
