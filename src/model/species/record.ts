import * as z from 'zod/mini';
import { seenMarks } from '../evidence/index.ts';

const words = z.string().check(z.minLength(1));
const labels = z.optional(z.array(words));

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
  'cirad-wood-density': labels,
  'wood-density-database': labels,
  'queensland-timber': labels,
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
  id: z
    .string()
    .check(
      z.regex(/^[a-z]+(-[a-z]+)*$/, 'An id is a common name in lower case with hyphens, such as sugar-maple.'),
      z.describe('Common name in natural order, lower case with hyphens; also the name of the file.'),
    ),
  name: z.string().check(z.minLength(1), z.describe('Common name in natural order, sentence case.')),
  tradeNames: z.array(words).check(z.describe('Other common and trade names, as yards and shops use them; no brands.')),
  botanical: z
    .string()
    .check(z.minLength(1), z.describe('Botanical name; as printed where a joined table prints one.')),
  botanicalSeen: z.enum(seenMarks).check(z.describe('How the botanical name was read.')),
  namedByFoodCode: z.optional(
    z
      .literal(true)
      .check(z.describe('Where the FDA Food Code names the wood for cutting boards, 4-101.17 (B): hard maple.')),
  ),
  kind: z.enum(['hardwood', 'softwood']),
  origin: z
    .enum(['North America', 'Europe', 'Africa', 'tropical America', 'Asia and Oceania', 'elsewhere'])
    .check(
      z.describe('Where the tree grows, by the location that Table 4-4 prints for imported woods; Europe is ours.'),
    ),
  rows: joins.check(z.describe('Rows that speak of this wood itself, by table, each by its printed label.')),
  groupRows: z.optional(
    joins.check(z.describe('Rows that speak of a group of which this wood is a member; they never give it a figure.')),
  ),
  pores: z.optional(
    z
      .strictObject({
        arrangement: z.optional(z.enum(['ring-porous', 'semi-ring-porous', 'diffuse-porous'])),
        openness: z.optional(z.enum(['closed', 'open', 'plugged'])),
        text: words,
        basis: z.enum(['shop-practice', 'memory']),
      })
      .check(z.describe('Pores where the tables are silent; always with a basis.')),
  ),
  remarks: z.optional(
    z
      .array(words)
      .check(
        z.describe('What a reader should know about the rows: doubts, group values, differences between editions.'),
      ),
  ),
});
export type SpeciesRecord = z.infer<typeof speciesRecordSchema>;
