import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { root } from '../../src/store/index.ts';
import { fileText } from '../method/class/files.ts';
import { methodOf, numberAt } from './methods.ts';
import { hold, whole } from './statements.ts';

// Numbers in the page on the room of a class: power from the shop's record, minutes and machines from the method of the class.

interface Machine {
  id: string;
  count?: number;
  power?: string;
}

const { machines } = parse(fileText('shop.yaml')) as { machines: Machine[] };
const machine = (id: string) => {
  const found = machines.find((one) => one.id === id);
  if (!found) throw new Error(`no machine ${id}`);
  return { count: found.count ?? 1, kilowatts: Number.parseFloat(found.power ?? '') };
};

const tray = await methodOf('class-of-twelve');
const places = tray.pieces;

/** Row of the table of machines: what the step takes in minutes when so many work at once. */
function row(work: string, id: string, words: string, atOnce: number): [string, () => string] {
  return [
    work,
    () => {
      const step = tray.steps.find((one) => one.id === id);
      if (!step) throw new Error(`no step ${id}`);
      const { setUp, each } = step.hands;
      return `| ${work} | ${atOnce} ${words} | ${places / atOnce} | ${whole(each)} | ${whole(setUp + (places / atOnce) * each)} |`;
    },
  ];
}

const count = (tool: string) => tray.tools[tool]?.count ?? 1;

hold({
  'a-room-and-a-class': [
    [
      'what four routers and four extractors draw',
      () => {
        const [router, extractor] = [machine('plunge-router'), machine('extractor')];
        expect([router.count, extractor.count]).toEqual([4, 4]);
        const all = router.count * router.kilowatts + extractor.count * extractor.kilowatts;
        return `Four routers of ${router.kilowatts} kW with four extractors of ${extractor.kilowatts} kW draw **${all.toFixed(1)} kW** together.`;
      },
    ],
    ['the warmth at night', () => `wants ${numberAt(tray, '/parameters/nightTemperature')} °C or more from its pour`],
    row('channel', 'rout-channel', 'plunge routers', count('plunge-router')),
    row('cutting out', 'cut-out', 'band saw', count('band-saw')),
    row('outline', 'trim', 'router tables', count('router-table')),
    row('rounding the back', 'soften-edges', 'router tables', count('router-table')),
    row('rounding the face', 'soften-face', 'router tables', count('router-table')),
    row('levelling', 'level', 'scrapers and hard pads', count('scraper')),
    row('sanding', 'sand', 'sanders', count('sander')),
    row('first coat', 'first-coat', 'rag cans', count('rag-can')),
  ],
});

test('the questions on health are handed out by themselves, and each station has a card in one piece', () => {
  const source = readFileSync(join(root, 'docs', 'a-room-and-a-class.mdx'), 'utf8');
  const [handOut = ''] = /<HandOut>[\s\S]*<\/HandOut>/.exec(source) ?? [];
  expect(handOut).toContain('#questions');
  expect(handOut).toContain('Signed');
  expect(handOut).not.toContain('#answers');
  const cards = [...source.matchAll(/<Card>\n\n\*\*(At [^*]+)\*\*[\s\S]*?<\/Card>/g)].map(([, where]) => where);
  expect(cards).toEqual(['At a router', 'At the band saw', 'At the resin bench', 'At a sander', 'At the oil']);
});
