import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runInNewContext } from 'node:vm';
import { calculatorById } from '../../src/calculators/index.ts';
import { startingInputs } from '../../src/calculators/kit/address.ts';
import type { RawInputs } from '../../src/calculators/kit/calculator.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import { figureForPage, inputsLike } from '../../src/site/mdx/methods-of-pages.ts';

const folder = fileURLToPath(new URL('../../docs/', import.meta.url));

/** A how-to page as written. */
export interface HowTo {
  /** File name without its ending, for example `choosing-a-wood`. */
  name: string;
  source: string;
  /**
   * The page with every figure that it quotes of a method as read in metric units, and every run of white space as one space, so that a sentence
   * is found wherever its lines break.
   */
  text: string;
}

/** Each `<Tray at="…" />` of a page as a reader of metric units sees it, without the mark of how it is known. */
async function quoted(source: string): Promise<string> {
  const parts = [...source.matchAll(/<Tray((?:\s+\w+="[^"]*")+)\s*\/>/g)];
  let text = '';
  let from = 0;
  for (const part of parts) {
    const properties = new Map(
      [...(part[1] ?? '').matchAll(/(\w+)="([^"]*)"/g)].map(([, name, value]) => [name, value]),
    );
    const figure = await figureForPage(properties.get('at') ?? '', properties.get('of'));
    if (!figure.ok) throw new Error(`${part[0]}: ${figure.why}`);
    text += source.slice(from, part.index) + inReaderUnits(figure.value.text, defaultUnits);
    from = part.index + part[0].length;
  }
  return text + source.slice(from);
}

/** Every page under docs/, in the order of their names. */
export const howTos: readonly HowTo[] = await Promise.all(
  readdirSync(folder)
    .filter((file) => file.endsWith('.mdx'))
    .sort()
    .map(async (file) => {
      const source = readFileSync(`${folder}${file}`, 'utf8');
      return { name: file.replace(/\.mdx$/, ''), source, text: (await quoted(source)).replace(/\s+/g, ' ') };
    }),
);

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
  /** As the page opens with them: the calculator's own example where neither the page nor the method that it follows says otherwise. */
  inputs: RawInputs;
}

async function workedCaseOf(page: string, properties: Used['properties']): Promise<WorkedCase> {
  const id = String(properties['id']);
  const like = properties['like'];
  const given = like === undefined ? undefined : await inputsLike(id, String(like));
  if (given && !given.ok) throw new Error(`${page}: <Calculator id="${id}" like="${like}" />: ${given.why}`);
  const preset = { ...given?.value, ...(properties['preset'] as RawInputs) };
  const found = calculatorById(id);
  return { page, calculator: id, inputs: found ? startingInputs(found, preset, defaultUnits, '') : preset };
}

/** Every worked case of every page, in order. */
export const workedCases: readonly WorkedCase[] = await Promise.all(
  howTos.flatMap((page) =>
    componentsOf(page)
      .filter(({ component }) => component === 'Calculator')
      .map(({ properties }) => workedCaseOf(page.name, properties)),
  ),
);
