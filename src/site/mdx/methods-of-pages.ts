import { orThese } from '../../method/case/or-these.ts';
import type { WorkedMethod } from '../../method/case/types.ts';
import { workMethod } from '../../method/case/work.ts';
import { type Quoted, type QuotedCalculation, quotedCalculation, quotedValue } from '../../method/page/quoted.ts';
import type { ShownValue } from '../../method/page/types.ts';
import { readMethod } from '../../method/read.ts';
import { readMethodTexts } from '../../store/index.ts';

/** The method of which the how-to pages speak where they name none: the one case that goes through all of them. */
export const usualMethod = 'class-of-twelve';

/** Methods as worked out, each for the text it was read from: a build asks for one a hundred times, and the live reload may change it. */
const workedOut = new Map<string, { text: string; worked: Promise<Quoted<WorkedMethod>> }>();

/** A method of the house at its defaults, as its own page begins, without a shop record. */
export function methodOfPages(id: string): Promise<Quoted<WorkedMethod>> {
  const methods = readMethodTexts();
  const found = methods.find((method) => method.id === id);
  if (!found) {
    const known = methods.map((method) => method.id);
    return Promise.resolve({ ok: false, why: `“${id}” is not a method. ${orThese(id, known, 'method')}` });
  }
  const { text, file } = found;
  const before = workedOut.get(id);
  if (before?.text === text) return before.worked;
  const worked = workMethod(readMethod(text, file)).then(
    (working): Quoted<WorkedMethod> =>
      working.ok
        ? { ok: true, value: working.worked }
        : {
            ok: false,
            why: `${file} cannot be worked out: ${working.problems.map(({ message }) => message).join(' ')}`,
          },
  );
  workedOut.set(id, { text, worked });
  return worked;
}

/** A figure of a method, for `<Tray at="…" of="…" />`. */
export async function figureForPage(at: string, of = usualMethod): Promise<Quoted<ShownValue>> {
  const method = await methodOfPages(of);
  return method.ok ? quotedValue(method.value, at) : method;
}

/**
 * The inputs for `<Calculator id="…" like="…" />`.
 *
 * @param like step and calculation, `mix/dose`; another method stands before them, `salvaged-ash-amber:mix/dose`
 */
export async function inputsLike(id: string, like: string): Promise<Quoted<QuotedCalculation['inputs']>> {
  const [, of = usualMethod, name = ''] = /^(?:([^:]*):)?(.*)$/.exec(like) ?? [];
  const method = await methodOfPages(of);
  if (!method.ok) return method;
  const quoted = await quotedCalculation(method.value, name);
  if (!quoted.ok) return quoted;
  const { use, inputs } = quoted.value;
  if (use === id) return { ok: true, value: inputs };
  const fitting = Object.values(method.value.calculations).filter((calculation) => calculation.use === id);
  const names = fitting.map(({ step, name: own }) => `${step}/${own}`);
  return {
    ok: false,
    why: `“${name}” asks ${use} and not ${id}. ${names.length > 0 ? `Of ${id} this method has ${names.join(', ')}.` : `This method asks ${id} nowhere.`}`,
  };
}
