import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { modelFiles } from '../../scripts/generate/model-files.ts';
import { publishedFiles } from '../../scripts/generate/published-files.ts';
import { root } from '../../src/store/index.ts';

const published = publishedFiles();
const committed = new Map([...modelFiles(), ...published].filter(([path]) => !path.startsWith('.kerf/')));

describe('files made from tables, records and calculators are fresh (npm run generate writes them)', () => {
  test.each([...committed.keys()])('%s', (path) => {
    expect(readFileSync(join(root, path), 'utf8') === committed.get(path)).toBe(true);
  });

  test('no schema is left that nothing makes', () => {
    const made = [...committed.keys()]
      .filter((path) => path.startsWith('schemas/'))
      .map((path) => path.slice('schemas/'.length));
    expect(readdirSync(join(root, 'schemas')).sort()).toEqual(made.sort());
  });

  test('making them twice gives the same text', () => {
    expect(publishedFiles()).toEqual(published);
  });
});

describe('the data package', () => {
  const folder = '.kerf/static/data';
  const descriptor = JSON.parse(published.get(`${folder}/datapackage.json`) ?? '');

  test('lists every table file that is offered, once', () => {
    const offered = [...published.keys()]
      .filter((path) => path.endsWith('.csv'))
      .map((path) => path.slice(folder.length + 1));
    expect(descriptor.resources.map((resource: { path: string }) => resource.path)).toEqual(offered);
    expect(descriptor.$schema).toBe('https://datapackage.org/profiles/2.0/datapackage.json');
    expect(descriptor.licenses[0].title).toMatch(/public domain/);
  });

  test('describes the columns that the files have', () => {
    for (const { path, schema } of descriptor.resources) {
      const [header] = (published.get(`${folder}/${path}`) ?? '').split(/\r?\n/);
      expect(schema.fields.map((field: { name: string }) => field.name).join(','), path).toBe(header);
    }
  });

  test('has names that the standard allows', () => {
    for (const { name } of [descriptor, ...descriptor.resources]) expect(name).toMatch(/^[a-z0-9._-]+$/);
  });

  test('rows as JSON hold a value or null for every column', () => {
    for (const { path, schema } of descriptor.resources) {
      const rows = JSON.parse(published.get(`${folder}/${path.replace('.csv', '.json')}`) ?? '');
      const columns = schema.fields.map((field: { name: string }) => field.name);
      for (const row of rows) expect(Object.keys(row)).toEqual(columns);
    }
  });
});
