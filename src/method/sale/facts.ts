import type { Block, ResultDocument, ResultTable } from '../../model/evidence/index.ts';
import { woodInSentence } from '../../model/food/index.ts';
import { amount, listed, parseQuantity } from '../../model/quantity/index.ts';
import type { MethodPage, ShownCalculation, ShownMoment } from '../page/types.ts';

/*
 * What may be said of the pieces of a method to somebody who buys one: all of it follows from the case, and what the case does not give is not
 * said. Sentences hold marked quantities, which whoever shows them writes in the reader's units.
 */

/** What of a board and food may be said, or why nothing is. */
export type FoodWords =
  | { ok: true; purpose: string; parts: readonly string[]; allergies: readonly string[]; avoid: string }
  | { ok: false; why: string };

/** When the pieces are to be ready, by the plan: never a day that the plan does not give. `cures`: resin must have cured by then. */
export type Leaving =
  | { kind: 'day'; moment: ShownMoment; cures: boolean }
  /** No first day was asked for: only how long it takes is known. */
  | { kind: 'after'; days: number; cures: boolean }
  | { kind: 'none'; why: string };

export interface SaleFacts {
  what: string;
  pieces: number;
  woods: readonly { name: string; botanical?: string }[];
  /** mm, as finished. */
  size?: { length: number; width: number; thickness: number };
  /** Resin in it, with colour and place: a clause without a capital. */
  inlay?: string;
  finishes: readonly string[];
  food: FoodWords;
  /** Words that do not belong in it, and why. */
  barred: readonly { words: string; why: string }[];
  /** How far the board moves in its place through the year: sentences. */
  movement?: string;
  care: readonly { heading: string; lines: readonly string[] }[];
  leaving: Leaving;
  /** What stops the method as it stands: then nothing of it may be offered. */
  stops: readonly string[];
}

const calculationsOf = ({ steps }: MethodPage, use: ShownCalculation['use']): ShownCalculation[] =>
  steps.flatMap(({ calculations }) => calculations.filter((calculation) => calculation.use === use));

/** What is sold of a method, for the case that a page shows. */
export function saleFacts(page: MethodPage): SaleFacts {
  const { makes, findings, madeOf } = page;
  const size = sizeOf(page);
  const inlay = inlayOf(page);
  const movement = movementOf(page);
  return {
    what: makes.what,
    pieces: makes.pieces,
    woods: madeOf?.woods ?? [],
    ...(size ? { size } : {}),
    ...(inlay === undefined ? {} : { inlay }),
    finishes: madeOf?.finishes ?? [],
    food: foodOf(page),
    barred: barredOf(page),
    ...(movement === undefined ? {} : { movement }),
    care: careOf(page),
    leaving: leavingOf(page),
    stops: findings
      .filter(({ level, excepted }) => level === 'stop' && excepted === undefined)
      .map(({ message }) => message),
  };
}

/** A wood as a buyer may look it up: `sugar maple (Acer saccharum)`. */
export const woodWords = ({ name, botanical }: { name: string; botanical?: string }): string =>
  `${woodInSentence(name)}${botanical ? ` (${botanical})` : ''}`;

/** Millimetres of a text such as `420 mm`; undefined where it is none. */
function lengthOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const read = parseQuantity(text, { dimension: 'length', bareUnit: 'mm' });
  return read.ok && read.value > 0 ? read.value : undefined;
}

/** The size as finished: that of the board which the oil is counted for, else of parameters of those names. */
function sizeOf(page: MethodPage): SaleFacts['size'] {
  const coated = calculationsOf(page, 'finish-coats').at(-1) ?? { inputs: {} };
  const texts = Object.assign({}, ...page.parameters.map((each) => each.texts)) as Record<string, string>;
  const [length, width, thickness] = ['length', 'width', 'thickness'].map((name) =>
    lengthOf(told(coated, name) ?? texts[name]),
  );
  if (length === undefined || width === undefined || thickness === undefined) return undefined;
  return { length, width, thickness };
}

/** An input as it was asked; an empty one says nothing. */
function told({ inputs }: Pick<ShownCalculation, 'inputs'>, name: string): string | undefined {
  const text = inputs[name]?.trim();
  return text === '' ? undefined : text;
}

const resinIn = (calculation: Pick<ShownCalculation, 'inputs'>): boolean =>
  (told(calculation, 'resinPlace') ?? 'none') !== 'none';

/** The resin that stays in the piece, as its dose was asked: colours, the shape of the first place, its depth. */
function inlayOf(page: MethodPage): string | undefined {
  const asked = [...calculationsOf(page, 'food-contact'), ...calculationsOf(page, 'care-card')];
  if (!asked.some(resinIn)) return undefined;
  const doses = calculationsOf(page, 'resin-dose').filter((each) => told(each, 'shapes') !== undefined);
  const dose = doses.find((each) => told(each, 'colours') !== undefined) ?? doses[0];
  const colours = (dose?.inputs['colours'] ?? '')
    .split(/[\n;]/)
    .flatMap((entry) => entry.split(',')[0]?.trim() || [])
    .slice(0, 4);
  const resin = `${colours.length > 0 ? `${listed(colours)} ` : ''}epoxy resin`;
  if (calculationsOf(page, 'flood-coat').length > 0) {
    const thick = lengthOf(calculationsOf(page, 'flood-coat')[0]?.inputs['wantedThickness']);
    const end = coatedEndOf(page);
    const over = end === undefined ? '' : ` over ${amount(end, 'mm')} of one end`;
    return `a coat of ${resin}${over}${thick === undefined ? '' : `, about ${amount(thick, 'mm', 2)} thick`}`;
  }
  const place = placeWords(dose?.inputs);
  return place === undefined ? resin : `${resin} in a ${place}`;
}

/** How much of the length is coated, mm: a parameter of that name. */
const coatedEndOf = ({ parameters }: MethodPage): number | undefined =>
  lengthOf(parameters.find(({ name }) => name === 'coatLength')?.texts['coatLength']);

/** `channel of 280 mm by 18 mm, 6 mm deep`. */
function placeWords(inputs: Readonly<Record<string, string>> | undefined): string | undefined {
  const [first = ''] = (inputs?.['shapes'] ?? '').split(/[\n;]/);
  const [shape = '', one, other] = first.split(',').map((part) => part.trim());
  const [long, wide, deep] = [lengthOf(one), lengthOf(other), lengthOf(inputs?.['depth'])];
  if (!/^[a-z][a-z -]{1,30}$/.test(shape) || long === undefined || wide === undefined) return undefined;
  // A dose knows how the place is reckoned, a buyer what it looks like.
  const named = shape === 'rectangle' ? 'pocket' : shape;
  const depth = deep === undefined ? '' : `, ${amount(deep, 'mm', 2)} deep`;
  return `${named} of ${amount(long, 'mm')} by ${amount(wide, 'mm')}${depth}`;
}

const textsOf = (document: ResultDocument): Extract<Block, { kind: 'text' }>[] =>
  document.blocks.flatMap((block) => (block.kind === 'text' ? [block] : []));

/** The words of the label, as the food-contact calculator wrote them: without it, and without its leave, none. */
function foodOf(page: MethodPage): FoodWords {
  const calculation = calculationsOf(page, 'food-contact').at(-1);
  if (!calculation)
    return { ok: false, why: 'The method asks for no label, so that nothing is said of the piece and food.' };
  const { verdict, documents, errors } = calculation;
  if (!verdict) return { ok: false, why: errors[0] ?? 'What may be said of food could not be worked out.' };
  const label = documents.find(({ id }) => id === 'label');
  if (verdict.level === 'stop' || verdict.level === 'unknown' || !label) return { ok: false, why: verdict.text };
  const texts = textsOf(label).filter(({ small }) => small !== true);
  const first = texts.findIndex(({ strong }) => strong === true);
  const [purpose, ...others] = texts.slice(Math.max(0, first));
  if (first < 0 || !purpose) return { ok: false, why: verdict.text };
  return {
    ok: true,
    purpose: purpose.text,
    // The wood is named once, with its botanical name, and never with the words of a code beside it.
    parts: texts.slice(0, first).flatMap(({ text }) => (/^Made of\b/.test(text) ? [] : [text])),
    allergies: others.flatMap(({ text, strong }) => (strong ? [text] : [])),
    avoid: others.find(({ strong }) => strong !== true)?.text ?? '',
  };
}

const cellsOf = (table: ResultTable | undefined): { words: string; why: string }[] =>
  (table?.rows ?? []).map(([words, why]) => ({ words: String(words ?? ''), why: String(why ?? '') }));

function barredOf(page: MethodPage): SaleFacts['barred'] {
  const tables = calculationsOf(page, 'food-contact').flatMap((calculation) => calculation.tables);
  return cellsOf(tables.find(({ id }) => id === 'not'));
}

const months: Readonly<Record<string, string>> = {
  Jan: 'January',
  Feb: 'February',
  Mar: 'March',
  Apr: 'April',
  May: 'May',
  Jun: 'June',
  Jul: 'July',
  Aug: 'August',
  Sep: 'September',
  Oct: 'October',
  Nov: 'November',
  Dec: 'December',
};
/** A month in full; another name of a season as its own reading has it. */
const monthOf = (label: string): string => months[label] ?? label;

/** Where the board will live, by the name of the place that was asked. */
function homeOf(page: MethodPage, { place, indoors }: Readonly<Record<string, string>>): string {
  const parameter = page.parameters.find(({ record }) => record.kind === 'place');
  const named = parameter?.words.slice(parameter.record.label.length + 2);
  const where = named ?? (place === '' ? undefined : place);
  const house = indoors === 'unheated' ? 'an unheated shed' : indoors === 'heated' ? 'a heated house' : undefined;
  if (where === undefined) return house ?? 'its place';
  return house === undefined ? `the air of ${where}` : `${house} in ${where}`;
}

/** How much wider the board becomes, between what and what, in which month: no number where none was worked out. */
function movementOf(page: MethodPage): string | undefined {
  const calculation = calculationsOf(page, 'seasonal-movement').at(-1);
  const { swing, narrowest, widest } = calculation?.figures ?? {};
  if (!calculation || !swing || calculation.verdict?.level === 'unknown') return undefined;
  const [dry, damp] = [narrowest, widest].map((figure) => /^In ([^.]+)\./.exec(figure?.note ?? '')?.[1]);
  const { low = swing.value, high = swing.value } = swing;
  // Told to a buyer, who has a rule and no callipers.
  const ends = [low, high].map((value) => amount(value, 'mm', value < 10 ? 1 : 2));
  const much = ends[0] === ends[1] ? `about ${ends[0]}` : `${ends[0]} to ${ends[1]}`;
  const when = dry && damp ? ` in ${monthOf(damp)} than in ${monthOf(dry)}` : ' in the damp season than in the dry';
  return `Wood moves with the air. In ${homeOf(page, calculation.inputs)} this board may become ${much} wider${when}, and narrower again. That is the wood, and not a fault.`;
}

function careOf(page: MethodPage): SaleFacts['care'] {
  const card = calculationsOf(page, 'care-card')
    .flatMap(({ documents }) => documents)
    .find(({ id }) => id === 'card');
  return (card?.blocks ?? []).flatMap((block) =>
    block.kind === 'list' ? [{ heading: block.heading ?? '', lines: block.items }] : [],
  );
}

/** Whether the resin of a calculation is a data sheet of the shop's own, and no kind by its name. */
export const isOwnSheet = ({ inputs }: Pick<ShownCalculation, 'inputs'>): boolean =>
  (inputs['resin'] ?? '').trim().startsWith('{');

function leavingOf(page: MethodPage): Leaving {
  const { steps, timetable, impossible, toCome } = page;
  const clocks = calculationsOf(page, 'cure-clock');
  if (clocks.some((clock) => isOwnSheet(clock) && clock.figures['fullCure'] === undefined))
    return { kind: 'none', why: 'The data sheet of the resin gives no time of full cure: ask its maker.' };
  if (toCome === 'timetable') return { kind: 'none', why: 'The timetable is still being worked out.' };
  if (impossible) return { kind: 'none', why: `The plan cannot be met. ${impossible.why}` };
  if (!timetable) return { kind: 'none', why: 'There is no timetable.' };
  const last = steps.filter(({ act }) => act.id === 'hand-over').at(-1);
  const end = timetable.steps.find(({ id }) => id === last?.id)?.end ?? timetable.end;
  const moment = timetable.moments[end];
  if (!moment) return { kind: 'none', why: 'The timetable names no day for handing it over.' };
  const cures = clocks.length > 0;
  return timetable.relative ? { kind: 'after', days: moment.day, cures } : { kind: 'day', moment, cures };
}
