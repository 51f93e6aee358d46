import type { DraftShelf } from '../kept/drafts.ts';
import { utf8 } from './inflate.ts';
import { freeName, longestText, nameOfFile, tidyText, titleOf } from './names.ts';
import { largestZip, readZip } from './zip.ts';

/** What came of texts that were handed in: the drafts made of them, and what is said. */
export interface TakenIn {
  /** Ids of the drafts, new or kept already. */
  ids: readonly string[];
  /** Sentences. */
  said: readonly string[];
}

/** A text as a new draft; one that is kept already with the same name and text is not taken twice. */
export function takeText(shelf: DraftShelf, text: string, name: string): { id: string; fresh: boolean; name: string } {
  const { drafts } = shelf.shelf();
  const same = drafts.find((draft) => draft.text === text && draft.name === name);
  if (same) return { id: same.id, fresh: false, name };
  const free = freeName(
    name,
    drafts.map((draft) => draft.name),
  );
  return { id: shelf.create(free, text).id, fresh: true, name: free };
}

/**
 * A method of this site as a new draft, named by its title.
 *
 * @param address of its text
 * @param name what it is called where it does not say
 */
export async function takeShipped(shelf: DraftShelf, address: string, name: string): Promise<TakenIn> {
  try {
    const answer = await fetch(address);
    if (!answer.ok) throw new Error(`the server answered ${answer.status}`);
    const text = tidyText(await answer.text());
    // Some servers answer with a page where there is no such file.
    if (/^\s*</.test(text)) throw new Error('there is no such method');
    if (text.length > longestText) throw new Error('it is too long');
    return { ids: [takeText(shelf, text, titleOf(text) ?? name).id], said: [] };
  } catch (error) {
    return {
      ids: [],
      said: [`“${name}” could not be fetched: ${(error as Error).message}. Try again when you are connected.`],
    };
  }
}

/** A pasted text as a new draft, named by its title. */
export function takePasted(shelf: DraftShelf, pasted: string): TakenIn {
  const text = tidyText(pasted);
  if (text.trim() === '') return { ids: [], said: ['Nothing was pasted: the field is empty.'] };
  if (text.length > longestText)
    return { ids: [], said: [`The text is ${tooLong(text.length)} Cut it down before you open it.`] };
  const { id, name } = takeText(shelf, text, titleOf(text) ?? 'A pasted method');
  return { ids: [id], said: [`Opened as “${name}”.`] };
}

const tooLong = (length: number) =>
  `${length.toLocaleString('en-US')} characters long, and a method has ${longestText.toLocaleString('en-US')} at most.`;

const isZip = (bytes: Uint8Array) => bytes[0] === 0x50 && bytes[1] === 0x4b;

/** Files as new drafts. Each is taken whole or refused in words; nothing that is kept is changed. */
export async function takeFiles(shelf: DraftShelf, files: readonly File[]): Promise<TakenIn> {
  const ids: string[] = [];
  const said: string[] = [];
  const take = (text: string, name: string) => {
    const taken = takeText(shelf, text, name);
    ids.push(taken.id);
    said.push(
      taken.fresh ? `“${taken.name}” is opened as a new draft.` : `“${name}” is kept already, with the same text.`,
    );
  };
  for (const file of files) {
    const refused = (why: string) =>
      said.push(`${nameOfFile(file.name)} cannot be read. ${why} Nothing was taken from it.`);
    if (file.size > largestZip) {
      refused('It is larger than 4 MB, the most that is read here.');
      continue;
    }
    const bytes = new Uint8Array(await file.arrayBuffer());
    if (isZip(bytes) || /\.zip$/i.test(file.name)) {
      const read = await readZip(bytes, file.name);
      if (!read.ok) {
        said.push(read.message);
        continue;
      }
      for (const { name, text } of read.files) take(text, name);
      if (read.left.length > 0) said.push(`Left out, since they are no methods: ${read.left.join(', ')}.`);
      continue;
    }
    const text = utf8(bytes);
    if (text === undefined) refused('It is not text in UTF-8. Save it as UTF-8, or paste its text.');
    else if (text.length > longestText) refused(`It is ${tooLong(text.length)}`);
    else take(tidyText(text), nameOfFile(file.name));
  }
  return { ids, said };
}
