import type { EditProblem } from '../../method/edit/index.ts';

const words = { error: 'Fault', stop: 'Stop', warn: 'Warning', note: 'Note' } as const;

/** A problem's level in a word. */
export const levelWords = ({ level, excepted }: Pick<EditProblem, 'level' | 'excepted'>): string =>
  excepted === undefined ? words[level] : 'Excepted';

/** One thing of each branch of a record, by whose name a place is told. */
const one: Readonly<Record<string, string>> = {
  parameters: 'parameter',
  materials: 'material',
  tools: 'tool',
  steps: 'step',
  calculations: 'calculation',
  machines: 'machine',
  consumables: 'material',
  people: 'person',
};

/** Parts of a record whose names are no words for a reader. */
const part: Readonly<Record<string, string>> = {
  after: 'what it comes after',
  uses: 'what it uses',
  tools: 'its tools',
  holds: 'what it holds',
  hands: 'hands-on time',
  does: 'what is done',
  why: 'why',
  tell: 'how to tell',
  wrong: 'what goes wrong',
  needs: 'what is needed',
};

/** What a fault is about, in words, since the editor stands at its line; the rules name it in their own. */
export function fieldWords({ level, path }: Pick<EditProblem, 'level' | 'path'>): string {
  if (level !== 'error' || path.length === 0) return '';
  const words: string[] = [];
  for (let at = 0; at < path.length; at += 1) {
    const [step, next] = [path[at], path[at + 1]];
    // A place in a list, or the part of a value where its reference stands, is seen at the line.
    if (typeof step === 'number' || step === 'from' || step === 'default' || step === 'with') continue;
    const isGroup = (at === 0 || step === 'calculations') && typeof next === 'string';
    const noun = isGroup ? one[String(step)] : undefined;
    words.push(noun === undefined ? (part[String(step)] ?? String(step)) : `${noun} “${next}”`);
    if (noun !== undefined) at += 1;
  }
  return words.length === 0 ? '' : `${words.join(', ')}: `;
}

const several = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

/** How many problems of each level there are, for the line that is read aloud. */
export function countWords(problems: readonly EditProblem[]): string {
  const of = (word: string) => problems.filter((problem) => levelWords(problem) === word).length;
  const counts = [
    [of('Fault'), 'fault', 'faults'],
    [of('Stop'), 'stop', 'stops'],
    [of('Warning'), 'warning', 'warnings'],
    [of('Note'), 'note', 'notes'],
    [of('Excepted'), 'excepted by the method', 'excepted by the method'],
  ] as const;
  const told = counts.filter(([count]) => count > 0).map(([count, one, many]) => several(count, one, many));
  return told.length === 0 ? 'Nothing is wrong, and the rules find nothing.' : `${told.join(', ')}.`;
}
