import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { hazardWords } from '../../method/acts/act.ts';
import { type ActGroup, actGroups } from '../../method/acts/index.ts';
import { allTimeRules } from '../../method/plan/time-rules.ts';
import { starterMethod } from '../../method/record/starter.ts';
import { besides } from '../../method/rules/besides.ts';
import { ruleGroups } from '../../method/rules/index.ts';
import { withArticle } from '../../method/rules/kit.ts';
import { cautionById } from '../../model/evidence/cautions.ts';
import { cautionsInOrder } from '../../model/evidence/index.ts';
import { root } from '../../store/index.ts';
import { anchorOfCaution } from '../reference/act-parts.ts';
import type { PartSummary } from '../reference/data.ts';
import { formatOf, type JsonSchema } from '../reference/format.ts';
import type { ActCautions, ActEntry, ActGroupEntry, FormatEntry, RuleGroupEntry } from '../reference/method-data.ts';
import { besidesGroup } from '../reference/rule-parts.ts';
import { partOf } from './part-summary.ts';

/** Every rule of a method, in words, by what it concerns; those that only a plan asks come last. */
export function gatherRules(): RuleGroupEntry[] {
  return [
    ...ruleGroups.map(({ id, title, rules }) => ({ id, title, rules: rules.map(({ find: _, ...words }) => words) })),
    { id: 'times', title: 'Times of a plan', rules: allTimeRules },
  ];
}

/** The groups of rules by name alone, and behind them what a check says besides. */
export const summariesOfRules = (groups: readonly RuleGroupEntry[]): PartSummary[] =>
  [...groups, { id: besidesGroup, title: 'What a check says besides', rules: besides }].map((group) =>
    partOf(group, group.rules),
  );

/** Every act by the part of the work, its cautions written out where the page of that part first comes to them. */
export const gatherActs = (): ActGroupEntry[] => actGroups.map(actsOfGroup);

function actsOfGroup({ id: group, title, acts }: ActGroup): ActGroupEntry {
  const saidAt = new Map<string, string>();
  const cautionsOf = (ids: readonly string[], act: string): ActCautions => {
    const all = cautionsInOrder(
      ids.map((id) => {
        const caution = cautionById(id);
        if (!caution) throw new Error(`The act “${act}” names the caution “${id}”, which does not exist.`);
        return caution;
      }),
    );
    const before = all.flatMap(({ id, level }) => {
      const at = saidAt.get(id);
      return at === undefined ? [] : [{ id, level, act: at }];
    });
    const here = all.filter(({ id }) => !saidAt.has(id));
    for (const { id } of here) saidAt.set(id, act);
    return { here, before };
  };
  return {
    id: group,
    title,
    acts: acts.map(
      ({
        cautions,
        salvage = [],
        resin = [],
        drum = [],
        powder = [],
        solvent = [],
        besideRags = [],
        protection,
        hazards,
        ...act
      }) => ({
        ...act,
        hazards: hazards.map((hazard) => hazardWords[hazard]),
        protection: protection.map(withArticle),
        always: cautionsOf(cautions, act.label),
        salvage: cautionsOf(salvage, act.label),
        resin: cautionsOf(resin, act.label),
        drum: cautionsOf(drum, act.label),
        powder: cautionsOf(powder, act.label),
        solvent: cautionsOf(solvent, act.label),
        besideRags: cautionsOf(besideRags, act.label),
      }),
    ),
  };
}

/** The acts by name alone, each with the cautions that are written out first where it stands: they had addresses in the list. */
export function summariesOfActs(groups: readonly ActGroupEntry[]): PartSummary[] {
  const said = new Set<string>();
  const firstAt = (act: ActEntry): string[] => {
    const ids = cautionsOfAct(act).flatMap(({ here }) => here.map(({ id }) => id));
    const first = ids.filter((id) => !said.has(id));
    for (const id of first) said.add(id);
    return first.map(anchorOfCaution);
  };
  return groups.map((group) =>
    partOf(
      group,
      group.acts.map((act) => ({ id: act.id, title: act.label, within: firstAt(act) })),
    ),
  );
}

const cautionsOfAct = ({ always, salvage, resin, drum, powder, solvent, besideRags }: ActEntry): ActCautions[] => [
  always,
  salvage,
  resin,
  drum,
  powder,
  solvent,
  besideRags,
];

function formatFrom(file: string, words: Omit<FormatEntry, 'description' | 'file' | 'fields'>): FormatEntry {
  const schema = JSON.parse(readFileSync(join(root, 'schemas', file), 'utf8')) as JsonSchema;
  return { ...words, description: schema.description ?? '', file, fields: formatOf(schema) };
}

/** The format of a method, field by field, out of its schema. */
export const gatherMethodFormat = (): FormatEntry =>
  formatFrom('method.schema.json', {
    title: 'The format of a method',
    lead: 'A method is a text file in YAML, checked line by line as it is written. Names in angle brackets are your own; [] stands for each entry of a list.',
    wordPages: {
      'steps.<name>.act': '/reference/acts#',
      'steps.<name>.calculations.<name>.use': '/calculators/',
    },
    example: { title: 'A whole method, small', text: starterMethod },
  });

/** The format of a shop record, field by field, out of its schema. */
export const gatherShopFormat = (): FormatEntry =>
  formatFrom('shop.schema.json', {
    title: 'The shop record',
    lead: 'A text file in YAML that a shop keeps of itself; methods and prices take from it what they ask. Quantities bear their unit. [] stands for each entry of a list.',
    wordPages: {},
  });
