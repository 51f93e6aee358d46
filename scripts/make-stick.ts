import { cpSync, existsSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { makeStick } from '../src/site/stick/make.ts';

// `npm run stick`: the built site as a zip that opens from a stick, without a network or a server.
// `npm run stick -- --site` puts it into the built folder too, from where readers may take it.
const { values, positionals } = parseArgs({
  options: {
    site: { type: 'boolean', default: false },
    output: { type: 'string', short: 'o', default: 'kerf-and-cure.zip' },
  },
  allowPositionals: true,
});
const folder = resolve(positionals[0] ?? 'build');
if (!existsSync(folder)) {
  console.error(`${folder} is not there. Build the site first: npm run build`);
  process.exit(1);
}
const { zip, pages, files, unpacked } = await makeStick(folder);
writeFileSync(values.output, zip);
if (values.site) cpSync(values.output, join(folder, 'kerf-and-cure.zip'));
const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(1)} MB`;
console.log(
  `${values.output}: ${pages} pages in ${files} files, ${megabytes(zip.length)}, ${megabytes(unpacked)} unpacked`,
);
