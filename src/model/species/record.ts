import * as z from 'zod/mini';
import { seenMarks } from '../evidence/index.ts';

const labels = z.optional(z.array(z.string().check(z.minLength(1))));

/** Rows by table, each named by its printed label. */
const joins = z.strictObject({
  'shrinkage-domestic': labels,
  'shrinkage-imported': labels,
  'dimensional-change-coefficients': labels,
  'hardness-domestic': labels,
  'hardness-imported': labels,
  'porosity-table-16-1': labels,
  'pores-and-tyloses': labels,
  'oak-pores-mo-312': labels,
  'decay-resistance': labels,
  'other-sources': labels,
  'species-toxicity': labels,
  'trgs-907': labels,
  'trgs-906': labels,
  'machining-quality-1999': labels,
});
/** Rows of the tables, by table name. */
export type Joins = z.infer<typeof joins>;
/** Name of a table that a record can join to. */
export type JoinTable = keyof Joins;
/** The tables that a record can join to, in the order in which their rows are read. */
export const joinTables = Object.keys(joins.shape) as readonly JoinTable[];

/** A wood as entered: its names, and the table rows that speak of it. Figures never stand in a record. */
export const speciesRecordSchema = z.strictObject({
  /** Common name in natural order, lower case with hyphens; also the name of the file. */
  id: z
    .string()
    .check(z.regex(/^[a-z]+(-[a-z]+)*$/, 'An id is a common name in lower case with hyphens, such as sugar-maple.')),
  /** Common name in natural order, sentence case. */
  name: z.string().check(z.minLength(1)),
  tradeNames: z.array(z.string().check(z.minLength(1))),
  botanical: z.string().check(z.minLength(1)),
  /** How the botanical name was read. */
  botanicalSeen: z.enum(seenMarks),
  kind: z.enum(['hardwood', 'softwood']),
  origin: z.enum(['North America', 'Africa', 'tropical America', 'Asia and Oceania', 'elsewhere']),
  /** Rows that speak of this wood itself. */
  rows: joins,
  /** Rows that speak of a group of which this wood is a member. */
  groupRows: z.optional(joins),
  /** Pores where the tables are silent, or speak only of the group; always with a basis. */
  pores: z.optional(
    z.strictObject({
      arrangement: z.optional(z.enum(['ring-porous', 'semi-ring-porous', 'diffuse-porous'])),
      openness: z.optional(z.enum(['closed', 'open', 'plugged'])),
      text: z.string().check(z.minLength(1)),
      basis: z.enum(['shop-practice', 'memory']),
    }),
  ),
  /** What a reader should know about the rows: doubts, group values, differences between editions. */
  remarks: z.optional(z.array(z.string().check(z.minLength(1)))),
});
export type SpeciesRecord = z.infer<typeof speciesRecordSchema>;
