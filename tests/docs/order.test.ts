import { describe, expect, test } from 'vitest';
import { cautionById } from '../../src/model/evidence/cautions.ts';
import { componentsOf, type HowTo, howTos } from './how-to.ts';

// Somebody at the bench opens a page for its steps. They must not scroll past a lecture to find the first one.

/**
 * The most characters that may stand before the first step: two screens of a phone of 360 px, which holds about 40 characters in a
 * line and 23 lines in a screen. What every caution tells one to do counts; the reasons that are folded under it do not.
 */
const mostBefore = 1_800;

/**
 * Where the first step of a page begins: a numbered line, or a heading that calls itself step 1. On the page that is opened when
 * somebody was splashed it is the row of what to do now.
 */
const firstStep = /^(1\. |## Step 1\b|\| What happened \| Do this now )/m;

const guides = howTos.filter(({ name }) => !['index', 'glossary'].includes(name));

/** What stands before the first step, without the front matter. */
function leadOf(page: HowTo): string {
  const body = page.source.replace(/^---\n[\s\S]*?\n---\n/, '');
  const at = body.search(firstStep);
  if (at < 0) throw new Error(`docs/${page.name}.mdx has no step`);
  return body.slice(0, at);
}

const idsOf = (page: HowTo) =>
  componentsOf(page)
    .filter(({ component }) => component === 'Cautions')
    .flatMap(({ properties }) => properties['ids'] as string[]);

/** The text as a reader meets it: cautions by what they tell one to do, links by their words. */
function asRead(source: string): string {
  const cautions = componentsOf({ name: '', source, text: '' })
    .filter(({ component }) => component === 'Cautions')
    .flatMap(({ properties }) => properties['ids'] as string[])
    .map((id) => cautionById(id)?.text ?? '');
  const prose = source
    .replace(/<[A-Z][\s\S]*?\/>/g, '')
    .replace(/ ?\{\/\*.*?\*\/\}/g, '')
    .replace(/\]\([^)]*\)/g, ']')
    .replace(/[#*|[\]`]|---/g, '');
  return `${cautions.join(' ')} ${prose}`.replace(/\s+/g, ' ').trim();
}

describe.each(guides)('$name', (page) => {
  test('comes to its first step within two screens of a phone', () => {
    expect(asRead(leadOf(page)).length).toBeLessThanOrEqual(mostBefore);
  });

  test('shows no calculator, panel or list of records before its first step', () => {
    const parts = componentsOf({ ...page, source: leadOf(page) }).map(({ component }) => component);
    expect(parts.filter((part) => !['Cautions', 'Cite', 'Wood', 'Figure'].includes(part))).toEqual([]);
  });

  test('shows no caution twice', () => {
    const ids = idsOf(page);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });
});
