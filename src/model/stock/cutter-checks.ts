import type { CheckSet } from '../evidence/index.ts';
import { rimSpeed, routerCeilings } from './cutters.ts';

const worked = [29.3, 47.9, 39.9, 37.2];

/** Rim speed worked out apart from this code. */
export const cutterChecks: readonly CheckSet[] = [
  {
    id: 'rim-speed',
    title: 'Rim speed of router bits at their usual limits',
    kind: 'check',
    about:
      'The rim speed that each row of the usual limits allows at its largest diameter, worked out by hand. It shows that units are right; the limits are common practice and nothing proves them.',
    values: routerCeilings.map((ceiling, at) => ({
      id: `rim-${ceiling.turns}`,
      what: `Rim speed at ${(ceiling.upTo / 25.4).toFixed(1)} in and ${ceiling.turns} turns a minute`,
      published: worked[at] as number,
      ours: () => rimSpeed(ceiling.upTo, ceiling.turns),
      unit: 'm/s',
      tolerance: 0.05,
      reason: 'Half of the last digit.',
      citation: { source: 'kerf-and-cure', locator: 'v = π d n by hand' },
    })),
  },
];
