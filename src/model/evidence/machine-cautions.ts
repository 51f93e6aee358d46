import { practice } from './caution-words.ts';
import type { Caution, Citation } from './figure.ts';

const rule = (locator: string): Citation => ({ source: 'cfr-29-1910-213', locator, seen: 'source-text' });

/** What the rule on woodworking machines asks of jointers and planers, said with every plan that uses them. */
export const machineGuards: readonly Caution[] = [
  {
    id: 'jointer-guards',
    level: 'danger',
    text: 'A hand-fed jointer has a cylindrical head whose knives stand out no more than 1/8 in, a throat of no more than 2 1/2 in, and a guard that closes over the head by itself, with another behind the fence. Keep them, and set the rear table to the knives.',
    basis: 'published',
    citation: rule('(j)'),
  },
  {
    id: 'planer-guards',
    level: 'danger',
    text: 'A planer that takes several pieces at once needs sectional feed rolls or kickback fingers. Without them feed one at a time, stand to the side, and never look into the throat.',
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
    text: 'The rule gives no least length or thickness of stock. The limits used here are settings of common practice; the manual of the machine wins.',
    basis: 'published',
    citation: rule('(a) to (r)'),
  },
];

/** What is said with every speed and depth of a router bit. */
export const cutterCautions: readonly Caution[] = [
  practice(
    'marked-speed',
    'danger',
    'The highest speed marked on the tool, or in its maker’s leaflet, wins over every figure here. A bit without a mark, a bent shank, a chipped or loose edge or a worn collet is not run.',
  ),
  practice(
    'router-setup',
    'danger',
    'Unplug to change a bit. Put the shank in to its mark, or at least three quarters of the collet, and draw it back a little from the bottom. Feed against the turn of the edge, hold the work with clamps or a jig, keep hands a palm’s width clear, and wear eye and hearing protection.',
  ),
  practice(
    'large-bits',
    'warning',
    'Bits over 1 in (25 mm) are for a router with speed control and soft start, the larger ones for a table with a fence or starting pin, never freehand.',
  ),
];

/** What can hurt somebody at the other machines of the shop, and with all of them. */
export const shopCautions: readonly Caution[] = [
  {
    id: 'noise',
    level: 'danger',
    text: 'Planers, routers and extractors are loud enough to take hearing for good. The limit that NIOSH recommends is 85 dBA over eight hours, and half the time for every 3 dB more: at 100 dBA it is used up in 15 minutes. Wear hearing protection, and see that everybody else in the room does.',
    basis: 'published',
    citation: { source: 'niosh-noise', seen: 'source-text' },
  },
  {
    id: 'sander-guards',
    level: 'danger',
    text: 'Drum, disc and belt sanders need a hood or guard over the abrasive and guards where belt or drum draws things in. Set the rest close, work on the side that moves down, and keep fingers, cuffs and gloves away from the nip.',
    basis: 'published',
    citation: rule('(p)'),
  },
  practice(
    'stock-handling',
    'danger',
    'A rack of boards falls on whoever pulls the wrong one, and a long board swings round. Take from the front, two people to a heavy board, and tie the load down before you drive. Wear gloves against splinters in the yard, and take them off before any machine.',
  ),
  practice(
    'planer-sled',
    'danger',
    'On a sled the board must lie as if it were one with it: shims fixed, so that none can walk out under the rolls, a stop across the end that is pushed, and the whole within the width, height and length that the planer’s manual allows. A shim that works loose lets the board drop into the knives. Light cuts; stand to the side.',
  ),
  practice(
    'router-rails',
    'danger',
    'Flattening with a router on rails: wedge the board on all sides so that it can neither shift nor lift, put stops on the rails so that the bit cannot leave them, take a few millimetres at a time, keep both hands on the router, and hang cord and hose out of its way. Large bits only in a router with speed control.',
  ),
  practice(
    'bandsaw',
    'danger',
    'Set the bandsaw’s upper guide just above the work. Keep the work flat on the table and fingers out of the line of the blade; saw relief cuts so that no tight curve pinches it. Never back out of a long cut while it runs. No gloves, no loose sleeves.',
  ),
  practice(
    'template-routing',
    'danger',
    'Work that comes loose from its template is thrown. Screw into waste, or tape over a wide clean area, and pull on it before you switch on. At the table start against a pin or from the template’s own run-on, never at a corner, and hold small pieces in a holder, not in the fingers.',
  ),
  practice(
    'boring',
    'danger',
    'A bit that catches spins the work. Clamp the piece, or hold it against a fence or stop that it can only be turned into. Take out the chuck key, tie hair and cords back, wear no gloves, and clear chips with a brush and the drill stopped. Wear eye protection.',
  ),
  practice(
    'wet-sanding',
    'danger',
    'Water and mains tools do not go together. Wet-sand by hand, or with a tool whose maker says it may be used wet, on a circuit with a residual-current device (ground-fault interrupter), and dry the floor.',
  ),
  practice(
    'sanding-dust-fire',
    'warning',
    'Fine dust burns, and dust with fresh oil, finish or hardener in it can heat by itself. Empty the sander’s bag and the extractor at the end of the day into a lidded metal bin out of doors, and keep grinding sparks away from both.',
  ),
];
