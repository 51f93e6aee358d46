import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { applySplices, renameEntry } from '../../../src/method/edit/index.ts';
import { readMethod } from '../../../src/method/read.ts';

const names = ['first-tray', 'salvaged-ash-amber'] as const;
const textOf = (name: string) => readFileSync(`methods/${name}.yaml`, 'utf8');

/** Every name of a method that may be changed, by its path. */
function renamable(text: string): string[][] {
  const { parameters, materials, tools, steps } = parse(text) as Record<
    string,
    Record<string, { calculations?: object }>
  >;
  return [
    ...Object.entries({ parameters, materials, tools, steps }).flatMap(([branch, group]) =>
      Object.keys(group ?? {}).map((name) => [branch, name]),
    ),
    ...Object.entries(steps ?? {}).flatMap(([step, { calculations = {} }]) =>
      Object.keys(calculations).map((name) => ['steps', step, 'calculations', name]),
    ),
  ];
}

describe('an entry that gets another name', () => {
  test.each(names)(
    'of %s: the method reads as before, with the new name wherever the old one was meant',
    (file) => {
      const text = textOf(file);
      const all = renamable(text);
      const lines = text.split('\n');
      // Some of them, so that it stays quick.
      for (const path of all.filter((_path, at) => at % 14 === 0)) {
        const old = path.at(-1) as string;
        const splices = renameEntry(text, path, 'renamed-here');
        if (!splices) throw new Error(`${path.join('/')} was refused`);
        const after = applySplices(text, splices);
        const { record, problems } = readMethod(after, file);
        expect(problems, path.join('/')).toEqual([]);
        expect(record).toBeDefined();
        const changedLines = after.split('\n').filter((line, at) => line !== lines[at]);
        expect(changedLines.every((line) => line.includes('renamed-here'))).toBe(true);
        const back = renameEntry(after, [...path.slice(0, -1), 'renamed-here'], old);
        expect(applySplices(after, back ?? [])).toBe(text);
      }
    },
    30_000,
  );

  test('in quotes, in braces, in lists of either kind, and nowhere else', () => {
    const text = [
      'parameters:',
      '  depth: { kind: quantity, label: depth } # depth',
      'tools: { mould: { what: depth } }',
      'steps:',
      '  depth:',
      "    why: 'By {/parameters/depth}, not {/parameters/depths}; depth.'",
      '    does: |',
      '      Pour {/parameters/depth} deep, {/parameters/depth/x}.',
      '    hands: { each: { from: "/parameters/depth" } }',
      '    tools: [depth]',
      '    after:',
      '    - depth',
      '',
    ].join('\n');
    const after = applySplices(text, renameEntry(text, ['parameters', 'depth'], 'thickness') ?? []);
    expect(after).toBe(
      text
        .replace('  depth: {', '  thickness: {')
        .replaceAll('/parameters/depth}', '/parameters/thickness}')
        .replaceAll('/parameters/depth/', '/parameters/thickness/')
        .replace('"/parameters/depth"', '/parameters/thickness'),
    );
    const step = applySplices(text, renameEntry(text, ['steps', 'depth'], 'pour') ?? []);
    expect(step).toBe(text.replace('  depth:\n', '  pour:\n').replace('    - depth', '    - pour'));
  });

  test('is refused where the name is taken, or nothing is there', () => {
    const text = textOf('first-tray');
    expect(renameEntry(text, ['steps', 'brief'], 'order')).toBeUndefined();
    expect(renameEntry(text, ['steps', 'nothing'], 'fresh')).toBeUndefined();
    expect(renameEntry('a: [', ['a'], 'b')).toBeUndefined();
    expect(renameEntry(text, ['steps', 'brief'], 'brief')).toEqual([]);
  });
});
