import { practice, published } from './caution-words.ts';
import type { Caution } from './figure.ts';

/** What can hurt somebody in oiling, waxing, varnishing and cleaning, once for pages and calculators. */
export const finishCautions: readonly Caution[] = [
  published(
    'oily-rags',
    'danger',
    'Cloths wet with a drying oil, oil varnish or oil-urethane finish can catch fire by themselves, hours later and with no spark near. The Wood Handbook says: into water, in a sealed metal container. Do it before you take off the gloves, with paper and pads too. Never in a heap, a pocket or the bin.',
    { source: 'fpl-gtr-190', locator: 'Chapter 16', seen: 'source-text' },
  ),
  published(
    'rags-outdoors',
    'danger',
    'Where rags are dried instead, the fire-safety sheet asks for this: outdoors, away from buildings, spread or hung singly, weighed down, and when dry into a covered metal container with water and detergent, kept cool. Ask the town how to be rid of them.',
    { source: 'nfpa-oily-rags', seen: 'quoted' },
  ),
  published(
    'alcohol-flash',
    'danger',
    'Isopropanol gives off vapour that a spark can light from 53 °F (11.7 °C) upwards, in any heated room. No flame, heat tool, pilot light or running motor near it, the window open, the can shut between wipes. Alcohol for shellac is no better. Never wet a surface with it and then reach for the torch.',
    { source: 'niosh-pocket-guide', locator: 'isopropyl alcohol', seen: 'source-text' },
  ),
  published(
    'spirits-flash',
    'danger',
    'Mineral spirits (white spirit) differ from can to can: one federal sheet notes that explosive mixtures with air may form above 21 °C (70 °F). The flash point on your safety data sheet decides. No flame or heat tool, open windows, gloves, the can shut.',
    { source: 'osha-stoddard', seen: 'source-text' },
  ),
  practice(
    'solvent-use',
    'warning',
    'Solvent vapour is heavier than air and dulls the head. Little at a time, outdoors or in moving air, never in a cellar with a boiler, never on skin, never down a drain, never from a drink bottle.',
  ),
  practice(
    'wax-melting',
    'danger',
    'Melt wax into oil in a can that stands in hot water, off the flame. Over a flame or a bare hotplate it catches fire; water on burning wax makes it spit: a lid puts it out.',
  ),
  practice(
    'nut-oils',
    'warning',
    'Walnut and other nut oils come from foods that some people must not touch. Nobody has shown us how much of that a cured oil keeps. Say on the label which oil it is, and use another where you do not know who will eat from the board.',
  ),
  practice(
    'finish-full-cure',
    'warning',
    'Dry to the touch is not cured. Keep food, water and stacking off until the days on the can have passed, and longer in a cold room.',
  ),
];
