import type { Citation, Figure, Seen, SourceId } from '../evidence/index.ts';
import type { FoodRuleRecord } from './types.ts';

const business =
  'Whoever makes, imports or sells an article for food in the European Union, a small shop and a market stall too.';

const read = (source: SourceId, locator: string, seen: Seen = 'source-text'): Citation => ({ source, locator, seen });

function limit(label: string, value: number, unit: string, citation: Citation, note?: string): Figure {
  return { label, value, unit, basis: 'published', citation, ...(note ? { note } : {}) };
}

/** Rules of the European Union: the frame, then what bears on resin. */
export const euRules: readonly FoodRuleRecord[] = [
  {
    id: 'eu-1935-2004',
    market: 'eu',
    short: 'Regulation (EC) 1935/2004',
    title: 'The frame for everything that touches food',
    subject: 'board',
    asks: [
      'Article 3: made by good manufacturing practice, so that in normal or foreseeable use nothing passes into food in an amount that could endanger health, change the food unacceptably, or spoil its taste or smell.',
      'Article 1(2)(c): this also holds for what can reasonably be expected to touch food. A ‘decorative’ board that will carry food is caught (our reading).',
      'Article 6: where the Union has no measure of its own for a material, the law of each member state stands.',
      'Article 15: the words ‘for food contact’, or the use, or the glass-and-fork sign; name and address; a mark by which it can be traced; instructions where they are needed.',
    ],
    onWood:
      'Annex I lists wood as group 17 of 17, beside plastics, varnishes and coatings, adhesives and waxes. No measure of the Union’s own was found for wood or for coatings in general: Article 3 and national law decide.',
    binds: business,
    edition:
      'Articles 1, 3, 6 and 15 and Annex I in the Union’s own text; later amendments not compared. That wood has no measure was read in a laboratory’s summary.',
    figures: [],
    basis: 'published',
    citation: read('eu-1935-2004', 'Articles 1, 3, 6, 15, Annex I'),
  },
  {
    id: 'eu-2024-3190',
    market: 'eu',
    short: 'Regulation (EU) 2024/3190',
    title: 'Bisphenol A and other bisphenols',
    subject: 'resin',
    asks: [
      'Article 3: no bisphenol A in the manufacture of adhesives, rubbers, ion-exchange resins, plastics, printing inks, silicones, varnishes and coatings for food, and no sale of such articles in the Union.',
      'Annex II lets liquid epoxy resin through only as a coating on self-supporting articles of more than 1 000 litres, cleaned first, with no bisphenol A found in the food. A board is no such article.',
      'What is used instead may not hold or give off other bisphenols of the listed hazards.',
    ],
    onWood:
      'Wood itself is not in its scope. A resin inlay is: whether as coating, plastic or adhesive is for a lawyer, and all three are named (our reading). Its first recital says that bisphenol A is the starting substance of the epoxy resins of varnishes and coatings: take it that yours is, until its maker writes that it is not.',
    binds: business,
    edition:
      'Recital 1, Article 1, Annex II and part of Articles 9, 11 and 12; Article 3 as corrected by (EU) 2026/250. In force since 20 January 2025. The dates for articles used again are from summaries: first sold until 20 July 2026, and those left on the market until 20 July 2027.',
    figures: [
      limit(
        'Detection limit for bisphenol A in food',
        0.001,
        'mg/kg',
        read('eu-2024-3190', 'Article 9'),
        'One microgram in a kilogram: in practice, none.',
      ),
      limit(
        'Smallest vessel that epoxy may still line',
        1000,
        'L',
        read('eu-2024-3190', 'Annex II'),
        'More than this.',
      ),
    ],
    basis: 'published',
    citation: read('eu-2024-3190', 'Articles 1, 3 and 9, Annex II'),
  },
  {
    id: 'eu-1895-2005',
    market: 'eu',
    short: 'Regulation (EC) 1895/2005',
    title: 'Epoxy derivatives: BADGE and its kin',
    subject: 'resin',
    asks: [
      'BADGE, the building stone of most epoxy, and its hydrates together keep within 9 mg in a kilogram of food; its chlorohydrins within 1 mg.',
      'Two other epoxy building stones, BFDGE and NOGE, are forbidden.',
    ],
    onWood: 'It does not name wood. It binds plastics, coatings and adhesives.',
    binds: business,
    edition: 'German text, and a summary by Finland’s authority. Later amendments not compared.',
    figures: [
      limit('BADGE and its hydrates in food', 9, 'mg/kg', read('eu-1895-2005', 'Annex I')),
      limit(
        'The same for a surface',
        1.5,
        'mg/dm2',
        read('eu-1895-2005', 'Annex I'),
        'Printed as 9 mg for 6 dm², the surface counted with a kilogram of food.',
      ),
      limit('Chlorohydrins of BADGE in food', 1, 'mg/kg', read('eu-1895-2005', 'Annex I')),
    ],
    basis: 'published',
    citation: read('eu-1895-2005', 'Annex I, Articles 1 to 4'),
  },
  {
    id: 'eu-10-2011',
    market: 'eu',
    short: 'Regulation (EU) 10/2011',
    title: 'Plastics',
    subject: 'resin',
    asks: [
      'Article 12: all that passes from a plastic into the test liquids keeps within 10 mg for each dm² of its surface.',
      'Only substances of the Union’s list; each that has a limit of its own keeps it.',
      'Article 14: where plastic is joined with other materials in layers, these limits do not hold for the plastic layer, and national law may set some.',
    ],
    onWood:
      'It does not name wood, and says nothing of resin cast into wood. Whether an inlay is a plastic article is not settled.',
    binds: business,
    edition: 'Articles 11, 12, 14 and 17; amendments since not compared.',
    figures: [
      limit('Overall migration from plastic', 10, 'mg/dm2', read('eu-10-2011', 'Article 12(1)')),
      limit(
        'Surface counted with a kilogram of food',
        600,
        'cm2',
        read('eu-10-2011', 'Article 17(2)'),
        'Printed as 6 dm².',
      ),
      limit('Usual detection limit', 0.01, 'mg/kg', read('eu-10-2011', 'Article 11(4)')),
    ],
    basis: 'published',
    citation: read('eu-10-2011', 'Articles 11, 12, 14, 17'),
  },
];
