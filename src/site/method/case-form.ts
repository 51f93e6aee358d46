import * as z from 'zod/mini';
import type { Asking, RawInputs } from '../../calculators/kit/calculator.ts';
import { type FieldMeta, type PickOption, readField } from '../../calculators/kit/fields.ts';
import { readersText } from '../../calculators/kit/readers-text.ts';
import type { PlanCalendar } from '../../method/page/calendars.ts';
import type { MethodPage, ShownParameter } from '../../method/page/types.ts';
import { defaultUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import { readAnyQuantity } from '../../model/quantity/read-any.ts';

/** What may be picked from, once it is fetched: a page carries no list of every wood and every place. */
export interface Picks {
  woods?: readonly PickOption[];
  places?: readonly PickOption[];
}

/** Names of the fields of a case beside the parameters of its method. */
export const caseFields = ['pieces', 'start', 'end', 'people', 'calendar'] as const;

const caseGroup = 'When and with whom';
/** What is of the shop and of the boards as they came, and changes seldom. */
const placeGroup = 'The shop, the air and the boards';

const isOfPlace = ({ record }: ShownParameter) =>
  record.shop !== undefined || record.kind === 'place' || record.kind === 'readings';

const choiceOf = (ids: readonly string[], now: string, names: ShownParameter['names'] = {}) =>
  [...new Set([...ids, ...(ids.includes(now) || now === '' ? [] : [now])])].map((id) => ({
    value: id,
    label: names[id] ?? id,
  }));

/** What a field picks from: until the list is fetched, what stands in it, so that it shows a name and not an id. */
function pickOf(list: readonly PickOption[] | undefined, names: NonNullable<ShownParameter['names']>) {
  const known = Object.entries(names).map(([value, label]) => ({ value, label }));
  const pick = list ?? known;
  return pick.length > 0 ? { pick } : {};
}

function quantityMeta(
  label: string,
  text: string,
  ends?: { least: string | number; most: string | number },
): FieldMeta {
  const read = readAnyQuantity(text);
  const [least, most] = [ends?.least, ends?.most].map((end) => {
    const of = end === undefined ? undefined : readAnyQuantity(end);
    return of?.ok ? of.value[0].value : undefined;
  });
  return {
    kind: read.ok ? 'quantity' : 'text',
    label,
    examples: [text],
    ...(read.ok ? { dimension: read.value[0].dimension } : {}),
    ...(least === undefined ? {} : { minimum: least }),
    ...(most === undefined ? {} : { maximum: most }),
  };
}

/** What the field of a parameter is like; an outline has one for each measure. */
function metasOf({ name, record, texts, names = {} }: ShownParameter, picks: Picks): [string, FieldMeta][] {
  const text = texts[name] ?? '';
  const { label, help } = record;
  const words = { label, ...(help === undefined ? {} : { help }) };
  switch (record.kind) {
    case 'quantity':
      return [[name, { ...quantityMeta(label, String(record.default), record), ...words }]];
    case 'count':
      return [
        [
          name,
          {
            kind: 'quantity',
            dimension: 'number',
            whole: true,
            minimum: record.least,
            maximum: record.most,
            examples: [text],
            ...words,
          },
        ],
      ];
    case 'wood':
    case 'finish':
    case 'resin': {
      const listed = record.among && !text.startsWith('{') ? choiceOf(record.among, text, names) : undefined;
      if (listed) return [[name, { kind: 'choice', options: listed, examples: [text], ...words }]];
      if (record.kind !== 'wood') return [[name, { kind: 'text', examples: [text], ...words }]];
      return [[name, { kind: 'species', examples: [text], ...pickOf(picks.woods, names), ...words }]];
    }
    case 'place':
      return [[name, { kind: 'climate', examples: [text], ...pickOf(picks.places, names), ...words }]];
    case 'choice':
      return [[name, { kind: 'choice', options: record.options, examples: [text], ...words }]];
    case 'readings':
      return [[name, { kind: 'list', examples: [text], ...words }]];
    case 'outline':
      return Object.entries(texts).map(([field, value]): [string, FieldMeta] => {
        const measure = field.slice(name.length + 1);
        const words = names[measure] ?? measure.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
        const titled = `${label}: ${words.toLowerCase()}`;
        if (measure !== 'shape') return [field, quantityMeta(titled, value)];
        const shapes = Object.keys(names).filter((id) => !(`${name}.${id}` in texts));
        return [field, { kind: 'choice', label: titled, options: choiceOf(shapes, value, names), examples: [value] }];
      });
  }
}

const field = (meta: FieldMeta) => readField(z.string(), (value) => ({ ok: true, value }), meta);

/** What every field of a case holds before the reader changes anything, in the reader's own texts. */
function startingTexts(page: MethodPage, metas: ReadonlyMap<string, FieldMeta>, units: ReaderUnits): RawInputs {
  const own: Record<string, string> = {
    pieces: String(page.makes.usual),
    start: '',
    end: '',
    people: '',
    calendar: '',
  };
  for (const { texts } of page.parameters) Object.assign(own, texts);
  return Object.fromEntries(
    Object.entries(own).map(([name, text]) => {
      const meta = metas.get(name);
      return [name, meta ? readersText(meta, text, units) : text];
    }),
  );
}

/**
 * The form of a case of a method: what a calculator's form is made from, with the method's parameters for fields, and the names that every
 * address has beside them.
 *
 * @param calendars hours that may be chosen for the plan
 * @param page as it stands without any change by the reader: its parameters are what the fields begin with
 */
export function caseForm(page: MethodPage, picks: Picks = {}, calendars: readonly PlanCalendar[] = []): Asking {
  const { least, most, usual } = page.makes;
  const metas = new Map<string, FieldMeta>([
    [
      'pieces',
      {
        kind: 'quantity',
        dimension: 'number',
        whole: true,
        label: 'Pieces',
        help: `From ${least} to ${most}${page.taught && least > 1 ? '; 1 is what one student of the class has' : ''}.`,
        minimum: page.taught ? 1 : least,
        maximum: most,
        examples: [String(usual)],
      },
    ],
    ...page.parameters.flatMap((parameter) =>
      metasOf(parameter, picks).map(([name, meta]): [string, FieldMeta] => [
        name,
        isOfPlace(parameter) ? { ...meta, group: placeGroup } : meta,
      ]),
    ),
    ['start', { kind: 'text', label: 'First day', group: caseGroup, examples: ['2027-01-12'] }],
    ['end', { kind: 'text', label: 'Ready by', group: caseGroup, examples: ['2027-02-12'] }],
    [
      'people',
      {
        kind: 'quantity',
        dimension: 'number',
        whole: true,
        label: 'People at work',
        group: caseGroup,
        examples: ['3'],
      },
    ],
  ]);
  if (calendars.length > 0)
    metas.set('calendar', {
      kind: 'choice',
      label: 'Hours of the shop',
      group: caseGroup,
      options: [
        { value: '', label: 'Of the shop record, else Monday to Friday' },
        ...calendars.map(({ id, title }) => ({
          value: id,
          label: page.taught?.calendar === id ? `${title}, as this class is taught` : title,
        })),
      ],
      examples: [''],
    });
  const optional = ['start', 'end', 'people', 'calendar'];
  const inputs = z.object(
    Object.fromEntries(
      [...metas].map(([name, meta]) => [name, optional.includes(name) ? z.optional(field(meta)) : field(meta)]),
    ),
  );
  return {
    title: page.title,
    inputs,
    folded: [placeGroup, caseGroup],
    example: {
      metric: startingTexts(page, metas, defaultUnits),
      inch: startingTexts(page, metas, { ...defaultUnits, system: 'inch' }),
    },
  } as Asking;
}
