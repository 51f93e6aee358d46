import type { ResultDocument } from '../../model/evidence/index.ts';
import type { MethodPage } from '../page/types.ts';
import { quoteDocument } from '../sale/quote.ts';
import { studentSheet } from './student.ts';
import { teacherSheet } from './teacher.ts';
import type { MethodPacket, PacketOptions, SheetDocument } from './types.ts';
import { stepsText } from './words.ts';

/** A sheet says for which step it is; a template's title stands at the foot of each of its sheets, where room is short. */
function titleOf({ title, form }: ResultDocument, numbers: readonly number[], step: string): string {
  if (form === 'true-size') return `${title} (${stepsText(numbers)})`;
  return numbers.length > 1 ? `${title}: ${stepsText(numbers)}` : `${title}: ${stepsText(numbers)}, ${step}`;
}

/** The documents of the calculations, each once, with the steps that it belongs to. */
export function calculatedSheets({ steps, makes }: Pick<MethodPage, 'steps' | 'makes'>): SheetDocument[] {
  const found = new Map<string, SheetDocument>();
  for (const { number, title, calculations } of steps) {
    for (const document of calculations.flatMap(({ documents }) => documents)) {
      const key = JSON.stringify([document.id, document.blocks]);
      const before = found.get(key);
      const numbers = [...(before?.steps ?? []), number];
      found.set(key, {
        ...document,
        id: before?.id ?? `${document.id}-${number}`,
        sheet: document.id,
        steps: numbers,
        title: titleOf(document, numbers, title),
        ...(document.form === 'card' || document.form === 'labels' ? { needed: makes.pieces } : {}),
      });
    }
  }
  return [...found.values()];
}

/** What a sheet is called where it is chosen. */
const sheetNames: Readonly<Record<string, string>> = {
  student: 'Student’s sheet',
  teacher: 'Teacher’s sheet',
  quote: 'Quote',
};

/**
 * Everything that is printed of a method for one case: the student's sheet, the teacher's, and what its calculations give to print, each once.
 *
 * Sentences hold marked quantities (`amount`), which whoever prints them writes in the reader's units.
 */
export function packetOf(page: MethodPage, options: PacketOptions): MethodPacket {
  const { only, quote } = options;
  const all = [
    studentSheet(page, options),
    teacherSheet(page, options),
    ...calculatedSheets(page),
    ...(quote ? [quoteDocument(page, quote)] : []),
  ];
  const sheets = new Map(
    all.map(({ sheet, title }) => [sheet, sheetNames[sheet] ?? title.replace(/(: | \()steps? .*$/, '')]),
  );
  return {
    title: page.title,
    paper: options.paper,
    made: options.made,
    ...(page.version === undefined ? {} : { version: page.version }),
    language: page.language,
    running: `${page.title} · ${page.makes.pieces} × ${page.makes.what}`,
    documents: only ? all.filter(({ sheet }) => only.includes(sheet)) : all,
    sheets: [...sheets].map(([sheet, title]) => ({ sheet, title })),
  };
}
