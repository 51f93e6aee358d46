import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { sources } from '../../src/model/evidence/index.ts';
import { allSpecies } from '../../src/model/species/index.ts';
import { colourSheet, readAllTables, readSite, root, tableDefinitions, tableFile } from '../../src/store/index.ts';
import { dataPackage } from './data-package.ts';
import { schemaText } from './lines.ts';
import { publishedSchemas } from './schemas.ts';

/** What the site offers for download and what is committed as the public contract, by path from the project folder. */
export function publishedFiles(): Map<string, string> {
  const files = new Map<string, string>();
  const pretty = (value: unknown) => `${JSON.stringify(value, null, 2)}\n`;
  const lines = (items: readonly unknown[]) => `[\n${items.map((item) => JSON.stringify(item)).join(',\n')}\n]\n`;

  for (const [name, schema] of publishedSchemas()) {
    files.set(`schemas/${name}.json`, schemaText(schema));
    files.set(`.kerf/static/schemas/${name}.json`, schemaText(schema));
  }

  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  for (const { definition, rows } of readAllTables().values()) {
    files.set(`.kerf/static/data/${definition.name}.csv`, readFileSync(tableFile(definition), 'utf8'));
    files.set(`.kerf/static/data/${definition.name}.json`, lines(rows.map((row) => row.cells)));
  }
  files.set('.kerf/static/data/datapackage.json', pretty(dataPackage(tableDefinitions, version)));
  files.set('.kerf/static/data/sources.json', pretty(sources));
  files.set('.kerf/static/data/species.json', lines(allSpecies));
  const site = readSite();
  files.set('.kerf/colours.css', colourSheet(site));
  if (site.shop !== undefined) files.set('.kerf/static/data/shop.yaml', readFileSync(join(root, site.shop), 'utf8'));
  return files;
}
