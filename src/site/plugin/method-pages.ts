import { answerMethod, MethodMemory } from '../../method/page/answer.ts';
import { withoutDocuments } from '../../method/page/patch.ts';
import type { MethodPage } from '../../method/page/types.ts';
import { DataError, type MethodText, readMethodTexts, readSiteShopText } from '../../store/index.ts';

/** A method in the list of all: what somebody asks before they choose one. */
export interface MethodSummary {
  id: string;
  title: string;
  for: string;
  makes: string;
  pieces: number;
  /** Hands-on time for all pieces, min; from the first stroke to the last, min. */
  hands: number;
  lasts?: number;
  dangers: number;
  /** Calendar by which it is taught to a class. */
  calendar?: string;
  steps: number;
}

/** A method of the house with its page as it is at its defaults. */
export interface MethodEntry {
  id: string;
  page: MethodPage;
  summary: MethodSummary;
}

/**
 * A method as its page is sent, worked out at its defaults and with the shop record that the site ships: a reader without scripts gets its machines,
 * hours and prices. Without a record hours and hands are assumed, and the page says so.
 *
 * @param shop the record as written (YAML)
 * @throws DataError where it cannot be worked out
 */
export async function methodEntry(
  { id, file, text }: MethodText,
  shop: string | undefined,
  memory = new MethodMemory(),
): Promise<MethodEntry> {
  const inShop = await answerMethod({ text, file, ...(shop === undefined ? {} : { shop }) }, memory);
  // A shop in which the method does not hold has no case of it: its readers are told so by the page, and without scripts get the method's own.
  const answered = !inShop.ok && inShop.beyond ? await answerMethod({ text, file }, memory) : inShop;
  if (!answered.ok) throw new DataError(answered.problems);
  const { page } = answered;
  const { hands, lasts, dangers } = page.brief;
  const summary = {
    id,
    title: page.title,
    for: page.for,
    makes: page.makes.what,
    pieces: page.makes.pieces,
    hands,
    ...(lasts === undefined ? {} : { lasts }),
    dangers: dangers.length,
    ...(page.taught ? { calendar: page.taught.calendar } : {}),
    steps: page.steps.length,
  };
  return { id, page: withoutDocuments(page), summary };
}

/** Every method of the house as its page is sent. */
export async function gatherMethodPages(): Promise<MethodEntry[]> {
  const memory = new MethodMemory();
  const shop = readSiteShopText()?.text;
  const entries: MethodEntry[] = [];
  for (const method of readMethodTexts()) entries.push(await methodEntry(method, shop, memory));
  return entries;
}
