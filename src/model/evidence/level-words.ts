import type { Caution, Verdict } from './result.ts';

/** The levels of a verdict in words: colour and thickness of a line never carry them alone. */
export const verdictWords: Readonly<Record<Verdict['level'], string>> = {
  good: 'Good',
  care: 'With care',
  stop: 'Stop',
  unknown: 'Not enough known',
};

/** The levels of a caution in words. */
export const cautionWords: Readonly<Record<Caution['level'], string>> = {
  danger: 'Danger',
  warning: 'Take care',
  note: 'Note',
};

const gravestFirst = Object.keys(cautionWords);

/** Cautions as they are said: this case's own before the general ones, the gravest first among either. */
export function cautionsInOrder(cautions: readonly Caution[]): Caution[] {
  return [...cautions].sort(
    (one, other) =>
      Number(other.own ?? false) - Number(one.own ?? false) ||
      gravestFirst.indexOf(one.level) - gravestFirst.indexOf(other.level),
  );
}
