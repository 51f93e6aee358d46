import { type Document, isScalar, type Node, type Scalar, visit, type YAMLMap } from 'yaml';
import { type TextFault, unwelcomeCharacter } from './yaml-guard.ts';
import type { Position } from './yaml-places.ts';

/** Names that mean something to the language that programs here are written in, and nothing to a maker. */
const reserved = ['__proto__', 'constructor', 'prototype'];

function fault(node: Node, message: string): TextFault {
  const [from, to] = node.range ?? [0, 0];
  return { from, to, message };
}

/** What is wrong with the names of one group: doubled, or not to be used. */
function faultsOfNames(map: YAMLMap, placeOf: (offset: number) => Position): TextFault[] {
  const first = new Map<string, Scalar>();
  return map.items.flatMap(({ key }) => {
    if (!isScalar(key)) return [];
    const name = String(key.value);
    if (reserved.includes(name)) return [fault(key, `“${name}” cannot be the name of a field. Write another name.`)];
    if (name === '<<')
      return [fault(key, '“<<” would draw in what stands elsewhere. Write the fields out here, each “name: value”.')];
    const other = first.get(name);
    if (!other) {
      first.set(name, key);
      return [];
    }
    const { line, column } = placeOf(other.range?.[0] ?? 0);
    return [fault(key, `“${name}” stands twice: here, and first at line ${line}, column ${column}. Keep one of them.`)];
  });
}

/**
 * What a parser lets pass and a record may not hold: a name twice in one group, names that no field may bear, and characters that an
 * escape such as "\0" hides.
 */
export function strictFaults(document: Document, placeOf: (offset: number) => Position): TextFault[] {
  const faults: TextFault[] = [];
  visit(document, {
    Map: (_key, map) => {
      faults.push(...faultsOfNames(map, placeOf));
    },
    Scalar: (_key, node) => {
      const hidden = typeof node.value === 'string' ? unwelcomeCharacter(node.value) : undefined;
      if (hidden) faults.push(fault(node, `in this text ${hidden.message}`));
    },
  });
  return faults;
}
