import type { TableColumn, TableDefinition } from '../evidence/index.ts';
import { edition, number, seen, text } from './columns.ts';
import { treesTable } from './trees-table.ts';
import { worldTables } from './world-tables.ts';

const seenPounds: TableColumn = {
  name: 'seen_lbf',
  kind: 'seen',
  title: 'How the two columns in pounds-force were read',
  required: true,
};
const evidence = text('evidence', 'What supports the parts of the row');
const also = text('also', 'Further texts that give the same or other figures', false);
const group = text('group', 'Block of the table');
const wood = text('species', 'Wood, as printed');
const botanical = text('botanical_name', 'Botanical name, as printed');

/** What a statement in words comes to: an assessment rests on these, and not on how the words are put. */
const poreColumns = [
  text(
    'arrangement',
    'What it says of the arrangement of the pores, as read here: ring-porous, semi-ring-porous or diffuse-porous',
    false,
  ),
  text(
    'openness',
    'What it says of how open a planed face is, as read here: closed (small pores), plugged (by tyloses) or open',
    false,
  ),
];

const shrinkageColumns = [
  number('radial_pct', 'Radial shrinkage, green to ovendry, of the green dimension', '%'),
  number('tangential_pct', 'Tangential shrinkage, green to ovendry, of the green dimension', '%'),
  number('volumetric_pct', 'Volumetric shrinkage, green to ovendry, of the green volume', '%'),
];

/** The published tables that species records join to: what each file transcribes and what its columns hold. */
export const tables: readonly TableDefinition[] = [
  {
    name: 'shrinkage-domestic',
    room: 'species',
    title: 'Shrinkage of woods of the United States, green to ovendry',
    source: 'fpl-gtr-190',
    locator: 'Table 4-3',
    notes: [
      'Percent of the green dimension, not of the dry one.',
      'The table has the same number in the 2021 edition; 31 rows compared are equal. Each row names the edition in which it was read.',
      'Coast Douglas-fir is the wood grown west of the Cascade summit in Oregon and Washington (from memory).',
      'Baldcypress is absent from the softwood column of the text read; its row rests on Table 16-1 and memory.',
      'Volume is more than 1.5 points from 1 − (1 − R)(1 − T)(1 − 0.001) in 13 rows; see the Checks page.',
    ],
    columns: [group, wood, ...shrinkageColumns, edition(), evidence, seen],
  },
  {
    name: 'shrinkage-imported',
    room: 'species',
    title: 'Shrinkage of woods imported into the United States, green to ovendry',
    source: 'fpl-gtr-190',
    locator: 'Table 4-4',
    notes: [
      'Percent of the green dimension, not of the dry one.',
      'The values come from world literature and may not be a species average (from memory of the footnote).',
      'Location: AF Africa, AM tropical America, AS Asia and Oceania. Azobe is printed AM; the tree is African.',
      'In nine rows, yellow meranti to ovangkol, the values were read but the label lay past the cut of the text; it was assigned in the printed order.',
      'Volume is more than 1.5 points from 1 − (1 − R)(1 − T)(1 − 0.001) in 14 rows; see the Checks page.',
    ],
    columns: [
      wood,
      botanical,
      ...shrinkageColumns,
      text('location', 'Where it grows: AF, AM or AS'),
      edition(),
      text('label', 'assigned, where the name lay past the cut of the text', false),
      evidence,
      seen,
      also,
    ],
  },
  {
    name: 'dimensional-change-coefficients',
    room: 'species',
    title: 'Coefficients of dimensional change',
    source: 'fpl-gtr-190',
    locator: 'Table 13-5',
    notes: [
      'Change of the dimension at 10 % moisture content for a change of 1 % in moisture content; valid from 6 to 14 %.',
      'Shrinkage is taken to start at 30 %, but at 22 % for northern white-cedar, western redcedar, redwood and teak (from memory; the formula reproduces the rows).',
      'Five rows of the 2010 edition do not follow from the shrinkage of their own wood in Table 4-3: green ash, sweet birch, cedar elm, black maple and black oak. They print the value of another wood of the group.',
      'The 2021 edition has rows of their own for white oak and northern red oak, where 2010 had commercial white oak and commercial red oak; a text that quotes it says that every row of 2021 follows from Table 4-3. Each row names its edition.',
      'No text of the imported block was read, and it does not rest on Table 4-4, so nothing can check it. Three to five of its rows may be missing.',
    ],
    columns: [
      group,
      wood,
      number('cr_per_pct_mc', 'Radial coefficient', '1', true),
      number('ct_per_pct_mc', 'Tangential coefficient', '1', true),
      number('shrinkage_start_mc_pct', 'Moisture content at which shrinkage is taken to start', '%', true),
      text('check', 'Whether the row follows from Table 4-3'),
      edition(),
      evidence,
      seen,
    ],
  },
  {
    name: 'hardness-domestic',
    room: 'species',
    title: 'Specific gravity and side hardness of woods of the United States',
    source: 'fpl-gtr-190',
    locator: 'Tables 5-3a and 5-3b',
    notes: [
      'Specific gravity on ovendry mass and the volume at the moisture content stated. Side hardness is the Janka ball test.',
      'The mark and the edition of the row are for specific gravity and newtons; the pounds have a mark and an edition of their own. Newtons are left empty where they were not read.',
      'Two tables of one edition disagree on yellow birch (3,600 N and 780 lbf, green) and red spruce (1,600 and 2,200 N; 340 and 530 lbf); the Checks page shows both.',
      'The species table of the national forest inventory, which cites the handbook, has other specific gravities for black, Sitka and white spruce and for cherrybark oak at 12 %.',
      'Averages of small clear specimens; coefficient of variation 20 % for side hardness and 10 % for specific gravity (Table 5-6, quoted).',
      'Western white pine: Table 5-3a prints 0.36 green and 0.35 at 12 %, an impossible order; the row has the 0.35 and 0.38 of Table 5-3b.',
      'The tables have the same numbers in the 2010 and the 2021 edition.',
    ],
    columns: [
      group,
      wood,
      number('sg_green', 'Specific gravity, green', '1'),
      number('sg_12pct', 'Specific gravity, 12 % moisture content', '1'),
      text('sg_table', 'Table in which the specific gravity was read'),
      number('side_hardness_green_N', 'Side hardness, green (Table 5-3a)', 'N'),
      number('side_hardness_12pct_N', 'Side hardness, 12 % moisture content (Table 5-3a)', 'N'),
      edition('edition', 'specific gravity and newtons'),
      number('side_hardness_green_lbf', 'Side hardness, green (Table 5-3b)', '[lbf_av]'),
      number('side_hardness_12pct_lbf', 'Side hardness, 12 % moisture content (Table 5-3b)', '[lbf_av]'),
      edition('edition_lbf', 'the pounds'),
      evidence,
      seenPounds,
      seen,
      also,
    ],
  },
  {
    name: 'hardness-imported',
    room: 'species',
    title: 'Specific gravity and side hardness of imported woods',
    source: 'fpl-gtr-190',
    locator: 'Tables 5-5a and 5-5b',
    notes: [
      'Values are from world literature, not from tests of the Forest Products Laboratory.',
      'Specific gravity is printed once for a wood, on ovendry mass and green volume; we take it so on whichever line it stands.',
    ],
    columns: [
      wood,
      botanical,
      text('moisture_content', 'Moisture content of the line: green, 12 % or 15 %'),
      number('specific_gravity', 'Specific gravity', '1'),
      number('side_hardness_N', 'Side hardness (Table 5-5a)', 'N'),
      edition('edition', 'specific gravity and newtons'),
      number('side_hardness_lbf', 'Side hardness (Table 5-5b)', '[lbf_av]'),
      edition('edition_lbf', 'the pounds'),
      evidence,
      seen,
      also,
    ],
  },
  {
    name: 'porosity-table-16-1',
    room: 'species',
    title: 'Characteristics of woods for painting and finishing',
    source: 'fpl-gtr-190',
    locator: 'Table 16-1',
    notes: [
      'Many rows are for a group of woods; such a row is shown as a group value and gives no figure of one wood.',
      'Codes: A abrupt, G gradual, D diffuse-porous, R ring-porous, SR semi-ring-porous (the legend is from memory). The letters rest on one text copy.',
      'The column headed dry is taken as 12 % moisture content: 30 of 32 values equal those of Table 5-3a at 12 %.',
      'Basswood is printed 7.8 and 5.9 here, 9.3 and 6.6 in Table 4-3. The white oak group has the shrinkage of bur oak.',
    ],
    columns: [
      group,
      wood,
      number('sg_green', 'Specific gravity, green', '1', true),
      number('sg_dry', 'Specific gravity, dry', '1', true),
      text('tangential_pct', 'Tangential shrinkage, percent, green to ovendry; two woods where a range is printed'),
      text('radial_pct', 'Radial shrinkage, percent, green to ovendry; two woods where a range is printed'),
      text('paintability', 'Ease of keeping it painted, I the easiest'),
      text('transition_code', 'Earlywood to latewood, or arrangement of pores, as coded'),
      text('transition_meaning', 'The code in words'),
      text('latewood_over_third_of_ring', 'Whether latewood takes more than a third of the ring'),
      text('heartwood_colour', 'Colour of the heartwood'),
      seen,
    ],
  },
  {
    name: 'pores-and-tyloses',
    room: 'species',
    title: 'Pores and tyloses, in the words of several works',
    notes: [
      'Each row names its own work.',
      'The three lists of pore arrangement agree except on cherry: diffuse-porous in Table 16-1, intermediate in Record.',
    ],
    columns: [
      text('species_or_group', 'Wood or group, as printed'),
      text('trait', 'What is stated'),
      text('value', 'The statement'),
      ...poreColumns,
      text('source', 'The work and the place in it'),
      seen,
    ],
  },
  {
    name: 'oak-pores-mo-312',
    room: 'species',
    title: 'Pores of the red and white oaks',
    source: 'mo-312',
    locator: 'chapter 3, wood identification',
    notes: ['The page of the white oaks was read whole; of the red oaks only the end of the passage.'],
    columns: [
      text('species_or_group', 'Wood or group, as printed'),
      text('trait', 'What is stated'),
      text('value', 'The statement'),
      ...poreColumns,
      text('section', 'Section of the manual'),
      seen,
    ],
  },
  {
    name: 'decay-resistance',
    room: 'species',
    title: 'Resistance of heartwood to decay, in three groups',
    notes: [
      'Heartwood only; the sapwood of every wood is nonresistant.',
      'Each row names its own work. The two works on domestic woods agree except on baldcypress (old growth) and the junipers.',
      'The groups are three, as in 1967 and 1999; Table 14-1 of the 2010 edition parts very resistant from resistant.',
      'Where a row names another place than Table 14-1 or the list of 1967, its group follows from the words in its note, and Table 14-1 itself was not read.',
    ],
    columns: [
      text('origin', 'Domestic or imported'),
      text('species_or_group', 'Wood or group, as printed'),
      text('heartwood_group', 'Group of the three'),
      text('note', 'What the text adds, or the words from which the group follows', false),
      text('source', 'The work'),
      text('place', 'Place in the work, where the row’s name is not the place', false),
      seen,
      also,
    ],
  },
  {
    name: 'other-sources',
    room: 'species',
    title: 'Figures of other public documents',
    notes: [
      'Each figure stands by itself and names its document; the table is not meant to be complete.',
      'A value is kept as printed, so it may be a range or a few words.',
      'Shrinkage to 12 % moisture content, or with no end point stated, is not comparable with shrinkage to ovendry.',
      'Ball hardness of 1914 is radial and tangential, of green wood; design values are for groups of lumber.',
      'The figures of 1914 are of single shipments, often of five trees; the handbook’s averages stand before them.',
      'The species table of the national forest inventory keeps the figures of Research Note NRS-38; its reference 1 is the handbook, and the list of its other references was not read.',
    ],
    columns: [
      wood,
      text('botanical_name', 'Botanical name, as printed', false),
      text('property', 'What was measured or stated'),
      text('value', 'The value, as printed'),
      text('unit', 'Unit, as printed', false),
      text('condition', 'Moisture content or other condition', false),
      text('document', 'The document'),
      text('page', 'Place in the document'),
      seen,
    ],
  },
  treesTable,
  ...worldTables,
  {
    name: 'species-toxicity',
    room: 'species',
    title: 'Effects of dust, splinters and sap',
    notes: [
      'A row that says no statement was read does not say that the wood is harmless.',
      'The documents speak of working the wood, not of eating from it.',
    ],
    columns: [
      wood,
      botanical,
      text('effect', 'The statement'),
      text('kind', 'What it acts on'),
      text('sensitising', 'Whether it speaks of allergy or dermatitis and not of irritation alone: yes or no', false),
      text('document', 'The document'),
      text('page', 'Place in the document'),
      seen,
    ],
  },
  {
    name: 'trgs-907',
    room: 'species',
    title: 'Wood dusts given as examples of possible sensitisers',
    source: 'trgs-907',
    locator: 'Annex 2',
    notes: [
      'Sh skin, Sa airways, Sah both.',
      'The list calls itself examples, not complete. It concerns dust at work, not eating from a board.',
    ],
    columns: [
      text('botanical_name', 'Botanical name'),
      text('common_name', 'Common name'),
      text('mark', 'Sh, Sa or Sah'),
      seen,
    ],
  },
  {
    name: 'trgs-906',
    room: 'species',
    title: 'Hardwoods whose dust is treated as carcinogenic',
    source: 'trgs-906',
    locator: 'Annex 1',
    notes: [
      'The list follows IARC Monographs volume 62. It concerns dust at work.',
      'Agathis and Dacrydium are softwoods by botany; the list names them all the same.',
    ],
    columns: [text('taxon', 'Genus or species'), text('common_name', 'Common name', false), seen],
  },
  {
    name: 'machining-quality-1999',
    room: 'species',
    title: 'Machining and related properties of hardwoods',
    source: 'fpl-gtr-113',
    locator: 'chapter 3, after Technical Bulletin 1267 (1962)',
    notes: ['Every row is from memory and nothing can check it; the 2010 and 2021 editions dropped the table.'],
    columns: [
      wood,
      number('planing_perfect_pct', 'Planing: perfect pieces', '%'),
      number('shaping_good_to_excellent_pct', 'Shaping: good to excellent pieces', '%'),
      number('turning_fair_to_excellent_pct', 'Turning: fair to excellent pieces', '%'),
      number('boring_good_to_excellent_pct', 'Boring: good to excellent pieces', '%'),
      number('mortising_fair_to_excellent_pct', 'Mortising: fair to excellent pieces', '%'),
      number('sanding_good_to_excellent_pct', 'Sanding: good to excellent pieces', '%'),
      number('steam_bending_unbroken_pct', 'Steam bending: unbroken pieces', '%'),
      number('nail_splitting_free_pct', 'Nail splitting: pieces free from complete splits', '%'),
      number('screw_splitting_free_pct', 'Screw splitting: pieces free from complete splits', '%'),
      seen,
    ],
  },
];

/** Column that holds the printed label by which a record names a row. */
export function labelColumn(table: string): string {
  if (table === 'trgs-907') return 'botanical_name';
  if (table === 'trgs-906') return 'taxon';
  if (table === 'pores-and-tyloses' || table === 'oak-pores-mo-312' || table === 'decay-resistance')
    return 'species_or_group';
  return 'species';
}
