/** A JSON Schema or a part of one, as far as a format is told from it. */
export interface JsonSchema {
  title?: string;
  description?: string;
  type?: string;
  const?: unknown;
  enum?: readonly unknown[];
  pattern?: string;
  minLength?: number;
  maxLength?: number;
  minimum?: number;
  maximum?: number;
  minItems?: number;
  maxItems?: number;
  default?: unknown;
  examples?: readonly unknown[];
  required?: readonly string[];
  properties?: Readonly<Record<string, JsonSchema>>;
  propertyNames?: JsonSchema;
  additionalProperties?: JsonSchema | boolean;
  items?: JsonSchema;
  anyOf?: readonly JsonSchema[];
  oneOf?: readonly JsonSchema[];
  allOf?: readonly JsonSchema[];
}

/** A place of the page that describes something already. */
export interface FormatPlace {
  path: string;
  anchor: string;
}

/** Fields that stand together. */
export interface FormatFields {
  fields: readonly FormatField[];
  /** Fields that are as they are of a kind above. */
  again: readonly FormatPlace[];
}

/** One of several forms that an entry may have. */
export interface FormatForm extends FormatFields, FormatPlace {
  /** Where the same form is described already; it has no fields here then. */
  as?: FormatPlace;
}

/** A field of a format as its page tells it. */
export interface FormatField extends FormatPlace, FormatFields {
  mayBeLeftOut: boolean;
  /** What it is: sentences. */
  says: readonly string[];
  /** What may stand there, in words. */
  kind: string;
  /** The words that it allows, where these are counted. */
  words: readonly string[];
  /** What else binds it: `1 to 200`, `at most 300 characters`. */
  limits: readonly string[];
  patterns: readonly string[];
  /** Patterns of the names under which its entries stand. */
  namePatterns: readonly string[];
  default?: string;
  examples: readonly string[];
  forms: readonly FormatForm[];
}

/** What the walk through a schema has described so far. */
interface Walk {
  anchors: Set<string>;
  /** Forms by their text. */
  forms: Map<string, FormatPlace>;
  /** Within forms of one entry: fields by their name and text. */
  known?: Map<string, FormatPlace>;
}

/** The fields of a schema, in its order, each described once. */
export function formatOf(schema: JsonSchema): readonly FormatField[] {
  return fieldsOf(schema, { path: '', anchor: '' }, { anchors: new Set(), forms: new Map() }).fields;
}

function fieldsOf({ properties = {}, required = [] }: JsonSchema, within: FormatPlace, walk: Walk): FormatFields {
  const fields: FormatField[] = [];
  const again: FormatPlace[] = [];
  for (const [name, schema] of Object.entries(properties)) {
    const mayBeLeftOut = !required.includes(name);
    const key = JSON.stringify([name, mayBeLeftOut, schema]);
    const place = walk.known?.get(key);
    if (place) {
      again.push(place);
      continue;
    }
    const field = fieldOf(name, schema, mayBeLeftOut, within, walk);
    walk.known?.set(key, { path: field.path, anchor: field.anchor });
    fields.push(field);
  }
  return { fields, again };
}

function fieldOf(
  name: string,
  schema: JsonSchema,
  mayBeLeftOut: boolean,
  within: FormatPlace,
  walk: Walk,
): FormatField {
  const place = placeOf(name, within, walk);
  const { leaves, names, objects, suffix } = partsOf(schema);
  const inside = { path: place.path + suffix, anchor: place.anchor };
  const all = [schema, ...leaves];
  return {
    ...place,
    mayBeLeftOut,
    says: unique(all.flatMap(({ title, description }) => [title, description]).flatMap((text) => sentence(text))),
    kind: kindOf(schema),
    words: unique([...all, ...names].flatMap(wordsOf)),
    limits: unique([...all.flatMap(limitsOf), ...names.flatMap(limitsOf).map((limit) => `each name ${limit}`)]),
    patterns: unique(all.flatMap(({ pattern }) => pattern ?? [])),
    namePatterns: unique(names.flatMap(({ pattern }) => pattern ?? [])),
    ...(schema.default === undefined ? {} : { default: JSON.stringify(schema.default) }),
    examples: unique(all.flatMap(({ examples = [] }) => examples.map(String))),
    ...belowOf(objects, inside, walk),
  };
}

/** Fields and forms of the objects that a field may hold. */
function belowOf(
  objects: readonly JsonSchema[],
  inside: FormatPlace,
  walk: Walk,
): FormatFields & Pick<FormatField, 'forms'> {
  const [only, ...others] = objects;
  if (!only) return { fields: [], again: [], forms: [] };
  if (others.length === 0) {
    const text = JSON.stringify(only);
    const as = walk.forms.get(text);
    const path = formName(only);
    if (as) return { fields: [], again: [], forms: [{ path, anchor: inside.anchor, as, fields: [], again: [] }] };
    walk.forms.set(text, inside);
    return { ...fieldsOf(only, inside, walk), forms: [] };
  }
  const shared = sharedOf(objects);
  const kindName = discriminatorOf(objects);
  const common: JsonSchema = {
    properties: {
      ...(kindName === undefined ? {} : { [kindName]: choiceOf(objects, kindName) }),
      ...Object.fromEntries(shared.map((name) => [name, only.properties?.[name] as JsonSchema])),
    },
    required: [...(kindName === undefined ? [] : [kindName]), ...(only.required ?? [])],
  };
  const known = new Map(walk.known ?? []);
  const told = new Set([...shared, ...(kindName === undefined ? [] : [kindName])]);
  const top = fieldsOf(common, inside, walk);
  const forms = objects.map((object): FormatForm => {
    const rest = Object.entries(object.properties ?? {}).filter(([name]) => !told.has(name));
    const word = kindName === undefined ? undefined : String(object.properties?.[kindName]?.const);
    const path = word === undefined ? formName(object) : `${kindName}: ${word}`;
    const anchor = anchorOf(`${inside.anchor}-${word ?? Object.keys(object.properties ?? {}).join('-')}`, walk);
    const own = { ...object, properties: Object.fromEntries(rest) };
    return {
      path,
      anchor,
      ...fieldsOf(own, { path: inside.path, anchor }, { ...walk, known }),
    };
  });
  return { ...top, forms };
}

/** Names of the fields that several forms have in common, alike in all of them. */
function sharedOf(objects: readonly JsonSchema[]): string[] {
  const key = ({ properties = {}, required = [] }: JsonSchema, name: string) =>
    JSON.stringify([properties[name], required.includes(name)]);
  const [first = {}, ...others] = objects;
  return Object.keys(first.properties ?? {}).filter((name) =>
    others.every((other) => other.properties?.[name] !== undefined && key(other, name) === key(first, name)),
  );
}

/** The field whose word says which form an entry has. */
function discriminatorOf(objects: readonly JsonSchema[]): string | undefined {
  const [first = {}] = objects;
  return Object.keys(first.properties ?? {}).find((name) => {
    const words = objects.map((object) => object.properties?.[name]?.const);
    return words.every((word) => word !== undefined) && new Set(words).size === words.length;
  });
}

/** The discriminating field as one choice among its words. */
function choiceOf(objects: readonly JsonSchema[], name: string): JsonSchema {
  const { const: _, ...first } = objects[0]?.properties?.[name] ?? {};
  return { ...first, enum: objects.map((object) => object.properties?.[name]?.const) };
}

/** `{ from, take }` */
const formName = ({ properties = {} }: JsonSchema) => `{ ${Object.keys(properties).join(', ')} }`;

interface Parts {
  /** Every part that is reached without a name: entries of a list or a map, alternatives. */
  leaves: readonly JsonSchema[];
  /** What binds the names under which entries stand. */
  names: readonly JsonSchema[];
  /** Those of them that have fields of their own. */
  objects: readonly JsonSchema[];
  /** What stands behind the path of the field before the name of such a field. */
  suffix: string;
}

function partsOf(schema: JsonSchema): Parts {
  const leaves: JsonSchema[] = [];
  const names: JsonSchema[] = [];
  const objects: JsonSchema[] = [];
  let suffix = '';
  const visit = (part: JsonSchema, behind: string) => {
    if (part !== schema) leaves.push(part);
    if (part.properties) {
      objects.push(part);
      suffix = behind;
    }
    for (const other of [...(part.anyOf ?? []), ...(part.oneOf ?? []), ...(part.allOf ?? [])]) visit(other, behind);
    if (part.items) visit(part.items, `${behind}[]`);
    if (part.propertyNames) names.push(part.propertyNames);
    if (typeof part.additionalProperties === 'object') visit(part.additionalProperties, `${behind}.<name>`);
  };
  visit(schema, '');
  return { leaves, names, objects, suffix };
}

/** What may stand at a place, in words with their article. */
function kindOf(schema: JsonSchema): string {
  const { type, properties, items, additionalProperties } = schema;
  const either = schema.anyOf ?? schema.oneOf;
  if (schema.const !== undefined) return `always ${JSON.stringify(schema.const)}`;
  if (schema.enum) return 'one of the words below';
  if (either) {
    const name = either.every(({ properties }) => properties) ? discriminatorOf(either) : undefined;
    return name === undefined ? unique(either.map(kindOf)).join(' or ') : `a group of fields: its ${name} says which`;
  }
  if (schema.allOf) return unique(schema.allOf.map(kindOf)).join(' and ');
  if (items) return `a list, each ${kindOf(items)}`;
  if (properties && Object.keys(properties).length === 0) return 'an empty group';
  if (properties) return Object.keys(properties).length > 5 ? 'a group of the fields below' : formName(schema);
  if (typeof additionalProperties === 'object')
    return `${schema.propertyNames?.enum ? 'entries under the words below' : 'entries, each under a name of its own'}, each ${kindOf(additionalProperties)}`;
  return (type === undefined ? undefined : plainKinds[type]) ?? 'anything';
}

const plainKinds: Readonly<Record<string, string>> = {
  string: 'a text',
  integer: 'a whole number',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list',
  object: 'entries',
};

const wordsOf = (part: JsonSchema): string[] => (part.enum ?? []).map((word) => (word === '' ? '""' : String(word)));

/** A bound that only says what a number of the program can hold binds nobody. */
const bound = (value: number | undefined) =>
  value === undefined || Math.abs(value) >= Number.MAX_SAFE_INTEGER ? undefined : value;

function limitsOf(part: JsonSchema): string[] {
  const range = (least: number | undefined, most: number | undefined, unit: string) => {
    if (least !== undefined && most !== undefined) return [`${least} to ${most}${unit}`];
    if (most !== undefined) return [`at most ${most.toLocaleString('en')}${unit}`];
    return least === undefined ? [] : [`at least ${least}${unit}`];
  };
  // One character at least is what a text is.
  const characters = range(part.minLength === 1 ? undefined : part.minLength, part.maxLength, ' characters');
  return [
    ...range(bound(part.minimum), bound(part.maximum), ''),
    ...characters,
    ...range(part.minItems, part.maxItems, part.minItems === 1 && part.maxItems === undefined ? ' entry' : ' entries'),
  ];
}

function placeOf(name: string, within: FormatPlace, walk: Walk): FormatPlace {
  return {
    path: within.path === '' ? name : `${within.path}.${name}`,
    anchor: anchorOf(within.anchor === '' ? name : `${within.anchor}-${name}`, walk),
  };
}

/** An anchor that nothing else on the page has. */
function anchorOf(wanted: string, { anchors }: Walk): string {
  let anchor = wanted;
  for (let count = 2; anchors.has(anchor); count += 1) anchor = `${wanted}-${count}`;
  anchors.add(anchor);
  return anchor;
}

const sentence = (text: string | undefined): string[] => (text ? [/[.!?:]$/.test(text) ? text : `${text}.`] : []);

const unique = <Item>(items: readonly Item[]): Item[] => [...new Set(items)];
