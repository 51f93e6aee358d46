import { Parser } from 'htmlparser2';
import { bothMark } from '../../calculators/view/both-units-marks.ts';
import type { Step } from './finish.ts';
import { rewritePages } from './markup.ts';

/**
 * A calculator is drawn into its page in both systems of units. Most of it is the same in both, and twice as far apart as a host's compression looks
 * back. So the second drawing is cut down to the elements that differ, each marked in the first, whose place it takes.
 */
export const bothUnits: Step = {
  does: 'What units change',
  run: (folder) => `${rewritePages(folder, withDifferencesOnly)} pages hold it in both systems, and the rest once`,
};

/** An element as it stands in a page: where it, and what is in it, begins and ends. */
interface Element {
  name: string;
  from: number;
  inside: number;
  to: number;
  /** Whether its end is written. */
  ended: boolean;
  children: Element[];
}

/** Whose insides mean something only within them: a template would read them otherwise. */
const whole: ReadonlySet<string> = new Set(['svg', 'math', 'table', 'select', 'textarea', 'noscript', 'template']);

/** Elements that hold nothing and have no end. */
const empty: ReadonlySet<string> = new Set(['br', 'hr', 'img', 'input', 'wbr']);

/** The first elements of a text, one after the other. */
function elementsOf(html: string, count: number): Element[] {
  const roots: Element[] = [];
  const open: Element[] = [];
  const parser = new Parser(
    {
      onopentag(name) {
        if (roots.length > count || (roots.length === count && open.length === 0)) return;
        const inside = parser.endIndex + 1;
        const element = { name, from: parser.startIndex, inside, to: inside, ended: false, children: [] };
        (open.at(-1)?.children ?? roots).push(element);
        open.push(element);
      },
      onclosetag(name, implied) {
        const element = open.at(-1);
        if (element?.name !== name) return;
        open.pop();
        element.ended = !implied;
        // What has no end of its own ends where the next begins; what is empty ends at once.
        if (!implied) element.to = parser.endIndex + 1;
        else if (parser.startIndex > element.from) element.to = parser.startIndex;
      },
    },
    { lowerCaseTags: true },
  );
  parser.end(html);
  return roots;
}

/** What stands of an element beside its children: its own tags and the texts between. */
function besides(html: string, { from, to, children }: Element): string[] {
  const ends = [from, ...children.map((child) => child.to)];
  const begins = [...children.map((child) => child.from), to];
  return ends.map((end, at) => html.slice(end, begins[at]));
}

const textOf = (html: string, { from, to }: Element) => html.slice(from, to);

/** Ids that the framework makes up, by an element's place in the page. */
const madeUp = /«R\w+»|_R_\w+_/g;

/** The second text with the ids of the first, where the same things bear them; undefined where they do not. */
function withIdsOf(first: string, second: string): string | undefined {
  const idsIn = (text: string) => [...new Set(text.match(madeUp))];
  const [its, others] = [idsIn(first), idsIn(second)];
  if (its.length !== others.length) return undefined;
  const own = new Map(others.map((id, at) => [id, its[at] as string]));
  return second.replace(madeUp, (id) => own.get(id) as string);
}

/** Pairs of elements that differ, as deep down as they can be told apart. */
function differing(first: string, one: Element, second: string, other: Element): [Element, Element][] {
  if (textOf(first, one) === textOf(second, other)) return [];
  const alike =
    !whole.has(one.name) &&
    one.children.length === other.children.length &&
    besides(first, one).every((text, at) => text === besides(second, other)[at]);
  if (!alike) return [[one, other]];
  return one.children.flatMap((child, at) => differing(first, child, second, other.children[at] as Element));
}

/** A part in both systems as the page was written: the one, and in a template the other. */
const begins = new RegExp(`<div data-in="?metric"? data-coming(?:="")? ${bothMark}(?:="")?>`, 'g');

/** The page with its second drawings cut down to what differs from the first. */
export function withDifferencesOnly(html: string): string {
  let page = html;
  for (const { index } of [...html.matchAll(begins)].toReversed()) {
    const part = cutDown(page.slice(index));
    if (part !== undefined) page = page.slice(0, index) + part;
  }
  return page;
}

/** A text that begins with such a part, cut down; undefined where the two are not alike. */
function cutDown(text: string): string | undefined {
  const [one, template] = elementsOf(text, 2);
  if (!one || template?.name !== 'template' || template.children.length !== 1) return undefined;
  const first = text.slice(0, one.to);
  const [drawn] = template.children as [Element];
  const second = withIdsOf(first, textOf(text, drawn));
  if (second === undefined) return undefined;
  const [other] = elementsOf(second, 1) as [Element];
  if (one.children.length !== other.children.length) return undefined;
  // The two roots differ by what they say of themselves.
  const pairs = one.children.flatMap((child, at) => differing(first, child, second, other.children[at] as Element));
  let marked = first.replace(new RegExp(` ${bothMark}(?:="")?`), '');
  const taken = first.length - marked.length;
  for (const [{ from, name }] of pairs.toReversed()) {
    const at = from - taken + 1 + name.length;
    marked = `${marked.slice(0, at)} ${bothMark}${marked.slice(at)}`;
  }
  const others = pairs.map(([, each]) => {
    const its = textOf(second, each);
    return each.ended || empty.has(each.name) || its.endsWith('/>') ? its : `${its}</${each.name}>`;
  });
  return `${marked}<template>${others.join('')}</template>${text.slice(template.to)}`;
}
