import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { workMethod } from '../../../src/method/case/work.ts';
import { completeAt, type EditContext, hoverAt, kindOfRecord, usualNames } from '../../../src/method/edit/index.ts';
import { readMethod } from '../../../src/method/read.ts';
import { readShop } from '../../../src/method/shop/index.ts';

const tray = readFileSync('methods/first-tray.yaml', 'utf8');
const shopText = readFileSync('methods/shop.yaml', 'utf8');
const caret = '‸';
const context: EditContext = { names: usualNames };

/** What is offered at the caret of a text. */
async function offered(marked: string, given: EditContext = context) {
  const offset = marked.indexOf(caret);
  const text = marked.replace(caret, '');
  const found = await completeAt(text, offset, given);
  return {
    found,
    labels: found?.options.map(({ label }) => label),
    replaced: found && text.slice(found.from, found.to),
    /** The text once the option is taken. */
    taken: (label: string) => {
      const option = found?.options.find((each) => each.label === label);
      if (!found || !option) throw new Error(`${label} is not offered, but ${found?.options.map((o) => o.label)}`);
      return text.slice(0, found.from) + option.insert + text.slice(found.to);
    },
  };
}

/** The tray with a stretch replaced; the caret stands in what replaces it. */
function changed(stretch: string, by: string): string {
  if (!tray.includes(stretch)) throw new Error(`the tray has no ${stretch}`);
  return tray.replace(stretch, () => by);
}

describe('names of fields', () => {
  test.each([
    ['on an empty line of a step', changed('    interrupt: never\n', `    ${caret}\n`), 'interrupt', 'act'],
    ['begun, before its colon', changed('    interrupt: never\n', `    int${caret}\n`), 'interrupt', 'act'],
    [
      'in a group in braces',
      changed('{ division: 1 g, capacity: 5 kg }', `{ division: 1 g, ${caret} }`),
      'capacity',
      'division',
    ],
    [
      'in a group that is not closed yet',
      changed('{ division: 1 g, capacity: 5 kg }', `{ ${caret}`),
      'capacity',
      'what',
    ],
    [
      'of a link in a list',
      changed('after: [{ step: stack, least:', `after: [{ step: stack, ${caret} }, { step: stack, least:`),
      'most',
      'step',
    ],
    ['of what a calculator asks', changed('          surfacing: s2s\n', `          ${caret}\n`), 'surfacing', 'length'],
    ['at the start of a line', changed('language: en\n', `${caret}\n`), 'language', 'steps'],
    ['of an outline', `parameters:\n  a:\n    kind: outline\n    default: { shape: oval, ${caret} }`, 'length', 'kind'],
  ])('%s', async (_where, text, offeredName, left) => {
    const { labels } = await offered(text);
    expect(labels).toContain(offeredName);
    expect(labels).not.toContain(left);
  });

  test('those that are needed come first, each with what it means', async () => {
    const { found } = await offered(`steps:\n  a:\n    ${caret}`);
    expect(found?.options.slice(0, 3).map(({ label, detail }) => [label, detail])).toEqual([
      ['title', 'needed'],
      ['act', 'needed'],
      ['does', 'needed'],
    ]);
    expect(found?.options[0]?.info).toBe('What is done, as a heading.');
  });

  test('a kind decides which fields a parameter has', async () => {
    const wood = await offered(`parameters:\n  a: { kind: wood, ${caret} }`);
    expect(wood.labels).toEqual(['label', 'default', 'help', 'shop', 'among']);
    const choice = await offered(`parameters:\n  a: { kind: choice, ${caret} }`);
    expect(choice.labels).toContain('options');
    const shop = await offered(`shop: 1\nmachines:\n  - kind: planer\n    id: a\n    limits: { ${caret} }`);
    expect(shop.labels).toContain('leastLength');
    expect(shop.labels).not.toContain('ripWidth');
  });

  test('what is taken can be typed on: a text begins below, in braces after a colon, and no colon is doubled', async () => {
    expect((await offered(`steps:\n  a:\n    ${caret}`)).taken('does')).toBe('steps:\n  a:\n    does: |\n      ');
    expect((await offered(`makes: { ${caret} }`)).taken('what')).toBe('makes: { what:  }');
    expect((await offered(`makes:\n  wh${caret}: x`)).taken('what')).toBe('makes:\n  what: x');
  });

  test('of an input: label, unit and example', async () => {
    const { found } = await offered(
      changed('          thickness: { from: /calculations/order/figures/roughThickness }\n', `          ${caret}\n`),
    );
    expect(found?.options.find(({ label }) => label === 'thickness')).toMatchObject({ detail: 'mm, needed' });
    expect(found?.options.find(({ label }) => label === 'thickness')?.info).toMatch(/^Thickness\..*For example/);
  });
});

describe('values', () => {
  test.each([
    ['an act', changed('act: brief', `act: ${caret}`), 'raise-the-grain'],
    ['an act, begun', changed('act: brief', `act: rai${caret}`), 'raise-the-grain'],
    ['an act, in quotes', changed('act: brief', `act: "rai${caret}"`), 'raise-the-grain'],
    ['a kind of parameter', changed('kind: wood\n    label', `kind: ${caret}\n    label`), 'outline'],
    ['a kind of material', changed('kind: cloth', `kind: ${caret}`), 'gloves'],
    ['a kind of machine', shopText.replace('kind: planer', `kind: ${caret}`), 'jointer'],
    ['a time zone', shopText.replace(/^zone: .*$/m, `zone: ${caret}`), 'America/Chicago'],
    ['a wood', changed('default: sugar-maple', `default: ${caret}`), 'white-ash'],
    ['a wood among several', changed('among: [sugar-maple,', `among: [${caret},`), 'white-ash'],
    ['a finish', changed('default: mineral-oil', `default: ${caret}`), 'tung-oil'],
    ['a place', changed('default: duluth-mn', `default: ${caret}`), 'duluth-mn'],
    ['a shape', `parameters:\n  a:\n    kind: outline\n    default: { shape: ${caret} }`, 'oval'],
    ['a calculator', changed('use: stock-order', `use: ${caret}`), 'pour-heat'],
    ['a choice of a calculator', changed('surfacing: s2s', `surfacing: ${caret}`), 's2s'],
    ['a wood of a calculator', changed('species: { from: /parameters/wood }', `species: ${caret}`), 'white-ash'],
    ['an earlier step', changed('after: [{ step: stack, least:', `after: [{ step: ${caret}, least:`), 'stack'],
    ['a tool', changed('tools: [fire-extinguisher]', `tools: [fire-extinguisher, ${caret}]`), 'rag-can'],
    ['a material', changed('uses: [boards]', `uses: [${caret}`), 'oil'],
    ['a rule', `${tray}exceptions:\n  - rule: ${caret}\n`, 'unused-tool'],
    ['yes or no', changed('kind: wood\n    item', `kind: wood\n    salvaged: ${caret}\n    item`), 'true'],
    ['a place in the shop record', changed('shop: /air/day', `shop: ${caret}`), '/air/humidity'],
  ])('%s', async (_what, text, value) => {
    const { labels } = await offered(text);
    expect(labels).toContain(value);
  });

  test('a list is begun where none is yet, and goes on below its last part', async () => {
    const line = 'tools: [fire-extinguisher]';
    expect((await offered(changed(line, `tools: ${caret}`))).taken('masks')).toContain('tools: [masks]');
    expect((await offered(changed(line, `tools:${caret}`))).taken('masks')).toContain('tools: [masks]');
    const below = await offered(changed(line, `tools:\n      ${caret}`));
    expect(below.taken('masks')).toContain('tools:\n      - masks\n');
    const more = await offered(changed(line, `tools:\n      - block\n      ${caret}`));
    expect(more.taken('masks')).toContain('- block\n      - masks\n');
    const dash = await offered(changed(line, `tools:\n      -${caret}`));
    expect(dash.taken('masks')).toContain('tools:\n      - masks\n');
  });

  test('a step does not wait for itself', async () => {
    const { labels } = await offered(changed('after: [{ step: stack, least:', `after: [{ step: ${caret}, least:`));
    expect(labels).not.toContain('mark-blanks');
  });

  test.each(['resin-dose', 'grit-sequence', 'cure-clock'])(
    'what %s takes is spelled so that it reads as it is listed',
    async (use) => {
      const { found } = await offered(`steps: { a: { calculations: { c: { use: ${use}, with: { ${caret} } } } } }`);
      for (const { label: input } of found?.options ?? []) {
        const { found: values, taken } = await offered(
          `steps: { a: { calculations: { c: { use: ${use}, with: { ${input}: ${caret} } } } } }`,
        );
        for (const { label, sort } of values?.options ?? []) {
          if (sort !== 'value') continue;
          const { steps } = parse(taken(label)) as {
            steps: { a: { calculations: { c: { with: Record<string, unknown> } } } };
          };
          expect(String(steps.a.calculations.c.with[input]), input).toBe(label);
        }
      }
    },
  );

  test('ids of the shop record', async () => {
    const { shop } = readShop(shopText);
    if (!shop) throw new Error('the shop of the house reads');
    const { labels } = await offered(changed('item: mineral-oil', `item: ${caret}`), { ...context, shop });
    expect(labels).toContain('mineral-oil');
    expect(labels).toContain('gloves');
  });
});

describe('references', () => {
  test('those that measure what is asked come first, and none that cannot be meant', async () => {
    const { labels = [], found } = await offered(
      changed('length: { from: /parameters/length }', `length: { from: /par${caret} }`),
    );
    expect(labels.slice(0, 4)).toEqual([
      '/parameters/length',
      '/parameters/width',
      '/parameters/cornerRadius',
      '/parameters/thickness',
    ]);
    expect(labels).not.toContain('/parameters/shopHumidity');
    expect(labels).not.toContain('/makes/what');
    expect(found?.options.find(({ label }) => label === '/calculations/order/figures/boardLength')?.detail).toBe('mm');
  });

  test('a wait is offered times, events among them', async () => {
    const { labels, taken } = await offered(
      changed('least: { from: /calculations/settling/figures/withinOne }', `least: ${caret}`),
    );
    expect(labels).toContain('/calculations/settling/events/ready');
    expect(labels).not.toContain('/calculations/order/figures/boardLength');
    expect(taken('/calculations/settling/events/ready')).toContain(
      'least: { from: /calculations/settling/events/ready } }]',
    );
  });

  test('a need is offered what is used up first', async () => {
    const { labels = [] } = await offered(changed('from: /calculations/order/uses/board-feet', `from: ${caret}`));
    expect(labels[0]).toMatch(/^\/calculations\/[^/]+\/uses\//);
    expect(labels).toContain('/calculations/order/uses/board-feet');
  });

  test('in the braces of a text, whose end is not doubled', async () => {
    const whole = 'holds wood at {/calculations/settling/figures/balance}.';
    const open = await offered(changed(whole, `holds wood at {/calc${caret}.`));
    expect(open.taken('/calculations/settling/figures/balance')).toContain(whole);
    const closed = await offered(changed(whole, `holds wood at {/calc${caret}ulations/x}.`));
    expect(closed.taken('/calculations/settling/figures/balance')).toContain(whole);
    const quoted = await offered(`parameters: {}\nmakes: { what: x }\nsteps:\n  a:\n    why: "Since {/m${caret}"`);
    expect(quoted.taken('/makes/what')).toContain('why: "Since {/makes/what}"');
  });

  test('with their value in the case', async () => {
    const working = await workMethod(readMethod(tray, 'tray'));
    if (!working.ok) throw new Error('the tray can be worked out');
    const { found } = await offered(changed('{/parameters/length} long', `{/par${caret}} long`), {
      ...context,
      worked: working.worked,
    });
    expect(found?.options.find(({ label }) => label === '/parameters/length')?.info).toBe('Length of the tray: 400 mm');
  });
});

describe('silence', () => {
  test.each([
    ['in a comment', changed('# A first tray', `# A ${caret} first tray`)],
    ['behind a value', changed('act: brief', `act: brief # ${caret}`)],
    ['in running words', changed('Walk the shop once', `Walk ${caret} the shop once`)],
    [
      'on an empty line between words',
      changed('the first-aid box and the tap.\n\n', `the first-aid box and the tap.\n${caret}\n`),
    ],
    ['in a title', changed('title: Say what is coming', `title: Say ${caret}`)],
    ['under a name that is none', changed('act: brief', `actt: ${caret}`)],
    ['further left than the entries of a group', changed('    interrupt: never\n', ` ${caret}\n`)],
  ])('%s', async (_where, text) => {
    expect((await offered(text)).found).toBeUndefined();
  });

  test('a text that would hold a parser up is not read', async () => {
    for (const text of [
      `steps:\n  a: ${'['.repeat(1000)}${caret}`,
      `steps:\n  a:\n    tools:\n      ${'- '.repeat(300)}${caret}`,
    ]) {
      expect((await offered(text)).found).toBeUndefined();
      expect((await offered(text)).found).toBeUndefined();
    }
  });

  test('any place of a method may be asked, cut off there or not', async () => {
    for (let at = 0; at < tray.length; at += 397) {
      await completeAt(tray, at, context);
      await completeAt(tray.slice(0, at), at, context);
      await hoverAt(tray, at, context);
    }
  });
});

describe('what is said of a place', () => {
  const at = async (words: string, given: EditContext = context) =>
    hoverAt(tray, tray.indexOf(words) + words.length - 1, given);

  test('an act with its cautions and what is worn', async () => {
    const said = await at('act: saw');
    expect(said).toMatchObject({ title: 'Saw to size' });
    expect(said?.words.join(' ')).toContain('eye protection');
    expect(said?.words.some((words) => /^(Danger|Warning)/i.test(words))).toBe(true);
  });

  test('a field, an input, a choice, a calculator, a tool, a step', async () => {
    expect((await at('interrupt'))?.words).toEqual(['Where it may be left overnight; between pieces unless told.']);
    expect((await at('          surfacing'))?.words.join(' ')).toMatch(/For example/);
    expect((await at('surfacing: s2s'))?.title).toBe('Planed on two faces (S2S)');
    expect((await at('use: stock-order'))?.title).toBe('Ordering stock');
    expect((await at('tools: [fire-extinguisher'))?.title).toBe('Fire extinguisher by the door');
    expect((await at('[{ step: stack'))?.title).toBe('Put the boards on stickers');
  });

  test('a reference with its value in this case, in a text and behind from', async () => {
    const working = await workMethod(readMethod(tray, 'tray'), { pieces: 2 });
    if (!working.ok) throw new Error('the tray can be worked out');
    const worked = { ...context, worked: working.worked };
    expect(await at('this method the tray is {/parameters/length', worked)).toMatchObject({
      title: 'Length of the tray',
      words: ['400 mm'],
    });
    const count = await at('count: { from: /makes/pieces', worked);
    expect(count).toMatchObject({ title: 'Pieces that are made', words: ['2'] });
  });

  test('a comment says nothing', async () => {
    expect(await at('# A first tray')).toBeUndefined();
  });
});

test('which record a text is', () => {
  expect([kindOfRecord(tray), kindOfRecord(shopText), kindOfRecord('')]).toEqual(['method', 'shop', 'method']);
});
