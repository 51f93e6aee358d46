import { expect, test } from 'vitest';
import { formatOf, type JsonSchema } from '../../src/site/reference/format.ts';

const text: JsonSchema = { type: 'string', minLength: 1, maxLength: 60 };
const reference: JsonSchema = { type: 'object', properties: { from: { ...text, pattern: '^/' } }, required: ['from'] };
const size: JsonSchema = { anyOf: [text, reference] };

test('a field says what it is, what it takes, and whether it may be left out', () => {
  const [count, grits] = formatOf({
    properties: {
      count: { type: 'integer', minimum: 1, maximum: Number.MAX_SAFE_INTEGER, title: 'How many', default: 1 },
      grits: { type: 'array', maxItems: 9, items: { type: 'string', enum: ['P80', 'P120'], examples: ['P80'] } },
    },
    required: ['grits'],
  });
  expect(count).toMatchObject({
    path: 'count',
    mayBeLeftOut: true,
    says: ['How many.'],
    kind: 'a whole number',
    limits: ['at least 1'],
    default: '1',
  });
  expect(grits).toMatchObject({
    mayBeLeftOut: false,
    kind: 'a list, each one of the words below',
    words: ['P80', 'P120'],
    limits: ['at most 9 entries'],
    examples: ['P80'],
  });
});

test('entries under names of their own have a path that says so, and bind the name apart from the entry', () => {
  const [tools] = formatOf({
    properties: {
      tools: {
        type: 'object',
        propertyNames: { type: 'string', maxLength: 20, pattern: '^[a-z]+$' },
        additionalProperties: { type: 'object', properties: { what: text }, required: ['what'] },
      },
    },
  });
  expect(tools).toMatchObject({
    limits: ['each name at most 20 characters'],
    patterns: [],
    namePatterns: ['^[a-z]+$'],
  });
  expect(tools?.fields.map(({ path, anchor }) => [path, anchor])).toEqual([['tools.<name>.what', 'tools-what']]);
});

test('a form is described once, and where it stands again the place is named', () => {
  const [width, length] = formatOf({ properties: { width: size, length: size } });
  expect(width?.kind).toBe('a text or { from }');
  expect(width?.fields.map(({ path }) => path)).toEqual(['width.from']);
  expect(length?.fields).toEqual([]);
  expect(length?.forms).toMatchObject([{ path: '{ from }', as: { path: 'width', anchor: 'width' } }]);
});

test('of entries of several kinds, what all have is told once, and what a kind shares with one above refers to it', () => {
  const kindOf = (kind: string, own: Record<string, JsonSchema>): JsonSchema => ({
    type: 'object',
    properties: { kind: { type: 'string', const: kind }, id: text, ...own },
    required: ['kind', 'id'],
  });
  const throat: JsonSchema = { ...text, description: 'Its throat.' };
  const [machines] = formatOf({
    properties: {
      machines: {
        type: 'array',
        items: {
          oneOf: [
            kindOf('saw', { throat, id: text }),
            kindOf('press', { throat, travel: text }),
            kindOf('press-in-a-stand', { throat: { ...throat, description: 'Its throat, in the stand.' } }),
          ],
        },
      },
    },
  });
  expect(machines?.kind).toBe('a list, each a group of fields: its kind says which');
  expect(machines?.fields.map(({ path, words }) => [path, words])).toEqual([
    ['machines[].kind', ['saw', 'press', 'press-in-a-stand']],
    ['machines[].id', []],
  ]);
  const told = machines?.forms.map(({ path, fields, again }) => [
    path,
    fields.map(({ anchor }) => anchor),
    again.map(({ anchor }) => anchor),
  ]);
  expect(told).toEqual([
    ['kind: saw', ['machines-saw-throat'], []],
    ['kind: press', ['machines-press-travel'], ['machines-saw-throat']],
    ['kind: press-in-a-stand', ['machines-press-in-a-stand-throat'], []],
  ]);
});
