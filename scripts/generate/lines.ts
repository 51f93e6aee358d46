/** Keys whose value names things: each of them gets a line of its own, however short. */
const naming = new Set(['properties', '$defs', 'dependentSchemas']);

function oneLine(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(oneLine).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const parts = Object.entries(value).map(([key, part]) => `${JSON.stringify(key)}: ${oneLine(part)}`);
  return parts.length === 0 ? '{}' : `{ ${parts.join(', ')} }`;
}

/** Whether something inside a value is parted into lines. */
function holdsParted(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  return Object.entries(value).some(([key, part]) => naming.has(key) || holdsParted(part));
}

function lines(value: unknown, indent: string, parted: boolean, inside: string): string {
  if (typeof value !== 'object' || value === null || !(parted || holdsParted(value))) return oneLine(value);
  const inner = `${indent}  `;
  const [open, close] = Array.isArray(value) ? '[]' : '{}';
  const parts = Object.entries(value).map(([key, part]) => {
    const label = Array.isArray(value) ? '' : `${JSON.stringify(key)}: `;
    // What a field bars is a list of names, nothing more.
    const text = inside === 'dependentSchemas' ? oneLine(part) : lines(part, inner, naming.has(key), key);
    return `${inner}${label}${text}`;
  });
  return parts.length === 0 ? oneLine(value) : `${open}\n${parts.join(',\n')}\n${indent}${close}`;
}

/**
 * A JSON Schema as text for review: a property a line, so that a changed field is one changed line.
 *
 * @param schema anything that JSON can hold
 */
export function schemaText(schema: object): string {
  return `${lines(schema, '', true, '')}\n`;
}
