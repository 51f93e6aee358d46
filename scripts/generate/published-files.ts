import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ShopDefaults } from '../../src/calculators/kit/read-shop-defaults.ts';
import { readCalendar } from '../../src/method/page/read-calendar.ts';
import { readMethod } from '../../src/method/read.ts';
import { shopDefaults } from '../../src/method/shop/defaults.ts';
import { readShop } from '../../src/method/shop/index.ts';
import { sources } from '../../src/model/evidence/index.ts';
import { allSpecies } from '../../src/model/species/index.ts';
import { appManifest, manifestName } from '../../src/site/offline/app-manifest.ts';
import {
  colourSheet,
  DataError,
  readAllTables,
  readCalendarTexts,
  readMethodTexts,
  readSite,
  readSiteShopText,
  root,
  siteShopFile,
  tableDefinitions,
  tableFile,
} from '../../src/store/index.ts';
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
  const methods = readMethodTexts();
  for (const { id, text } of methods) files.set(`.kerf/static/data/methods/${id}.yaml`, text);
  files.set(
    '.kerf/static/data/methods/index.json',
    lines(
      methods.map(({ id, file, text }) => {
        const { record, problems } = readMethod(text, file);
        if (!record) throw new DataError(problems);
        return { id, title: record.title, for: record.for, makes: record.makes.what };
      }),
    ),
  );
  files.set('.kerf/static/data/methods/calendars.json', lines(readCalendarTexts().map(readCalendar)));
  const site = readSite();
  files.set('.kerf/colours.css', colourSheet(site));
  files.set(`.kerf/static/${manifestName}`, pretty(appManifest(site)));
  files.set('.kerf/static/data/shop-sample.yaml', readFileSync(join(root, 'methods', 'shop.yaml'), 'utf8'));
  const shop = readSiteShopText();
  if (shop) {
    files.set('.kerf/static/data/shop.yaml', shop.text);
    files.set(siteShopFile, pretty(shopDefaultsOf(shop.text, shop.file)));
  }
  return files;
}

/** What calculators begin with of the record that the site ships. */
function shopDefaultsOf(text: string, file: string): ShopDefaults {
  const { shop, reading, problems } = readShop(text, file);
  if (!shop) throw new DataError(problems);
  return shopDefaults({ shop, reading });
}
