import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { readYaml } from '../../../src/model/data/yaml.ts';
import { unwelcomeCharacter } from '../../../src/model/data/yaml-guard.ts';

/** YAML 1.2.2, section 5.1, rule [1] c-printable, less what the reader leaves out besides: marks of line ends and of the order of writing. */
function isWelcome(code: number): boolean {
  const printable =
    code === 0x09 ||
    code === 0x0a ||
    (code >= 0x20 && code <= 0x7e) ||
    (code >= 0xa0 && code <= 0xd7ff) ||
    (code >= 0xe000 && code <= 0xfffd) ||
    code >= 0x10000;
  const left =
    [0x2028, 0x2029, 0xfeff].includes(code) || /[\u202a-\u202e\u2066-\u2069]/.test(String.fromCodePoint(code));
  return printable && !left;
}

describe('the quick look at characters', () => {
  test('lets pass what YAML prints and nothing else, of every character there is', () => {
    const wrong: number[] = [];
    for (let code = 0; code <= 0x10ffff; code += code < 0x11000 ? 1 : 0x101) {
      const found = unwelcomeCharacter(`a${String.fromCodePoint(code)}b`);
      if ((found === undefined) !== isWelcome(code)) wrong.push(code);
    }
    expect(wrong).toEqual([]);
  });
});

describe('a text that is taken apart once', () => {
  const folder = new URL('../../../methods/', import.meta.url);
  test.each(readdirSync(folder).filter((name) => name.endsWith('.yaml')))(
    '%s holds what another reading of it gives',
    (name) => {
      const text = readFileSync(new URL(name, folder), 'utf8');
      const { data, problems } = readYaml(text, name, 131_072);
      expect(problems).toEqual([]);
      expect(data).toEqual(parse(text, { schema: 'core' }));
    },
  );

  test('a second document is a problem of the text', () => {
    const { data, problems } = readYaml('name: ash\n---\nname: maple\n', 'two.yaml');
    expect(data).toBeUndefined();
    expect(problems).toMatchObject([{ line: 2, column: 1 }]);
  });
});
