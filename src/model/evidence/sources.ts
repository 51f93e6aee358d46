/** An item of the source list in CSL-JSON (citation style language data, schema 1.0.2); `note` says how the copy was read. */
export interface CslItem {
  readonly id: string;
  readonly type:
    | 'report'
    | 'book'
    | 'chapter'
    | 'article-journal'
    | 'regulation'
    | 'legislation'
    | 'standard'
    | 'dataset'
    | 'webpage';
  readonly title: string;
  readonly author?:
    | readonly { readonly family: string; readonly given?: string }[]
    | readonly { readonly literal: string }[];
  readonly publisher?: string;
  readonly 'container-title'?: string;
  readonly number?: string;
  readonly volume?: string;
  readonly page?: string;
  readonly issued?: { readonly 'date-parts': readonly (readonly number[])[] };
  readonly note?: string;
}

const forestProducts = 'U.S. Department of Agriculture, Forest Service, Forest Products Laboratory';

const list = [
  {
    id: 'fpl-gtr-282',
    type: 'report',
    title: 'Wood handbook: wood as an engineering material (2021 edition)',
    author: [{ literal: 'Forest Products Laboratory' }],
    publisher: forestProducts,
    number: 'General Technical Report FPL-GTR-282',
    issued: { 'date-parts': [[2021]] },
    note: 'Public domain. Read through a digitised copy with printed page numbers.',
  },
  {
    id: 'fpl-gtr-190',
    type: 'report',
    title: 'Wood handbook: wood as an engineering material (2010 edition)',
    author: [{ literal: 'Forest Products Laboratory' }],
    publisher: forestProducts,
    number: 'General Technical Report FPL-GTR-190',
    issued: { 'date-parts': [[2010]] },
    note: 'Public domain. Read in page-by-page text copies that cut long pages short, so the lower part of long tables was not read.',
  },
  {
    id: 'fpl-gtr-113',
    type: 'report',
    title: 'Wood handbook: wood as an engineering material (1999 edition)',
    author: [{ literal: 'Forest Products Laboratory' }],
    publisher: forestProducts,
    number: 'General Technical Report FPL-GTR-113',
    issued: { 'date-parts': [[1999]] },
    note: 'Public domain. No page of this edition was read; what is cited from it is from memory.',
  },
  {
    id: 'fpl-fact-sheets',
    type: 'report',
    title: 'Wood technical fact sheets, after Tropical timbers of the world (Agriculture Handbook 607)',
    author: [{ family: 'Chudnoff', given: 'M.' }],
    publisher: forestProducts,
    number: 'Agriculture Handbook 607',
    issued: { 'date-parts': [[1984]] },
    note: 'Public domain. Read as single sheets, some in text copies.',
  },
  {
    id: 'fpl-gtr-83',
    type: 'report',
    title: 'Hardwoods of North America',
    author: [{ family: 'Alden', given: 'H. A.' }],
    publisher: forestProducts,
    number: 'General Technical Report FPL-GTR-83',
    issued: { 'date-parts': [[1995]] },
    note: 'Public domain. Read as single species sheets in text copies.',
  },
  {
    id: 'record-1914',
    type: 'book',
    title: 'The mechanical properties of wood',
    author: [{ family: 'Record', given: 'S. J.' }],
    publisher: 'John Wiley & Sons',
    issued: { 'date-parts': [[1914]] },
    note: 'Public domain. Its tables follow U.S. Forest Service Circular 213.',
  },
  {
    id: 'browne-1942',
    type: 'report',
    title: 'Painting hardwoods in farm buildings',
    author: [{ family: 'Browne', given: 'F. L.' }],
    publisher: forestProducts,
    issued: { 'date-parts': [[1942]] },
    note: 'Public domain.',
  },
  {
    id: 'hoadley-1998',
    type: 'chapter',
    title: 'Wood as a physical surface for paint application',
    author: [{ family: 'Hoadley', given: 'R. B.' }],
    'container-title': 'Painted wood: history and conservation',
    issued: { 'date-parts': [[1998]] },
    note: 'Page 30 read; the chapter title is from memory.',
  },
  {
    id: 'fpl-0153',
    type: 'report',
    title: 'Comparative decay resistance of heartwood of native species',
    author: [{ literal: 'Forest Products Laboratory' }],
    publisher: forestProducts,
    number: 'Research Note FPL-0153',
    issued: { 'date-parts': [[1967]] },
    note: 'Public domain. Quoted in a magazine; agrees with Navy manual MO-312 except where the row says so.',
  },
  {
    id: 'mo-312',
    type: 'report',
    title: 'Wood protection',
    author: [{ literal: 'U.S. Navy, Naval Facilities Engineering Command' }],
    number: 'MO-312',
    note: 'Public domain. Table 2-1.',
  },
  {
    id: 'fpl-rp-489',
    type: 'report',
    title: 'Shrinkage of softwood lumber with moisture content',
    author: [{ literal: 'Forest Products Laboratory' }],
    publisher: forestProducts,
    number: 'Research Paper FPL-RP-489',
    issued: { 'date-parts': [[1989]] },
    note: 'Public domain. Abstract read; the title is from memory.',
  },
  {
    id: 'fpl-rn-0268',
    type: 'report',
    title: 'Equilibrium moisture content of wood in outdoor locations in the United States and worldwide',
    author: [{ family: 'Simpson', given: 'W. T.' }],
    publisher: forestProducts,
    number: 'Research Note FPL-RN-0268',
    issued: { 'date-parts': [[1998]] },
    note: 'Public domain. One line quoted by an extension specialist.',
  },
  {
    id: 'simpson-1973',
    type: 'article-journal',
    title: 'Predicting equilibrium moisture content of wood by mathematical models',
    author: [{ family: 'Simpson', given: 'W. T.' }],
    'container-title': 'Wood and Fiber',
    volume: '5(1)',
    issued: { 'date-parts': [[1973]] },
    note: 'Abstract read.',
  },
  {
    id: 'nds-2018',
    type: 'standard',
    title: 'National design specification for wood construction, Table 12.3.3A',
    publisher: 'American Wood Council',
    issued: { 'date-parts': [[2018]] },
    note: 'Read through a digitised copy. Lumber-group design values, not species averages.',
  },
  {
    id: 'frim',
    type: 'webpage',
    title: 'Timber properties; wood identification',
    publisher: 'Forest Research Institute Malaysia',
  },
  {
    id: 'guyana-forestry',
    type: 'webpage',
    title: 'Species pages and Guyana woods booklet (2004)',
    publisher: 'Guyana Forestry Commission',
  },
  {
    id: 'queensland-timber',
    type: 'webpage',
    title: 'Wood properties of timber trees',
    publisher: 'Queensland Government',
  },
  {
    id: 'bryce-1967',
    type: 'book',
    title: 'The commercial timbers of Tanzania',
    author: [{ family: 'Bryce', given: 'J. M.' }],
    issued: { 'date-parts': [[1967]] },
    note: 'Quoted in a bearings manual, its Table VI.',
  },
  {
    id: 'ufc-3-130-04',
    type: 'report',
    title: 'Arctic and subarctic construction: foundations for structures (TM 5-852-4)',
    publisher: 'U.S. Department of Defense',
    number: 'UFC 3-130-04',
    note: 'Public domain. Table 2-2, p. 2-28, after the Forest Products Laboratory.',
  },
  {
    id: 'nwfa-a200',
    type: 'report',
    title: 'Wood species used in wood flooring (Technical Publication A200)',
    publisher: 'National Wood Flooring Association',
    issued: { 'date-parts': [[2004]] },
    note: 'Quoted on a flooring page.',
  },
  {
    id: 'cameo',
    type: 'webpage',
    title: 'Conservation and art materials encyclopedia',
    publisher: 'Museum of Fine Arts, Boston',
  },
  {
    id: 'merchant-page',
    type: 'webpage',
    title: 'A timber merchant’s page in the wording of the Forest Products Laboratory sheet, naming no source',
    note: 'Quoted; weak evidence.',
  },
  {
    id: 'general-encyclopedia',
    type: 'webpage',
    title: 'Abstract of a general online encyclopedia carried by a taxonomy site',
    note: 'Quoted; weak evidence.',
  },
  {
    id: 'trgs-907',
    type: 'regulation',
    title: 'TRGS 907: list of sensitising substances, Annex 2 (wood dusts given as examples of possible sensitisers)',
    publisher: 'Ausschuss für Gefahrstoffe (Germany)',
    note: 'Read in an employers’ liability body’s copy. The list calls itself examples, and concerns dust at work.',
  },
  {
    id: 'trgs-906',
    type: 'regulation',
    title: 'TRGS 906: list of carcinogenic activities and processes, Annex 1 (hardwoods)',
    publisher: 'Ausschuss für Gefahrstoffe (Germany)',
    note: 'The list of genera follows IARC Monographs volume 62.',
  },
  {
    id: 'iarc-62',
    type: 'report',
    title: 'IARC Monographs volume 62: Wood dust and formaldehyde',
    publisher: 'International Agency for Research on Cancer',
    issued: { 'date-parts': [[1995]] },
  },
  {
    id: 'iarc-100c',
    type: 'report',
    title: 'IARC Monographs volume 100C: Arsenic, metals, fibres and dusts',
    publisher: 'International Agency for Research on Cancer',
    issued: { 'date-parts': [[2012]] },
  },
  {
    id: 'hse-wis-30',
    type: 'report',
    title: 'Toxic woods (Woodworking Sheet No 30, Revision 1)',
    publisher: 'Health and Safety Executive (United Kingdom)',
    note: 'Opening pages read; its table of species and effects was not seen.',
  },
  {
    id: 'osha-wood-dust',
    type: 'webpage',
    title: 'Wood dust: evaluating exposure',
    publisher: 'U.S. Occupational Safety and Health Administration',
  },
  {
    id: 'eu-2004-37',
    type: 'legislation',
    title: 'Directive 2004/37/EC on carcinogens at work, Annex III, as amended by (EU) 2017/2398',
    publisher: 'European Union',
  },
  {
    id: 'fda-food-code',
    type: 'regulation',
    title: 'FDA Food Code, chapter 4',
    publisher: 'U.S. Food and Drug Administration',
    issued: { 'date-parts': [[2022]] },
    note: 'Read in state adoptions that quote it, not in the 2022 edition. It binds food establishments where a state adopts it, not home kitchens.',
  },
  {
    id: 'cfr-21-178-3800',
    type: 'regulation',
    title: '21 CFR 178.3800: Preservatives for wood',
    publisher: 'U.S. Food and Drug Administration',
    note: 'Read in the 2015 annual edition.',
  },
  {
    id: 'cfr-40-745',
    type: 'regulation',
    title: '40 CFR 745.103: Lead-based paint, definitions',
    publisher: 'U.S. Environmental Protection Agency',
    note: 'Read in the 2015 annual edition.',
  },
  {
    id: 'cfr-16-1303',
    type: 'regulation',
    title: '16 CFR 1303.1: Ban of lead-containing paint',
    publisher: 'U.S. Consumer Product Safety Commission',
    note: 'Read in the 2015 annual edition.',
  },
  {
    id: 'epa-cca-2003',
    type: 'webpage',
    title: 'Response to requests to cancel certain chromated copper arsenate wood preservative products',
    publisher: 'U.S. Environmental Protection Agency',
    issued: { 'date-parts': [[2003, 3, 17]] },
    note: 'The title is from memory; the notice was read in an archived page.',
  },
  {
    id: 'epa-cis-arsenical',
    type: 'report',
    title: 'Consumer information sheet: inorganic arsenical pressure-treated wood',
    publisher: 'U.S. Environmental Protection Agency',
    note: 'Quoted in full elsewhere.',
  },
  {
    id: 'epa-cis-penta',
    type: 'report',
    title: 'Consumer information sheet: pentachlorophenol pressure-treated wood',
    publisher: 'U.S. Environmental Protection Agency',
    note: 'Read in an appendix of a Forest Service report.',
  },
  {
    id: 'cfr-7-319-40',
    type: 'regulation',
    title: '7 CFR 319.40: Logs, lumber and other wood articles',
    publisher: 'U.S. Department of Agriculture',
    note: 'Read in the 2015 annual edition.',
  },
  {
    id: 'ispm-15',
    type: 'standard',
    title: 'ISPM 15: Regulation of wood packaging material in international trade',
    publisher: 'International Plant Protection Convention',
    issued: { 'date-parts': [[2019]] },
    note: 'Front matter read; the treatment schedule is quoted.',
  },
  {
    id: 'fpl-rp-607',
    type: 'report',
    title: 'Heat sterilization time of ponderosa pine and Douglas-fir boards and square timbers',
    author: [{ literal: 'Forest Products Laboratory' }],
    publisher: forestProducts,
    number: 'Research Paper FPL-RP-607',
    issued: { 'date-parts': [[2003]] },
    note: 'Abstract read; the title is from memory.',
  },
  {
    id: 'cfr-29-1910-213',
    type: 'regulation',
    title: '29 CFR 1910.213: Woodworking machinery requirements',
    publisher: 'U.S. Occupational Safety and Health Administration',
    note: 'Read in the 2015 annual edition. Binds employers.',
  },
  {
    id: 'cfr-29-1910-1000',
    type: 'regulation',
    title: '29 CFR 1910.1000: Air contaminants, Table Z-1',
    publisher: 'U.S. Occupational Safety and Health Administration',
    note: 'Binds employers.',
  },
  {
    id: 'tmy3',
    type: 'dataset',
    title: 'Typical meteorological year 3 (TMY3)',
    publisher: 'U.S. National Renewable Energy Laboratory',
    note: 'Monthly means of the 8,760 hourly values; the months used date from 1976 to 2005. One stitched typical year, not a 30-year normal.',
  },
  {
    id: 'cwec',
    type: 'dataset',
    title: 'Canadian weather year for energy calculation (CWEC 2016 and 2020)',
    publisher: 'Environment and Climate Change Canada',
    note: 'Monthly means of a typical year drawn from up to 30 years.',
  },
  {
    id: 'ashrae-fundamentals',
    type: 'book',
    title: 'ASHRAE handbook: fundamentals, chapter 1, Psychrometrics',
    publisher: 'ASHRAE',
    issued: { 'date-parts': [[2017]] },
    note: 'Through the open-source library PsychroLib, which implements and tests its equations.',
  },
  {
    id: 'wmo-8',
    type: 'report',
    title: 'Guide to instruments and methods of observation',
    publisher: 'World Meteorological Organization',
    number: 'WMO-No. 8',
    note: 'Its form for saturation over water was read where the documentation of an open-source solar-energy library quotes it; title and number are from memory.',
  },
  {
    id: 'nist-sp-811',
    type: 'report',
    title: 'Guide for the use of the International System of Units',
    publisher: 'U.S. National Institute of Standards and Technology',
    number: 'Special Publication 811',
    note: 'Exact conversion factors; not opened, they are definitions known by heart.',
  },
  {
    id: 'ucum',
    type: 'standard',
    title: 'Unified code for units of measure',
    number: '2.2',
    publisher: 'Regenstrief Institute',
  },
  {
    id: 'ahec-grading-guide',
    type: 'report',
    title: 'Guide to American hardwood lumber grades: measurement',
    publisher: 'American Hardwood Export Council',
    note: 'Its section on measurement was read; the title is from memory.',
  },
  {
    id: 'nhla-rules',
    type: 'standard',
    title: 'Rules for the measurement and inspection of hardwood and cypress',
    publisher: 'National Hardwood Lumber Association',
    issued: { 'date-parts': [[2015, 1, 1]] },
    note: 'Opened at its contents only; figures that are its own come through texts that repeat it.',
  },
  {
    id: 'lumber-inspector-article',
    type: 'webpage',
    title: 'A hardwood inspector’s article on measuring and tallying lumber',
    note: 'Quoted; it follows the rules of the National Hardwood Lumber Association.',
  },
  {
    id: 'hardwood-dimensions-table',
    type: 'webpage',
    title: 'Hardwood lumber dimensions, a table of a general engineering reference',
    note: 'Quoted; its figures are those of the hardwood rules on surfaced lumber.',
  },
  {
    id: 'timber-merchant-volumes',
    type: 'webpage',
    title: 'A timber merchant’s page on board feet and cubic metres',
    note: 'Quoted; weak evidence. The figures are arithmetic.',
  },
  {
    id: 'timber-importer-page',
    type: 'webpage',
    title: 'A timber importer’s page on gross and net tally of kiln-dried lumber',
    note: 'Quoted; weak evidence.',
  },
  {
    id: 'sawing-and-drying-forum',
    type: 'webpage',
    title: 'A sawing-and-drying forum answer that cites the hardwood rules on kiln-dried thickness',
    note: 'Quoted; weak evidence.',
  },
  {
    id: 'hardwood-grade-chart',
    type: 'webpage',
    title: 'A merchant’s chart of hardwood grades',
    note: 'Quoted; weak evidence.',
  },
  {
    id: 'ps-20',
    type: 'standard',
    title: 'American softwood lumber standard',
    number: 'PS 20-20, revision 1',
    publisher: 'U.S. National Institute of Standards and Technology',
    issued: { 'date-parts': [[2021, 10]] },
    note: 'Its Table 3 was read in two public repositories that quote it. A later edition, PS 20-25, is reported and disputed.',
  },
  {
    id: 'iso-6344',
    type: 'standard',
    title: 'Coated abrasives: grain size analysis',
    number: 'ISO 6344-2:2021 and ISO 6344-3:2021',
    publisher: 'International Organization for Standardization',
    issued: { 'date-parts': [[2021]] },
    note: 'Previews read; its tables of grain sizes were not seen. FEPA 43 has the same grades.',
  },
  {
    id: 'fepa-43',
    type: 'standard',
    title: 'Grains of fused aluminium oxide, silicon carbide and other abrasive materials for coated abrasives',
    number: 'FEPA 43',
    publisher: 'Federation of European Producers of Abrasives',
    issued: { 'date-parts': [[2006]] },
    note: 'Not seen; the title is from memory. A public table of particle sizes cites it.',
  },
  {
    id: 'ansi-b74-18',
    type: 'standard',
    title: 'Grading of certain abrasive grain on coated abrasive material',
    number: 'ANSI B74.18',
    publisher: 'American National Standards Institute',
    issued: { 'date-parts': [[2016]] },
    note: 'Not seen; the title is from memory. The editions of 2006 and 2016 end at grade 600, by a compiler who read them.',
  },
  {
    id: 'grit-units-dictionary',
    type: 'webpage',
    title: 'An online dictionary of units, entry on sandpaper',
    note: 'Quoted; the excerpt ends at P120. Its inches do not always agree with its micrometres.',
  },
  {
    id: 'grit-comparison-table',
    type: 'webpage',
    title: 'A coating supplier’s grit comparison table',
    note: 'Quoted; whole micrometres.',
  },
  {
    id: 'grit-particle-sizes',
    type: 'dataset',
    title: 'A public source-code table of particle sizes of refractories, citing FEPA 43 (2006)',
    note: 'Quoted.',
  },
  {
    id: 'grit-reference-answer',
    type: 'webpage',
    title: 'A general reference answer page on sandpaper grit',
    note: 'Quoted; weak evidence.',
  },
  {
    id: 'grit-search-judgements',
    type: 'webpage',
    title: 'A public text on judging search results about abrasives',
    note: 'Quoted; weak evidence.',
  },
  {
    id: 'grit-craft-glossary',
    type: 'webpage',
    title: 'A German craft glossary, entry on sandpaper',
    note: 'Quoted; weak evidence.',
  },
  {
    id: 'jis-r-6001',
    type: 'standard',
    title: 'Particle size distribution of micro grains',
    number: 'JIS R 6001:1987',
    publisher: 'Japanese Industrial Standards Committee',
    issued: { 'date-parts': [[1987]] },
    note: 'Quoted on a Japanese technical page. For loose and bonded grain, not for coated abrasives.',
  },
  {
    id: 'crank-1975',
    type: 'book',
    title: 'The mathematics of diffusion (2nd edition)',
    author: [{ family: 'Crank', given: 'J.' }],
    publisher: 'Clarendon Press',
    issued: { 'date-parts': [[1975]] },
    note: 'Not opened. Its series are proved here by substitution and by a time-stepping solution; equation numbers are from memory.',
  },
  {
    id: 'sanchez-ferrer-2026',
    type: 'article-journal',
    title: 'Apparent anisotropic water diffusivity on spruce',
    author: [{ family: 'Sánchez-Ferrer' }, { family: 'Engelhardt' }],
    issued: { 'date-parts': [[2026]] },
    note: 'Abstract read; the title is shortened.',
  },
  {
    id: 'sonderegger-2011',
    type: 'article-journal',
    title:
      'Combined bound water and water vapour diffusion of Norway spruce and European beech in and between the principal anatomical directions',
    author: [{ family: 'Sonderegger' }, { family: 'Vecellio' }, { family: 'Zwicker' }, { family: 'Niemz' }],
    'container-title': 'Holzforschung',
    volume: '65',
    page: '819-828',
    issued: { 'date-parts': [[2011]] },
    note: 'Abstract read; the title is from memory.',
  },
  {
    id: 'simpson-aspen',
    type: 'article-journal',
    title: 'Diffusion coefficient of aspen from adsorption experiments at 43 °C',
    author: [{ family: 'Simpson', given: 'W. T.' }],
    'container-title': 'Wood and Fiber',
    note: 'Abstract read; the title is described, not quoted.',
  },
  {
    id: 'kerf-and-cure',
    type: 'webpage',
    title: 'Derived on this site',
    note: 'A formula or figure of our own, worked out in the open from published ones.',
  },
] as const satisfies readonly CslItem[];

/** Key of a source in the list. */
export type SourceId = (typeof list)[number]['id'];

/** Every source that a figure, equation, check or caution may cite, as CSL-JSON. */
export const sources: readonly CslItem[] = list;

const byId = new Map<string, CslItem>(sources.map((source) => [source.id, source]));

/** The source with this key. */
export function sourceById(id: SourceId): CslItem {
  return byId.get(id) as CslItem;
}

/** Short form for a line beside a number, for example `Wood handbook (2010 edition)`, with its report number. */
export function shortSource(id: SourceId): string {
  const source = sourceById(id);
  const number = source.number
    ? `, ${source.number.replace(/^(General Technical Report|Research Note|Research Paper) /, '')}`
    : '';
  return `${source.title}${number}`;
}
