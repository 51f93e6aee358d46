import type { TableColumn, TableDefinition } from '../evidence/index.ts';

const text = (name: string, title: string, required = true): TableColumn => ({ name, kind: 'text', title, required });
const number = (name: string, title: string, unit: string, required = false): TableColumn => ({
  name,
  kind: 'number',
  unit,
  title,
  required,
});
const seen: TableColumn = {
  name: 'seen',
  kind: 'seen',
  title: 'How the row was read: in the work itself, in a text that repeats it, or not at all (memory)',
  required: true,
};

/** The published tables of lumber sizes and grades. */
export const tables: readonly TableDefinition[] = [
  {
    name: 'hardwood-thickness',
    room: 'stock',
    title: 'Hardwood lumber: rough thickness and thickness surfaced on one face or two',
    source: 'hardwood-dimensions-table',
    locator: 'rough, S1S and S2S, in inches',
    notes: [
      'Inches as printed. S1S is surfaced on one face, S2S on two.',
      'The figures are those of the National Hardwood Lumber Association’s rules on surfaced lumber, which were opened at their contents only.',
      'S2S figures are least thicknesses for grading: planed stock as sold is often thicker (15/16 for 4/4) or thinner (3/4).',
      'Kiln-dried rough lumber may be 1/16 in under its nominal thickness.',
    ],
    columns: [
      text('rough', 'Nominal thickness, rough, in'),
      text('quarter', 'What the trade calls it, in quarters of an inch', false),
      text('s1s', 'Surfaced on one face, in', false),
      text('s2s', 'Surfaced on two faces, in'),
      text('remark', 'What other texts say', false),
      seen,
    ],
  },
  {
    name: 'hardwood-grades',
    room: 'stock',
    title: 'Hardwood grades: least board, clear yield of the poorer face and the cuttings that give it',
    notes: [
      'SM is surface measure in square feet. A cutting unit is 12 in², so that SM × 12 units are the whole face (from memory; the yields follow from it).',
      'One chart prints 60 2/3 % for No. 1 Common, a misprint: SM × 8 units of 12 is 66 2/3 %.',
      'Where an extra cutting is taken the yield asked for is higher: FAS 11, No. 1 Common 9 and No. 2 Common 8 units per square foot (one chart).',
      'Kiln-dried stock may be 1/2 in under the least width. Some woods, walnut among them, have least sizes of their own (from memory).',
      'A grade speaks of clear area when cut to parts; it says nothing of colour, figure, moisture or food.',
    ],
    columns: [
      text('grade', 'Short name'),
      text('name', 'Grade, as printed'),
      text('better_face', 'Grade that the better face must have, where the two differ', false),
      text('poor_face', 'Grade that the poorer face must have, where the two differ', false),
      number('least_width_in', 'Least width of a board', '[in_i]', true),
      number('least_length_ft', 'Least length of a board', '[ft_i]', true),
      text('clear_yield', 'Least clear yield of the poorer face, as printed', false),
      number('units_per_measure', 'Cutting units asked for per square foot of surface measure', '1'),
      text('smallest_cuttings', 'Smallest cuttings', false),
      text('cuttings_allowed', 'Number of cuttings', false),
      text('source', 'Key of the source of the row'),
      seen,
    ],
  },
  {
    name: 'softwood-dressed',
    room: 'stock',
    title: 'Softwood lumber: nominal and dressed sizes, dry',
    source: 'ps-20',
    locator: 'Table 3',
    notes: [
      'Inches as printed. Dry means at most 19 % moisture content when surfaced, for lumber under 5 in nominal thickness.',
      'S-DRY and S-GRN mark lumber surfaced dry and green; KD is kiln-dried to at most 19 %, KD15 or MC15 to at most 15 %.',
      'Softwood board feet are counted from the nominal size: a 2×4 of 8 ft is 5 1/3 (from memory).',
    ],
    columns: [
      text('nominal', 'Nominal size'),
      text('thickness_dry', 'Dressed thickness, dry, in'),
      text('width_dry', 'Dressed width, dry, in', false),
      text('remark', 'What else is known', false),
      seen,
    ],
  },
];
