import { isCalculatorId, loadCalculator } from '../../calculators/registry.ts';
import { cautionById } from '../../model/evidence/cautions.ts';
import { cautionWords } from '../../model/evidence/index.ts';
import { defaultUnits, inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import { hazardWords } from '../acts/act.ts';
import { type Act, acts } from '../acts/index.ts';
import { rules } from '../rules/index.ts';
import { valueWords } from '../show.ts';
import { calculationOfPath, inputAt } from './inputs.ts';
import { isGroup, kindOfRecord, looseData } from './outline.ts';
import { type Standing, standingAt } from './place.ts';
import { pointersIn } from './pointers.ts';
import { shapeOf, shapesAt, valueAt, wordsOf } from './shape.ts';
import type { EditContext, Hover } from './types.ts';

type Data = Readonly<Record<string, unknown>>;
type Words = Pick<Hover, 'title' | 'words'>;

/** An act with what it brings along. */
function ofAct(
  { label, about, hazards, cautions, solvent = [], besideRags = [], protection }: Act,
  units: ReaderUnits,
): Words {
  const listed = (words: readonly string[]) => words.join(', ');
  return {
    title: label,
    words: [
      about,
      hazards.length > 0 ? `It brings: ${listed(hazards.map((hazard) => hazardWords[hazard]))}.` : undefined,
      protection.length > 0
        ? `Ready or worn: ${listed(protection.map((kind) => kind.replaceAll('-', ' ')))}.`
        : undefined,
      ...[...cautions, ...solvent, ...besideRags].map((id) => {
        const caution = cautionById(id);
        return caution && inReaderUnits(`${cautionWords[caution.level]}: ${caution.text}`, units);
      }),
    ].filter((words) => words !== undefined),
  };
}

/** What a reference stands for, with its value where the case was worked out. */
async function ofPointer(pointer: string, data: Data, context: EditContext): Promise<Words | undefined> {
  const there = context.worked?.at(pointer);
  const option = (await pointersIn(data, context)).find((each) => each.pointer === pointer);
  if (!there && !option) return undefined;
  const now = there && valueWords(there, context.units ?? defaultUnits);
  return {
    title: option?.label ?? there?.label ?? pointer,
    words: [
      now ?? (context.worked ? 'It has no value in this case.' : undefined),
      option?.detail && option.step !== undefined && !now
        ? `It is a ${option.detail === 'time' ? 'time' : `figure in ${option.detail}`}.`
        : undefined,
      there?.kind === 'quantity' ? there.band : undefined,
    ].filter((words) => words !== undefined),
  };
}

/** The part of the record that a name stands for: a step, a tool, a material. */
function ofOwnName(name: string, branch: 'steps' | 'tools' | 'materials', data: Data): Words | undefined {
  const entry = valueAt(data, [branch, name]);
  const words = isGroup(entry) ? (entry.title ?? entry.what) : undefined;
  return typeof words === 'string' ? { title: words, words: [] } : undefined;
}

const branchNamed: Readonly<Record<string, 'steps' | 'tools' | 'materials'>> = {
  after: 'steps',
  step: 'steps',
  until: 'steps',
  uses: 'materials',
  tools: 'tools',
  tool: 'tools',
};

async function ofValue({ path, value }: Standing, data: Data, context: EditContext): Promise<Words | undefined> {
  const units = context.units ?? defaultUnits;
  const named = path.findLast((step) => typeof step === 'string');
  const field = String(named ?? '');
  if (field === 'from') return ofPointer(value, data, context);
  if (field === 'act' && path.length === 3) {
    const act = acts.find(({ id }) => id === value);
    return act && ofAct(act, units);
  }
  if (field === 'use' && calculationOfPath(path) && isCalculatorId(value)) {
    const { title, question, summary } = await loadCalculator(value);
    return { title, words: [question, summary] };
  }
  if (field === 'rule' && path[0] === 'exceptions') {
    const rule = rules.find(({ id }) => id === value);
    return (
      rule && {
        title: inReaderUnits(rule.title, units),
        words: [rule.looksAt, rule.why].map((words) => inReaderUnits(words, units)),
      }
    );
  }
  const branch = path[0] === 'steps' || path[0] === 'exceptions' ? branchNamed[field] : undefined;
  if (branch) return ofOwnName(value, branch, data);
  return ofField(path, data, context, value);
}

/** What a field means; of an input of a calculation, what its calculator says. */
async function ofField(
  path: Standing['path'],
  data: Data,
  context: EditContext,
  value?: string,
): Promise<Words | undefined> {
  const name = String(path.at(-1) ?? '');
  const input = path.length === 6 ? await inputAt(path, data) : undefined;
  if (input) {
    const chosen = input.meta.options?.find((option) => option.value === value);
    return { title: chosen?.label ?? input.meta.label, words: [input.info, `In ${input.detail}.`] };
  }
  const root = shapeOf(context.kind ?? 'method');
  const shapes = shapesAt(root, path, data);
  const words = wordsOf(shapes);
  const entry = valueAt(data, path);
  const own = isGroup(entry) ? (entry.title ?? entry.label ?? entry.what ?? entry.name) : undefined;
  const title = typeof own === 'string' ? own : (shapes[0]?.title ?? name);
  return words === undefined && title === name ? undefined : { title, words: words === undefined ? [] : [words] };
}

/**
 * What is said of what stands at an offset of a record: what a field means, what an act carries with it, what a reference stands for.
 *
 * @returns undefined where nothing is known of it
 */
export async function hoverAt(text: string, offset: number, given: EditContext = {}): Promise<Hover | undefined> {
  const context = { ...given, kind: given.kind ?? kindOfRecord(text) };
  const standing = standingAt(text, offset);
  if (!standing) return undefined;
  const data = looseData(text);
  const start = Math.max(text.lastIndexOf('\n', offset - 1) + 1, standing.from);
  for (const { index, 0: braces } of text.slice(start, standing.to).matchAll(/\{\/[^{}\s]*\}/g)) {
    const from = start + index;
    if (from > offset) break;
    if (offset > from + braces.length) continue;
    const words = await ofPointer(braces.slice(1, -1), data, context);
    return words && { from, to: from + braces.length, ...words };
  }
  // Of a text in lines only its references are told of.
  if (standing.part === 'value' && text.slice(standing.from, standing.to).trimEnd().includes('\n')) return undefined;
  const words =
    standing.part === 'name' ? await ofField(standing.path, data, context) : await ofValue(standing, data, context);
  return words && { from: standing.from, to: standing.to, ...words };
}
