import type { Options as PresetOptions, ThemeConfig } from '@docusaurus/preset-classic';
import type { Config } from '@docusaurus/types';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { remarkGlossary } from './src/site/mdx/remark-glossary.ts';
import { remarkHandbook } from './src/site/mdx/remark-handbook.ts';
import { remarkInches } from './src/site/mdx/remark-inches.ts';
import { remarkSee } from './src/site/mdx/remark-see.ts';
import { readSite, readSiteShop } from './src/store/site/site.ts';

const { name, tagline, address, folder, colours } = readSite();

const config: Config = {
  title: name,
  tagline,
  favicon: 'img/favicon.svg',
  url: process.env.KERF_SITE_URL ?? address,
  baseUrl: process.env.KERF_BASE_URL ?? folder,
  baseUrlIssueBanner: false,
  // A page is a folder with an index.html: the one form of address that every host of files knows without being told, and answers at once.
  trailingSlash: true,
  onBrokenLinks: 'throw',
  onBrokenAnchors: 'throw',
  onDuplicateRoutes: 'throw',
  future: { v4: true, faster: true },
  // What calculators begin with of the shop record that this site ships, where it ships one.
  customFields: { shop: readSiteShop() },
  // `.kerf/static` holds the tables and schemas in the forms that are offered for download: `npm run generate` writes it.
  staticDirectories: ['static', '.kerf/static'],
  markdown: { hooks: { onBrokenMarkdownLinks: 'throw', onBrokenMarkdownImages: 'throw' } },
  plugins: ['./src/site/plugin/index.ts'],
  presets: [
    [
      'classic',
      {
        docs: {
          path: 'docs',
          routeBasePath: 'how-to',
          sidebarPath: './sidebars.ts',
          breadcrumbs: false,
          // Prices are written with a dollar sign, so inline formulas take two.
          remarkPlugins: [
            [remarkMath, { singleDollarTextMath: false }],
            remarkGlossary,
            remarkHandbook,
            remarkInches,
            remarkSee(),
          ],
          rehypePlugins: [[rehypeKatex, { strict: true, throwOnError: true }]],
        },
        blog: false,
        pages: { path: 'src/site/pages' },
        theme: {
          customCss: [
            './.kerf/colours.css',
            './src/site/css/tokens.css',
            './src/site/css/base.css',
            './src/site/css/chrome.css',
            './src/site/css/tables.css',
            './src/site/css/large-text.css',
            './src/site/css/print.css',
            './src/site/css/print-calculators.css',
          ],
        },
      } satisfies PresetOptions,
    ],
  ],
  themeConfig: {
    colorMode: { defaultMode: 'light', respectPrefersColorScheme: true },
    metadata: [{ name: 'theme-color', content: colours.light.paper }],
    docs: { sidebar: { hideable: false, autoCollapseCategories: false } },
    tableOfContents: { minHeadingLevel: 2, maxHeadingLevel: 3 },
    // Code is coloured by `CodeSample`; the theme's own colours would only travel with every page.
    prism: { theme: { plain: {}, styles: [] }, darkTheme: { plain: {}, styles: [] } },
  } satisfies ThemeConfig,
};

export default config;
