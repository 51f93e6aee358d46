import type { Caution, Citation } from './figure.ts';

const practice = (id: string, level: Caution['level'], text: string): Caution => ({
  id,
  level,
  text,
  basis: 'shop-practice',
});

const published = (id: string, level: Caution['level'], text: string, citation: Citation): Caution => ({
  id,
  level,
  text,
  basis: 'published',
  citation,
});

/** What resin and hardener do to skin, eyes and airways before they are cured. */
const contact: readonly Caution[] = [
  published(
    'resin-skin',
    'danger',
    'Uncured resin and hardener can make skin allergic, and once sensitised the allergy is likely to stay for life: after that a trace is enough. Touch neither. Nitrile gloves, changed as soon as they are wet, long sleeves, eye protection; gloves off before phone, door or face. At the first rash stop, and see a doctor with both safety data sheets in hand.',
    { source: 'hse-contact-dermatitis', seen: 'source-text' },
  ),
  published(
    'resin-gloves',
    'danger',
    'A glove delays resin and does not stop it. A reference work on occupational skin disease calls rubber gloves poor protection against epoxies and names laminated plastic or thick reusable nitrile. Thin nitrile is for splashes only: change it at every splash and between cups, and never wear it twice. No latex. The safety data sheet names the glove for your resin.',
    { source: 'epoxy-skin-disease', locator: 'abstract', seen: 'source-text' },
  ),
  published(
    'hardener-burns',
    'danger',
    'The hardener is the sharper half. Makers’ sheets of amine hardeners carry H314, causes severe skin burns and eye damage, and H317, may cause an allergic skin reaction; those of the resin H315, H317 and H319. Goggles while pouring out. In the eye: rinse under running water at once and go on rinsing while somebody calls for medical help. Your own sheets say more and come first.',
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
    'Vapour of hardeners and thinners in the resin can cause skin allergy through the air, and warm resin gives off more. Work where fresh air moves through, away from your face, and do not lean over the pour. A particle mask holds back no vapour. Whoever has had a rash or a wheeze from resin stays out of the room.',
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
    'Mixed resin left in a mass heats itself. In a university’s laboratory about 1.5 lb (0.68 kg) in a reservoir in an oven ran past 900 °F (482 °C), and two buildings were emptied of people because of the smoke. So pour at once, and spread what is left wide and shallow. A cup that grows warm goes outdoors while it can still be held, onto bare concrete or earth, without a lid: stand away, upwind. If it smokes or foams, do not carry it: everybody out, door shut, fire service.',
    { source: 'udel-epoxy-smoke', seen: 'source-text' },
  ),
  published(
    'deep-pour',
    'danger',
    'A pour that is too deep or too warm runs away as a cup does: it yellows, cracks, foams and smokes. A maker’s safety page names carbon monoxide, nitrogen oxides and ammonia in those fumes and doubts that a filter mask helps. Stay within the depth that the data sheet allows at your temperature, pour deep places in layers, and watch a pour until it has set and cooled.',
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
    'A torch or hot-air tool over resin: keep it about 8 inches (20 cm) off and moving all the time. Nearer or at rest it scorches, blows vapour in your face, speeds the cure and cracks the rim. A torch is a naked flame: no alcohol, solvent, oily rag or loose dust near it, an extinguisher within reach, and nobody’s sleeve or hair over the board. Never over fresh alcohol ink. Set it down on something that does not burn.',
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
  practice(
    'resin-waste',
    'warning',
    'Let leftovers cure wide and shallow, outdoors or under your eye, before they go into a bin. Parts that are not mixed, and rags and gloves wet with them, are hazardous waste in many places: ask the town. Nothing goes down a drain.',
  ),
];

/** What can hurt somebody in the work with resin, once for pages and calculators. */
export const resinCautions: readonly Caution[] = [...contact, ...heat, ...solids];
