import type { TimedEvent, Timeline, Verdict } from '../../model/evidence/index.ts';
import type { LayerPlan, PourAnswer } from './answer.ts';
import { timeBand } from './run-figures.ts';
import type { Setting } from './setting.ts';

/** Layers beyond these follow after the same wait. */
const mostLayers = 12;

/**
 * What happens when, from mixing: the pour's own times where it may be poured in one go, and where it may not, when each layer of the plan
 * is due. Undefined where neither may be said.
 */
export function timelineOf(setting: Setting, { run, layers }: PourAnswer, { level }: Verdict): Timeline | undefined {
  if (level === 'unknown') return undefined;
  if (layers)
    return layers.wait ? { zero: 'mixing the first layer', events: layersDue(layers, layers.wait) } : undefined;
  return level === 'stop' ? undefined : { zero: 'mixing', events: ofOnePour(setting, run) };
}

function layersDue({ count }: LayerPlan, wait: NonNullable<LayerPlan['wait']>): TimedEvent[] {
  return Array.from({ length: Math.min(count, mostLayers) }, (_, layer) => ({
    id: `layer-${layer + 1}`,
    label: `${layer > 0 && wait.abrade ? 'Sand, wipe, then pour' : 'Pour'} layer ${layer + 1}`,
    at: layer * wait.from,
    ...(layer > 0 ? { after: `layer-${layer}` } : {}),
    basis: 'derived',
  }));
}

function ofOnePour({ resin, from }: Setting, run: PourAnswer['run']): TimedEvent[] {
  const [sooner, later] = timeBand(resin?.figures.potLife?.value);
  // Resin that is hottest as it is poured grows no hotter: that is no event.
  const peak = run.timeToPeak > 60 && run.peakRise > 0 ? run.timeToPeak : null;
  const told: readonly (readonly [id: string, label: string, at: number | null])[] = [
    ['pour-work', 'Too thick to work', run.timeToWork],
    ['pour-first-gel', 'Begins to gel', run.timeToFirstGel],
    ['pour-hottest', 'Hottest', peak],
    ['pour-last-gel', 'Gelled through', run.timeToLastGel],
    ['pour-cool', 'Cooled to the shop', run.timeToCool],
  ];
  return told
    .flatMap(([id, label, at]): TimedEvent[] =>
      at === null
        ? []
        : [
            {
              id,
              label,
              at,
              ...(from === 'own' ? {} : { low: sooner * at, high: later * at }),
              basis: from === 'own' ? 'derived' : 'memory',
            },
          ],
    )
    .sort((one, other) => one.at - other.at);
}
