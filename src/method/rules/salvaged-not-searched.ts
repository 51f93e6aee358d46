import type { ActId } from '../acts/index.ts';
import type { WorkedMethod, WorkedStep } from '../case/types.ts';
import { atStep, inSentence, listed, stepsBefore, stepsThat } from './kit.ts';
import { rule } from './rule.ts';

/** What opens the surface of wood. */
const cutting: readonly ActId[] = [
  'saw',
  'flatten',
  'plane',
  'cut-out',
  'rout',
  'bore',
  'round-over',
  'scrape',
  'sand',
  'level',
];

/** What wood with another life is searched for, and how each is said. */
const wanted = { metal: 'metal', 'old-paint': 'old paint', treatment: 'preservative' } as const;

/** Wood that had another life, cut before anybody searched it. */
export const salvagedNotSearched = rule({
  id: 'salvaged-not-searched',
  level: 'stop',
  title: 'Salvaged wood is searched before it is cut',
  looksAt:
    'Every salvaged material: whether the first step that cuts or sands it waits for inspections that look for metal, old paint and treatment.',
  why: 'A nail throws carbide, old paint may hold lead, and treated wood never belongs under food. Dust of either cannot be called back.',
  citation: { source: 'cfr-40-745', locator: '745.103', seen: 'source-text' },
  neverExcepted: 'Lead and preservative harm people who never chose to stand in the dust.',
  find: (worked) =>
    Object.values(worked.materials).flatMap(({ name, record }) => {
      if (!record.salvaged) return [];
      return firstCutsOf(worked, name).flatMap((step) => {
        const before = stepsBefore(worked, step);
        const searched = stepsThat(worked, 'inspect')
          .filter(({ id }) => before.has(id))
          .flatMap((inspection) => inspection.record.looksFor ?? []);
        const unsearched = Object.entries(wanted).flatMap(([check, words]) =>
          searched.some((one) => one === check) ? [] : [words],
        );
        if (unsearched.length === 0) return [];
        return [
          {
            ...atStep(step),
            message: `“${step.record.title}” cuts into salvaged wood (${inSentence(record.what)}) that nobody has searched for ${listed(unsearched, 'or')}.`,
            wayOut: `Put a step before it that inspects the wood and looks for ${listed(Object.values(wanted))}, with a metal detector and a test for lead.`,
          },
        ];
      });
    }),
});

/** The first step that cuts a material: of those that list it, or of all where none does. */
function firstCutsOf(worked: WorkedMethod, material: string): WorkedStep[] {
  const cuts = stepsThat(worked, ...cutting);
  const listing = cuts.filter(({ record }) => record.uses?.includes(material));
  const before = (listing.length > 0 ? listing : cuts).filter(
    (step, _, all) => !all.some((other) => other !== step && stepsBefore(worked, step).has(other.id)),
  );
  return before;
}
