import { practice } from './caution-words.ts';
import type { Citation } from './figure.ts';
import type { Caution } from './result.ts';

const rule = (locator: string): Citation => ({ source: 'cfr-29-1910-213', locator, seen: 'source-text' });

/** What the rule on woodworking machines asks of jointers and planers, said with every plan that uses them. */
export const machineGuards: readonly Caution[] = [
  {
    id: 'jointer-guards',
    level: 'danger',
    text: 'Keep the guard that closes over the jointer’s head, and the one behind the fence; set the rear table to the knives.',
    why: 'The rule asks of a hand-fed jointer a cylindrical head whose knives stand out no more than 1/8 in, a throat of no more than 2 1/2 in, and a guard that closes over the head by itself.',
    basis: 'published',
    citation: rule('(j)'),
  },
  {
    id: 'planer-guards',
    level: 'danger',
    text: 'Feed one board at a time, stand to the side of the planer, and never look into the throat.',
    why: 'A planer that takes several pieces at once needs sectional feed rolls or kickback fingers: without them it can throw one back.',
    basis: 'published',
    citation: rule('(n)(4)'),
  },
  {
    id: 'featherboards',
    level: 'warning',
    text: 'Where a guard cannot be used, featherboards or a jig must hold the work and keep hands away.',
    basis: 'published',
    citation: rule('(a)(15)'),
  },
  {
    id: 'least-lengths',
    level: 'note',
    text: 'The manual of the machine says how short and how thin it may be fed.',
    why: 'The rule gives no least length or thickness of stock. The limits used here are settings of common practice.',
    basis: 'published',
    citation: rule('(a) to (r)'),
  },
];

/** What is said with every speed and depth of a router bit. */
export const cutterCautions: readonly Caution[] = [
  practice(
    'marked-speed',
    'danger',
    'The highest speed marked on the tool, or in its maker’s leaflet, wins over any figure worked out for it.',
    'A bit without a mark, a bent shank, a chipped or loose edge or a worn collet is not run.',
  ),
  practice(
    'router-setup',
    'danger',
    'Unplug to change a bit; feed against the turn of the edge; clamp the work; eye and hearing protection on.',
    'Put the shank in to its mark, or at least three quarters of the collet, and draw it back a little from the bottom. Keep hands a palm’s width clear, hair, cuffs and cords away, and let the bit stop before you lift it or set it down.',
  ),
  practice(
    'large-bits',
    'warning',
    'Run bits over 1 in (25 mm) only in a router with speed control and soft start, the larger ones at a table, never freehand.',
    'At the table a fence or a starting pin takes the push of the cut, which hands cannot.',
  ),
];

/** What can hurt somebody at the other machines of the shop, and with all of them. */
export const shopCautions: readonly Caution[] = [
  {
    id: 'noise',
    level: 'danger',
    text: 'Wear hearing protection at planers, routers and extractors, and see that everybody else in the room does.',
    why: 'They are loud enough to take hearing for good. The limit that NIOSH recommends is 85 dBA over eight hours, and half the time for every 3 dB more: at 100 dBA it is used up in 15 minutes.',
    basis: 'published',
    citation: { source: 'niosh-noise', seen: 'source-text' },
  },
  {
    id: 'sander-guards',
    level: 'danger',
    text: 'Keep fingers, cuffs and gloves away from the nip of a drum, disc or belt; set the rest close; work on the side that moves down.',
    why: 'Drum, disc and belt sanders need a hood or guard over the abrasive, and guards where belt or drum draws things in.',
    basis: 'published',
    citation: rule('(p)'),
  },
  practice(
    'stock-handling',
    'danger',
    'Take boards from the front of the rack, two people to a heavy one, and tie the load down before you drive.',
    'A rack of boards falls on whoever pulls the wrong one, and a long board swings round. Wear gloves against splinters in the yard, and take them off before any machine.',
  ),
  practice(
    'planer-sled',
    'danger',
    'Fix every shim to the sled, put a stop across the end that is pushed, take light cuts and stand to the side.',
    'A shim that works loose lets the board drop into the knives. The board must lie as if it were one with the sled, and the whole must be within the width, height and length that the planer’s manual allows.',
  ),
  practice(
    'router-rails',
    'danger',
    'On rails: wedge the board on all sides, put stops on the rails, take little at a time, keep both hands on the router.',
    'The board must neither shift nor lift, and the bit must not be able to leave the rails. Hang cord and hose out of its way. Large bits only in a router with speed control.',
  ),
  practice(
    'bandsaw',
    'danger',
    'Set the bandsaw’s upper guide just above the work, keep the work flat on the table and fingers out of the line of the blade. No gloves, no loose sleeves.',
    'Saw relief cuts so that no tight curve pinches the blade, and never back out of a long cut while it runs.',
  ),
  practice(
    'template-routing',
    'danger',
    'Fix the work to its template so that it cannot come loose, and pull on it before you switch on.',
    'Work that comes loose is thrown. Screw into waste, or tape over a wide clean area. At the table start against a pin or from the template’s own run-on, never at a corner, and hold small pieces in a holder, not in the fingers.',
  ),
  practice(
    'table-feed',
    'danger',
    'Never feed with the rotation at a table.',
    'The bit snatches the work, and the hands with it.',
  ),
  practice(
    'boring',
    'danger',
    'Clamp the piece, take out the chuck key, tie hair and cords back, wear eye protection and no gloves.',
    'A bit that catches spins the work. Clear chips with a brush and the drill stopped.',
  ),
  practice(
    'wet-sanding',
    'danger',
    'Wet-sand by hand, or with a tool whose maker says it may be used wet, on a circuit with a residual-current device (ground-fault interrupter), and dry the floor.',
    'Water and mains tools do not go together.',
  ),
  practice(
    'hand-edges',
    'warning',
    'Cut away from yourself, with the work held by a clamp or stop and both hands behind the edge. Keep it sharp, and covered when it lies.',
    'Chisels, knives and scrapers slip when they are pushed hard, and a blunt one is pushed harder. The edge of a broken drip of resin is as sharp as glass.',
  ),
  practice(
    'blowing-dust',
    'warning',
    'Take dust off with a vacuum and a damp cloth, never with compressed air.',
    'Blown dust hangs in the air of the whole room for hours, and the finest of it goes deepest into the lungs.',
  ),
  practice(
    'sanding-dust-fire',
    'warning',
    'Empty the sander’s bag and the extractor at the end of the day into a lidded metal bin out of doors, and keep grinding sparks away from both.',
    'Fine dust burns, and dust with fresh oil, finish or hardener in it can heat by itself.',
  ),
];
