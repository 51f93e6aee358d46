import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runInNewContext } from 'node:vm';
import type { RawInputs } from '../../src/calculators/kit/calculator.ts';

const folder = fileURLToPath(new URL('../../docs/', import.meta.url));

/** A how-to page as written. */
export interface HowTo {
  /** File name without its ending, for example `choosing-a-wood`. */
  name: string;
  source: string;
  /** The page with every run of white space as one space, so that a sentence is found wherever its lines break. */
  text: string;
}

/** Every page under docs/, in the order of their names. */
export const howTos: readonly HowTo[] = readdirSync(folder)
  .filter((file) => file.endsWith('.mdx'))
  .sort()
  .map((file) => {
    const source = readFileSync(`${folder}${file}`, 'utf8');
    return { name: file.replace(/\.mdx$/, ''), source, text: source.replace(/\s+/g, ' ') };
  });

/** The page of this name. */
export function howTo(name: string): HowTo {
  const page = howTos.find((candidate) => candidate.name === name);
  if (!page) throw new Error(`docs/ has no page ${name}.mdx`);
  return page;
}

/** A component as a page uses it: its name and its properties as JavaScript values. */
export interface Used {
  component: string;
  properties: Readonly<Record<string, unknown>>;
}

/** Every self-closing component of a page. Properties are evaluated, so only literals may stand in them. */
export function componentsOf(page: HowTo): Used[] {
  return [...page.source.matchAll(/<([A-Z]\w*)((?:\s+\w+=(?:"[^"]*"|\{(?:[^{}]|\{[^{}]*\})*\}))*)\s*\/>/g)].map(
    ([, component = '', properties = '']) => ({
      component,
      properties: Object.fromEntries(
        [...properties.matchAll(/(\w+)=(?:"([^"]*)"|\{((?:[^{}]|\{[^{}]*\})*)\})/g)].map(([, name, text, literal]) => [
          name,
          text ?? runInNewContext(`(${literal})`),
        ]),
      ),
    }),
  );
}

/** A worked case embedded in a page. */
export interface WorkedCase {
  page: string;
  calculator: string;
  inputs: RawInputs;
}

/** Every worked case of every page, in order. */
export const workedCases: readonly WorkedCase[] = howTos.flatMap((page) =>
  componentsOf(page)
    .filter(({ component }) => component === 'Calculator')
    .map(({ properties }) => ({
      page: page.name,
      calculator: String(properties['id']),
      inputs: { ...(properties['preset'] as RawInputs) },
    })),
);
