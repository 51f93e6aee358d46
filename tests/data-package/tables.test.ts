import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dataPackage } from '../../scripts/generate/data-package.ts';
import { publishedFiles } from '../../scripts/generate/published-files.ts';
import { root, tableDefinitions, tableFile } from '../../src/store/index.ts';
import { descriptorFaults } from './profile.ts';
import { type Resource, tableFaults } from './table-check.ts';

const folder = '.kerf/static/data';
const files = publishedFiles();
const descriptor = JSON.parse(files.get(`${folder}/datapackage.json`) ?? '');
const resources: readonly Resource[] = descriptor.resources;

describe('the data package of the tables', () => {
  test('keeps the profile that it names', () => {
    expect(descriptor.$schema).toBe('https://datapackage.org/profiles/2.0/datapackage.json');
    expect(descriptorFaults(descriptor)).toEqual([]);
  });

  test.each(resources.map((resource) => [resource.name, resource] as const))(
    '%s keeps its own schema',
    (_name, resource) => {
      const csv = files.get(`${folder}/${resource.path}`) ?? '';
      expect(csv.split('\n').length).toBeGreaterThan(2);
      expect(tableFaults(resource, csv)).toEqual([]);
    },
  );

  test('of the npm package names the same tables where they lie in it', () => {
    const paths = new Map(tableDefinitions.map((table) => [table.name, tableFile(table).slice(root.length + 1)]));
    const packed = dataPackage(tableDefinitions, '1.0.0', ({ name }) => paths.get(name) ?? '');
    expect(descriptorFaults(packed)).toEqual([]);
    for (const { path } of packed.resources) expect(existsSync(join(root, path))).toBe(true);
  });
});

describe('the check itself', () => {
  test.each<[what: string, spoil: (it: typeof descriptor) => void, told: RegExp]>([
    ['no resources', (it) => delete it.resources, /required property 'resources'/],
    ['a path that leaves the folder', (it) => (it.resources[0].path = '../secret.csv'), /\/resources\/0\/path/],
    ['a path from the root of the disk', (it) => (it.resources[0].path = '/etc/table.csv'), /\/resources\/0\/path/],
    ['a resource without a name', (it) => delete it.resources[0].name, /required property 'name'/],
    ['a licence with blanks in its name', (it) => (it.licenses[0].name = 'public domain'), /\/licenses\/0\/name/],
    ['a media type that is none', (it) => (it.resources[0].mediatype = 'csv'), /\/resources\/0\/mediatype/],
    ['a field of no known type', (it) => (it.resources[0].schema.fields[0].type = 'figure'), /\/schema\/fields\/0/],
    ['a table without fields', (it) => (it.resources[0].schema.fields = []), /\/schema\/fields/],
    ['required said as a word', (it) => (it.resources[0].schema.fields[0].constraints.required = 'yes'), /required/],
  ])('finds %s', (_what, spoil, told) => {
    const spoiled = structuredClone(descriptor);
    spoil(spoiled);
    expect(descriptorFaults(spoiled).join('\n')).toMatch(told);
  });

  const table: Resource = {
    name: 'one',
    path: 'one.csv',
    schema: {
      fields: [
        { name: 'id', type: 'string', constraints: { required: true, unique: true } },
        { name: 'width', type: 'number' },
        { name: 'pieces', type: 'integer' },
        { name: 'when', type: 'datetime' },
        { name: 'done', type: 'boolean' },
        { name: 'seen', type: 'string', constraints: { enum: ['quoted', 'memory'] } },
      ],
      missingValues: [''],
    },
  };
  const head = 'id,width,pieces,when,done,seen\n';

  test.each<[row: string, faults: number]>([
    ['a,1.5,2,2027-01-12T09:00:00Z,true,quoted', 0],
    ['a,-1.5e3,-2,2027-01-12T09:00:00.123+01:00,0,memory', 0],
    ['a,,,,,', 0],
    [',1,,,,', 1],
    ['a,wide,,,,', 1],
    ['a,,1.5,,,', 1],
    ['a,,,12 January,,', 1],
    ['a,,,2027-13-12T09:00:00Z,,', 1],
    ['a,,,,perhaps,', 1],
    ['a,,,,,guessed', 1],
    ['a,1,2', 1],
    ['a,,,,,\na,,,,,', 1],
  ])('of a row: %j', (row, faults) => {
    expect(tableFaults(table, `${head}${row}\n`)).toHaveLength(faults);
  });

  test('of a header that differs', () => {
    expect(tableFaults(table, `${head.replace('width', 'length')}a,1,2,,,\n`)).toHaveLength(1);
  });
});
