import type { Citation, Figure, Seen, SourceId } from '../evidence/index.ts';
import type { FoodRuleRecord } from './types.ts';

const establishments =
  'Restaurants and shops, where a state or city adopts it, each with its own changes. Not a home kitchen, and not the maker of a board: but a buyer who serves the public must keep it.';
const substances =
  'Whoever sells the substance or the coated article for use with food in interstate commerce. It lists substances and conditions; it does not look at a board.';
const cfr2015 = 'Annual edition of 2015, in a public archive. Check the current edition.';

function limit(
  label: string,
  value: number,
  unit: string,
  source: SourceId,
  locator: string,
  rest: { seen?: Seen; note?: string } = {},
): Figure {
  const citation: Citation = { source, locator, seen: rest.seen ?? 'source-text' };
  return { label, value, unit, basis: 'published', citation, ...(rest.note ? { note: rest.note } : {}) };
}

const code = (locator: string): Citation => ({ source: 'fda-food-code', locator, seen: 'quoted' });

const foodCode: readonly FoodRuleRecord[] = [
  {
    id: 'food-code-4-101-11',
    market: 'us',
    short: 'FDA Food Code 4-101.11',
    title: 'Characteristics of materials used again and again',
    subject: 'board',
    asks: [
      'Nothing harmful may pass into food from a surface that food touches, nor colour, smell or taste.',
      'The surface is durable, does not absorb, bears repeated washing, is smooth and easy to clean, and resists pitting, chipping, crazing, scratching, scoring, distortion and decay.',
    ],
    onWood: 'Wood absorbs and scores: that is why another section limits it. Resin and film finishes are not named.',
    binds: establishments,
    edition:
      'Read in Washington’s adoption (in force from March 2022), in Chicago’s and in the 1999 edition; not in 2022.',
    figures: [],
    basis: 'published',
    citation: code('4-101.11'),
  },
  {
    id: 'food-code-4-101-17',
    market: 'us',
    short: 'FDA Food Code 4-101.17',
    title: 'Wood, limits of its use',
    subject: 'wood',
    asks: [
      'Wood is not a surface for food, but for a short list of exceptions.',
      'Hard maple, or an equally hard, close-grained wood, may be used for cutting boards and blocks, bakers’ tables and utensils such as salad bowls.',
    ],
    onWood:
      'It names one wood and gives no number for the rest. Washington adds serving surfaces; California and Louisiana add cedar planks for seafood. It says nothing of oil, resin or inlays.',
    binds: establishments,
    edition: 'Read in seven state adoptions that agree; not in the 2022 edition.',
    figures: [],
    basis: 'published',
    citation: code('4-101.17 (A) to (D)'),
  },
  {
    id: 'food-code-4-202-11',
    market: 'us',
    short: 'FDA Food Code 4-202.11',
    title: 'Surfaces that food touches: no open joints',
    subject: 'board',
    asks: [
      'A surface that food touches again and again is smooth, without breaks, open seams, cracks, chips, pits, sharp inner corners or crevices, and can be reached for cleaning.',
    ],
    onWood: 'A gap that opens between wood and resin is an open seam (our reading).',
    binds: establishments,
    edition: 'Read in a copy of the 1999 edition; not in 2022.',
    figures: [],
    basis: 'published',
    citation: code('4-202.11, 1999 edition'),
  },
  {
    id: 'food-code-4-501-12',
    market: 'us',
    short: 'FDA Food Code 4-501.12',
    title: 'Scratched cutting surfaces',
    subject: 'board',
    asks: [
      'A scored block or board that can no longer be cleaned is resurfaced, or thrown away where it cannot be resurfaced.',
    ],
    onWood: 'Wood can be planed again; a thin film over it cannot.',
    binds: establishments,
    edition: 'Read in Washington’s adoption of 2013; not in the 2022 edition.',
    figures: [],
    basis: 'published',
    citation: code('4-501.12'),
  },
];

const cfr = (source: SourceId, locator?: string): Citation => ({
  source,
  seen: 'source-text',
  ...(locator ? { locator } : {}),
});

const coatings: FoodRuleRecord = {
  id: 'cfr-21-175-300',
  market: 'us',
  short: '21 CFR 175.300',
  title: 'Resinous and polymeric coatings',
  subject: 'resin',
  asks: [
    'The coating is a continuous film on metal, or, for repeated use, on any suitable base, where it is a functional barrier between food and base.',
    'Every substance in it stands on the list: drying oils (linseed, tung and walnut among them), epoxy of bisphenol A and epichlorohydrin, named hardeners, driers without lead, colours of 21 CFR 178.3297.',
    'What chloroform takes up of the extract stays within the limit for the use; for repeated use other than a container, as a board is, that is (c)(4).',
    'The extract is made with the liquid and at the time and temperature that the food and use call for. At room temperature: water and 8 % alcohol at 120 °F (49 °C) for 24 hours; heptane, for fat, at 70 °F (21 °C) for 30 minutes, its result divided by five. Hot food calls for hotter tests; dry food for none.',
  ],
  onWood:
    'It does not name wood and does not describe a thick casting. The polyether diamines usual in slow hardeners, and the glycidyl ethers usual as thinners, were not found on the list read. Benzyl alcohol, another usual one, is on it: at most 4 % of the resin, and only for tanks of over 530,000 gallons. So a listed epoxy is not a listed system: only its maker can say.',
  binds: substances,
  edition: cfr2015,
  figures: [
    limit('Limit for a board: repeated use, not a container', 18, 'mg/[sin_i]', 'cfr-21-175-300', '(c)(4)', {
      note: 'Chloroform-soluble extractives, corrected for zinc, of the coated surface. 279 mg/dm².',
    }),
    limit('Limit for a container used again', 18, 'mg/[sin_i]', 'cfr-21-175-300', '(c)(3)', {
      note: 'And 0.005 % of the water that it holds.',
    }),
    limit('Limit for a single-use container over one gallon', 1.8, 'mg/[sin_i]', 'cfr-21-175-300', '(c)(2)', {
      note: 'And 0.005 % of the water that it holds.',
    }),
    limit('Limit for a single-use container up to one gallon', 0.5, 'mg/[sin_i]', 'cfr-21-175-300', '(c)(1)', {
      note: 'And 50 ppm of the water that it holds. Often quoted for boards; it is not theirs.',
    }),
  ],
  basis: 'published',
  citation: cfr('cfr-21-175-300', '(a) to (d)'),
};

const oils: readonly FoodRuleRecord[] = [
  {
    id: 'cfr-21-178-3620',
    market: 'us',
    short: '21 CFR 178.3620',
    title: 'Mineral oil in articles that touch food',
    subject: 'oil',
    asks: [
      '(a) White mineral oil that meets 172.878 may be part of an article that touches food.',
      '(b) Technical white mineral oil may be used only where the listed sections allow it; 175.300 and wood are not among them.',
    ],
    onWood: 'It does not name wood. An oil sold as meeting 172.878 is the one to buy; ‘technical white’ is not.',
    binds: substances,
    edition: `${cfr2015} (a) and (b) again in a copy compared with the electronic CFR in June 2026.`,
    figures: [
      limit('Least Saybolt colour of technical white oil', 20, '1', 'cfr-21-178-3620', '(b)(1)(i)'),
      limit('Greatest UV absorbance at 280 to 289 nm, technical white oil', 4, '1', 'cfr-21-178-3620', '(b)(1)(ii)'),
    ],
    basis: 'published',
    citation: cfr('cfr-21-178-3620', '(a), (b)'),
  },
  {
    id: 'cfr-21-172-878',
    market: 'us',
    short: '21 CFR 172.878',
    title: 'White mineral oil in food',
    subject: 'oil',
    asks: [
      'The oil passes the pharmacopoeia’s tests for carbonizable substances and sulfur, and a limit on UV absorbance.',
      'In food it is limited by use, for example 0.15 % of bakery products.',
    ],
    onWood: 'It is about food. Boards come in through 178.3620(a).',
    binds: substances,
    edition: cfr2015,
    figures: [limit('Most in bakery products', 0.15, '%', 'cfr-21-172-878', '(c)')],
    basis: 'published',
    citation: cfr('cfr-21-172-878'),
  },
];

const waxes: readonly FoodRuleRecord[] = [
  {
    id: 'cfr-21-178-3710',
    market: 'us',
    short: '21 CFR 178.3710',
    title: 'Petroleum wax in articles that touch food',
    subject: 'wax',
    asks: ['The wax keeps within limits of UV absorbance. Then it may be part of an article that touches food.'],
    onWood: 'It does not name wood.',
    binds: substances,
    edition: cfr2015,
    figures: [limit('Greatest UV absorbance at 280 to 289 nm', 0.15, '1', 'cfr-21-178-3710', 'limits')],
    basis: 'published',
    citation: cfr('cfr-21-178-3710'),
  },
  {
    id: 'cfr-21-184-1973',
    market: 'us',
    short: '21 CFR 184.1973',
    title: 'Beeswax in food',
    subject: 'wax',
    asks: ['Beeswax is generally recognised for use in food, within limits by kind of food.'],
    onWood: 'It is about food; it does not speak of wood.',
    binds: substances,
    edition: cfr2015,
    figures: [limit('Most in soft candy, as served', 0.1, '%', 'cfr-21-184-1973', 'limits')],
    basis: 'published',
    citation: cfr('cfr-21-184-1973'),
  },
  {
    id: 'cfr-21-184-1978',
    market: 'us',
    short: '21 CFR 184.1978',
    title: 'Carnauba wax in food',
    subject: 'wax',
    asks: ['Carnauba wax is generally recognised for use in food, with no limit but good manufacturing practice.'],
    onWood: 'It is about food; it does not speak of wood.',
    binds: substances,
    edition: cfr2015,
    figures: [],
    basis: 'published',
    citation: cfr('cfr-21-184-1978'),
  },
  {
    id: 'cfr-21-172-890',
    market: 'us',
    short: '21 CFR 172.890',
    title: 'Rice bran wax in food',
    subject: 'wax',
    asks: ['Rice bran wax melts between 75 and 80 °C and is limited by kind of food.'],
    onWood: 'It is about food; it does not speak of wood.',
    binds: substances,
    edition: cfr2015,
    figures: [limit('Most on candy and fresh produce', 0.005, '%', 'cfr-21-172-890', 'limits', { note: '50 ppm.' })],
    basis: 'published',
    citation: cfr('cfr-21-172-890'),
  },
];

const preservatives: FoodRuleRecord = {
  id: 'cfr-21-178-3800',
  market: 'us',
  short: '21 CFR 178.3800',
  title: 'Preservatives for wood that holds raw produce',
  subject: 'wood',
  asks: [
    'Only the few preservatives of its list, for wood that holds raw produce. Arsenicals and creosote are not on it.',
  ],
  onWood: 'It is about crates. For salvaged wood it says what treatment rules a board out.',
  binds: substances,
  edition: cfr2015,
  figures: [
    limit('Most pentachlorophenol in the treated wood', 0.005, '%', 'cfr-21-178-3800', 'list', {
      note: '50 parts per million by weight.',
    }),
  ],
  basis: 'published',
  citation: cfr('cfr-21-178-3800'),
};

/** Rules of the United States, the Food Code first. */
export const usRules: readonly FoodRuleRecord[] = [...foodCode, coatings, ...oils, ...waxes, preservatives];
