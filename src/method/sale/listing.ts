import { defaultUnits, formatQuantity, inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import type { MethodPage } from '../page/types.ts';
import { type SaleFacts, saleFacts, woodWords } from './facts.ts';
import { careLines, dayWords, foodLines, ifItCures, notPromised } from './quote.ts';
import { usualRepair } from './typed.ts';

const inches: ReaderUnits = { system: 'inch', inches: 'sixteenths' };

/** What a page of a shop shows, and what it must not say. */
export interface Listing {
  title: string;
  /** Plain text, paragraphs with an empty line between them; sizes in both systems, since nobody knows who reads it. */
  text: string;
  /** Why it is not to be used as it stands; empty where nothing stands in the way. */
  inTheWay: readonly string[];
  mustNot: readonly { words: string; why: string }[];
}

/** A sentence with its quantities in millimetres, and in inches behind them where those are other words. */
function both(text: string): string {
  return text.replace(/⟦[^⟧]*⟧/g, (mark) => {
    const [metric, inch] = [inReaderUnits(mark, defaultUnits), inReaderUnits(mark, inches)];
    return metric === inch ? metric : `${metric} (${inch})`;
  });
}

function sizeWords({ length, width, thickness }: NonNullable<SaleFacts['size']>): string {
  const sides = [length, width, thickness];
  const metric = sides.map((mm) => formatQuantity(mm, 'mm', defaultUnits).replace(/ mm$/, '')).join(' × ');
  const inch = sides.map((mm) => formatQuantity(mm, 'mm', inches).replace(/ in$/, '')).join(' × ');
  return `${metric} mm (${inch} in)`;
}

function leadTime({ leaving }: SaleFacts, day: string | undefined): string | undefined {
  if (leaving.kind === 'none' || day === undefined) return undefined;
  const cure = leaving.cures ? `, ${ifItCures}` : '';
  if (leaving.kind === 'after') return `Made to order: planned ready by day ${leaving.days} of the work${cure}.`;
  return leaving.moment.date < day ? undefined : `Planned ready by ${dayWords(leaving.moment)}${cure}.`;
}

/**
 * The text of an online listing from the facts of a case: only what may be said of it.
 *
 * @param day on which it is written: no day before it is named, and none at all where it is left out
 * @param made the day on which the piece was made, where it is
 */
export function listingOf(page: MethodPage, day?: string, made?: string): Listing {
  const facts = saleFacts(page);
  const { what, woods, size, inlay, finishes, food, movement, stops } = facts;
  const care = careLines(facts);
  const woodList = woods.map(woodWords).join('; ');
  const when = stops.length > 0 ? undefined : leadTime(facts, day);
  const paragraphs = [
    what,
    [
      ...(woodList ? [`Wood: ${woodList}.`] : []),
      ...(size ? [`Size: ${sizeWords(size)}. Each differs a little.`] : []),
      ...(inlay === undefined ? [] : [`Resin: ${both(inlay)}.`]),
      ...(finishes.length > 0 ? [`Finish: ${finishes.map((each) => each.toLowerCase()).join(', ')}.`] : []),
    ].join('\n'),
    [...foodLines(facts), ...(food.ok && food.avoid ? [food.avoid] : [])].join('\n'),
    ...(movement === undefined ? [] : [both(movement)]),
    ...(care.length > 0 ? [['Care', ...care, 'A care card goes with it.'].join('\n')] : []),
    [notPromised, usualRepair].join('\n'),
    ...(made ? [`Made on: ${made}.`] : []),
    ...(when === undefined || made ? [] : [when]),
  ];
  return {
    title: what,
    text: both(`${paragraphs.filter((paragraph) => paragraph !== '').join('\n\n')}\n`),
    inTheWay: [
      ...stops.map((stop) => `A rule stops this method: ${stop}`),
      ...(food.ok ? [] : [`Food: ${food.why}`]),
      ...(woods.length > 0 ? [] : ['The method names no wood.']),
      ...(size ? [] : ['The method gives no size.']),
    ],
    mustNot: facts.barred,
  };
}
