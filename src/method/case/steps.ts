import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { minute } from '../../model/quantity/seconds.ts';
import { actOf } from '../acts/index.ts';
import {
  isReference,
  type Link,
  type MaterialKind,
  type MethodRecord,
  type QuantityOrReference,
  type Step,
  type ToolKind,
} from '../record/index.ts';
import type { Standing } from './look-up.ts';
import { afterOf } from './named.ts';
import { cautionsAt } from './seal-coat.ts';
import { quantityAt } from './things.ts';
import type { Gap, Path, WorkedCalculation, WorkedLink, WorkedStep } from './types.ts';

/** A length of time in whole minutes: a wait rounded up, that nothing follows too early; a window rounded down, that nothing follows too late. */
function minutesAt(
  entry: QuantityOrReference | undefined,
  label: string,
  path: Path,
  standing: Standing,
  gaps: Gap[],
  step: string,
  round: 'up' | 'down' = 'up',
): number | undefined {
  if (entry === undefined) return undefined;
  const value = quantityAt(entry, label, path, standing, gaps, step);
  if (!value) return undefined;
  const seconds = value.unit === 'd' ? value.value * 24 * 60 * minute : value.value;
  if (value.unit === 's' || value.unit === 'd')
    return round === 'up' ? Math.ceil(seconds / minute - 1e-9) : Math.floor(seconds / minute + 1e-9);
  const read = isReference(entry) ? amount(value.value, value.unit) : entry;
  const message = `${label}: ${read} is no time.`;
  gaps.push({
    path,
    pointer: isReference(entry) ? entry.from : '',
    message,
    wayOut: 'Write it as 40 min, 2 h or 3 d.',
    step,
  });
  return undefined;
}

const given = <Name extends string, T>(name: Name, value: T | undefined) =>
  (value === undefined ? {} : { [name]: value }) as Partial<Record<Name, T>>;

function linkOf(id: string, link: Link, path: Path, standing: Standing, gaps: Gap[]): WorkedLink {
  const time = (entry: QuantityOrReference | undefined, label: string, rest: Path, round?: 'down') =>
    minutesAt(entry, label, [...path, ...rest], standing, gaps, id, round);
  const least = time(link.least, 'The wait', ['least']);
  const most = time(link.most, 'The window', ['most'], 'down');
  const adds = time(link.missed?.adds, 'The time that it adds', ['missed', 'adds']);
  return {
    step: link.step,
    counts: link.counts ?? 'end',
    ...given('least', least),
    ...given('most', most),
    ...(link.missed ? { missed: { ...link.missed, ...given('addsMinutes', adds) } } : {}),
    path,
  };
}

function linksOf(id: string, step: Step, standing: Standing, gaps: Gap[]): WorkedLink[] {
  if (!step.after)
    return afterOf(standing.record, id).map((above) => ({ step: above, counts: 'end', path: ['steps', id] }));
  return step.after.map((entry, at): WorkedLink => {
    const path: Path = ['steps', id, 'after', at];
    return typeof entry === 'string' ? { step: entry, counts: 'end', path } : linkOf(id, entry, path, standing, gaps);
  });
}

/**
 * What can hurt somebody in a step: what its calculations found in this very case, then what its act always carries; each text once. Two calculations
 * may say other numbers under the same id.
 */
function cautionsOf(
  act: WorkedStep['act'],
  calculations: readonly WorkedCalculation[],
  where: { salvaged: boolean; resin: boolean; drum: boolean; powder: boolean; solvent: boolean; rags: boolean },
): Caution[] {
  const always = [
    ...(where.salvaged ? (act.salvage ?? []) : []),
    ...(where.resin && !(where.rags && act.besideRags) ? (act.resin ?? []) : []),
    ...(where.solvent ? (act.solvent ?? []) : []),
    ...(where.drum ? (act.drum ?? []) : []),
    ...(where.powder ? (act.powder ?? []) : []),
    ...act.cautions,
    ...(where.rags ? [] : (act.besideRags ?? [])),
  ];
  const all = [
    ...calculations.flatMap(({ result }) => cautionsAt({ act }, result).filter(({ own }) => own)),
    ...always.flatMap((id) => cautionById(id) ?? []),
  ];
  const said = new Map<string, Caution>();
  for (const caution of all) if (!said.has(caution.text)) said.set(caution.text, caution);
  return [...said.values()];
}

/** Machines whose drum, disc or belt draws in what comes near it. */
const drums: readonly ToolKind[] = ['drum-sander', 'belt-sander', 'spindle-sander'];

/** Whether a step works at one of them; where it lists no tool, nobody has said that it does not. */
function hasDrum({ tools = [] }: Step, record: MethodRecord): boolean {
  return tools.length === 0 || tools.some((name) => drums.some((kind) => kind === record.tools[name]?.kind));
}

/** What takes dust, grease or resin off and gives off vapour, as a text names it. */
const solvents = /\b(?:alcohol|isopropan\w*|ethanol|spirits?|acetone|solvents?|thinners?|turpentine|naphtha)\b/iu;

/** Whether a step works with a solvent: it lists or names one, or lists nothing, so that nobody has said that it does not. */
function hasSolvent({ does, tell = '', wrong = '', uses = [], tools = [] }: Step, record: MethodRecord): boolean {
  if (uses.length + tools.length === 0) return true;
  if (uses.some((name) => record.materials[name]?.kind === 'solvent')) return true;
  const words = [does, tell, wrong, ...uses.map((name) => record.materials[name]?.what ?? '')];
  return words.some((text) => solvents.test(text));
}

/** What dust and resin come from, or go into. */
const notOfRags: readonly (ToolKind | MaterialKind)[] = [
  'resin',
  'pigment',
  'cup-and-stick',
  'dam-and-tape',
  'abrasive',
  'dust-extractor',
];

/** Whether cloths of a finish are all that a step clears away: it lists a can for them, and nothing that dust or resin would come from. */
function hasRagsAlone({ uses = [], tools = [] }: Step, record: MethodRecord): boolean {
  const kinds = [...tools.map((name) => record.tools[name]?.kind), ...uses.map((name) => record.materials[name]?.kind)];
  return kinds.includes('rag-can') && !notOfRags.some((kind) => kinds.includes(kind));
}

/** What a step works with, as its method is written. */
interface Works {
  drum: boolean;
  solvent: boolean;
  rags: boolean;
}

/** By the method: what it says of its steps is the same in every case, and its texts are looked through once. */
const worksKnown = new WeakMap<MethodRecord, Readonly<Record<string, Works>>>();

function worksOf(record: MethodRecord): Readonly<Record<string, Works>> {
  const known = worksKnown.get(record);
  if (known) return known;
  const found = Object.fromEntries(
    Object.entries(record.steps).map(([id, step]) => [
      id,
      { drum: hasDrum(step, record), solvent: hasSolvent(step, record), rags: hasRagsAlone(step, record) },
    ]),
  );
  worksKnown.set(record, found);
  return found;
}

/** Whether a dry powder is stirred in: the doses know, each of its own colours; a pigment of which no dose speaks may be one. */
function hasPowder({ record, calculations }: Standing): boolean {
  const colours = Object.values(calculations).flatMap((one) =>
    one?.use === 'resin-dose' && Array.isArray(one.inputs?.colours) ? (one.inputs.colours as { kind?: string }[]) : [],
  );
  if (colours.length > 0) return colours.some(({ kind }) => kind === 'powder');
  return Object.values(record.materials).some(({ kind }) => kind === 'pigment');
}

/** The steps of a case with their times, waits, sizes and cautions, in the order of the file. */
export function stepsOf(standing: Standing, gaps: Gap[]): WorkedStep[] {
  const materials = Object.values(standing.record.materials);
  const holds = {
    salvaged: materials.some(({ salvaged }) => salvaged),
    resin: materials.some(({ kind }) => kind === 'resin' || kind === 'pigment'),
    powder: hasPowder(standing),
  };
  const works = worksOf(standing.record);
  return Object.entries(standing.record.steps).map(([id, step]): WorkedStep => {
    const path: Path = ['steps', id];
    const act = actOf(step.act);
    const calculations = Object.keys(step.calculations ?? {}).flatMap((name) => standing.calculations[name] ?? []);
    const time = (name: 'setUp' | 'each', label: string) =>
      minutesAt(step.hands?.[name], label, [...path, 'hands', name], standing, gaps, id) ?? 0;
    const size = (name: 'length' | 'width' | 'thickness') => {
      const entry = step.piece?.[name];
      if (entry === undefined) return {};
      return given(
        name,
        quantityAt(entry, `The ${name} of the piece`, [...path, 'piece', name], standing, gaps, id)?.value,
      );
    };
    return {
      id,
      record: step,
      act,
      hands: { setUp: time('setUp', 'The setting up'), each: time('each', 'The time for each piece') },
      people: step.people ?? 1,
      interrupt: step.interrupt ?? 'between-pieces',
      after: linksOf(id, step, standing, gaps),
      calculations,
      ...(step.piece ? { piece: { ...size('length'), ...size('width'), ...size('thickness') } } : {}),
      cautions: cautionsOf(act, calculations, {
        ...holds,
        ...(works[id] as Works),
      }),
      path,
    };
  });
}
