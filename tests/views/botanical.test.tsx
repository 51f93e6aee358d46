import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { Botanical } from '../../src/site/page/Botanical.tsx';

afterEach(cleanup);

test('a botanical name is marked as Latin, with the look that its place gives it', () => {
  render(<Botanical className="small">Acer saccharum</Botanical>);
  const name = screen.getByText('Acer saccharum');
  expect(name.lang).toBe('la');
  expect(name.className).toBe('botanical small');
});

test('no page writes one without it', () => {
  const site = 'src/site';
  const bare = readdirSync(site, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.tsx') && !file.endsWith('Botanical.tsx'))
    .filter((file) => /className=("|\{`)botanical/.test(readFileSync(join(site, file), 'utf8')));
  expect(bare).toEqual([]);
  const pages = readdirSync('docs').filter((file) => file.endsWith('.mdx'));
  const emphasised = pages.filter((file) =>
    /\*(Acer|Fraxinus|Prunus|Juglans)/.test(readFileSync(join('docs', file), 'utf8')),
  );
  expect(emphasised).toEqual([]);
});
