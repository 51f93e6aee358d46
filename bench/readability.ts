import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { explainedWords, type Readability, readability } from './readable.ts';

// How every how-to page reads: `npx tsx bench/readability.ts`, or with a commit behind it, as it read then.

const root = fileURLToPath(new URL('..', import.meta.url));
const git = (...words: string[]) => execFileSync('git', words, { cwd: root, encoding: 'utf8' });

/** The pages by name, as they stand or as they stood. */
function pagesAt(commit: string | undefined): Map<string, string> {
  const files = commit
    ? git('ls-tree', '--name-only', commit, 'docs/').trim().split('\n')
    : readdirSync(`${root}docs`).map((file) => `docs/${file}`);
  const pages = files.filter((file) => file.endsWith('.mdx')).sort();
  return new Map(
    pages.map((file) => [
      file.slice('docs/'.length, -'.mdx'.length),
      commit ? git('show', `${commit}:${file}`) : readFileSync(`${root}${file}`, 'utf8'),
    ]),
  );
}

const columns: readonly [string, (read: Readability) => string][] = [
  ['words', ({ words }) => String(words)],
  ['sentence', ({ meanSentence }) => meanSentence.toFixed(1)],
  ['over 25', ({ longSentences }) => `${(longSentences * 100).toFixed(0)} %`],
  ['long words', ({ longWords }) => `${(longWords * 100).toFixed(1)} %`],
  ['ease', ({ ease }) => ease.toFixed(0)],
  ['block', ({ longestBlock }) => String(longestBlock)],
  ['dangers', ({ cautions, dangers }) => `${dangers}/${cautions}`],
  ['steps', ({ steps }) => String(steps)],
  ['before', ({ beforeFirstStep }) => String(beforeFirstStep ?? '-')],
];

const pages = pagesAt(process.argv[2]);
const explained = explainedWords(pages.get('glossary') ?? '');
console.log(`${''.padEnd(36)}${columns.map(([name]) => name.padStart(11)).join('')}`);
for (const [name, source] of pages) {
  if (name === 'index' || name === 'glossary') continue;
  const read = readability(source, explained);
  console.log(`${name.padEnd(36)}${columns.map(([, words]) => words(read).padStart(11)).join('')}`);
}
