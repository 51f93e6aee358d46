import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { root } from '../../src/store/index.ts';

const folder = join(root, '.github', 'ISSUE_TEMPLATE');
const validate = new Ajv2020({ allErrors: true, strictRequired: false, strictTypes: false }).compile(
  JSON.parse(readFileSync(new URL('issue-forms.json', import.meta.url), 'utf8')),
);

interface Form {
  body: { type: string; id?: string; attributes: { label?: string } }[];
}

/** Everything wrong with a form; what a schema cannot say is that ids and labels differ. */
function faultsOf(form: Form): string[] {
  validate(form);
  const named = (form.body ?? []).flatMap(({ id, attributes }) => [
    id && `id ${id}`,
    attributes?.label && `label ${attributes.label}`,
  ]);
  const twice = named.filter((name, at) => name && named.indexOf(name) !== at).map((name) => `${name} is there twice`);
  return [...(validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`), ...twice];
}

const forms = readdirSync(folder).filter((name) => name !== 'config.yml');
const read = (name: string): Form => parse(readFileSync(join(folder, name), 'utf8'));

describe('the forms by which somebody writes to us', () => {
  test('are those for a figure, a page and a fault', () => {
    expect(forms.sort()).toEqual(['a-fault.yaml', 'a-figure-looks-wrong.yaml', 'a-page-is-unclear.yaml']);
  });

  test.each(forms)('%s keeps the syntax of the host', (name) => {
    expect(faultsOf(read(name))).toEqual([]);
  });

  test.each<[what: string, spoil: (form: Form) => void]>([
    ['an element of no known kind', (form) => Object.assign(form.body[1] ?? {}, { type: 'slider' })],
    ['a question without a label', (form) => delete form.body[1]?.attributes.label],
    ['an id with a blank', (form) => Object.assign(form.body[1] ?? {}, { id: 'which page' })],
    ['two questions of one id', (form) => Object.assign(form.body[2] ?? {}, { id: form.body[1]?.id })],
    ['nothing but words', (form) => form.body.splice(1)],
    ['a key that the host does not know', (form) => Object.assign(form, { labells: [] })],
  ])('%s is found', (_what, spoil) => {
    const form = read('a-figure-looks-wrong.yaml');
    spoil(form);
    expect(faultsOf(form)).not.toEqual([]);
  });

  test('say what to do where somebody could be hurt', () => {
    expect(readFileSync(join(folder, 'a-figure-looks-wrong.yaml'), 'utf8')).toContain('**hurt**');
    expect(readFileSync(join(root, 'SECURITY.md'), 'utf8')).toContain('Danger');
  });
});
