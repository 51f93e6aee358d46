import { practice, published } from './caution-words.ts';
import { finishCautions } from './finish-cautions.ts';
import { cutterCautions, machineGuards, shopCautions } from './machine-cautions.ts';
import { resinCautions } from './resin-cautions.ts';
import type { Caution } from './result.ts';

/**
 * What can hurt somebody or spoil the work in choosing, salvaging, shaping, filling and finishing a board, once for the whole site.
 *
 * Each says in one line what to do, and behind it what happens otherwise and where it was read. Limits bind employers; for a lone shop they are the best
 * published yardstick, not a law. The citation is for the rule or figure in the text; the advice around it, and all of
 * a caution without a citation, is common practice.
 */
export const cautions: readonly Caution[] = [
  published(
    'wood-dust',
    'danger',
    'Extract wood dust at the tool, wear a fitted particle mask, and vacuum instead of sweeping.',
    'Wood dust causes cancer in humans (IARC group 1). Keep the mask on while you empty the extractor. OSHA’s wood-dust page quotes the NIOSH limit, 1 mg/m³ of air as an average over the working day.',
    { source: 'iarc-62', locator: 'overall evaluation', seen: 'source-text' },
  ),
  published(
    'sensitising-woods',
    'danger',
    'Look the wood up before you cut it, cover your skin, and stop and see a doctor at the first rash or wheeze.',
    'Some woods sensitise skin or airways: after that, a little dust is enough. Germany’s list of examples names teak, iroko, rosewoods, cocobolo, African blackwood, African mahogany (Khaya anthotheca), limba, obeche and western red cedar, and calls itself incomplete.',
    { source: 'trgs-907', locator: 'Annex 2', seen: 'source-text' },
  ),
  published(
    'lead-paint',
    'danger',
    'Never sand, plane, scrape dry or burn old paint that has not been tested; have it tested, or leave the board.',
    'Old paint may hold lead: in the United States paint counts as lead-based from 1.0 mg/cm² or 0.5 % by weight, and housing built before 1978 is suspect. Children and pregnant women are hurt most and must stay away.',
    { source: 'cfr-40-745', locator: '745.103', seen: 'source-text' },
  ),
  published(
    'treated-wood',
    'danger',
    'Preservative-treated wood never belongs in a board that touches food, nor in a fire. If you cannot rule treatment out, leave it.',
    'The consumer sheet for arsenical treatments rules out cutting boards and counter tops, and burning. A green or brown tint, incision marks, a stamp, an oily smell, or a past as deck, fence, sleeper, pole or cooling tower are reasons to leave it.',
    { source: 'epa-cis-arsenical', seen: 'quoted' },
  ),
  published(
    'pallets',
    'danger',
    'Use no pallet or crate wood that is marked MB, and none that carries no mark.',
    'In the ISPM 15 mark HT means heat-treated, MB means fumigated with methyl bromide. HT says that the core was held at 56 °C for 30 minutes against pests (FPL-RP-607); it does not say that the wood is dry, clean or unsprayed, or what was spilled on it since.',
    { source: 'cfr-7-319-40', locator: '319.40-3(b)(2)', seen: 'source-text' },
  ),
  practice(
    'metal-in-stock',
    'danger',
    'Go over every face of salvaged wood with a metal detector, again after each pass that uncovers new wood. Wear eye protection.',
    'Nails, staples, screws and shot hide in it. A hit can throw metal, chip a carbide tooth and spark in the extractor. Pull what you see and brush off grit first. A blue-black stain in oak or walnut is often iron.',
  ),
  published(
    'powder-post',
    'warning',
    'Fresh dust in pin holes means living beetles: keep the board out of the shop and away from furniture.',
    'Pin holes with flour-fine dust mean powder-post beetles, which live in the dry sapwood of open-pored hardwoods. Heat treatment to the pallet rule practically removes them, with some exceptions.',
    { source: 'fpl-gtr-190', locator: 'Table 20-1', seen: 'source-text' },
  ),
  published(
    'machining-wide-boards',
    'danger',
    'Guards and riving knife stay on, push blocks stay between hand and cutter, and no piece is shorter than the manual allows.',
    'Flatten a wide board with a sled or a router over rails rather than past a guard. A cupped board ripped cup-up or cup-down without a flat bearing face can close on the blade and be thrown. Wear eye and hearing protection. Learn each machine from somebody who teaches it; your machine’s manual comes first.',
    { source: 'cfr-29-1910-213', locator: '(c), (h), (j), (n)', seen: 'source-text' },
  ),
  practice(
    'rigid-inlay',
    'warning',
    'Run a rigid inlay along the grain, keep it narrow across the grain, or leave the wood room to move.',
    'Cured resin does not follow the wood. Where an inlay runs across the grain the wood will swell and shrink against it every year, and something gives: the bond, the resin or the board.',
  ),
  published(
    'food-wording',
    'warning',
    'Do not sell a board with a promise that it is safe for food: your local code and the maker’s data sheet decide.',
    'No rule certifies a wood, an oil or a board as such. The FDA Food Code names hard maple or an equally hard, close-grained wood for cutting boards, and binds food establishments where a state adopts it.',
    { source: 'fda-food-code', locator: '4-101.17(B)', seen: 'quoted' },
  ),
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
