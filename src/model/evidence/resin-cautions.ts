import { practice, published } from './caution-words.ts';
import type { Caution } from './result.ts';

/** What resin and hardener do to skin, eyes and airways before they are cured. */
const contact: readonly Caution[] = [
  practice(
    'epoxy-only',
    'warning',
    'All of this is for two-part epoxy. Polyester, polyurethane, acrylic and light-cured resins follow other rules: their own sheets alone.',
    'Polyester is set by a peroxide in drops, polyurethane by an isocyanate, light-cured resin by a lamp: other ratios, other heat, other dangers to lungs and eyes, and no figure here holds for them.',
  ),
  published(
    'resin-skin',
    'danger',
    'Touch neither resin nor hardener: nitrile gloves, changed as soon as they are wet, long sleeves, eye protection.',
    'Uncured resin and hardener can make skin allergic, and once sensitised it is likely to stay so for life: after that a trace is enough. At the first rash stop, and see a doctor with both safety data sheets.',
    { source: 'hse-contact-dermatitis', seen: 'source-text' },
  ),
  published(
    'resin-gloves',
    'danger',
    'A thin glove is for splashes: change it at every splash and between cups, never wear it twice.',
    'A glove delays resin and does not stop it. A reference work on skin at work calls rubber gloves poor protection against epoxies, and names laminated plastic or thick reusable nitrile. The safety data sheet names the glove for your resin.',
    { source: 'epoxy-skin-disease', locator: 'abstract', seen: 'source-text' },
  ),
  published(
    'hardener-burns',
    'danger',
    'Goggles while pouring out hardener. In the eye: running water at once, without stopping, while somebody calls for medical help.',
    'Sheets of amine hardeners carry H314, causes severe skin burns and eye damage, and H317, may cause an allergic skin reaction; those of the resin H315, H317 and H319. Your own sheets come first.',
    { source: 'clp-1272-2008', locator: 'statements as makers’ sheets give them', seen: 'quoted' },
  ),
  practice(
    'resin-off-skin',
    'danger',
    'Resin on the skin: wipe with dry paper, then soap and plenty of water, at once. Never a solvent.',
    'A solvent strips the skin’s own fat and carries the resin in.',
  ),
  published(
    'resin-air',
    'danger',
    'Let fresh air move through, away from your face. Whoever had a rash, a wheeze or asthma from resin stays out of the room.',
    'Vapour of hardeners and of thinners in the resin can cause skin allergy through the air, and warm resin gives off more. A particle mask holds back no vapour; the sheet names the filter. Do not lean over the pour, and let no pour cure in a room that people, children or pets live in.',
    { source: 'epoxy-skin-disease', locator: 'abstract', seen: 'source-text' },
  ),
  practice(
    'resin-class',
    'warning',
    'In a class the teacher pours the hardener, nobody eats or drinks at that bench, and leftover parts go home with nobody.',
    'Children do not handle uncured resin. The sheets lie open on the bench. Ask everybody in writing beforehand about rashes from resin or glue and about asthma.',
  ),
  published(
    'isocyanates',
    'danger',
    'A hardener or accelerator that lists an isocyanate is not for a home shop without the protection that its sheet names.',
    'Hardeners of two-part hard-wax oils and varnishes, polyurethane resins and some glues contain isocyanates. NIOSH warns of serious or fatal disease of the lungs, and once sensitised, a trace can bring on asthma. Section 2 and 3 of the safety data sheet say whether yours does.',
    { source: 'niosh-diisocyanates', seen: 'quoted' },
  ),
];

/** Heat: of the cure itself, of spilt hardener and of the tool held over the pour. */
const heat: readonly Caution[] = [
  published(
    'resin-cup-heat',
    'danger',
    'Mix, pour at once, spread what is left wide and shallow. Cup warm? Outdoors while it can be held, on bare concrete, no lid. Smoke? Leave it, all out.',
    'Mixed resin left in a mass heats itself. In a university laboratory about 1.5 lb (0.68 kg) in a reservoir in an oven ran past 900 °F (482 °C), and two buildings were emptied. Stand away from a hot cup, upwind. If it smokes or foams, or is too hot to hold: everybody out, door shut, fire service.',
    { source: 'udel-epoxy-smoke', seen: 'source-text' },
  ),
  published(
    'deep-pour',
    'danger',
    'Stay within the depth on the sheet at your temperature, pour deep places in layers, and stay until it has set and cooled.',
    'A pour that is too deep or too warm runs away as a cup does: it yellows, cracks, foams, smokes. A maker’s safety page names carbon monoxide, nitrogen oxides and ammonia in the fumes and doubts that a filter mask helps.',
    { source: 'resin-maker-safety', seen: 'quoted' },
  ),
  published(
    'hardener-sawdust',
    'danger',
    'Spilt hardener: sand, earth or clay granules, then outdoors. Never sawdust, chips or paper, nor a bin that holds them.',
    'A maker’s safety page warns that hardener in sawdust, chips or paper can heat by itself until it burns. Drips of mixed resin may be wiped with paper that is then spread out singly.',
    { source: 'resin-maker-safety', seen: 'quoted' },
  ),
  practice(
    'heat-tool',
    'danger',
    'Keep a torch or heat gun about 8 inches (20 cm) off the resin and moving all the time; no alcohol, solvent, oily rag or dust near.',
    'Nearer or at rest it scorches, blows vapour in your face and speeds the cure. A torch is a naked flame: an extinguisher within reach, hair and sleeves tied back. Set it down on something that does not burn.',
  ),
  practice(
    'warming-resin',
    'warning',
    'Warm thick resin by standing the closed bottle in warm water, never over a flame or in a microwave oven.',
    'Keep water out of it. Warm resin sets sooner and heats more.',
  ),
  published(
    'never-burn-resin',
    'danger',
    'Never burn resin, nor wood with resin in or on it, in a stove or a fire pit.',
    'The EPA asks never to burn plastic or treated wood at home, since it makes harmful chemicals; cured resin is a plastic. Offcuts with resin go into the rubbish once they have cured.',
    { source: 'epa-burn-wise', seen: 'source-text' },
  ),
];

/** Dust, powders and what is left over. */
const solids: readonly Caution[] = [
  published(
    'resin-dust',
    'danger',
    'No machine on resin before the full cure on its sheet; for the next coat sand by hand. Extract the dust, wear a fitted particle mask, cover your arms.',
    'Hardened resin is usually a hazard only when it is burned, cut or sanded: then it is the dust. Resin that has not cured through can make skin and airways allergic to it for life. Between coats it is only hard enough to sand: then wet, or with mask and gloves.',
    { source: 'cpwr-epoxy', locator: 'introduction', seen: 'source-text' },
  ),
  published(
    'pigment-dust',
    'warning',
    'Spoon dry powder in close above the cup: fan off, mask on, lid back at once, wipe up wet.',
    'Mica and other dry powders hang in the air for hours. NIOSH agreed with a limit of 3 mg/m³ of air for respirable mica dust over a working day. Use no powder whose maker does not say what is in it.',
    { source: 'niosh-pel-mica', seen: 'source-text' },
  ),
  published(
    'resin-food',
    'warning',
    'Put resin where food does not lie, let it cure by its sheet, and promise nothing beyond the makers’ written declarations.',
    'We found no rule that clears a resin inlay in wood. 21 CFR 175.300 speaks of coatings that lie as a continuous film between food and what is under it, by recipe, cure and test. Ask the makers of resin and pigment for a written declaration.',
    { source: 'cfr-21-175-300', locator: '(a)', seen: 'source-text' },
  ),
  practice(
    'resin-waste',
    'warning',
    'Let leftovers cure wide and shallow, outdoors or under your eye, before they go into a bin. Nothing goes down a drain.',
    'Parts that are not mixed, and rags and gloves wet with them, are hazardous waste in many places: ask the town.',
  ),
  practice(
    'resin-storage',
    'warning',
    'Store resin and hardener closed, dated, at room temperature, locked away from children; try old bottles in a test cup.',
    'Cold makes resin cloudy and grainy, air darkens hardener and draws water and carbon dioxide into it. The sheet gives the shelf life. A test cup mixed as usual must set as hard and as soon as the last one did.',
  ),
];

/** What can hurt somebody in the work with resin, once for pages and calculators. */
export const resinCautions: readonly Caution[] = [...contact, ...heat, ...solids];
