import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { howTo } from './how-to.ts';

/** The words of the interface as they stand in its source, each run of white space as one space. */
const written = ['src/site', 'src/calculators/view', 'src/method/documents', 'src/method/class']
  .flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.tsx?$/.test(file) && !file.endsWith('trade-words.ts'))
      .map((file) => readFileSync(`${folder}/${file}`, 'utf8')),
  )
  .join('\n')
  .replace(/\s+/g, ' ');

/** What a page that leads through the interface names in bold within its steps; a button that a message brings is held by the tutorial. */
const named = (page: string): string[] => {
  const source = howTo(page).source;
  const ends = ['{/* #parts */}', '{/* #wrong */}'].map((id) => source.indexOf(id)).filter((place) => place > 0);
  const steps = source.slice(source.indexOf('\n## Step 1'), Math.min(...ends));
  return [...new Set([...steps.matchAll(/\*\*([A-Z][^*]+)\*\*/g)].map(([, name = '']) => name))];
};

const parts = (name: string) => new RegExp(`[>'"\`}]\\s*${name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}\\s*[<'"\`{,:?]`);

describe.each(['writing-a-method', 'running-a-batch', 'teaching-with-sheets'])('%s', (page) => {
  const names = named(page).filter((name) => !name.startsWith('Write '));
  test('names some of the interface', () => expect(names.length).toBeGreaterThan(5));
  test.each(names)('“%s” stands in the interface', (name) => {
    // The name is enough of a message; all that is written would bury it.
    expect(
      parts(name).test(written),
      `docs/${page}.mdx names “${name}”, which nothing in the interface is called`,
    ).toBe(true);
  });
});
