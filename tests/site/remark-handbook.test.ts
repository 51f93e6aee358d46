import { expect, test } from 'vitest';
import { cautionById } from '../../src/model/evidence/cautions.ts';
import { shortSource } from '../../src/model/evidence/index.ts';
import { remarkHandbook } from '../../src/site/mdx/remark-handbook.ts';

type Attribute = { type: string; name: string; value: unknown };
const part = (name: string, attributes: Record<string, unknown>) => ({
  type: 'mdxJsxFlowElement',
  name,
  attributes: Object.entries(attributes).map(
    ([key, value]): Attribute => ({ type: 'mdxJsxAttribute', name: key, value }),
  ),
});
const ids = (text: string) => ({ type: 'mdxJsxAttributeValueExpression', value: text });
const attributeOf = (node: { attributes: Attribute[] }, name: string) =>
  node.attributes.find((attribute) => attribute.name === name)?.value;

/** The cautions that a calculator is told of. */
const idsOf = (node: { attributes: Attribute[] }): string[] =>
  JSON.parse(attributeOf(node, 'cautions') as string).map(({ id }: { id: string }) => id);
const cautionsOf = (node: { attributes: Attribute[] }): string[] =>
  JSON.parse(attributeOf(node, 'folded') as string).cautions.map(({ id }: { id: string }) => id);

test('a calculator is told of the cautions that stand above it, and of no later ones', async () => {
  const first = part('Calculator', { id: 'width-change' });
  const second = part('Calculator', { id: 'width-change' });
  const children = [
    part('Cautions', { ids: ids("['wood-dust', 'noise']") }),
    first,
    part('Cautions', { ids: ids("[\n  'resin-skin',\n]") }),
    second,
  ];
  await remarkHandbook()({ type: 'root', children }, { path: 'page.mdx' });
  expect(idsOf(first)).toEqual(['wood-dust', 'noise']);
  expect(idsOf(second)).toEqual(['wood-dust', 'noise', 'resin-skin']);
});

test('a page carries its own cautions and the names of its own sources, and stops at the line of one that there is not', async () => {
  const [cautions, cite] = [part('Cautions', { ids: ids("['noise']") }), part('Cite', { source: 'fpl-gtr-190' })];
  await remarkHandbook()({ type: 'root', children: [cautions, cite] }, { path: 'page.mdx' });
  expect(JSON.parse(attributeOf(cautions, 'resolved') as string)).toEqual([cautionById('noise')]);
  expect(attributeOf(cite, 'resolved')).toBe(shortSource('fpl-gtr-190'));
  const compile = (node: ReturnType<typeof part>) =>
    remarkHandbook()({ type: 'root', children: [node] }, { path: 'page.mdx' });
  await expect(compile(part('Cautions', { ids: ids("['loud']") }))).rejects.toThrow(/page\.mdx:1:1 .*“loud”/);
  await expect(compile(part('Cite', { source: 'somebody' }))).rejects.toThrow(/page\.mdx:1:1 .*“somebody”/);
});

test('style of formulas, and a part with data of its own, come with the pages that have them', async () => {
  const tree = (children: object[]) => ({ type: 'root', children }) as { type: string; children: { type: string }[] };
  const formula = tree([{ type: 'paragraph', children: [{ type: 'inlineMath' }] }]);
  await remarkHandbook()(formula as never, { path: 'page.mdx' });
  expect(JSON.stringify(formula.children[0])).toContain('css/katex.css');
  const plain = tree([{ type: 'paragraph', children: [{ type: 'text' }] }]);
  await remarkHandbook()(plain as never, { path: 'page.mdx' });
  expect(plain.children).toHaveLength(1);
  const finishes = tree([part('Finishes', {})]);
  await remarkHandbook()(finishes as never, { path: 'page.mdx' });
  expect(JSON.stringify(finishes.children[0])).toContain('site/finish/Finishes.tsx');
});

test('the answers of a page stand once more at its end, under its title, for a sheet of their own', async () => {
  const list = { type: 'list', children: [{ type: 'text', value: 'No.' }] };
  const answers = { ...part('Answers', {}), children: [list] };
  const tree = {
    type: 'root',
    children: [{ ...part('Check', {}), children: [answers] }, part('Cite', { source: 'fpl-gtr-190' })],
  };
  await remarkHandbook()(tree, { path: 'page.mdx', data: { frontMatter: { title: 'Care' } } });
  expect(tree.children.at(-1)).toMatchObject({
    name: 'AnswersSheet',
    attributes: [{ name: 'title', value: 'Care' }],
    children: [list],
  });
  expect(answers.children).toEqual([list]);
});

test('a page imports the drawings that it shows, each once, and no other', async () => {
  const children: { type: string; name?: string; data?: unknown }[] = [
    part('FeedDirection', {}),
    part('Cautions', { ids: ids("['noise']") }),
    part('FeedDirection', {}),
    part('SecondCup', {}),
  ];
  await remarkHandbook()({ type: 'root', children }, { path: 'page.mdx' });
  expect(children[0]?.type).toBe('mdxjsEsm');
  expect([...JSON.stringify(children[0]).matchAll(/"value":"([^"]+)"/g)].map(([, from]) => from)).toEqual([
    '@site/src/site/mdx/drawings/FeedDirection.tsx',
    '@site/src/site/mdx/drawings/SecondCup.tsx',
  ]);
});

test('a calculator is worked out for the page, which is told how to fetch it, and says what the page does not', async () => {
  const saw = part('Calculator', {
    id: 'cutter-speed',
    preset: ids("{ cutter: 'forstner', diameter: '35 mm', work: 'boring' }"),
  });
  const again = part('Calculator', {
    id: 'cutter-speed',
    preset: ids("{ cutter: 'forstner', diameter: '35 mm', work: 'boring' }"),
  });
  await remarkHandbook()({ type: 'root', children: [saw, again] }, { path: 'page.mdx' });
  expect(JSON.parse(attributeOf(saw, 'folded') as string).verdict.text).toMatch(/\d/);
  expect((attributeOf(saw, 'load') as { value: string }).value).toMatch(
    /^\(\) => import\(".*calculator-cutter-speed\.js"\)$/,
  );
  const dangers = cautionsOf(saw).filter((id) => id === 'hold-the-work');
  expect(dangers).toEqual(['hold-the-work']);
  expect(cautionsOf(again)).not.toContain('hold-the-work');
});

test('a case without an answer stops the build, and names the field', async () => {
  const wrong = part('Calculator', { id: 'width-change', preset: ids("{ width: 'wide' }") });
  await expect(remarkHandbook()({ type: 'root', children: [wrong] }, { path: 'page.mdx' })).rejects.toThrow(
    /page\.mdx.*no answer\. width/,
  );
});
