import { readdirSync, readFileSync } from 'node:fs';
import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { kerf } from './run.ts';

const folder = new URL('../../schemas/', import.meta.url);
const names = readdirSync(folder).filter((name) => name.endsWith('.json'));

/** Every schema, so that one may refer to another by its `$id`. */
const ajv = new Ajv2020({ strict: true });
for (const name of names) ajv.addSchema(JSON.parse(readFileSync(new URL(name, folder), 'utf8')));

describe('the published schemas', () => {
  test.each(names)('%s is JSON Schema 2020-12 that a strict validator takes, under its own $id', (name) => {
    const schema = JSON.parse(readFileSync(new URL(name, folder), 'utf8'));
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.$id).toBe(`https://kerf-and-cure.example/schemas/${name}`);
    expect(ajv.getSchema(schema.$id)).toBeTypeOf('function');
  });
});

test('kerf validate finds nothing wrong', async () => {
  const { code, out, err } = await kerf('validate');
  expect([code, err]).toEqual([0, '']);
  expect(out).toMatch(
    /^\d+ tables, \d+ species records, \d+ finish records, \d+ resin records, \d+ sanding records, \d+ methods, 1 shop record, \d+ calendars? and \d+ sources: nothing wrong\n$/,
  );
});
