import type { Grade, GradeData, Grading, PrintedPair } from './grade-data.ts';
import committed from './grades.json' with { type: 'json' };

const data = committed as GradeData;

/** Every grade of coated abrasives of which a grain size is known, P first, coarsest first. */
export const grades: readonly Grade[] = data.grades;

const byId = new Map(grades.map((grade) => [grade.id, grade]));

/** The grade of this number in a grading, or undefined where no grain size is known. */
export function gradeOf(grading: Grading, number: number): Grade | undefined {
  return byId.get(grading === 'P' ? `P${number}` : `ANSI ${number}`);
}

/** Grades of the other grading that come near to one. */
export interface Equivalents {
  /** The nearest by grain size. */
  nearest: Grade;
  /** Grain size of the nearest over that of the grade. */
  ratio: number;
  /** What texts print beside it. */
  printed: readonly { grade: number; source: PrintedPair['source'] }[];
}

/** The grade of the other grading whose grain is nearest in size, and what tables print beside this one. */
export function equivalents(grade: Grade): Equivalents {
  const others = grades.filter((other) => other.grading !== grade.grading);
  const far = (other: Grade) => Math.abs(Math.log(other.micrometres / grade.micrometres));
  const nearest = others.reduce((best, other) => (far(other) < far(best) ? other : best));
  const pairs = data.pairs.filter((pair) => (grade.grading === 'P' ? pair.p : pair.ansi) === grade.number);
  return {
    nearest,
    ratio: nearest.micrometres / grade.micrometres,
    printed: pairs.map(({ ansi, p, source }) => ({ grade: grade.grading === 'P' ? ansi : p, source })),
  };
}

/** Grades that belong in a drawer for wood, by P number. Common practice. */
export const usualGrits: readonly number[] = [80, 100, 120, 150, 180, 220, 320];

/** Grades with which resin is polished after them, wet, by P number. Common practice. */
export const wetGrits: readonly number[] = [400, 600, 800, 1000, 1500, 2000];

/** A dash may join the letters to their number; before a bare number it would be a minus. */
const gritText = /^(?:(p|ansi|cami|us)\s*-?\s*)?(\d{1,4})$/i;

/**
 * Read a grade as it is printed on paper: `P120`, or a bare number, which is a grade of the given grading, or `ANSI 120`
 * (also `US 120`).
 *
 * @returns the grade, or the reason why there is none
 */
export function readGrade(
  text: string,
  bare: Grading,
): { ok: true; value: Grade } | { ok: false; problem: string; wayOut: string } {
  const match = gritText.exec(text.trim());
  if (!match) {
    return { ok: false, problem: `“${text.trim().slice(0, 20)}” is not a grit`, wayOut: 'Write it as P120, or 120.' };
  }
  const prefix = match[1]?.toUpperCase();
  const grading: Grading = prefix === undefined ? bare : prefix === 'P' ? 'P' : 'ANSI';
  const number = Number(match[2]);
  const grade = gradeOf(grading, number);
  if (grade) return { ok: true, value: grade };
  const known = grades.filter((candidate) => candidate.grading === grading);
  const near = known.reduce((best, candidate) =>
    Math.abs(Math.log(candidate.number / Math.max(1, number))) < Math.abs(Math.log(best.number / Math.max(1, number)))
      ? candidate
      : best,
  );
  return {
    ok: false,
    problem: `No grain size is known for ${grading === 'P' ? 'P' : 'ANSI '}${number}`,
    wayOut: `The nearest grade is ${near.id}; grades known go from ${known[0]?.id} to ${known.at(-1)?.id}.`,
  };
}
