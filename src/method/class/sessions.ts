import { type OpeningHours, readOpeningHours } from '../schedule/hours.ts';
import type { ClassProblem } from './types.ts';

/** What behind the time of a session says that no student is there. */
const teacherOnly = /[ ,]+\(?(?:teacher(?:'s|’s)?(?: only| alone)?|without students|no students)\)?$/i;

/** A session as typed, with its line. */
interface SessionLine {
  line: number;
  text: string;
  who: 'teacher' | 'class';
}

/** The lines of sessions as somebody types them: `2027-02-09 18:30 to 21:00` is taken as well, and `teacher only` behind it. */
export function sessionLines(text: string): SessionLine[] {
  return text.split(/\r?\n/).flatMap((line, at): SessionLine[] => {
    const whole = line.trim().replace(/\s+/g, ' ');
    const tidy = whole.replace(teacherOnly, '');
    const hours = tidy.replace(/ ?(?:[-–—]|to) ?(?=\d{1,2}:\d\d$)/, '-');
    return hours === '' ? [] : [{ line: at + 1, text: hours, who: tidy === whole ? 'class' : 'teacher' }];
  });
}

/** When a class meets. */
export interface SessionHours {
  /** All sessions in which something may be planned; undefined where nobody has said any yet. */
  hours?: OpeningHours;
  /** First day. */
  start?: string;
  /** Sessions without students, before the first of the class. */
  alone: readonly string[];
  /** Sessions without students that come later: nothing is planned in them. */
  unused: readonly string[];
  /** First session of the class, where any is without students. */
  first?: string;
}

/** When the class meets, who is there, and its first day. */
export function hoursOfClass(
  sessions: string,
  zone: string,
): ({ ok: true } & SessionHours) | { ok: false; problems: ClassProblem[] } {
  const lines = sessionLines(sessions);
  if (lines.length === 0) return { ok: true, alone: [], unused: [] };
  const read = readOpeningHours({ zone, sessions: lines.map(({ text }) => text) });
  if (!read.ok) {
    const problems = read.faults.map(({ field, text }): ClassProblem => {
      const line = lines[Number(field.split('.')[1])]?.line;
      return {
        where: 'sessions',
        field: line === undefined ? '' : String(line),
        message: `${line === undefined ? '' : `Line ${line}: `}${text}`,
      };
    });
    const told = new Map(problems.map((problem) => [problem.message, problem]));
    return { ok: false, problems: [...told.values()] };
  }
  const textsOf = (who: SessionLine['who']) =>
    lines
      .filter((line) => line.who === who)
      .map(({ text }) => text)
      .sort();
  const [first] = textsOf('class');
  const apart = textsOf('teacher');
  if (first === undefined)
    return {
      ok: false,
      problems: [
        {
          where: 'sessions',
          field: '',
          message: 'Every session is without students. Write those of the class too, such as 2027-02-09 18:30-21:00.',
        },
      ],
    };
  const alone = apart.filter((text) => text < first);
  const unused = apart.filter((text) => text >= first);
  const used = lines.flatMap(({ text }) => (unused.includes(text) ? [] : [text]));
  const start = [...used].sort()[0]?.slice(0, 10) as string;
  return {
    ok: true,
    hours: { ...read.hours, sessions: used },
    start,
    alone,
    unused,
    ...(alone.length > 0 ? { first } : {}),
  };
}
