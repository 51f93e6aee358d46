import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod/mini';
import { DataError, type DataProblem } from '../../model/data/problem.ts';
import { readYamlRecord } from '../../model/data/yaml.ts';
import { root } from '../root.ts';
import { contrast, hue } from './contrast.ts';

/** The file in which a site says what is its own. */
export const siteFile = 'site.yaml';

const line = (words: string, most: number) =>
  z.string().check(z.minLength(1), z.maxLength(most, `At most ${most} characters.`), z.describe(words));

/** Papers, on which something is read; then what is read on them; then lines. */
const papers = ['paper', 'card', 'field', 'wash'] as const;
const inks = ['ink', 'muted', 'accent', 'caution-ink', 'doubt-ink'] as const;
const lines = ['rule', 'field-edge', 'focus'] as const;
export const colourNames = [...papers, ...inks, ...lines] as const;
export type ColourName = (typeof colourNames)[number];

const colour = z
  .string()
  .check(z.regex(/^#[0-9a-f]{6}$/, 'Write a colour between quotes as #rrggbb, small letters, such as "#7c3a1d".'));
const scheme = z.strictObject(
  Object.fromEntries(colourNames.map((name) => [name, colour])) as Record<ColourName, typeof colour>,
);

const siteSchema = z.strictObject({
  site: z.literal(1, { error: 'This reads version 1 of the file. Write “site: 1”.' }),
  name: line('What the site is called, at the head of every page.', 60),
  tagline: line('What it is, in a line.', 160),
  address: z
    .string()
    .check(
      z.regex(
        /^https?:\/\/[^\s/]+$/,
        'Write the address of the host without a slash behind it, such as https://shop.example.',
      ),
    ),
  folder: z
    .string()
    .check(
      z.regex(
        /^\/(?:[\w.-]+\/)*$/,
        'A folder begins and ends with a slash, such as /boards/; / alone is the whole host.',
      ),
    ),
  shop: z.exactOptional(
    z
      .string()
      .check(z.regex(/^(?!\.\.?\/|\/)[\w./-]+\.yaml$/, 'Name a file of this project, such as methods/shop.yaml.')),
  ),
  colours: z.strictObject({ light: scheme, dark: scheme }),
});

/** What a site says of itself. */
export type Site = z.output<typeof siteSchema>;

/** Contrast that text needs and that the edge of a field needs: W3C, Web Content Accessibility Guidelines 2.2, 1.4.3 and 1.4.11. */
const leastForText = 4.5;
const leastForEdges = 3;
/** Degrees of hue between what hurts and what is not checked, so that the two are two colours: common practice, no source. */
const leastHues = 30;

interface ColourFault {
  path: readonly string[];
  message: string;
}

/** A ratio rounded down: what just fails must not read as what would pass. */
const shown = (ratio: number) => (Math.floor(ratio * 10) / 10).toFixed(1);

function colourFaults(of: 'light' | 'dark', colours: Site['colours']['light']): ColourFault[] {
  const pairs = [
    ...inks.map((ink) => ({ name: ink, grounds: papers, least: leastForText })),
    { name: 'field-edge' as const, grounds: ['field', 'paper', 'card'] as const, least: leastForEdges },
    { name: 'focus' as const, grounds: ['paper', 'card', 'field'] as const, least: leastForEdges },
  ];
  const faults = pairs.flatMap(({ name, grounds, least }): ColourFault[] => {
    const weak = grounds
      .map((ground) => ({ ground, ratio: contrast(colours[name], colours[ground]) }))
      .filter(({ ratio }) => ratio < least);
    if (weak.length === 0) return [];
    const told = weak.map(({ ground, ratio }) => `${shown(ratio)} on ${ground}`).join(', ');
    const way = of === 'light' ? 'darker' : 'lighter';
    return [
      {
        path: ['colours', of, name],
        message: `${colours[name]} has a contrast of ${told}; ${least} is the least. Take a ${way} one.`,
      },
    ];
  });
  const apart = Math.abs(((hue(colours['caution-ink']) - hue(colours['doubt-ink']) + 540) % 360) - 180);
  if (apart < leastHues)
    faults.push({
      path: ['colours', of, 'doubt-ink'],
      message: `doubt-ink and caution-ink are ${Math.round(apart)} degrees of hue apart, and ${leastHues} are the least: what is not checked would look like what hurts. Take another hue.`,
    });
  return faults;
}

/**
 * Read what a site says of itself.
 *
 * @param text the whole of `site.yaml`
 * @returns the site, or everything wrong with the file
 */
export function readSiteText(
  text: string,
  file = siteFile,
): { site: Site | undefined; problems: readonly DataProblem[] } {
  const { record, reading, problems } = readYamlRecord(text, siteSchema, file);
  if (!record) return { site: undefined, problems };
  const faults = (['light', 'dark'] as const).flatMap((of) => colourFaults(of, record.colours[of]));
  const found = faults.map(({ path, message }) => ({
    file,
    ...reading.positionOf(path),
    field: path.join('.'),
    message,
  }));
  return { site: found.length > 0 ? undefined : record, problems: found };
}

/**
 * The site of this project.
 *
 * @throws DataError with every problem of `site.yaml`
 */
export function readSite(): Site {
  const { site, problems } = readSiteText(readFileSync(join(root, siteFile), 'utf8'));
  if (!site) throw new DataError(problems);
  return site;
}

/** The shop record that the site ships, with the name of its file; undefined where it ships none. */
export function readSiteShopText(): { file: string; text: string } | undefined {
  const { shop: file } = readSite();
  return file === undefined ? undefined : { file, text: readFileSync(join(root, file), 'utf8') };
}

/** What calculators begin with of the shop record that the site ships: made from it by `npm run generate`. */
export const siteShopFile = '.kerf/shop-defaults.json';

/** The same as data, for the pages; undefined where the site ships none. */
export function readSiteShop(): unknown {
  if (readSite().shop === undefined) return undefined;
  return JSON.parse(readFileSync(join(root, siteShopFile), 'utf8'));
}

const block = (selector: string, colours: Site['colours']['light']) =>
  `${selector} {\n${colourNames.map((name) => `  --kerf-${name}: ${colours[name]};\n`).join('')}}\n`;

/** The colours of a site as a style sheet; every other rule takes them from there. */
export function colourSheet({ colours }: Pick<Site, 'colours'>): string {
  return `/* Made from ${siteFile}. */\n${block(':root', colours.light)}\n${block("[data-theme='dark']", colours.dark)}`;
}
