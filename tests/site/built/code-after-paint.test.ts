import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Script } from 'node:vm';
import { expect, test } from 'vitest';
import { codeAfterPaint, withCodeAfterPaint } from '../../../src/site/built/code-after-paint.ts';
import { tagsOf } from '../../../src/site/built/markup.ts';

const page =
  '<head><script>"kerf-units"</script><script src=/assets/js/runtime.js defer></script><script src="/assets/js/main.js" defer="defer"></script><title>A tray</title></head><body><p>Text</p></body>';

test('scripts that wait stand in a template, in their order; all else stays where it was', () => {
  const after = withCodeAfterPaint(page);
  expect(after).toMatch(
    /^<head><script>"kerf-units"<\/script><template id=code-after-paint><script src=\/assets\/js\/runtime\.js><\/script><script src="\/assets\/js\/main\.js"><\/script><\/template><script>.*<\/script><title>A tray<\/title><\/head><body><p>Text<\/p><\/body>$/,
  );
  expect(tagsOf(after).filter(({ name }) => name === 'script')).toHaveLength(4);
});

test('a page made ready already, and one without such a script, stay as they are', () => {
  const after = withCodeAfterPaint(page);
  expect(withCodeAfterPaint(after)).toBe(after);
  expect(withCodeAfterPaint('<p>Text</p><script>"kerf-units"</script>')).toBe(
    '<p>Text</p><script>"kerf-units"</script>',
  );
});

/** A browser’s window, as much of it as brings the code: what was brought, and how to let it paint or time pass. */
function windowOf({ readyState, hidden }: { readyState: string; hidden: boolean }) {
  const text = tagsOf(withCodeAfterPaint(page)).findLast(({ name }) => name === 'script')?.text ?? '';
  const brought: unknown[] = [];
  const frames: (() => void)[] = [];
  const timers = new Map<number, (() => void)[]>();
  const parsed: (() => void)[] = [];
  const copies = { children: [{ async: true }, { async: true }] };
  const run = (all: (() => void)[]) => {
    for (const each of all.splice(0)) each();
  };
  new Script(text).runInNewContext({
    document: {
      readyState,
      hidden,
      getElementById: () => ({ content: 'code' }),
      importNode: () => copies,
      head: { append: (each: unknown) => brought.push(each) },
    },
    requestAnimationFrame: (each: () => void) => frames.push(each),
    setTimeout: (each: () => void, ms = 0) => timers.set(ms, [...(timers.get(ms) ?? []), each]),
    addEventListener: (_type: string, each: () => void) => parsed.push(each),
  });
  return {
    brought,
    copies,
    parse: () => run(parsed),
    paint: () => run(frames),
    pass: (ms: number) => run(timers.get(ms) ?? []),
  };
}

test('the code comes once the page is read to its end and painted, and once only', () => {
  const { brought, copies, parse, paint, pass } = windowOf({ readyState: 'loading', hidden: false });
  pass(0);
  expect(brought).toEqual([]);
  parse();
  expect(brought).toEqual([]);
  paint();
  expect(brought).toEqual([]);
  pass(0);
  expect(brought).toEqual([copies]);
  expect(copies.children).toEqual([{ async: false }, { async: false }]);
  pass(4000);
  expect(brought).toHaveLength(1);
});

test('where nothing is painted it comes all the same: at once in a hidden tab, else after some seconds', () => {
  expect(windowOf({ readyState: 'interactive', hidden: true }).brought).toHaveLength(1);
  const still = windowOf({ readyState: 'interactive', hidden: false });
  expect(still.brought).toHaveLength(0);
  still.pass(4000);
  expect(still.brought).toHaveLength(1);
});

test('every page of a folder is made ready, and counted', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'kerf-painted-'));
  try {
    writeFileSync(join(folder, 'index.html'), page);
    writeFileSync(join(folder, '404.html'), '<p>Text</p>');
    expect(await codeAfterPaint.run(folder)).toBe('1 pages are painted first');
    expect(readFileSync(join(folder, 'index.html'), 'utf8')).toBe(withCodeAfterPaint(page));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
