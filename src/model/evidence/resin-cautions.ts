import { practice, published } from './caution-words.ts';
import type { Caution } from './figure.ts';

/** What resin and hardener do to skin, eyes and airways before they are cured. */
const contact: readonly Caution[] = [
  published(
    'resin-skin',
    'danger',
    'Uncured resin and hardener can make skin allergic, and once sensitised it is likely to stay so for life: after that a trace is enough. Touch neither: nitrile gloves, changed as soon as they are wet, long sleeves, eye protection. At the first rash stop, and see a doctor with both safety data sheets.',
    { source: 'hse-contact-dermatitis', seen: 'source-text' },
  ),
  published(
    'resin-gloves',
    'danger',
    'A glove delays resin and does not stop it. A reference work on skin at work calls rubber gloves poor protection against epoxies, and names laminated plastic or thick reusable nitrile. Thin nitrile is for splashes: change it at every splash and between cups, never wear it twice. The safety data sheet names the glove for your resin.',
    { source: 'epoxy-skin-disease', locator: 'abstract', seen: 'source-text' },
  ),
  published(
    'hardener-burns',
    'danger',
    'Sheets of amine hardeners carry H314, causes severe skin burns and eye damage, and H317, may cause an allergic skin reaction; those of the resin H315, H317 and H319. Goggles while pouring out. In the eye: running water at once and without stopping, while somebody calls for medical help. Your own sheets come first.',
    { source: 'clp-1272-2008', locator: 'statements as makers’ sheets give them', seen: 'quoted' },
  ),
  practice(
    'resin-off-skin',
    'danger',
    'Never take resin off skin with a solvent: it strips the skin’s own fat and carries the resin in. Wipe off what you can with dry paper, then soap and plenty of water, at once.',
  ),
  published(
    'resin-air',
    'danger',
    'Vapour of hardeners and of thinners in the resin can cause skin allergy through the air, and warm resin gives off more. Let fresh air move through, away from your face; do not lean over the pour. A particle mask holds back no vapour. Whoever had a rash or a wheeze from resin stays out of the room.',
    { source: 'epoxy-skin-disease', locator: 'abstract', seen: 'source-text' },
  ),
  practice(
    'resin-class',
    'warning',
    'In a class the teacher pours the hardener. Children do not handle uncured resin, nobody eats or drinks at that bench, the sheets lie open on it, and leftover parts go home with nobody.',
  ),
];

/** Heat: of the cure itself, of spilt hardener and of the tool held over the pour. */
const heat: readonly Caution[] = [
  published(
    'resin-cup-heat',
    'danger',
    'Mixed resin left in a mass heats itself. In a university laboratory about 1.5 lb (0.68 kg) in a reservoir in an oven ran past 900 °F (482 °C), and two buildings were emptied. Pour at once; spread what is left wide and shallow. A cup that grows warm goes outdoors while it can still be held, onto bare concrete or earth, no lid; stand away, upwind. If it smokes or foams, leave it: everybody out, door shut, fire service.',
    { source: 'udel-epoxy-smoke', seen: 'source-text' },
  ),
  published(
    'deep-pour',
    'danger',
    'A pour that is too deep or too warm runs away as a cup does: it yellows, cracks, foams, smokes. A maker’s safety page names carbon monoxide, nitrogen oxides and ammonia in the fumes and doubts that a filter mask helps. Stay within the depth on the sheet at your temperature, pour deep places in layers, and stay until it has set and cooled.',
    { source: 'resin-maker-safety', seen: 'quoted' },
  ),
  published(
    'hardener-sawdust',
    'danger',
    'Never soak up hardener with sawdust, chips or paper, and never tip it into a bin that holds them: a maker’s safety page warns that they can heat by themselves until they burn. Use sand, earth or clay granules, and set them outdoors.',
    { source: 'resin-maker-safety', seen: 'quoted' },
  ),
  practice(
    'heat-tool',
    'danger',
    'Keep a torch or hot-air tool about 8 inches (20 cm) off the resin and moving all the time: nearer or at rest it scorches, blows vapour in your face and speeds the cure. A torch is a naked flame: no alcohol, solvent, oily rag or loose dust near it, an extinguisher within reach, hair and sleeves tied back. Set it down on something that does not burn.',
  ),
  practice(
    'warming-resin',
    'warning',
    'Warm thick resin by standing the closed bottle in warm water, never over a flame or in a microwave oven. Keep water out of it. Warm resin sets sooner and heats more.',
  ),
];

/** Dust, powders and what is left over. */
const solids: readonly Caution[] = [
  published(
    'resin-dust',
    'danger',
    'Hardened resin is usually a hazard only when it is burned, cut or sanded: then it is the dust. Resin that has not cured through can make skin and airways allergic to it for life. Sand it only when the maker’s data sheet says that it is cured; extract the dust, wear a fitted particle mask and cover your arms.',
    { source: 'cpwr-epoxy', locator: 'introduction', seen: 'source-text' },
  ),
  published(
    'pigment-dust',
    'warning',
    'Mica and other dry powders hang in the air for hours. NIOSH agreed with a limit of 3 mg/m³ of air for respirable mica dust over a working day. Spoon them in close above the cup, fan off, mask on, lid back at once, and wipe up wet. Use no powder whose maker does not say what is in it.',
    { source: 'niosh-pel-mica', seen: 'source-text' },
  ),
  published(
    'resin-food',
    'warning',
    'We found no rule that clears a resin inlay in wood. 21 CFR 175.300 speaks of coatings that lie as a continuous film between food and what is under it, by recipe, cure and test. So put resin where food does not lie, let it cure by its sheet, ask the makers of resin and pigment for a written declaration, and promise nothing beyond it.',
    { source: 'cfr-21-175-300', locator: '(a)', seen: 'source-text' },
  ),
  practice(
    'resin-waste',
    'warning',
    'Let leftovers cure wide and shallow, outdoors or under your eye, before they go into a bin. Parts that are not mixed, and rags and gloves wet with them, are hazardous waste in many places: ask the town. Nothing goes down a drain.',
  ),
];

/** What can hurt somebody in the work with resin, once for pages and calculators. */
export const resinCautions: readonly Caution[] = [...contact, ...heat, ...solids];
