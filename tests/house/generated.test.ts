import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { modelFiles } from '../../scripts/generate/model-files.ts';
import { publishedFiles } from '../../scripts/generate/published-files.ts';
import { root, tableDefinitions } from '../../src/store/index.ts';

const published = publishedFiles();
const committed = new Map([...published].filter(([path]) => !path.startsWith('.kerf/')));

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

  test('what the model loads is made on the spot: git leaves it out, and what lies there is what the sources give', () => {
    const ignored = readFileSync(join(root, '.gitignore'), 'utf8').split('\n');
    expect(ignored).toContain('src/model/*/*.json');
    for (const [path, text] of modelFiles()) {
      expect(path).toMatch(/^src\/model\/[a-z]+\/[a-z-]+\.json$/);
      expect(readFileSync(join(root, path), 'utf8') === text, path).toBe(true);
    }
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

  test('a table whose document sets terms carries them, with the credit that they ask for, and LICENSE names it', () => {
    const licence = readFileSync(join(root, 'LICENSE'), 'utf8').replace(/\s+/g, ' ');
    const withTerms = tableDefinitions.filter(({ terms }) => terms);
    expect(withTerms.map(({ name }) => name)).toContain('climate-reports');
    for (const { name, terms } of withTerms) {
      const resource = descriptor.resources.find((each: { name: string }) => each.name === name);
      expect(resource.licenses[0].name).toBe(terms?.licence);
      expect(resource.licenses[0].path).toMatch(/^https:\/\/creativecommons\.org\/licenses\/by(-sa)?\/4\.0\/$/);
      expect(resource.description).toContain(terms?.credit);
      expect(licence).toContain(`tables/${name}.csv`);
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
