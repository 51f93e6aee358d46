import type { Caution } from './figure.ts';
import { finishCautions } from './finish-cautions.ts';
import { cutterCautions, machineGuards, shopCautions } from './machine-cautions.ts';
import { resinCautions } from './resin-cautions.ts';

/**
 * What can hurt somebody or spoil the work in choosing, salvaging, shaping, filling and finishing a board, once for the whole site.
 *
 * Each says what happens, what to do, and where it was read. Limits bind employers; for a lone shop they are the best
 * published yardstick, not a law. The citation is for the rule or figure in the text; the advice around it, and all of
 * a caution without a citation, is common practice.
 */
export const cautions: readonly Caution[] = [
  {
    id: 'wood-dust',
    level: 'danger',
    text: 'Wood dust causes cancer in humans (IARC group 1). Extract it at the tool, wear a fitted particle mask while machining and sanding and while emptying the extractor, and vacuum rather than sweep. OSHA’s wood-dust page quotes the NIOSH limit, 1 mg/m³ of air as an average over the working day.',
    basis: 'published',
    citation: { source: 'iarc-62', locator: 'overall evaluation', seen: 'source-text' },
  },
  {
    id: 'sensitising-woods',
    level: 'danger',
    text: 'Some woods sensitise skin or airways: after that, a little dust is enough. Germany’s list of examples names teak, iroko, rosewoods, cocobolo, African blackwood, African mahogany (Khaya anthotheca), limba, obeche and western red cedar, and calls itself incomplete. Look the wood up before you cut it, cover your skin, and stop at the first rash or wheeze and see a doctor.',
    basis: 'published',
    citation: { source: 'trgs-907', locator: 'Annex 2', seen: 'source-text' },
  },
  {
    id: 'lead-paint',
    level: 'danger',
    text: 'Old paint may hold lead: in the United States paint counts as lead-based from 1.0 mg/cm² or 0.5 % by weight, and housing built before 1978 is suspect. Never sand, plane, scrape dry or burn paint that has not been tested; have it tested, or leave the board. Children and pregnant women are hurt most and must stay away.',
    basis: 'published',
    citation: { source: 'cfr-40-745', locator: '745.103', seen: 'source-text' },
  },
  {
    id: 'treated-wood',
    level: 'danger',
    text: 'Preservative-treated wood never belongs in a board that touches food. The consumer sheet for arsenical treatments rules out cutting boards and counter tops, and burning. A green or brown tint, incision marks, a stamp, an oily smell, or a past as deck, fence, sleeper, pole or cooling tower are reasons to leave it. If you cannot rule treatment out, leave it.',
    basis: 'published',
    citation: { source: 'epa-cis-arsenical', seen: 'quoted' },
  },
  {
    id: 'pallets',
    level: 'danger',
    text: 'On a pallet or crate look for the ISPM 15 mark: HT means heat-treated, MB means fumigated with methyl bromide. Do not use wood marked MB, and none without a mark. HT says that the core was held at 56 °C for 30 minutes against pests (FPL-RP-607); it does not say that the wood is dry, clean or unsprayed, or what was spilled on it since.',
    basis: 'published',
    citation: { source: 'cfr-7-319-40', locator: '319.40-3(b)(2)', seen: 'source-text' },
  },
  {
    id: 'metal-in-stock',
    level: 'danger',
    text: 'Nails, staples, screws and shot hide in salvaged wood. A hit can throw metal, chip a carbide tooth and spark in the extractor. Pull what you see, brush off grit, then go over every face with a metal detector, and again after each pass that uncovers new wood. A blue-black stain in oak or walnut is often iron. Wear eye protection.',
    basis: 'shop-practice',
  },
  {
    id: 'powder-post',
    level: 'warning',
    text: 'Pin holes with flour-fine dust mean powder-post beetles, which live in the dry sapwood of open-pored hardwoods. Fresh dust means that they are alive: keep the board out of the shop and away from furniture. Heat treatment to the pallet rule practically removes them, with some exceptions.',
    basis: 'published',
    citation: { source: 'fpl-gtr-190', locator: 'Table 20-1', seen: 'source-text' },
  },
  {
    id: 'machining-wide-boards',
    level: 'danger',
    text: 'Keep the guard, riving knife or spreader and anti-kickback fingers in place, flatten a wide board with a sled or a router over rails rather than past a guard, never joint or plane a piece shorter than the machine’s manual allows, and keep push blocks between hand and cutter. A cupped board ripped cup-up or cup-down without a flat bearing face can close on the blade and be thrown. Wear eye and hearing protection. Learn each machine from somebody who teaches it; your machine’s manual comes first.',
    basis: 'published',
    citation: { source: 'cfr-29-1910-213', locator: '(c), (h), (j), (n)', seen: 'source-text' },
  },
  {
    id: 'rigid-inlay',
    level: 'warning',
    text: 'Cured resin does not follow the wood. Where an inlay runs across the grain the wood will swell and shrink against it every year, and something gives: the bond, the resin or the board. Run a rigid inlay along the grain, keep it narrow across the grain, or leave the wood room to move.',
    basis: 'shop-practice',
  },
  {
    id: 'food-wording',
    level: 'warning',
    text: 'No rule certifies a wood, an oil or a board as such, so do not sell one with a promise that it is safe for food. The FDA Food Code names hard maple or an equally hard, close-grained wood for cutting boards, and binds food establishments where a state adopts it. Your local code and the maker’s data sheet decide.',
    basis: 'published',
    citation: { source: 'fda-food-code', locator: '4-101.17(B)', seen: 'quoted' },
  },
  ...machineGuards,
  ...cutterCautions,
  ...shopCautions,
  ...resinCautions,
  ...finishCautions,
];

const byId = new Map(cautions.map((caution) => [caution.id, caution]));

/** The caution with this id, for example `wood-dust`. */
export function cautionById(id: string): Caution | undefined {
  return byId.get(id);
}
