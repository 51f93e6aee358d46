import * as z from 'zod/mini';
import { type Grade, type Grading, readGrade } from '../../model/abrasive/index.ts';
import type { Read } from '../../model/quantity/index.ts';
import { readAll } from '../../model/quantity/lists.ts';
import { readField } from '../kit/fields.ts';

/** A grit as typed: which grading a bare number means is known only with another field. */
export type GritText = string;

const most = 60;

const gritWords = /(?:(?:ansi|cami|us)\s+)?[^\s,;]+/gi;

/** The grits of a text, parted by commas, semicolons, spaces or line ends. */
export function splitGrits(text: string): GritText[] {
  return text.match(gritWords) ?? [];
}

/** Read grits with the grading that bare numbers have. */
export function readGrits(texts: readonly GritText[], bare: Grading): Read<Grade[]> {
  return readAll(texts, (text) => readGrade(text, bare));
}

/** A grit must read in one grading at least; which one counts is the business of `compute`. */
function known(text: GritText): Read<GritText> {
  const inP = readGrade(text, 'P');
  if (inP.ok || readGrade(text, 'ANSI').ok) return { ok: true, value: text };
  return inP;
}

function drawer(texts: readonly GritText[]): Read<GritText[]> {
  if (texts.length >= 1 && texts.length <= most) return readAll(texts, known);
  return {
    ok: false,
    problem: `${texts.length} grits were read; a drawer has 1 to ${most}`,
    wayOut: 'List them as 80, 120, 180.',
  };
}

/** Grits in the drawer: `80, 100, P120`; in a file also a list. */
export function drawerField(words: {
  label: string;
  help?: string;
}): z.ZodMiniType<GritText[], string | (string | number)[]> {
  return readField(
    z.union([z.string(), z.array(z.union([z.string(), z.number()]))]),
    (value) => drawer(typeof value === 'string' ? splitGrits(value) : value.map(String)),
    {
      ...words,
      kind: 'list',
      examples: ['80, 100, 120, 150, 180, 220, 320', 'P80 P120 P180 P220 P320 P400 P600 P800 P1000 P1500 P2000'],
    },
  );
}

/** One grit: `P120`, or `120` in the grading of the drawer. */
export function gritField(words: {
  label: string;
  help?: string;
  examples: readonly string[];
}): z.ZodMiniType<GritText, string | number> {
  return readField(z.union([z.string(), z.number()]), (value) => known(String(value).trim()), {
    ...words,
    kind: 'text',
  });
}
