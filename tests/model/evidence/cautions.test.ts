import { describe, expect, it } from 'vitest';
import { cautionById, cautions } from '../../../src/model/evidence/cautions.ts';
import { sources } from '../../../src/model/evidence/index.ts';

const known = new Set<string>(sources.map((source) => source.id));

describe('cautions', () => {
  it('have ids of their own', () => {
    expect(new Set(cautions.map((caution) => caution.id)).size).toBe(cautions.length);
  });

  it.each(cautions.map((caution) => [caution.id, caution] as const))(
    '%s can be found and says where it was read',
    (id, caution) => {
      expect(cautionById(id)).toBe(caution);
      expect(caution.text).toMatch(/\.$/);
      if (caution.basis === 'published') {
        expect(caution.citation?.seen).toMatch(/^(source-text|quoted)$/);
        expect(known).toContain(caution.citation?.source);
      } else {
        expect(caution.basis).toBe('shop-practice');
        expect(caution.citation).toBeUndefined();
      }
    },
  );

  it.each(cautions.map((caution) => [caution.id, caution] as const))(
    '%s says what to do in a line or two',
    (_, caution) => {
      expect(caution.text.length).toBeLessThanOrEqual(165);
      expect(caution.why ?? 'A reason.').toMatch(/\.$/);
    },
  );

  it('promise nobody that anything is food safe', () => {
    expect(cautions.filter((caution) => /food.safe/i.test(`${caution.text} ${caution.why}`))).toEqual([]);
  });

  it('cover what hurts in choosing, salvaging and machining a board', () => {
    expect(cautions.map((caution) => caution.id)).toEqual(
      expect.arrayContaining([
        'wood-dust',
        'sensitising-woods',
        'lead-paint',
        'treated-wood',
        'pallets',
        'metal-in-stock',
      ]),
    );
  });

  it('cover what hurts in resin and finishes', () => {
    expect(cautions.filter(({ level }) => level === 'danger').map((caution) => caution.id)).toEqual(
      expect.arrayContaining([
        'resin-skin',
        'hardener-burns',
        'resin-cup-heat',
        'deep-pour',
        'hardener-sawdust',
        'heat-tool',
        'never-burn-resin',
        'isocyanates',
        'resin-dust',
        'oily-rags',
        'alcohol-flash',
      ]),
    );
  });

  it('know no other id', () => {
    expect(cautionById('no-such-caution')).toBeUndefined();
  });
});
