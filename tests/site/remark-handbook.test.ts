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

test('a calculator is told of the cautions that stand above it, and of no later ones', () => {
  const first = part('Calculator', { id: 'width-change' });
  const second = part('Calculator', { id: 'width-change' });
  const children = [
    part('Cautions', { ids: ids("['wood-dust', 'noise']") }),
    first,
    part('Cautions', { ids: ids("[\n  'resin-skin',\n]") }),
    second,
  ];
  remarkHandbook()({ type: 'root', children }, { path: 'page.mdx' });
  expect(attributeOf(first, 'cautions')).toBe('wood-dust noise');
  expect(attributeOf(second, 'cautions')).toBe('wood-dust noise resin-skin');
});
