import { describe, expect, test } from 'vitest';
import { runChecks } from '../../../src/model/evidence/index.ts';
import { diffusionChecks } from '../../../src/model/moisture/diffusion-checks.ts';

describe.each(diffusionChecks.map((set) => [set.title, set] as const))('%s', (_, set) => {
  test.each(runChecks(set, []).outcomes.map((outcome) => [outcome.value.what, outcome] as const))(
    '%s',
    (_what, outcome) => {
      expect(Math.abs(outcome.difference)).toBeLessThanOrEqual(outcome.value.tolerance * (1 + 1e-9));
    },
  );
});
