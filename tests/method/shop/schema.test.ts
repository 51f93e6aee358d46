import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { machineKinds } from '../../../src/method/shop/index.ts';
import { root } from '../../../src/store/index.ts';
import { sampleText, spoilt } from './sample.ts';

const schema = JSON.parse(readFileSync(join(root, 'schemas', 'shop.schema.json'), 'utf8'));
const validate = new Ajv2020({ strict: true, allErrors: true }).compile(schema);

describe('the published schema of a shop record', () => {
  test('takes the record of the demonstration', () => {
    validate(parse(sampleText));
    expect(validate.errors).toBeNull();
  });

  test.each<[string, string, string]>([
    ['a field misspelt', 'currency: USD', 'curency: USD'],
    ['a kind of machine that there is none of', 'kind: planer', 'kind: plainer'],
    ['a limit of another kind', 'throat: 17 in', 'ripWidth: 17 in'],
    ['a number for a length', 'width: 13 in', 'width: 13'],
    ['another version', 'shop: 1', 'shop: 2'],
    ['a size that is a list', 'size: 1.5 L', 'size: [1.5 L]'],
    ['a fraction of a clamp', 'count: 24', 'count: 24.5'],
    ['an entry that no sheet has', 'potLife: 6 h', 'life: 6 h'],
    ['a bearing in the middle', 'bearing: tip', 'bearing: middle'],
    ['a fee for each customer', 'per: batch', 'per: customer'],
  ])('refuses %s', (_, from, to) => {
    expect(validate(parse(spoilt(from, to)))).toBe(false);
  });

  test('knows every kind of machine', () => {
    const kinds = schema.properties.machines.items.oneOf.map(
      (each: { properties: { kind: { const: string } } }) => each.properties.kind.const,
    );
    expect(kinds).toEqual(machineKinds);
  });
});
