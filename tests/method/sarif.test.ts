import Ajv from 'ajv';
import { describe, expect, test } from 'vitest';
import { type SarifFinding, type SarifRule, sarifLog } from '../../src/method/sarif.ts';

const rules: SarifRule[] = [
  {
    id: 'recoat-window',
    level: 'stop',
    title: 'A coat goes on while its window is open',
    looksAt: 'Every coat, and what stands before it.',
    why: 'Later it does not bond.',
  },
  { id: 'batch-count', level: 'note', title: 'Cups are counted', looksAt: 'Every mix.' },
];
const finding: SarifFinding = {
  file: 'methods/spring fair.yaml',
  line: 12,
  column: 5,
  endLine: 12,
  endColumn: 9,
  rule: 'batch-count',
  level: 'note',
  message: 'Two cups are needed. Write two.',
};
const logOf = (...findings: SarifFinding[]) => sarifLog(findings, rules, { name: 'kerf', version: '1.0.0' });

const text = {
  type: 'object',
  required: ['text'],
  properties: { text: { type: 'string' } },
  additionalProperties: false,
};
const level = { enum: ['none', 'note', 'warning', 'error'] };
const positive = { type: 'integer', minimum: 1 };
const closed = (required: string[], properties: object) => ({
  type: 'object',
  required,
  properties,
  additionalProperties: false,
});

/**
 * Of SARIF 2.1.0 (OASIS Standard, 27 March 2020; Errata 01), what its schema asks of the objects that are written here: the properties that each must
 * have and the values that each may have. Sections: 3.13 sarifLog, 3.14 run, 3.19 toolComponent, 3.27 result, 3.29 physicalLocation, 3.30
 * region, 3.35 suppression, 3.49 reportingDescriptor.
 */
const schema = closed(['version', 'runs'], {
  $schema: { type: 'string' },
  version: { enum: ['2.1.0'] },
  runs: {
    type: 'array',
    items: closed(['tool'], {
      columnKind: { enum: ['utf16CodeUnits', 'unicodeCodePoints'] },
      tool: closed(['driver'], {
        driver: closed(['name'], {
          name: { type: 'string' },
          version: { type: 'string' },
          rules: {
            type: 'array',
            uniqueItems: true,
            items: closed(['id'], {
              id: { type: 'string' },
              shortDescription: text,
              fullDescription: text,
              help: text,
              defaultConfiguration: closed([], { level }),
            }),
          },
        }),
      }),
      results: {
        type: 'array',
        items: closed(['message'], {
          ruleId: { type: 'string' },
          ruleIndex: { type: 'integer', minimum: -1 },
          level,
          message: text,
          locations: {
            type: 'array',
            items: closed([], {
              physicalLocation: closed([], {
                artifactLocation: closed([], {
                  uri: { type: 'string', pattern: "^([\\w\\-.~:/@!$&'()*+,;=]|%[0-9A-F]{2})+$" },
                }),
                region: closed([], {
                  startLine: positive,
                  startColumn: positive,
                  endLine: positive,
                  endColumn: positive,
                }),
              }),
            }),
          },
          suppressions: {
            type: 'array',
            items: closed(['kind'], {
              kind: { enum: ['inSource', 'external'] },
              status: { enum: ['accepted', 'underReview', 'rejected'] },
              justification: { type: 'string' },
            }),
          },
        }),
      },
    }),
  },
});
const valid = new Ajv().compile(schema);

test('a log has what the standard asks, and nothing that it does not know', () => {
  const log = logOf(
    finding,
    { ...finding, rule: 'recoat-window', level: 'stop', excepted: 'Sanded between.' },
    { file: 'a.yaml', line: 1, column: 1, rule: 'reading', level: 'warn', message: 'It is empty.' },
  );
  expect(valid(log), JSON.stringify(valid.errors)).toBe(true);
  expect(JSON.parse(JSON.stringify(log))).toEqual(log);
  expect(valid(logOf())).toBe(true);
});

test('a result names its rule, its level and its place', () => {
  expect(logOf(finding).runs[0]?.results).toEqual([
    {
      ruleId: 'batch-count',
      ruleIndex: 1,
      level: 'note',
      message: { text: 'Two cups are needed. Write two.' },
      locations: [
        {
          physicalLocation: {
            artifactLocation: { uri: 'methods/spring%20fair.yaml' },
            region: { startLine: 12, startColumn: 5, endLine: 12, endColumn: 9 },
          },
        },
      ],
    },
  ]);
});

test('levels and rules in the words of the standard', () => {
  const run = logOf({ ...finding, level: 'stop' }, { ...finding, level: 'warn', rule: 'of another program' }).runs[0];
  expect(run?.results?.map((each) => each.level)).toEqual(['error', 'warning']);
  expect(run?.results?.map((each) => each.ruleIndex)).toEqual([1, undefined]);
  expect(run?.columnKind).toBe('utf16CodeUnits');
  expect(run?.tool.driver.rules).toEqual([
    {
      id: 'recoat-window',
      shortDescription: { text: 'A coat goes on while its window is open' },
      fullDescription: { text: 'Every coat, and what stands before it.' },
      help: { text: 'Later it does not bond.' },
      defaultConfiguration: { level: 'error' },
    },
    {
      id: 'batch-count',
      shortDescription: { text: 'Cups are counted' },
      fullDescription: { text: 'Every mix.' },
      defaultConfiguration: { level: 'note' },
    },
  ]);
});

test('an exception stands beside its finding with its reason', () => {
  expect(logOf({ ...finding, excepted: 'A class of twelve.' }).runs[0]?.results?.[0]?.suppressions).toEqual([
    { kind: 'inSource', status: 'accepted', justification: 'A class of twelve.' },
  ]);
});

describe('the address of a file', () => {
  test.each([
    ['a blank and a letter with an accent', 'spring fair/é.yaml', 'spring%20fair/%C3%A9.yaml'],
    ['signs that would end it', 'a#b?c%.yaml', 'a%23b%3Fc%25.yaml'],
    ['a folder of Windows', 'methods\\fair.yaml', 'methods/fair.yaml'],
    ['a colon', 'fair: second.yaml', './fair:%20second.yaml'],
    ['brackets', 'a[1].yaml', 'a%5B1%5D.yaml'],
    ['half a character', 'a\ud83d.yaml', 'a%EF%BF%BD.yaml'],
  ])('%s', (_what, file, uri) => {
    const log = logOf({ ...finding, file });
    expect(log.runs[0]?.results?.[0]?.locations?.[0]?.physicalLocation?.artifactLocation?.uri).toBe(uri);
    expect(valid(log), JSON.stringify(valid.errors)).toBe(true);
  });
});

test.each([
  ['braces are no placeholder', 'Write {/makes/pieces}, not {0}.', 'Write {{/makes/pieces}}, not {{0}}.'],
  ['brackets before round ones are no link', 'Write [words](https://…).', 'Write \\[words\\](https://…).'],
  ['brackets alone stay', 'Write [one, two].', 'Write [one, two].'],
])('%s', (_what, message, written) => {
  expect(logOf({ ...finding, message }).runs[0]?.results?.[0]?.message.text).toBe(written);
});
