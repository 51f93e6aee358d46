import { practice, published } from './caution-words.ts';
import type { Caution } from './result.ts';

/** What can hurt somebody in oiling, waxing, varnishing and cleaning, once for pages and calculators. */
export const finishCautions: readonly Caution[] = [
  published(
    'oily-rags',
    'danger',
    'Rags, pads and paper with drying oil go into water, in a sealed metal container, before you take off the gloves. Never a heap, a pocket or the bin.',
    'Cloths wet with a drying oil, oil varnish or oil-urethane finish can catch fire by themselves, hours later and with no spark near. The Wood Handbook says: into water, in a sealed metal container.',
    { source: 'fpl-gtr-190', locator: 'Chapter 16', seen: 'source-text' },
  ),
  published(
    'rags-outdoors',
    'danger',
    'Rags that are dried instead hang singly, outdoors, away from buildings, weighed down.',
    'The fire-safety sheet asks for this, and, when they are dry, into a covered metal container with water and detergent, kept cool. Ask the town how to be rid of them.',
    { source: 'nfpa-oily-rags', seen: 'quoted' },
  ),
  published(
    'alcohol-flash',
    'danger',
    'Alcohol: no flame, heat tool, pilot light or running motor near, window open, can shut. Never wet a surface with it and then reach for the torch.',
    'Isopropanol gives off vapour that a spark can light from 53 °F (11.7 °C) upwards, in any heated room. Alcohol for shellac is no better.',
    { source: 'niosh-pocket-guide', locator: 'isopropyl alcohol', seen: 'source-text' },
  ),
  published(
    'spirits-flash',
    'danger',
    'Mineral spirits (white spirit): no flame or heat tool, open windows, gloves, the can shut. The flash point on your safety data sheet decides.',
    'They differ from can to can: one federal sheet notes that explosive mixtures with air may form above 21 °C (70 °F).',
    { source: 'osha-stoddard', seen: 'source-text' },
  ),
  practice(
    'solvent-use',
    'warning',
    'Solvent: little at a time, outdoors or in moving air, never in a cellar with a boiler, on skin, down a drain or in a drink bottle.',
    'Its vapour is heavier than air and dulls the head.',
  ),
  practice(
    'wax-melting',
    'danger',
    'Melt wax into oil in a can that stands in hot water, off the flame.',
    'Over a flame or a bare hotplate it catches fire; water on burning wax makes it spit: a lid puts it out.',
  ),
  practice(
    'nut-oils',
    'warning',
    'Say on the label which oil it is, and use no nut oil where you do not know who will eat from the board.',
    'Walnut and other nut oils come from foods that some people must not touch. Nobody has shown us how much of that a cured oil keeps.',
  ),
  practice(
    'finish-full-cure',
    'warning',
    'Keep food, water and stacking off until the days on the can have passed, and longer in a cold room.',
    'Dry to the touch is not cured.',
  ),
];
