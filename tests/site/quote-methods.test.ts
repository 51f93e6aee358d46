import { expect, test } from 'vitest';
import { remarkHandbook } from '../../src/site/mdx/remark-handbook.ts';

type Attribute = { type: string; name: string; value: unknown };

/** A part of a page at line 7. */
const part = (name: string, attributes: Record<string, unknown>) => ({
  type: 'mdxJsxFlowElement',
  name,
  position: { start: { line: 7, column: 3 } },
  attributes: Object.entries(attributes).map(
    ([key, value]): Attribute => ({ type: 'mdxJsxAttribute', name: key, value }),
  ),
});

/** An attribute `{{ depth: '5 mm' }}` as it is parsed. */
const literal = (entries: Record<string, string>) => {
  const properties = Object.entries(entries).map(([name, value]) => ({
    type: 'Property',
    key: { type: 'Identifier', name },
    value: { type: 'Literal', value },
  }));
  const estree = { body: [{ type: 'ExpressionStatement', expression: { type: 'ObjectExpression', properties } }] };
  return { type: 'mdxJsxAttributeValueExpression', value: JSON.stringify(entries), data: { estree } };
};

const compile = async (...children: ReturnType<typeof part>[]) => {
  // What the build imports is put before them.
  await remarkHandbook()({ type: 'root', children: [...children] }, { path: 'page.mdx' });
  return children;
};

const attributeOf = (node: ReturnType<typeof part> | undefined, name: string) =>
  node?.attributes.find((attribute) => attribute.name === name)?.value;
const resolved = (node: ReturnType<typeof part> | undefined) => JSON.parse(String(attributeOf(node, 'resolved')));

/** What a preset holds, in the order in which it is laid: each name with its value, then what is spread over it. */
function presetOf(node: ReturnType<typeof part> | undefined): Record<string, unknown> {
  const value = attributeOf(node, 'preset') as ReturnType<typeof literal>;
  type Property = {
    type: string;
    key?: { name?: string; value?: string };
    value?: { value: unknown };
    argument?: unknown;
  };
  const read = (expression: unknown): [string, unknown][] =>
    (expression as { properties: Property[] }).properties.flatMap((property) =>
      property.type === 'SpreadElement'
        ? read(property.argument)
        : [[String(property.key?.name ?? property.key?.value), property.value?.value] as [string, unknown]],
    );
  return Object.fromEntries(read(value.data.estree.body[0]?.expression));
}

test('a figure of the case is written by its pointer, and of another method where the page names it', async () => {
  const [length, other] = await compile(
    part('Tray', { at: '/parameters/length' }),
    part('Tray', { at: '/parameters/length', of: 'salvaged-ash-amber' }),
  );
  expect(resolved(length)).toEqual({ text: '⟦420 mm 3⟧' });
  expect(resolved(other)).toEqual({ text: '⟦400 mm 3⟧' });
});

test('a figure from memory says so where it is first said, and is plain after that', async () => {
  const at = '/steps/mix/calculations/dose/figures/massA';
  const [first, again, whole] = await compile(
    part('Tray', { at }),
    part('Tray', { at }),
    part('Tray', { at: '/calculations/dose/figures/fillVolume' }),
  );
  expect(resolved(first).basis).toBe('memory');
  expect(resolved(again)).toEqual({ text: resolved(first).text });
  // Worked out of sizes alone.
  expect(resolved(whole).basis).toBeUndefined();
});

test.each([
  ['/parameters/lenght', /^page\.mdx:7:3 .*“lenght” is not a parameter\. Did you mean length\?/],
  ['/calculations/dose/figures/masA', /resin-dose gives no figure “masA”\. Did you mean mass\?/],
  ['/calculations/clock/events/sandabel', /Did you mean sandable\?/],
  ['/steps/pour/calculations/dose/figures/massA', /the step “pour” has no calculation “dose”/],
  ['/steps/por/calculations/heat/verdict', /“por” is not a step of this method\. Did you mean pour\?/],
  ['', /a reference begins with/],
])('“%s” stops the build at its line, with the nearest right name', async (at, says) => {
  await expect(compile(part('Tray', { at }))).rejects.toThrow(says);
});

test('a method that is none stops the build', async () => {
  await expect(compile(part('Tray', { at: '/parameters/length', of: 'class-of-twelv' }))).rejects.toThrow(
    /“class-of-twelv” is not a method\. Did you mean class-of-twelve\?/,
  );
});

test('a calculator begins with what the calculation gives, with the preset over it, and with nothing of its own example', async () => {
  const [dose] = await compile(
    part('Calculator', { id: 'resin-dose', like: 'mix/dose', preset: literal({ depth: '5 mm' }) }),
  );
  const preset = presetOf(dose);
  expect(preset).toMatchObject({ resin: 'slow-casting-2-1', shapes: 'channel, 280 mm, 18 mm, 12', depth: '5 mm' });
  expect(preset).toMatchObject({ sealCoat: '', cupMass: '' });
  expect(attributeOf(dose, 'like')).toBeUndefined();
});

test.each([
  [{ id: 'resin-dose', like: 'mix/dos' }, /the step “mix” has no calculation “dos”\. Did you mean dose\?/],
  [
    { id: 'resin-dose', like: 'seal/clock' },
    /asks cure-clock and not resin-dose\. Of resin-dose this method has seal\/seal-dose, mix\/dose\./,
  ],
  [{ id: 'resin-dose', like: 'first-try:mix/dose' }, /“first-try” is not a method\. Did you mean first-tray\?/],
  [{ id: 'resin-dose', preset: literal({ dept: '5 mm' }) }, /resin-dose has no input “dept”\. Did you mean depth\?/],
])('%o stops the build at its line', async (attributes, says) => {
  await expect(compile(part('Calculator', attributes))).rejects.toThrow(says);
});

test('figures of one sentence that are known alike say so once, behind the last', async () => {
  const tray = (at: string) => ({ ...part('Tray', { at }), type: 'mdxJsxTextElement' });
  const words = (value: string) => ({ type: 'text', value });
  const [a, b, other] = ['massA', 'massB', 'mass'].map((name) => tray(`/calculations/dose/figures/${name}`));
  const children = [words('Weigh '), a, words(' and '), b, words('. That is '), other, words('.')];
  await remarkHandbook()({ type: 'root', children: [{ type: 'paragraph', children }] } as never, { path: 'page.mdx' });
  expect([a, b, other].map((node) => resolved(node).basis)).toEqual([undefined, 'memory', 'memory']);
});
