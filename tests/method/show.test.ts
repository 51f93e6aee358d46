import { expect, test } from 'vitest';
import type { CaseValue } from '../../src/method/case/types.ts';
import { textWords, valueWords } from '../../src/method/show.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';

const soak: CaseValue = {
  kind: 'quantity',
  label: 'Soak',
  value: 40 * 60,
  unit: 's',
  digits: 2,
  low: 30 * 60,
  high: 45 * 60,
  basis: 'shop-practice',
};
const length: CaseValue = { kind: 'quantity', label: 'Length', value: 528, unit: 'mm', basis: 'memory' };
const worked = { at: (pointer: string) => ({ '/soak': soak, '/length': length })[pointer] };

test('a figure is told with its band, its unit once, and its basis in words', () => {
  expect(valueWords(soak, defaultUnits)).toBe('40 min (30 to 45 min; common practice)');
  expect(valueWords(length, defaultUnits)).toBe('528 mm (from memory)');
  expect(valueWords({ ...soak, high: 7200, basis: 'derived' }, defaultUnits)).toBe('40 min (30 min to 2 h)');
});

test('and plainly where it was told before, in this text or one that the reader has read', () => {
  const said = new Set<string>();
  expect(textWords(worked, 'Wait {/soak}. After {/soak} wipe it.', defaultUnits, said)).toBe(
    'Wait 40 min (30 to 45 min; common practice). After 40 min wipe it.',
  );
  expect(textWords(worked, 'Dull after {/soak}; cut to {/length}.', defaultUnits, said)).toBe(
    'Dull after 40 min; cut to 528 mm (from memory).',
  );
  expect(textWords(worked, 'Wait {/soak}.', defaultUnits)).toContain('(30 to 45 min; common practice)');
});
