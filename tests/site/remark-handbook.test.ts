import { expect, test } from 'vitest';
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
  expect(attributeOf(first, 'cautions')).toBe('wood-dust noise');
  expect(attributeOf(second, 'cautions')).toBe('wood-dust noise resin-skin');
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

test('a page imports the drawings that it shows, each once, and no other', () => {
  const children: { type: string; name?: string; data?: unknown }[] = [
    part('FeedDirection', {}),
    part('Cautions', { ids: ids("['noise']") }),
    part('FeedDirection', {}),
    part('SecondCup', {}),
  ];
  remarkHandbook()({ type: 'root', children }, { path: 'page.mdx' });
  expect(children[0]?.type).toBe('mdxjsEsm');
  expect([...JSON.stringify(children[0]).matchAll(/"value":"([^"]+)"/g)].map(([, from]) => from)).toEqual([
    '@site/src/site/mdx/drawings/FeedDirection.tsx',
    '@site/src/site/mdx/drawings/SecondCup.tsx',
  ]);
});
