import { fileURLToPath } from 'node:url';
import type { LoadContext, Plugin } from '@docusaurus/types';
import { normalizeUrl } from '@docusaurus/utils';
import { calculators } from '../../calculators/index.ts';
import { guessScript } from '../../calculators/view/units-guess.ts';
import { readCalendar } from '../../method/page/read-calendar.ts';
import { sourceSubjects, type Table } from '../../model/evidence/index.ts';
import { usualFirst } from '../../model/species/find-woods.ts';
import { resolveSpecies } from '../../model/species/resolve.ts';
import type { SpeciesDossier } from '../../model/species/types.ts';
import { usualWoods } from '../../model/species/usual.ts';
import { readAllTables, readCalendarTexts, readRecords, speciesRecords } from '../../store/index.ts';
import { calculatorEntry } from '../calculators/entry.ts';
import { fontTags } from '../fonts/faces.ts';
import { appTags } from '../offline/app-manifest.ts';
import { addressOfActs } from '../reference/act-parts.ts';
import { addressOfSet, hasOwnPage, roomAsShown } from '../reference/check-parts.ts';
import { addressOfEquations } from '../reference/equation-parts.ts';
import { addressOfRules, besidesGroup } from '../reference/rule-parts.ts';
import { addressOfSources } from '../reference/source-parts.ts';
import { addressOfPart } from '../reference/table-parts.ts';
import { gatherBooklets } from './booklets.ts';
import { bundleRules, shortSourcesFile, shortSourcesText } from './bundles.ts';
import {
  calculatorFile,
  calculatorModuleText,
  drawnFile,
  drawnModuleText,
  liveFile,
  liveModuleText,
} from './calculator-modules.ts';
import { gatherLibrary } from './library.ts';
import { calendarsFile, drawnMethodFile, drawnMethodText, methodPageFile } from './method-modules.ts';
import { gatherMethodPages, type MethodEntry } from './method-pages.ts';
import {
  gatherActs,
  gatherMethodFormat,
  gatherRules,
  gatherShopFormat,
  summariesOfActs,
  summariesOfRules,
} from './methods.ts';
import { writeFacts } from './pages-of-woods.ts';
import { partOf } from './part-summary.ts';
import {
  gatherChecks,
  gatherEquations,
  gatherEvidence,
  gatherSchemas,
  tableEntries,
  tableSummary,
} from './reference.ts';
import { writeSearchFile } from './search-index.ts';
import { handbookTitles } from './titles.ts';
import { gatherWoods, namesOfWoods } from './woods.ts';

interface Content {
  tables: readonly Table[];
  dossiers: readonly SpeciesDossier[];
  methods: readonly MethodEntry[];
}

/** A page of the site: where it stands, which component draws it, and what it is given. */
interface PageRoute {
  path: string;
  /** Under src/site. */
  component: string;
  /** Props by name; each becomes a file that only this page loads. */
  props?: Readonly<Record<string, unknown>>;
  /** Id of the calculator whose form and answer the page is sent with, as the prop `calculator`. */
  drawn?: string;
  /** Id of the method that the page is sent with, as the prop `method`. */
  method?: string;
}

/** The plugin that makes pages from the records, the tables, the equations and the calculators. */
export default function handbook(context: LoadContext): Plugin<Content> {
  const { baseUrl } = context.siteConfig;
  return {
    name: 'handbook',

    getPathsToWatch: () => [
      'src/model/**/tables/*.csv',
      'src/model/*/records/*.yaml',
      'schemas/*.json',
      'methods/*.yaml',
    ],

    getClientModules: () =>
      ['own-address', 'no-prefetch', 'sidebar-in-sight', 'running-title', 'keep-focus', '../offline/register'].map(
        (name) => fileURLToPath(new URL(`../chrome/${name}.ts`, import.meta.url)),
      ),

    injectHtmlTags: () => ({
      headTags: [
        { tagName: 'script', innerHTML: guessScript },
        ...fontTags(normalizeUrl([baseUrl, '/fonts/'])),
        ...appTags(baseUrl),
      ],
    }),

    async loadContent() {
      const tables = readAllTables();
      const dossiers = resolveSpecies(readRecords(speciesRecords), tables);
      return { tables: [...tables.values()], dossiers, methods: await gatherMethodPages() };
    },

    async contentLoaded({ content, actions: { addRoute, createData, setGlobalData } }) {
      setGlobalData(handbookTitles());
      await createData(shortSourcesFile, shortSourcesText());
      let count = 0;
      const drawnBy = new Map<string, string>();
      for (const calculator of calculators) {
        await createData(calculatorFile(calculator.id), calculatorModuleText(calculator, calculators));
        await createData(liveFile(calculator.id), liveModuleText(calculator));
        drawnBy.set(calculator.id, await createData(drawnFile(calculator.id), drawnModuleText(calculator)));
      }
      await createData(calendarsFile, JSON.stringify(readCalendarTexts().map(readCalendar)));
      const methodBy = new Map<string, string>();
      for (const entry of content.methods) {
        await createData(methodPageFile(entry.id), JSON.stringify(entry.page));
        methodBy.set(entry.id, await createData(drawnMethodFile(entry.id), drawnMethodText(entry)));
      }
      for (const { path, component, props = {}, drawn, method } of pages(content)) {
        const modules: Record<string, string> = {};
        if (drawn) modules['calculator'] = drawnBy.get(drawn) as string;
        if (method) modules['method'] = methodBy.get(method) as string;
        for (const [name, value] of Object.entries(props)) {
          modules[name] = await createData(`${name}-${count++}.json`, JSON.stringify(value));
        }
        addRoute({
          path: normalizeUrl([baseUrl, path]),
          component: `@site/src/site/${component}`,
          exact: true,
          modules,
        });
      }
      for (const { booklet, files } of gatherBooklets()) {
        addRoute({
          path: normalizeUrl([baseUrl, `/booklets/${booklet.id}`]),
          component: '@site/src/site/booklet/BookletPage.tsx',
          exact: true,
          modules: {
            booklet: await createData(`booklet-${booklet.id}.json`, JSON.stringify(booklet)),
            contents: files.map((Content) => ({ Content })),
          },
        });
      }
    },

    async postBuild({ outDir, content }) {
      writeSearchFile(outDir, namesOfWoods(content.dossiers));
      writeFacts(context.generatedFilesDir, outDir, baseUrl);
    },

    configureWebpack: (config, isServer, utils) => bundleRules(config, isServer, utils, baseUrl),
  };
}

function* pages({ tables, dossiers, methods }: Content): Generator<PageRoute> {
  const woods = gatherWoods(dossiers);
  const entries = calculators.map(calculatorEntry);

  yield {
    path: '/',
    component: 'home/Home.tsx',
    props: { usual: usualFirst(woods.names).slice(0, usualWoods.length), count: woods.names.length },
  };
  yield { path: '/search', component: 'search/SearchPage.tsx' };

  yield { path: '/woods', component: 'woods/WoodsIndex.tsx', props: { woods: woods.rows } };
  for (const facts of woods.facts) {
    yield {
      path: `/woods/${facts.wood.id}`,
      component: 'wood/WoodPage.tsx',
      props: { facts },
      drawn: 'seasonal-movement',
    };
  }

  yield { path: '/calculators', component: 'calculators/CalculatorsIndex.tsx', props: { calculators: entries } };
  for (const { id } of entries) {
    yield { path: `/calculators/${id}`, component: 'calculators/CalculatorPage.tsx', drawn: id };
  }

  yield { path: '/batches', component: 'batch/Batches.tsx' };
  yield {
    path: '/methods',
    component: 'method/MethodsIndex.tsx',
    props: { methods: methods.map(({ summary }) => summary) },
  };
  for (const { id } of methods) yield { path: `/methods/${id}`, component: 'method/MethodRoute.tsx', method: id };

  yield { path: '/class', component: 'class/Classes.tsx' };
  yield { path: '/resin-sheets', component: 'resin/ResinSheets.tsx' };
  yield {
    path: '/shop',
    component: 'shop/ShopPage.tsx',
    props: { titles: Object.fromEntries(entries.map(({ id, title }) => [id, title])) },
  };
  yield { path: '/bench', component: 'bench/BenchPage.tsx' };
  yield { path: '/sheets', component: 'sheets/SheetsPage.tsx' };
  yield { path: '/quote', component: 'sale/QuotePage.tsx' };
  yield { path: '/access', component: 'access/AccessPage.tsx' };
  yield { path: '/privacy', component: 'privacy/PrivacyPage.tsx' };
  yield { path: '/offline', component: 'offline/OfflinePage.tsx' };
  yield { path: '/kept', component: 'kept/KeptPage.tsx', props: { calculators: entries } };

  yield { path: '/reference', component: 'reference/ReferenceIndex.tsx' };
  const equations = gatherEquations();
  yield {
    path: '/reference/equations',
    component: 'reference/Equations.tsx',
    props: {
      parts: equations.map((room) =>
        partOf(
          room,
          room.equations.map(({ record }) => record),
        ),
      ),
    },
  };
  for (const room of equations)
    yield {
      path: addressOfEquations(room.id),
      component: 'reference/EquationsOfRoom.tsx',
      props: { room },
    };
  const checks = gatherChecks();
  yield { path: '/reference/checks', component: 'reference/Checks.tsx', props: { summary: checks.summary } };
  for (const room of checks.rooms) {
    yield {
      path: `/reference/checks/${room.id}`,
      component: 'reference/ChecksOfRoom.tsx',
      props: { room: roomAsShown(room) },
    };
    for (const entry of room.sets.filter(hasOwnPage))
      yield {
        path: addressOfSet(room.id, entry),
        component: 'reference/ChecksOfSet.tsx',
        props: { set: { room: { id: room.id, title: room.title }, entry } },
      };
  }
  yield {
    path: '/reference/sources',
    component: 'reference/Sources.tsx',
    props: { parts: sourceSubjects.map((subject) => partOf(subject, subject.sources)) },
  };
  for (const subject of sourceSubjects)
    yield { path: addressOfSources(subject.id), component: 'reference/SourcesOfSubject.tsx', props: { subject } };
  yield {
    path: '/reference/evidence',
    component: 'reference/Evidence.tsx',
    props: { evidence: gatherEvidence(dossiers) },
  };
  yield { path: '/reference/food-rules', component: 'reference/FoodRulesPage.tsx' };
  const rules = gatherRules();
  yield { path: '/reference/rules', component: 'reference/Rules.tsx', props: { parts: summariesOfRules(rules) } };
  yield { path: addressOfRules(besidesGroup), component: 'reference/RulesBesides.tsx' };
  for (const group of rules)
    yield { path: addressOfRules(group.id), component: 'reference/RulesOfGroup.tsx', props: { group } };
  const acts = gatherActs();
  yield { path: '/reference/acts', component: 'reference/Acts.tsx', props: { parts: summariesOfActs(acts) } };
  for (const group of acts)
    yield { path: addressOfActs(group.id), component: 'reference/ActsOfGroup.tsx', props: { group } };
  for (const [path, format] of [
    ['/reference/method-format', gatherMethodFormat()],
    ['/reference/shop-record', gatherShopFormat()],
  ] as const)
    yield { path, component: 'reference/Format.tsx', props: { format } };
  yield { path: '/reference/schemas', component: 'reference/Schemas.tsx', props: { schemas: gatherSchemas() } };
  const library = gatherLibrary();
  yield {
    path: '/reference/library',
    component: 'reference/Library.tsx',
    props: { rooms: library.map(({ name, about, items }) => ({ name, about, count: items.length })) },
  };
  for (const room of library)
    yield { path: `/reference/library/${room.name}`, component: 'reference/LibraryEntry.tsx', props: { room } };
  yield { path: '/reference/tables', component: 'reference/Tables.tsx', props: { tables: tables.map(tableSummary) } };
  for (const table of tables) {
    for (const entry of tableEntries(table))
      yield {
        path: addressOfPart(table.definition.name, entry.part),
        component: 'reference/TablePage.tsx',
        props: { table: entry },
      };
  }
}
