import type { LoadContext } from '@docusaurus/types';
import { expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import handbook from '../../src/site/plugin/index.ts';
import { howTos } from '../docs/how-to.ts';

test('the plugin makes a page for every calculator and tells every page the titles', async () => {
  const plugin = handbook({ siteConfig: { baseUrl: '/' } } as LoadContext);
  const content = await plugin.loadContent?.();
  const paths: string[] = [];
  let told: unknown;
  await plugin.contentLoaded?.({
    content,
    actions: {
      addRoute: ({ path }: { path: string }) => paths.push(path),
      createData: async (name: string) => name,
      setGlobalData: (data: unknown) => {
        told = data;
      },
    },
  } as never);
  expect(new Set(paths).size).toBe(paths.length);
  for (const { id } of calculators) expect(paths).toContain(`/calculators/${id}`);
  const { pages, calculators: titled } = told as { pages: { title: string; about: string }[]; calculators: unknown[] };
  expect(pages).toHaveLength(howTos.length - 1);
  expect(pages.filter(({ title, about }) => title === '' || about === '')).toEqual([]);
  expect(titled).toHaveLength(calculators.length);
  // It comes with every page: it must stay small beside one photograph.
  expect(JSON.stringify(told).length).toBeLessThan(13_000);
});

test('what was kept of a build is void once the site has another folder: the addresses of fonts lie in it', () => {
  const versionFor = (baseUrl: string) => {
    const config = { experiments: { cache: { version: '3' } } };
    class Part {}
    const bundler = { currentBundler: { instance: { DefinePlugin: Part, NormalModuleReplacementPlugin: Part } } };
    const plugin = handbook({ siteConfig: { baseUrl } } as LoadContext);
    plugin.configureWebpack?.(config as never, false, bundler as never, {} as never);
    return config.experiments.cache.version;
  };
  expect(versionFor('/')).toBe(versionFor('/'));
  expect(versionFor('/boards/')).not.toBe(versionFor('/'));
});
