import { readAnyQuantity } from '../../model/quantity/read-any.ts';
import { isReference, type MethodRecord, type Parameter } from '../record/index.ts';
import { orderByNeed } from './circles.ts';
import { idOfKind, isAmong, type NamedKind } from './kinds.ts';
import { orThese } from './or-these.ts';
import type { Path } from './types.ts';

/** Something wrong at a place of a method. */
export interface Fault {
  path: Path;
  message: string;
  /** Of the key rather than of the value. */
  key?: boolean;
  /** The stretch of a text value that it is about, by offsets in it. */
  within?: readonly [from: number, to: number];
  /** The parameter from whose value it comes: where that is at fault itself, this one only follows and is not told. */
  follows?: string;
}

/** What a step follows: the step above it where it says nothing. */
export function afterOf(record: MethodRecord, id: string): readonly string[] {
  const after = record.steps[id]?.after;
  if (after) return after.map((entry) => (typeof entry === 'string' ? entry : entry.step));
  const ids = Object.keys(record.steps);
  const above = ids[ids.indexOf(id) - 1];
  return above === undefined ? [] : [above];
}

function ofSteps(record: MethodRecord): Fault[] {
  const ids = Object.keys(record.steps);
  if (ids.length === 0) return [{ path: ['steps'], message: 'the method has no step. Write at least one.' }];
  const faults: Fault[] = [];
  const names = (kind: string, known: readonly string[], name: string, path: Path) => {
    if (!known.includes(name))
      faults.push({ path, message: `“${name}” is not a ${kind} of this method. ${orThese(name, known, kind)}` });
  };
  const firstAt = new Map<string, string>();
  for (const [id, step] of Object.entries(record.steps)) {
    const at = (...rest: Path): Path => ['steps', id, ...rest];
    (step.after ?? []).forEach((entry, index) => {
      const name = typeof entry === 'string' ? entry : entry.step;
      const path = typeof entry === 'string' ? at('after', index) : at('after', index, 'step');
      if (name === id) faults.push({ path, message: `the step “${id}” waits for itself. Name the step before it.` });
      else names('step', ids, name, path);
    });
    for (const [index, name] of (step.uses ?? []).entries())
      names('material', Object.keys(record.materials), name, at('uses', index));
    for (const [index, name] of (step.tools ?? []).entries())
      names('tool', Object.keys(record.tools), name, at('tools', index));
    (step.holds ?? []).forEach(({ tool, until }, index) => {
      names('tool', Object.keys(record.tools), tool, at('holds', index, 'tool'));
      names('step', ids, until, at('holds', index, 'until'));
    });
    for (const name of Object.keys(step.calculations ?? {})) {
      const first = firstAt.get(name);
      if (first === undefined) firstAt.set(name, id);
      else
        faults.push({
          path: at('calculations', name),
          key: true,
          message: `the step “${first}” has a calculation “${name}” already, and a reference could mean either. Give this one another name.`,
        });
    }
  }
  if (faults.length > 0) return faults;
  const sorted = orderByNeed(ids, (id) => afterOf(record, id));
  if ('circle' in sorted) {
    const [first = ''] = sorted.circle;
    faults.push({
      path: ['steps', first, ...(record.steps[first]?.after ? ['after'] : [])],
      message: `the steps ${sorted.circle.join(' → ')} → ${first} wait for each other in a circle. Take one “after” out.`,
    });
  }
  return faults;
}

/** Names of woods, finishes or resins that are none, and a default that its list does not hold. */
function ofNames(
  name: string,
  kind: NamedKind,
  { default: usual, among }: { default: unknown; among?: string[] },
): Fault[] {
  const faults = (among ?? []).flatMap((text, at): Fault[] => {
    const read = idOfKind(kind, text);
    return read.ok ? [] : [{ path: ['parameters', name, 'among', at], message: `${read.problem}. ${read.wayOut}` }];
  });
  const read = typeof usual === 'string' ? idOfKind(kind, usual) : undefined;
  if (faults.length > 0 || !among || !read?.ok || isAmong(kind, read.value, among)) return faults;
  return [
    {
      path: ['parameters', name, 'default'],
      message: `“${usual}” is not among ${among.join(', ')}, for which the method is written. Add it there, or take another.`,
    },
  ];
}

/** A default outside its own range or list. */
function ofParameter(name: string, parameter: Parameter): Fault[] {
  const path: Path = ['parameters', name, 'default'];
  if (parameter.kind === 'count') {
    const { least, most, default: value } = parameter;
    if (value < least || value > most)
      return [
        {
          path,
          message: `${value} is not within ${least} to ${most}, which the parameter allows. Change one of them.`,
        },
      ];
  }
  if (parameter.kind === 'choice') {
    const known = parameter.options.map(({ value }) => value);
    if (!known.includes(parameter.default))
      return [
        {
          path,
          message: `“${parameter.default}” is not one of the options. ${orThese(parameter.default, known, 'option')}`,
        },
      ];
  }
  if (parameter.kind === 'wood' || parameter.kind === 'finish' || parameter.kind === 'resin')
    return ofNames(name, parameter.kind, parameter);
  return [];
}

/** Waits whose window closes before they are over, where both are written out. */
function ofWaits(record: MethodRecord): Fault[] {
  return Object.entries(record.steps).flatMap(([id, { after = [] }]) =>
    after.flatMap((link, at): Fault[] => {
      if (typeof link === 'string' || link.least === undefined || link.most === undefined) return [];
      if (isReference(link.least) || isReference(link.most)) return [];
      const [least, most] = [readAnyQuantity(link.least), readAnyQuantity(link.most)];
      if (!least.ok || !most.ok || least.value[0].dimension !== 'time' || most.value[0].dimension !== 'time') return [];
      if (least.value[0].value <= most.value[0].value) return [];
      return [
        {
          path: ['steps', id, 'after', at, 'most'],
          message: `the wait is at least ${link.least} and at most ${link.most}, and nothing lies in between. Write the shorter one as least.`,
        },
      ];
    }),
  );
}

/** Steps whose hole is said to go through and to end within the wood. */
function ofHoles(record: MethodRecord): Fault[] {
  return Object.entries(record.steps).flatMap(([id, { backed, blind }]): Fault[] =>
    backed && blind
      ? [
          {
            path: ['steps', id, 'blind'],
            message:
              'the step says backed and blind, and what ends within the wood needs no backing. Keep the one that is so; two holes of two kinds are two steps.',
          },
        ]
      : [],
  );
}

/** What names in a method point nowhere, stand twice or run in a circle; and defaults outside their range. */
export function namedFaults(record: MethodRecord): Fault[] {
  const { least, most, default: pieces } = record.makes.pieces;
  return [
    ...(pieces < least || pieces > most
      ? [
          {
            path: ['makes', 'pieces', 'default'],
            message: `${pieces} pieces are not within ${least} to ${most}, which the method allows. Change one of them.`,
          },
        ]
      : []),
    ...Object.entries(record.parameters).flatMap(([name, parameter]) => ofParameter(name, parameter)),
    ...ofWaits(record),
    ...ofHoles(record),
    ...ofSteps(record),
  ];
}
