import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { readMethod } from '../../src/method/read.ts';
import { starterMethod } from '../../src/method/record/starter.ts';
import { root } from '../../src/store/index.ts';
import { methodFiles } from '../methods/files.ts';
import { changed, inside, smallMethod } from './case/base.ts';

const schema = JSON.parse(readFileSync(join(root, 'schemas', 'method.schema.json'), 'utf8'));
const validate = new Ajv2020({ strict: true, allErrors: true }).compile(schema);

/** What the published schema says of a text, by the paths that it refuses. */
function refused(text: string): string[] {
  validate(parse(text));
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}

describe('the published schema of a method', () => {
  test.each(methodFiles.map(({ name, text }) => [name, text]))('takes %s', (_, text) => {
    expect(refused(text)).toEqual([]);
  });

  test('takes what a method begins from', () => {
    expect([refused(starterMethod), refused(smallMethod)]).toEqual([[], []]);
  });

  const spoilt: [what: string, change: (data: Record<string, unknown>) => void][] = [
    [
      'a field that there is not',
      (data) => {
        data.note = 'x';
      },
    ],
    [
      'another version',
      (data) => {
        data.method = 2;
      },
    ],
    [
      'no title',
      (data) => {
        delete data.title;
      },
    ],
    [
      'an act that there is not',
      (data) => {
        inside(data, 'steps', 'give').act = 'routing';
      },
    ],
    [
      'a calculator that there is not',
      (data) => {
        inside(data, 'steps', 'read', 'calculations', 'change').use = 'width';
      },
    ],
    [
      'a parameter of no kind',
      (data) => {
        inside(data, 'parameters', 'width').kind = 'size';
      },
    ],
    [
      'a need of nothing',
      (data) => {
        inside(data, 'materials', 'oil').needs = [];
      },
    ],
    [
      'a tool of no kind',
      (data) => {
        inside(data, 'tools', 'planer').kind = 'thicknesser';
      },
    ],
    [
      'a step whose name begins with a digit',
      (data) => {
        inside(data, 'steps')['2nd'] = inside(data, 'steps', 'give');
      },
    ],
    [
      'a reference to nowhere',
      (data) => {
        inside(data, 'materials', 'oil').needs = [{ from: 'coats', per: 'batch' }];
      },
    ],
    [
      'a reason too short to be one',
      (data) => {
        data.exceptions = [{ rule: 'rim-speed', reason: 'fine' }];
      },
    ],
    [
      'pieces that are no number',
      (data) => {
        inside(data, 'makes', 'pieces').most = 'many';
      },
    ],
  ];
  test.each(spoilt)('refuses %s, as the reader does', (_, change) => {
    const text = changed(change);
    expect(refused(text)).not.toEqual([]);
    expect(readMethod(text, 'm.yaml').problems).not.toEqual([]);
  });
});
