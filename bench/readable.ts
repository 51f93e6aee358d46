import { flesch } from 'flesch';
import { syllable } from 'syllable';
import { cautionById } from '../src/model/evidence/cautions.ts';

/** How a how-to page reads, as far as that can be counted. */
export interface Readability {
  /** Words of prose, lists and tables, without cautions, calculators and sources. */
  words: number;
  /** Words a sentence of prose and lists. */
  meanSentence: number;
  /** Share of those sentences of more than 25 words. */
  longSentences: number;
  /** Share of words of more than three syllables that the list of words does not explain. */
  longWords: number;
  /** Flesch reading ease of prose and lists. */
  ease: number;
  /** Words of the longest paragraph, list item or cell of a table. */
  longestBlock: number;
  /** How many cautions the page shows, and how many of them are dangers. */
  cautions: number;
  dangers: number;
  /** Numbered steps, without the questions at the end. */
  steps: number;
  /** Characters of what stands before the first step, cautions by what they tell one to do; undefined where there is no step. */
  beforeFirstStep: number | undefined;
}

/** More words than this make a sentence a long one. */
export const longSentence = 25;
/** More syllables than this make a word a long one. */
const longWord = 3;

/**
 * Where the first step of a page begins: a numbered line, or a heading that calls itself step 1. On the page that is opened when
 * somebody was splashed it is the row of what to do now.
 */
const firstStep = /^(1\. |## Step 1\b|\| What happened \| Do this now )/m;

const withoutHead = (source: string) => source.replace(/^---\n[\s\S]*?\n---\n/, '');

/** What stands before the first step of a page, without the front matter; undefined where the page has no step. */
export function leadOf(source: string): string | undefined {
  const body = withoutHead(source);
  const at = body.search(firstStep);
  return at < 0 ? undefined : body.slice(0, at);
}

/** Ids of the cautions that a page shows. */
export const cautionIdsOf = (source: string): string[] =>
  [...source.matchAll(/<Cautions\s+ids=\{\[([\s\S]*?)\]\}/g)].flatMap(([, list = '']) =>
    [...list.matchAll(/'([^']+)'/g)].map(([, id]) => id as string),
  );

/** Parts of a page that stand for a number or a name within a sentence. */
const inline = /<(Tray|Figure|Wood)\b[^>]*\/>/g;

/** Markdown as a reader meets it: parts left out, those within a sentence as one word, links by their words. */
const bare = (markdown: string) =>
  markdown
    .replace(inline, ' 1 ')
    .replace(/<\/?[A-Z](?:[^<>{}]|\{(?:[^{}]|\{[^{}]*\})*\})*>/g, '')
    .replace(/ ?\{\/\*.*?\*\/\}/g, '')
    .replace(/\]\([^)]*\)/g, ']')
    .replace(/[*|[\]`]|^#+ |---/gm, '');

/** Characters that a reader passes in a stretch of a page, with what its cautions tell one to do. */
export function charactersOf(source: string): number {
  const cautions = cautionIdsOf(source).map((id) => cautionById(id)?.text ?? '');
  return `${cautions.join(' ')} ${bare(source)}`.replace(/\s+/g, ' ').trim().length;
}

/** Words of a text: letters and digits, with what joins them. */
export const wordsOf = (text: string): string[] => text.match(/[\p{L}\p{N}][\p{L}\p{N}’'.,/-]*/gu) ?? [];

const sentencesOf = (block: string): string[][] =>
  block
    .split(/(?<=[.!?…])[)’”]?\s+(?=[\p{Lu}\p{N}‘“(])/u)
    .map(wordsOf)
    .filter(({ length }) => length > 0);

/** The words that the page of words explains, and what they are joined from, in lower case. */
export function explainedWords(glossary: string): ReadonlySet<string> {
  const cells = [...glossary.matchAll(/^\| (.*?) \|/gm)].map(([, cell = '']) => cell.toLowerCase());
  return new Set(cells.flatMap((cell) => wordsOf(cell).flatMap((word) => [word, ...word.split(/[-/]/)])));
}

/**
 * Count how a page reads.
 *
 * @param source the page as written
 * @param explained words that are no hardship, since the page of words explains them
 */
export function readability(source: string, explained: ReadonlySet<string>): Readability {
  // What stands under the sources is looked up, not read; code is copied.
  const body = (withoutHead(source).split('{/* #sources */}')[0] ?? '')
    .replace(/^## Where the figures come from *$/m, '')
    .replace(/^ *```[\s\S]*?^ *```/gm, '')
    .replace(/\$\$[\s\S]*?\$\$/g, '');
  const lines = bare(
    body
      // A form is quoted; a row of a table is a line of cells.
      .replace(/^> ?/gm, '')
      .replace(/^\|[-| ]+\|$/gm, '')
      .replace(/^\|(.*)\|$/gm, (_, row: string) => `\n\n‖${row.split(/ \| ?/).join('\n\n‖')}\n\n`)
      .replace(/^#+ .*$/gm, '')
      .replace(/^ *(?:[-*]|\d+\.) (?:\[ \] )?/gm, '\n\n'),
  );
  const blocks = lines
    .split(/\n{2,}/)
    .map((block) => block.replace(/\s+/g, ' ').trim())
    .filter((block) => wordsOf(block).length > 0);
  const prose = blocks.filter((block) => !block.startsWith('‖'));
  const sentences = prose.flatMap(sentencesOf);
  const words = blocks.flatMap(wordsOf);
  const proseWords = sentences.flat();
  const hard = words.filter((word) => {
    const plain = word.toLowerCase().replace(/[.,’']+s?$/, '');
    return /^\p{L}/u.test(plain) && !explained.has(plain) && syllable(plain) > longWord;
  });
  const cautions = cautionIdsOf(source);
  const lead = leadOf(source);
  const steps = body.split(/^<Check>$|\*\*Answers\.\*\*|\{\/\* #check \*\/\}/m)[0] ?? '';
  return {
    words: words.length,
    meanSentence: proseWords.length / Math.max(1, sentences.length),
    longSentences: sentences.filter(({ length }) => length > longSentence).length / Math.max(1, sentences.length),
    longWords: hard.length / Math.max(1, words.length),
    ease: flesch({
      sentence: sentences.length,
      word: proseWords.length,
      syllable: proseWords.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0),
    }),
    longestBlock: Math.max(0, ...blocks.map((block) => wordsOf(block).length)),
    cautions: cautions.length,
    dangers: cautions.filter((id) => cautionById(id)?.level === 'danger').length,
    steps: steps.match(/^\d+\. /gm)?.length ?? 0,
    beforeFirstStep: lead === undefined ? undefined : charactersOf(lead),
  };
}
