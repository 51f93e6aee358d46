import { amount, atMost } from '../../model/quantity/index.ts';
import type { CaseQuantity, CaseValue, WorkedMethod } from '../case/types.ts';
import { stepsOfPointer } from '../pointer.ts';
import { remembered } from '../remembered.ts';
import { type Block, type Inline, readText } from '../text.ts';
import { cutAtMarks, markOf, maskText } from '../text-marks.ts';
import type { ShownBlock, ShownPart, ShownValue } from './types.ts';

/** What stands where a figure has no value in this case. */
const none = 'none here';

/** Digits of a quantity of which nothing says how finely it is known. */
const usualDigits = 3;

/** A quantity as a marked text; an end of its band where one is told. */
export const quantityMark = ({ value, unit, digits = usualDigits, kept, limit }: CaseQuantity, at = value): string =>
  limit && unit === 'mm' && at === value ? atMost(at, unit, digits) : amount(at, unit, digits, kept === true);

/** Ends of a band as one marked text; undefined where there is none. */
export function betweenMark(value: CaseQuantity): string | undefined {
  const { low, high } = value;
  if (low === undefined || high === undefined || low === high) return undefined;
  return `${quantityMark(value, low)} to ${quantityMark(value, high)}`;
}

/** A value of a case as one text with its quantities marked. */
export function valueText(value: CaseValue): string {
  if (value.kind === 'quantity') return quantityMark(value);
  return value.kind === 'text' ? value.text : (value.text ?? value.label);
}

/** What a reference reaches in this case, as it stands in a text. */
export function shownValue(worked: Pick<WorkedMethod, 'at'>, pointer: string): ShownValue {
  const [branch, calculation] = stepsOfPointer(pointer);
  const from = branch === 'calculations' && calculation !== undefined ? { calculation } : {};
  const value = worked.at(pointer);
  if (!value) return { pointer, text: none, label: pointer, ...from, missing: true };
  const text = valueText(value);
  if (value.kind !== 'quantity') return { pointer, text, label: value.label, ...from };
  const between = betweenMark(value);
  return {
    pointer,
    text,
    label: value.label,
    ...(between === undefined ? {} : { between }),
    ...(value.band === undefined ? {} : { band: value.band }),
    ...(value.basis === undefined ? {} : { basis: value.basis }),
    ...from,
  };
}

function shownPart(worked: Pick<WorkedMethod, 'at'>, part: Inline): ShownPart {
  switch (part.kind) {
    case 'quantity':
      return { kind: 'text', text: part.marked };
    case 'pointer':
      return { kind: 'value', ...shownValue(worked, part.pointer) };
    case 'strong':
    case 'emphasis':
      return { kind: part.kind, parts: shownParts(worked, part.parts) };
    case 'link':
      return { kind: 'link', href: part.href, parts: shownParts(worked, part.parts) };
    default:
      return part;
  }
}

const shownParts = (worked: Pick<WorkedMethod, 'at'>, parts: readonly Inline[]): ShownPart[] =>
  parts.map((part) => shownPart(worked, part));

const shownBlocks = (worked: Pick<WorkedMethod, 'at'>, blocks: readonly Block[]): ShownBlock[] =>
  blocks.map((block) =>
    block.kind === 'paragraph'
      ? { kind: 'paragraph', parts: shownParts(worked, block.parts) }
      : {
          kind: 'list',
          ...(block.start === undefined ? {} : { start: block.start }),
          items: block.items.map((item) => shownBlocks(worked, item)),
        },
  );

/** A text as it was read, and as it is shown where no reference stands in it: then it is the same in every case. */
interface ReadBlocks {
  blocks: readonly Block[];
  always?: readonly ShownBlock[];
}

/** Texts of two methods of the greatest size. */
const blocksOf = remembered((source): ReadBlocks => {
  const { blocks } = readText(source);
  return maskText(source).pointers.length > 0
    ? { blocks }
    : { blocks, always: shownBlocks({ at: () => undefined }, blocks) };
}, 400);

/** A text of a method, every reference in it as the value of this case. */
export function shownText(worked: Pick<WorkedMethod, 'at'>, source: string): readonly ShownBlock[] {
  const { blocks, always } = blocksOf(source);
  return always ?? shownBlocks(worked, blocks);
}

/** A title: a line without Markdown, what stands in its braces as marked texts. */
export function shownTitle(worked: Pick<WorkedMethod, 'at'>, source: string): string {
  const { masked, marks } = maskText(source);
  return cutAtMarks(masked)
    .map((piece) => {
      const mark = markOf(piece, marks);
      if (!mark) return piece;
      return 'pointer' in mark ? shownValue(worked, mark.pointer).text : mark.quantity.marked;
    })
    .join('');
}
