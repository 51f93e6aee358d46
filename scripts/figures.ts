// Writes every figure of the calculators' examples and of the methods as they come now, and says what moved. Read it, and put the
// changes that are meant into the change log.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { root } from '../src/store/index.ts';
import { figureChanges } from './figures/changes.ts';
import { figureFiles } from './figures/files.ts';

for (const [path, make] of Object.entries(figureFiles)) {
  const file = join(root, path);
  const before = existsSync(file) ? readFileSync(file, 'utf8') : '';
  const now = await make();
  const changes = before === '' ? [] : figureChanges(before, now);
  for (const change of changes) console.log(change);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, now);
  console.log(`${path}: ${before === now ? 'nothing moved' : before === '' ? 'written' : `${changes.length} changes`}`);
}
