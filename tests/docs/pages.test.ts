import { describe, expect, test } from 'vitest';
import { calculatorById } from '../../src/calculators/index.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import { cautions } from '../../src/model/evidence/cautions.ts';
import { sources } from '../../src/model/evidence/index.ts';
import { finishById } from '../../src/model/finish/kinds.ts';
import { speciesById } from '../../src/model/species/index.ts';
import { type FigureName, figureNames } from '../../src/model/species/types.ts';
import { howToOrder } from '../../src/site/how-to-order.ts';
import { drawings } from '../../src/site/mdx/drawings/index.ts';
import { trayStages } from '../../src/site/mdx/drawings/TrayStage.tsx';
import { componentsOf, howTo, howTos, workedCases } from './how-to.ts';

/** Parts that hold words of the page. */
const containers = ['Check', 'Answers', 'HandOut', 'Cards', 'Card'];

const guides = howTos.filter(({ name }) => !['index', 'glossary'].includes(name));

describe.each(howTos)('$name', (page) => {
  test('has a title and a description', () => {
    expect(page.source).toMatch(/^---\ntitle: \S.*\n(.*\n)*?description: \S.*\n---\n/);
  });

  test('every heading below the title has an id of its own', () => {
    const headings = page.source.split('\n').filter((line) => /^#{2,6} /.test(line));
    const ids = headings.map((line) => /\{\/\* #([a-z0-9-]+) \*\/\}$/.exec(line)?.[1]);
    expect(headings.filter((_, index) => ids[index] === undefined)).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('keeps out of closed boxes and HTML comments, which do not print', () => {
    expect(page.source).not.toMatch(/<details|<!--/);
  });

  test('writes braces as code, or the site cannot be built: elsewhere they are a program', () => {
    const prose = page.source
      .replace(/^ *```[\s\S]*?^ *```/gm, '')
      .replace(/`[^`\n]*`/g, '')
      .replace(/\$\$[\s\S]*?\$\$/g, '')
      .replace(/<[A-Z][^>]*\/>/g, '')
      .replace(/\{\/\* #[a-z0-9-]+ \*\/\}/g, '');
    expect(prose.match(/.*[{}].*/g) ?? []).toEqual([]);
  });

  test('every component is one of ours, closed, and names what exists', () => {
    const used = componentsOf(page);
    const opened = [...page.source.matchAll(/<([A-Z]\w*)/g)].map(([, name]) => name as string);
    expect(used.map(({ component }) => component)).toEqual(opened.filter((name) => !containers.includes(name)));
    const wrong = used.filter(({ component, properties }) => !names(component, properties));
    expect(wrong).toEqual([]);
  });
});

describe.each(guides)('$name as a guide', (page) => {
  test('says whom it is for and what they will have', () => {
    expect(page.text).toMatch(/--- \*\*For\*\* .*?\*\*At the end\*\* you have /);
  });

  test('keeps the order that every guide keeps', () => {
    const order = ['cautions', 'wrong', 'unknown', 'check', 'sources'];
    const places = order.map((id) => page.source.indexOf(`{/* #${id} */}`));
    expect(places.every((place) => place > 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(page.source.indexOf('\n## ')).toBe(page.source.lastIndexOf('\n', places[0]));
  });

  test('asks its questions and keeps as many answers apart, in the last section but the sources', () => {
    const section = page.source.split('{/* #check */}')[1]?.split('\n## ')[0] ?? '';
    const [, questions = '', answers = ''] =
      /^\n\n<Check>\n\n([\s\S]*?)\n\n<Answers>\n\n([\s\S]*?)\n\n<\/Answers>\n\n<\/Check>\n$/.exec(section) ?? [];
    const numbersOf = (text: string) => [...text.matchAll(/^(\d+)\. /gm)].map(([, number]) => Number(number));
    expect(numbersOf(questions).length).toBeGreaterThan(1);
    expect(numbersOf(questions)).toEqual(numbersOf(questions).map((_, at) => at + 1));
    expect(numbersOf(answers)).toEqual(numbersOf(questions));
    // What is folded must not be what keeps somebody whole.
    expect(answers).not.toContain('<');
    expect(page.source.match(/<(Check|Answers)>/g)).toEqual(['<Check>', '<Answers>']);
  });
});

test('every page but the list of them has one place in the order', () => {
  const placed = howToOrder.flatMap(({ pages }) => pages);
  expect([...placed, 'index'].sort()).toEqual(howTos.map(({ name }) => name));
});

test('the list of pages names each once, under its group and in the order of the sidebar', () => {
  const list = howTo('index').source.split('{/* #pages */}')[1]?.split('\n## ')[0] ?? '';
  const found = list
    .split('\n### ')
    .slice(1)
    .map((group) => ({
      label: group.split(' {/*')[0],
      pages: [...group.matchAll(/\]\(\.\/([a-z-]+)\.mdx\)/g)].map(([, name]) => name),
    }));
  const labelled = howToOrder.filter(({ label }) => label !== undefined);
  const rest = howToOrder.filter(({ label }) => label === undefined).flatMap(({ pages }) => pages);
  // What stands under no group closes the list.
  const expected = labelled.map(({ label, pages }, at) => ({
    label,
    pages: [...pages, ...(at === labelled.length - 1 ? rest : [])],
  }));
  expect(found).toEqual(expected);
});

test('the tray of the class is the one that its resin, its oil and its label are worked for', () => {
  expect(howTo('index').text).toContain(
    'hard maple, 420 mm × 220 mm × 19 mm, with an amber channel 280 mm long, 18 mm wide and 6 mm deep',
  );
  const inputsOf = (page: string) => workedCases.find((one) => one.page === page)?.inputs;
  expect(inputsOf('dosing-and-mixing-resin')).toMatchObject({
    resin: 'slow-casting-2-1',
    shapes: 'channel, 280 mm, 18 mm, 12',
    depth: '6 mm',
  });
  const tray = { length: '420 mm', width: '220 mm', thickness: '19 mm' };
  expect(inputsOf('oiling-and-waxing')).toMatchObject({ ...tray, finish: 'mineral-oil' });
  const board = { species: 'sugar-maple', finish: 'mineral-oil', resin: 'slow-casting-2-1' };
  expect(inputsOf('food-contact')).toMatchObject(board);
  expect(inputsOf('care')).toMatchObject(board);
});

test.each(workedCases)('$page: the case of $calculator $inputs has an answer', ({ calculator, inputs }) => {
  const found = calculatorById(calculator);
  expect(found).toBeDefined();
  if (found) expect(answer(found, inputs)).toMatchObject({ ok: true });
});

/** Whether what a component names can be found. */
function names(component: string, properties: Readonly<Record<string, unknown>>): boolean {
  if (component === 'TrayStage') return trayStages.some((stage) => stage === properties['stage']);
  if (component in drawings) return Object.keys(properties).length === 0;
  const species = speciesById(String(properties['species'] ?? properties['id']));
  switch (component) {
    case 'Tray':
      // The reading of the pages has looked its pointer up.
      return Object.keys(properties).every((name) => name === 'at' || name === 'of');
    case 'Calculator':
      return calculatorById(String(properties['id'])) !== undefined;
    case 'Cautions':
      return (properties['ids'] as string[]).every((id) => cautions.some((caution) => caution.id === id));
    case 'Cite':
      return sources.some(({ id }) => id === properties['source']);
    case 'Figure': {
      const name = properties['name'] as FigureName;
      // A page that quotes a wood's figure must have one to quote.
      return figureNames.includes(name) && species !== undefined && species.figures[name] !== null;
    }
    case 'FoodContact':
      return (
        (properties['wood'] === undefined || speciesById(String(properties['wood'])) !== undefined) &&
        (properties['finish'] === undefined || finishById(String(properties['finish'])) !== undefined)
      );
    case 'Finishes':
    case 'HygienePapers':
      return Object.keys(properties).length === 0;
    case 'Wood':
      return species !== undefined;
    default:
      return false;
  }
}
