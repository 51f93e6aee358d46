import { readFileSync } from 'node:fs';
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { hazardWords } from '../../src/method/acts/act.ts';
import { type Act, type ActId, actOf, acts } from '../../src/method/acts/index.ts';
import { allTimeRules } from '../../src/method/plan/time-rules.ts';
import { exceptionNotNeeded, exceptionRefused } from '../../src/method/rules/besides.ts';
import { rules } from '../../src/method/rules/index.ts';
import { withArticle } from '../../src/method/rules/kit.ts';
import type { RuleWords } from '../../src/method/rules/rule.ts';
import { cautionById } from '../../src/model/evidence/cautions.ts';
import { sources } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import {
  gatherActs,
  gatherMethodFormat,
  gatherRules,
  gatherShopFormat,
  summariesOfActs,
  summariesOfRules,
} from '../../src/site/plugin/methods.ts';
import Acts from '../../src/site/reference/Acts.tsx';
import ActsOfGroup from '../../src/site/reference/ActsOfGroup.tsx';
import Format from '../../src/site/reference/Format.tsx';
import type { JsonSchema } from '../../src/site/reference/format.ts';
import type { ActGroupEntry } from '../../src/site/reference/method-data.ts';
import Rules from '../../src/site/reference/Rules.tsx';
import RulesBesides from '../../src/site/reference/RulesBesides.tsx';
import RulesOfGroup from '../../src/site/reference/RulesOfGroup.tsx';
import { root } from '../../src/store/index.ts';

afterEach(cleanup);

/** What the page is given comes through a file: what JSON does not hold is not there. */
const sent = <Value,>(value: Value): Value => JSON.parse(JSON.stringify(value)) as Value;
const sectionOf = (id: string) => document.getElementById(id)?.closest('section');
const textOf = (id: string) => sectionOf(id)?.textContent ?? '';

/** Every id once, and every link within the page to one of them. */
function expectSoundAnchors() {
  const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
  expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  const links = [...document.querySelectorAll('a[href^="#"]')].map((link) => link.getAttribute('href')?.slice(1) ?? '');
  expect(links.length).toBeGreaterThan(0);
  expect(links.filter((link) => !ids.includes(link))).toEqual([]);
}

describe('the pages of the rules', () => {
  const groups = sent(gatherRules());

  test('hold every rule in the order of the list, with all that it says of itself', () => {
    const all: readonly RuleWords[] = [...rules, ...allTimeRules];
    expect(groups.flatMap((group) => group.rules.map(({ id }) => id))).toEqual(all.map(({ id }) => id));
    const levels = { stop: 'Stop', warn: 'Warning', note: 'Note' };
    for (const group of groups) {
      render(<RulesOfGroup group={group} />);
      expect([...document.querySelectorAll('section[data-level] > h2')].map(({ id }) => id)).toEqual(
        group.rules.map(({ id }) => id),
      );
      for (const { id, level, title, looksAt, why, neverExcepted, citation } of group.rules) {
        const text = textOf(id);
        for (const words of [title, levels[level], looksAt, why, neverExcepted ?? 'may depart from it'])
          expect(text, id).toContain(inReaderUnits(words, defaultUnits));
        const link = sectionOf(id)?.querySelector('a[href^="/reference/sources#"]')?.getAttribute('href');
        expect(link, id).toBe(citation && `/reference/sources#${citation.source}`);
        if (!citation) expect(text, id).toContain('common practice');
        expect(sectionOf(id)?.querySelector('[data-level] svg'), id).toBeTruthy();
      }
      expectSoundAnchors();
      cleanup();
    }
  });

  test('are listed by name on one page, each rule with the page on which it stands', () => {
    render(<Rules parts={sent(summariesOfRules(groups))} />);
    for (const { id, rules: own } of groups)
      for (const rule of own) {
        const line = document.getElementById(rule.id);
        expect(line?.textContent, rule.id).toBe(rule.title);
        expect(line?.querySelector('a')?.getAttribute('href')).toBe(`/reference/rules/${id}#${rule.id}`);
      }
    expect(screen.getByText(new RegExp(`There are ${rules.length + allTimeRules.length} in all`))).toBeTruthy();
    expectSoundAnchors();
  });

  test('say what a check finds besides the rules', () => {
    render(<RulesBesides />);
    const ids = [exceptionNotNeeded, exceptionRefused, 'readable'];
    for (const id of ids) expect(textOf(id)).toContain(id);
    cleanup();
    render(<Rules parts={sent(summariesOfRules(groups))} />);
    for (const id of ids)
      expect(document.getElementById(id)?.querySelector('a')?.getAttribute('href')).toBe(
        `/reference/rules/besides#${id}`,
      );
  });

  test('cite only what stands in the list of sources', () => {
    const known = sources.map(({ id }) => id);
    expect(rules.flatMap(({ citation }) => citation?.source ?? []).filter((id) => !known.includes(id))).toEqual([]);
  });
});

describe('the pages of the acts', () => {
  const groups = sent(gatherActs());

  test('hold every act in the order of the work, with what comes with it and what protects', () => {
    expect(groups.flatMap((group) => group.acts.map(({ id }) => id))).toEqual(acts.map(({ id }) => id));
    for (const group of groups) {
      render(<ActsOfGroup group={group} />);
      expect([...document.querySelectorAll('h2')].map(({ id }) => id)).toEqual(group.acts.map(({ id }) => id));
      for (const { id } of group.acts) {
        const { label, about, protection, hazards } = actOf(id as ActId);
        const givenOff = hazards.map((hazard) => hazardWords[hazard]);
        for (const words of [label, about, id, ...givenOff, ...protection.map(withArticle)])
          expect(textOf(id), id).toContain(words);
      }
      expectSoundAnchors();
      cleanup();
    }
  });

  test('write every caution out once each, and link every act that carries it there', () => {
    for (const group of groups) {
      render(<ActsOfGroup group={group} />);
      const page = document.body.textContent ?? '';
      for (const { id: act } of group.acts)
        for (const id of cautionsOf(actOf(act as ActId))) {
          const caution = cautionById(id);
          const text = inReaderUnits(caution?.text ?? 'no such caution', defaultUnits);
          expect(page.split(text), id).toHaveLength(2);
          expect(document.getElementById(`caution-${id}`)?.textContent).toContain(
            inReaderUnits(caution?.why ?? '', defaultUnits),
          );
          const section = sectionOf(act);
          expect(
            section?.querySelector(`#caution-${id}`) ?? section?.querySelector(`a[href="#caution-${id}"]`),
            `${act}: ${id}`,
          ).toBeTruthy();
        }
      cleanup();
    }
  });

  test('are listed by name on one page, each act and each caution with the page on which it stands', () => {
    const summaries = sent(summariesOfActs(groups));
    render(<Acts parts={summaries} />);
    for (const { id: group, acts: own } of groups)
      for (const { id, label } of own) {
        const line = document.getElementById(id);
        expect(line?.textContent, id).toBe(label);
        expect(line?.querySelector('a')?.getAttribute('href')).toBe(`/reference/acts/${group}#${id}`);
      }
    expectSoundAnchors();
    // A caution has one address in the list: the line of the act that says it first, whose page writes it out there.
    const lineOf = new Map(acts.flatMap((act) => cautionsOf(act).map((id) => [id, act.id] as const)).reverse());
    for (const [id, act] of lineOf) {
      expect(document.getElementById(`caution-${id}`)?.closest('li')?.id, id).toBe(act);
      const group = groups.find((each) => each.acts.some((one) => one.id === act));
      expect(group && writtenOutIn(group), id).toContain(id);
    }
    expect(lineOf.size).toBeGreaterThan(20);
  });
});

/** Ids of the cautions that an act may carry, in the order in which its page says them. */
const cautionsOf = ({ cautions, ...where }: Act): readonly string[] => {
  const { salvage = [], resin = [], drum = [], powder = [], solvent = [], besideRags = [] } = where;
  return [...cautions, ...salvage, ...resin, ...drum, ...powder, ...solvent, ...besideRags];
};

/** Ids of the cautions that the page of a group writes out. */
const writtenOutIn = (group: ActGroupEntry): string[] =>
  group.acts.flatMap(({ always, salvage, resin, drum, powder, solvent, besideRags }) =>
    [always, salvage, resin, drum, powder, solvent, besideRags].flatMap(({ here }) => here.map(({ id }) => id)),
  );

/** A field somewhere in a schema, and the field of the first level that it lies in. */
interface Told {
  top: string;
  path: string;
  name: string;
  schema: JsonSchema;
}

/** Every field of a schema, wherever it lies. */
function fieldsWithin(schema: JsonSchema, top: string, path: string): Told[] {
  const { properties = {}, items, additionalProperties, anyOf = [], oneOf = [], allOf = [] } = schema;
  const own = Object.entries(properties).flatMap(([name, field]) => {
    const at = { top: top || name, path: `${path}/${name}` };
    return [{ ...at, name, schema: field }, ...fieldsWithin(field, at.top, at.path)];
  });
  const parts = [items, additionalProperties, ...anyOf, ...oneOf, ...allOf];
  return [...own, ...parts.flatMap((part) => (typeof part === 'object' ? fieldsWithin(part, top, path) : []))];
}

/** Text and names of a field of the first level, with those of the places that it refers to for a form described before. */
function toldAt(top: string): [text: string, names: readonly string[]] {
  const section = sectionOf(top);
  const links = [...(section?.querySelectorAll('a[href^="#"]:not(.hash-link)') ?? [])];
  const sections = [section, ...new Set(links.map((link) => sectionOf(link.getAttribute('href')?.slice(1) ?? '')))];
  const names = sections.flatMap((each) => [...(each?.querySelectorAll('code') ?? [])]);
  return [sections.map((each) => each?.textContent).join('\n'), names.map(({ textContent }) => textContent ?? '')];
}

describe.each([
  ['method.schema.json', gatherMethodFormat],
  ['shop.schema.json', gatherShopFormat],
] as const)('the page made from %s', (file, gather) => {
  const schema = JSON.parse(readFileSync(`${root}/schemas/${file}`, 'utf8')) as JsonSchema;
  const all = fieldsWithin(schema, '', '');

  test('finds a description at every field', () => {
    expect(all.length).toBeGreaterThan(60);
    expect(all.filter((field) => !(field.schema.description ?? field.schema.title)).map(({ path }) => path)).toEqual(
      [],
    );
  });

  test('holds every field with its description and its words, in the order of the schema', () => {
    render(<Format format={sent(gather())} />);
    expect([...document.querySelectorAll('main > section > h2 > code')].map(({ textContent }) => textContent)).toEqual(
      Object.keys(schema.properties ?? {}),
    );
    const told = new Map<string, ReturnType<typeof toldAt>>();
    for (const { top, path, name, schema: field } of all) {
      const [text, names] = told.get(top) ?? toldAt(top);
      told.set(top, [text, names]);
      expect(
        names.some((shown) => shown === name || shown.endsWith(`.${name}`)),
        path,
      ).toBe(true);
      for (const words of [field.title, field.description]) if (words) expect(text, path).toContain(words);
      for (const word of field.enum ?? []) if (word !== '') expect(names, `${path}: ${word}`).toContain(String(word));
    }
    expectSoundAnchors();
  });

  test('says of every field of the first level whether it may be left out', () => {
    render(<Format format={sent(gather())} />);
    for (const name of Object.keys(schema.properties ?? {})) {
      const first = sectionOf(name)?.querySelector(':scope > p > strong')?.textContent;
      expect(first, name).toBe(schema.required?.includes(name) ? 'Must be given.' : 'May be left out.');
    }
  });
});
