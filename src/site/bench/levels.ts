import type { EditProblem } from '../../method/edit/index.ts';

const words = { error: 'Fault', stop: 'Stop', warn: 'Warning', note: 'Note' } as const;

/** A problem's level in a word. */
export const levelWords = ({ level, excepted }: Pick<EditProblem, 'level' | 'excepted'>): string =>
  excepted === undefined ? words[level] : 'Excepted';

/** What a fault is about, by the path of its field; the rules name it in their own words. */
export const fieldWords = ({ level, path }: Pick<EditProblem, 'level' | 'path'>): string =>
  level === 'error' && path.length > 0 ? `${path.join('.')}: ` : '';

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
