import { describe, expect, test } from 'vitest';
import { cautionIdsOf, charactersOf, leadOf } from '../../bench/readable.ts';
import { componentsOf, type HowTo, howTos } from './how-to.ts';

// Somebody at the bench opens a page for its steps. They must not scroll past a lecture to find the first one.

/**
 * The most characters that may stand before the first step: two screens of a phone of 360 px, which holds about 40 characters in a
 * line and 23 lines in a screen. What every caution tells one to do counts; the reasons that are folded under it do not.
 */
const mostBefore = 1_800;

const guides = howTos.filter(({ name }) => !['index', 'glossary'].includes(name));

/** What stands before the first step, without the front matter. */
function leadFrom(page: HowTo): string {
  const lead = leadOf(page.source);
  if (lead === undefined) throw new Error(`docs/${page.name}.mdx has no step`);
  return lead;
}

describe.each(guides)('$name', (page) => {
  test('comes to its first step within two screens of a phone', () => {
    expect(charactersOf(leadFrom(page))).toBeLessThanOrEqual(mostBefore);
  });

  test('shows no calculator, panel or list of records before its first step', () => {
    const parts = componentsOf({ ...page, source: leadFrom(page) }).map(({ component }) => component);
    expect(parts.filter((part) => !['Cautions', 'Cite', 'Wood', 'Figure', 'Tray'].includes(part))).toEqual([]);
  });

  test('shows no caution twice', () => {
    const ids = cautionIdsOf(page.source);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });
});
