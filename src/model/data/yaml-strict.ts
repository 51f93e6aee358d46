import { type Document, isMap, isPair, isScalar, isSeq, type Node, type Scalar, type YAMLMap } from 'yaml';
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

/** What a comma inside braces has cut in two: “28,5 cm”, or a text in curly quotes, which hold nothing together. */
function cutInTwo(map: YAMLMap, text: string): TextFault[] {
  if (!map.flow) return [];
  return map.items.flatMap(({ key, value }, at) => {
    const before = map.items[at - 1]?.value;
    if (!isScalar(key) || value !== null || !isScalar(before) || before.type !== 'PLAIN') return [];
    const [from = 0] = before.range ?? [];
    const [, to = 0] = key.range ?? [];
    const whole = text.slice(from, to);
    const place = { from, to };
    if (/^[“”„‘’«»]/.test(whole) && /[“”‘’«»]$/.test(whole)) {
      const inner = whole.slice(1, -1);
      return [
        {
          ...place,
          message: `curly quotes hold no text together here, so ${whole} was cut at its comma. Use straight quotes: "${inner}".`,
        },
      ];
    }
    if (!/\d,\d/.test(whole)) return [];
    const plain = whole.replace(/(\d),(\d+)/, (_, ahead: string, behind: string) =>
      behind.length === 3 ? `${ahead}${behind}` : `${ahead}.${behind}`,
    );
    return [
      {
        ...place,
        message: `inside braces a comma parts one entry from the next, so “${whole}” was cut in two. Write ${plain}, or put it in quotes: "${whole}".`,
      },
    ];
  });
}

/**
 * What a parser lets pass and a record may not hold: a name twice in one group, names that no field may bear, and characters that an
 * escape such as "\0" hides.
 */
export function strictFaults(document: Document, text: string, placeOf: (offset: number) => Position): TextFault[] {
  const faults: TextFault[] = [];
  const look = (node: unknown): void => {
    if (isScalar(node)) {
      // What stands in the file as it is was looked over before it was parsed; an escape is one of double quotes.
      const escaped = node.type === 'QUOTE_DOUBLE' && typeof node.value === 'string';
      const hidden = escaped ? unwelcomeCharacter(node.value as string) : undefined;
      if (hidden) faults.push(fault(node, `in this text ${hidden.message}`));
    } else if (isMap(node)) {
      faults.push(...faultsOfNames(node, placeOf), ...cutInTwo(node, text));
      for (const { key, value } of node.items) {
        look(key);
        look(value);
      }
    } else if (isSeq(node)) {
      for (const item of node.items) look(item);
    } else if (isPair(node)) {
      look(node.key);
      look(node.value);
    }
  };
  look(document.contents);
  return faults;
}
