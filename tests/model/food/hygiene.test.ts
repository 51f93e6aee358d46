import { describe, expect, test } from 'vitest';
import { sources } from '../../../src/model/evidence/index.ts';
import { hygieneFindings } from '../../../src/model/food/index.ts';
import { howTo } from '../../docs/how-to.ts';

const known = new Set<string>(sources.map(({ id }) => id));

describe.each(hygieneFindings.map((finding) => [finding.id, finding] as const))('%s', (_, finding) => {
  test('was read in its abstract, at a source of the list', () => {
    expect(finding.citation).toMatchObject({ locator: 'abstract', seen: 'source-text' });
    expect(known).toContain(finding.citation.source);
    expect(finding.found).toMatch(/\.$/);
  });
});

test('the papers disagree, and the page says so', () => {
  expect(new Set(hygieneFindings.map(({ speaks }) => speaks))).toEqual(
    new Set(['for wood', 'against wood', 'no difference', 'against oil on wood']),
  );
  const page = howTo('food-contact').text.toLowerCase();
  expect(page).toContain('**it is mixed.**');
  expect(page).toContain('none of the papers that we read tested a joint');
});
