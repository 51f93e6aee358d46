import { expect, test } from 'vitest';
import { cautionIdsOf } from '../../bench/readable.ts';
import { howTo } from './how-to.ts';

// What can hurt, and where a page says so. A page may be shortened; none of these may go with it.

/** What can hurt, the page that must say it, and by what it says it: a sentence, or the caution that it shows. */
const hazards: readonly (readonly [what: string, page: string, said: RegExp | { caution: string }])[] = [
  [
    'a bit that still turns is lifted or set down',
    'routing-to-a-template',
    /Nobody sets a router down, lifts it or reaches in before it has stopped/,
  ],
  ['a plunge bit that is left down', 'making-the-pocket', /Bit up, motor off, wait for silence, then lift/],
  [
    'hair, cuffs, rings and cords at a router',
    'routing-to-a-template',
    /hair tied back; no loose cuffs, rings, bracelets or cords/,
  ],
  [
    'lead and hose in the way, and somebody who talks',
    'routing-to-a-template',
    /One person at a router.+Lead and hose behind them, floor clear/,
  ],
  ['a chip in an eye', 'routing-to-a-template', /goggles or a shield, on everybody in the room/],
  ['a climb cut', 'routing-to-a-template', /A climb cut.+snatches the work/],
  ['a bearing in the air', 'routing-to-a-template', /A pass in which the bearing is not on the template is never made/],
  ['a tray that rides on its inlay', 'routing-to-a-template', /do not turn the board over/],
  ['small work at a rounding bit', 'edges-feet-and-handles', /What is shorter than two hands is rounded with a block/],
  ['a shim that lets go', 'flattening-a-wide-board', /pull on it\. Look at all of them again after the first pass/],
  ['guards taken off for a wide board', 'flattening-a-wide-board', /Never take the guards off a jointer/],
  [
    'a board shorter than the machine allows',
    'flattening-a-wide-board',
    /a short blank is flattened as part of a long board/,
  ],
  ['dry glue on a scraper’s path', 'gluing-up-a-panel', /hard as glass: eye protection on/],
  ['isocyanate in glue', 'gluing-up-a-panel', /Polyurethane glue contains isocyanates/],
  ['isocyanate in resins, oils and varnishes', 'resin-and-hardeners', { caution: 'isocyanates' }],
  ['lead in old paint', 'salvaged-stock', { caution: 'lead-paint' }],
  ['treated wood', 'salvaged-stock', { caution: 'treated-wood' }],
  ['dirt of a barn', 'salvaged-stock', /damp, outdoors, mask on.+droppings and mould/],
  ['metal in a board', 'salvaged-stock', { caution: 'metal-in-stock' }],
  ['a stack that leans', 'moisture-and-acclimatising', /A stack falls over if the stickers do not stand in line/],
  ['other resins than epoxy', 'epoxy-only', { caution: 'epoxy-only' }],
  ['peroxide beside an accelerator', 'epoxy-only', /Peroxide never meets the accelerator by itself/],
  ['a bottle without a label', 'test-cup', /No cup from a bottle whose label is gone/],
  ['a bottle that is decanted', 'storage-and-shelf-life', /Do not decant into anything that ever held food or drink/],
  ['children at the shelf', 'storage-and-shelf-life', /locked, above the floor, below the eyes \| children/],
  ['hardener in an eye', 'resin-and-hardeners', /Before a bottle is opened.+running water for an eye/],
  ['goggles for hardener', 'a-room-and-a-class', { caution: 'hardener-burns' }],
  ['the filter against vapour', 'resin-and-hardeners', /amines and solvents may need different filters/],
  ['asthma or a rash before', 'a-room-and-a-class', /Asthma, or a wheeze from dust/],
  ['pregnancy', 'a-room-and-a-class', /Are you pregnant/],
  ['contact lenses at the resin', 'a-room-and-a-class', /Do you wear contact lenses/],
  ['a warm cup', 'pouring-an-inlay', { caution: 'resin-cup-heat' }],
  ['a torch among twelve people', 'pouring-an-inlay', /No torch among twelve people/],
  ['a room that is lived in', 'pouring-an-inlay', /Nobody lives or sleeps in that room/],
  ['heat that is turned up on a pour', 'pouring-an-inlay', /No heater is turned up/],
  ['a heat lamp', 'heat-build-up-in-resin', /a heat lamp/],
  ['a depth that the sheet does not allow', 'pouring-without-overheating', /take it for 20 °C \(68 °F\)/],
  ['resin that is sanded before it has cured', 'dust-from-cured-resin', { caution: 'resin-dust' }],
  [
    'uncured resin at a scraper',
    'levelling-the-resin',
    /No tool of this page touches it sooner, a hand scraper neither/,
  ],
  ['hardener on sawdust or paper', 'resin-waste', { caution: 'hardener-sawdust' }],
  ['resin in a stove', 'resin-waste', { caution: 'never-burn-resin' }],
  ['a branding iron on resin', 'signing-photographing-and-packing', /Never on resin, nor through it/],
  ['oily cloths', 'oiling-and-waxing', { caution: 'oily-rags' }],
  ['oily sanding dust', 'oily-rags', { caution: 'sanding-dust-fire' }],
  ['nuts in an oil', 'food-contact', { caution: 'nut-oils' }],
  ['shellac and hot water', 'care', /A board with shellac is not washed at all/],
  ['heat on a resin', 'care', /hot pan, pot or teapot/],
  ['a seam that has opened', 'food-contact', /it is an open seam: no food on it/],
  ['a promise that nobody showed', 'what-may-be-promised', { caution: 'food-wording' }],
  ['things for small children', 'what-may-be-promised', /What is asked of things for small children/],
  ['a ring of resin around wood', 'wide-boards-panels-and-inlays', /Never a frame or ring of resin around wood/],
];

test.each(hazards)('%s: %s', (_, page, said) => {
  const { source, text } = howTo(page);
  if (said instanceof RegExp) expect(text.replaceAll('**', '')).toMatch(said);
  else expect(cautionIdsOf(source)).toContain(said.caution);
});
