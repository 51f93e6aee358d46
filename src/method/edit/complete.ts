import { loadCalculator } from '../../calculators/registry.ts';
import { defaultUnits } from '../../model/quantity/index.ts';
import { valueWords } from '../show.ts';
import { calculationOfPath, calculatorAt, inputsOf } from './inputs.ts';
import { kindOfRecord, looseData } from './outline.ts';
import { type Place, placeAt } from './place.ts';
import { type PointerOption, pointersIn } from './pointers.ts';
import { type FieldOfShape, fieldsAt, shapeOf, shapesAt, valueAt, wordsOf } from './shape.ts';
import type { Completion, Completions, EditContext, RecordKind } from './types.ts';
import { referencesAt, type Surroundings, valuesAt } from './values.ts';

type Path = readonly (string | number)[];

/** The same data without what stands at a path: what is being written must not rule out what may be written. */
function without(data: unknown, [step, ...rest]: Path): unknown {
  if (typeof data !== 'object' || data === null || step === undefined || !Object.hasOwn(data, step)) return data;
  const copy = (Array.isArray(data) ? [...data] : { ...data }) as Record<string | number, unknown>;
  if (rest.length > 0) copy[step] = without(copy[step], rest);
  else if (Array.isArray(data)) copy[step] = undefined;
  else delete copy[step];
  return copy;
}

/** Fields in which a text may show the figures of the case. */
function showsFigures(path: Path): boolean {
  if (path.length === 1) return path[0] === 'about';
  return path[0] === 'steps' && path.length === 3 && /^(title|does|why|tell|wrong)$/.test(String(path[2]));
}

function asCompletion({ pointer, label, detail }: PointerOption, { worked, units }: EditContext): Completion {
  const there = worked?.at(pointer);
  const now = there && valueWords(there, units ?? defaultUnits);
  return {
    label: pointer,
    ...(detail ? { detail } : {}),
    info: now === undefined ? label : `${label}: ${now}`,
    insert: pointer,
    sort: 'reference',
  };
}

/** References inside the braces of a text: `{/…}`. */
async function inText(text: string, offset: number, { data, context }: Surroundings): Promise<Completions | undefined> {
  const line = text.slice(text.lastIndexOf('\n', offset - 1) + 1, offset);
  const open = /\{([^{}\s]*)$/.exec(line);
  if (!open) return undefined;
  const rest = /^[\w/~-]*\}?/.exec(text.slice(offset))?.[0] ?? '';
  const options = (await pointersIn(data, context)).map((option) => {
    const completion = asCompletion(option, context);
    return { ...completion, insert: `${completion.insert}}` };
  });
  return { from: offset - (open[1] ?? '').length, to: offset + rest.length, options };
}

/** What is written behind the name of a field, so that its value can be typed at once. */
function behindName({ shapes }: Pick<FieldOfShape, 'shapes'>, { flow, colon }: Place, spaces: number): string {
  if (colon) return '';
  if (flow) return ': ';
  const all = shapes.flatMap((shape) => [shape, ...(shape.anyOf ?? []), ...(shape.oneOf ?? [])]);
  const below = `\n${' '.repeat(spaces + 2)}`;
  if (all.some(({ maxLength }) => maxLength === 4000)) return `: |${below}`;
  const group = all.length === 1 && all[0]?.type === 'object';
  return group ? `:${below}` : ': ';
}

/** How far to the right a name begins. */
function columnOf(text: string, { from }: Place): number {
  return from - (text.lastIndexOf('\n', from - 1) + 1);
}

/** Names of fields that may be added to a group. */
async function namesAt(
  group: Path,
  place: Place,
  spaces: number,
  around: Surroundings,
  typed: string,
): Promise<Completion[]> {
  const { root, data } = around;
  const there = valueAt(data, group);
  const taken = new Set(typeof there === 'object' && there !== null ? Object.keys(there) : []);
  taken.delete(typed);
  const inCalculation = calculationOfPath(group)?.rest;
  if (inCalculation?.length === 1 && inCalculation[0] === 'with') {
    const calculator = await calculatorAt(group, data);
    return (calculator ? inputsOf(calculator) : [])
      .filter(({ name }) => !taken.has(name))
      .map(({ name, detail, info, needed }) => ({
        label: name,
        detail: needed ? `${detail}, needed` : detail,
        info,
        insert: `${name}${place.colon ? '' : ': '}`,
        sort: 'name',
      }));
  }
  const outline = group[0] === 'parameters' && group.length === 3 && group[2] === 'default';
  if (outline && valueAt(data, [...group.slice(0, 2), 'kind']) === 'outline') {
    const inputs = inputsOf(await loadCalculator('template-fit')).filter(({ meta }) => meta.group === 'Outline');
    return inputs
      .filter(({ name }) => !taken.has(name))
      .map(({ name, detail, info }) => ({ label: name, detail, info, insert: `${name}: `, sort: 'name' }));
  }
  return fieldsAt(root, group, data)
    .filter(({ name }) => !taken.has(name))
    .map((field): Completion => {
      const words = wordsOf(field.shapes) ?? field.shapes[0]?.title;
      return {
        label: field.name,
        ...(field.needed ? { detail: 'needed' } : {}),
        ...(words === undefined ? {} : { info: words }),
        insert: `${field.name}${behindName(field, place, spaces)}`,
        sort: 'name',
      };
    });
}

/** Whether a reference may stand at a path in place of a value. */
function takesReference(path: Path, { root, data }: Surroundings): boolean {
  return shapesAt(root, path, data).some(({ properties }) => properties?.from !== undefined);
}

/** Values at a path, references among them. */
async function valueOptions(path: Path, around: Surroundings, kind: RecordKind): Promise<Completion[]> {
  const { context } = around;
  if (kind === 'method' && path.at(-1) === 'from')
    return (await referencesAt(path.slice(0, -1), around)).map((option) => asCompletion(option, context));
  const values = await valuesAt(path, around, kind);
  if (kind === 'shop' || !takesReference(path, around)) return values;
  const need = path[0] === 'materials' && path[2] === 'needs';
  const references = (await referencesAt(path, around)).map((option): Completion => {
    const completion = asCompletion(option, context);
    const per = need ? ', per: batch' : '';
    return { ...completion, insert: `{ from: ${completion.insert}${per} }` };
  });
  return [...values, ...references];
}

/** Whether a list may stand at a path. */
const isList = (path: Path, { root, data }: Surroundings): boolean =>
  shapesAt(root, path, data).some(({ type }) => type === 'array');

async function atName(text: string, place: Place, around: Surroundings, kind: RecordKind): Promise<Completion[]> {
  const group = place.path.slice(0, -1);
  const spaces = columnOf(text, place);
  const typed = String(place.path.at(-1) ?? '');
  if (!place.dashless || !isList(group, around)) return namesAt(group, place, spaces, around, typed);
  // Below `tools:` a list is begun.
  const item = [...group, 0];
  const options = [
    ...(await valueOptions(item, around, kind)),
    ...(await namesAt(item, place, spaces + 2, around, typed)),
  ];
  return options.map((option) => ({ ...option, insert: `- ${option.insert}` }));
}

async function atValue(text: string, place: Place, around: Surroundings, kind: RecordKind): Promise<Completion[]> {
  const { path, flow, dashless, tight } = place;
  const before = dashless ? '- ' : tight ? ' ' : '';
  const begin = (options: Completion[]) =>
    before === '' ? options : options.map((option) => ({ ...option, insert: `${before}${option.insert}` }));
  if (typeof path.at(-1) === 'number') {
    const names = flow ? [] : await namesAt(path, place, columnOf(text, place) + before.length, around, place.typed);
    return begin([...(await valueOptions(path, around, kind)), ...names]);
  }
  const values = await valueOptions(path, around, kind);
  if (values.length > 0 || place.typed !== '' || !isList(path, around)) return begin(values);
  const items = await valueOptions([...path, 0], around, kind);
  return begin(items.map((option) => ({ ...option, insert: `[${option.insert}]` })));
}

/**
 * What may be written at an offset of a record: names of fields, values, names that the record itself gives, references.
 *
 * @param text the whole file, as broken as it is while somebody types
 * @param offset where the caret stands
 * @param context what is known beside the text
 * @returns undefined in a comment, in running words, and where nothing can be told
 */
export async function completeAt(
  text: string,
  offset: number,
  context: EditContext = {},
): Promise<Completions | undefined> {
  const place = placeAt(text, offset);
  if (!place) return undefined;
  const kind = context.kind ?? kindOfRecord(text);
  const whole = looseData(text);
  const around: Surroundings = {
    root: shapeOf(kind),
    data: place.part === 'value' ? (without(whole, place.path) as Surroundings['data']) : whole,
    context,
  };
  if (kind === 'method' && place.part === 'value' && showsFigures(place.path)) return inText(text, offset, around);
  if (place.style === 'block' || place.typed.includes('\n')) return undefined;
  const options = await (place.part === 'name' ? atName : atValue)(text, place, around, kind);
  if (options.length === 0) return undefined;
  const quote = place.style === 'quoted' ? 1 : 0;
  const closed = quote === 1 && place.to - place.from > 1 && text[place.to - 1] === text[place.from];
  return { from: place.from + quote, to: Math.max(offset, place.to - (closed ? 1 : 0)), options };
}
