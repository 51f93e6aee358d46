import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { steps } from '../../../src/site/built/finish.ts';
import { styleClasses } from '../../../src/site/built/style-classes.ts';
import { stylesInUse } from '../../../src/site/built/styles-in-use.ts';

test('a class that stands for a style of markup is put on before what no page uses is left out', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'finish-'));
  mkdirSync(join(folder, 'assets/css'), { recursive: true });
  mkdirSync(join(folder, 'assets/js'), { recursive: true });
  writeFileSync(join(folder, 'assets/css/styles.0a1b2c3d.css'), '.never-shown{display:none}');
  const page = join(folder, 'index.html');
  writeFileSync(
    page,
    '<html><head><link rel="stylesheet" href="/assets/css/styles.0a1b2c3d.css"></head><body><svg style="display:none"></svg></body></html>',
  );
  for (const step of steps.filter((step) => step === styleClasses || step === stylesInUse)) await step.run(folder);
  const html = readFileSync(page, 'utf8');
  expect(html).toContain('class="never-shown"');
  expect(html.match(/rel="stylesheet"/g)).toHaveLength(1);
  rmSync(folder, { recursive: true });
});
