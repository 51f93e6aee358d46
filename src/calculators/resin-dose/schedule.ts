import type { TimedEvent, Timeline, Use } from '../../model/evidence/index.ts';
import { pigmentKinds } from '../../model/resin/batches.ts';
import { sealCoatName } from '../../model/resin/dose.ts';
import { kineticsOf } from '../../model/resin/fit.ts';
import { steady } from '../../model/resin/history.ts';
import { usualLayerWait } from '../../model/resin/pour-plan.ts';
import { timetableOf } from '../../model/resin/timetable.ts';
import { toldOf, warIn } from '../../model/resin/told.ts';
import type { Resin } from '../../model/resin/types.ts';
import type { DosePlan } from './plan.ts';

/**
 * When each round of mixing is due: the fill when a seal coat takes it, a layer when the one below does. Undefined where there is but one
 * round, or nothing says how long the next must wait.
 */
export function timelineOf({ dose, layers, given: { resin, shopTemperature } }: DosePlan): Timeline | undefined {
  const celsius = shopTemperature ?? layers.shop?.celsius;
  if (!resin || celsius === undefined || warIn(resin)) return undefined;
  const sealed = dose.seal > 0;
  const seal = sealed ? coatWait(resin, celsius) : undefined;
  const assumed = shopTemperature === undefined ? { note: 'At the temperature that the depth is stated for.' } : {};
  const first: TimedEvent = { id: 'seal-coat', label: 'Mix the seal coat', at: 0, basis: 'derived' };
  if (sealed && !seal) return undefined;
  const start = seal?.from ?? 0;
  const sand = (abrade: boolean | undefined) => (abrade ? 'Sand, wipe, then mix' : 'Mix');
  const single = layers.count === 1;
  const fill: TimedEvent = {
    id: single ? 'fill' : 'layer-1',
    label: `${sand(seal?.abrade)} ${single ? 'the fill' : 'layer 1'}`,
    at: start,
    ...(sealed ? { after: 'seal-coat', ...assumed } : {}),
    basis: 'derived',
  };
  const wait = single || layers.thickness === undefined ? undefined : usualLayerWait(resin, layers.thickness, celsius);
  const later = Array.from(
    { length: wait ? layers.count - 1 : 0 },
    (_, at): TimedEvent => ({
      id: `layer-${at + 2}`,
      label: `${sand(wait?.abrade)} layer ${at + 2}`,
      at: start + (at + 1) * (wait?.from ?? 0),
      after: `layer-${at + 1}`,
      ...assumed,
      basis: 'derived',
    }),
  );
  const events = [...(sealed ? [first] : []), fill, ...later];
  if (events.length === 1) return undefined;
  return { zero: sealed ? 'mixing the seal coat' : 'mixing the first layer', events };
}

/** When a coat takes the next by itself, s, or may be sanded for it where it leaves no window; undefined where nobody says. */
function coatWait(resin: Resin, celsius: number): { from: number; abrade: boolean } | undefined {
  const { events, noWindow } = toldOf(resin, timetableOf(resin, kineticsOf(resin), steady(celsius)));
  const time = (id: 'recoatOpens' | 'sandable') => events.find((event) => event.id === id)?.time ?? undefined;
  const opens = noWindow ? undefined : time('recoatOpens');
  const from = opens ?? time('sandable');
  return from === undefined ? undefined : { from, abrade: opens === undefined };
}

/** What a dose uses up: both parts, the share of them that each colour takes, pigments and cups. */
export function usesOf({ parts, mix, cups, colours, dose, given }: DosePlan): Use[] {
  const of = given.resin ? `${given.resin.name}, ` : '';
  const pigments = colours.flatMap(({ name, kind }, at): Use[] => {
    const amount = cups.reduce((sum, cup) => sum + (cup.colour === name ? cup.pigment : 0), 0);
    const label = pigmentKinds.find((each) => each.kind === kind)?.label;
    if (amount === 0 || !label) return [];
    return [{ id: `colour-${at + 1}`, what: `${name}, ${label}`, amount, unit: 'g', basis: mix.basis }];
  });
  const sealed = dose.stages.reduce((sum, { name, mass }) => sum + (name === sealCoatName ? mass : 0), 0);
  const mixed = (id: string, what: string, amount: number): Use[] =>
    amount > 0 ? [{ id, what: `${of}${what}`, amount, unit: 'g', within: ['part-a', 'part-b'], basis: mix.basis }] : [];
  return [
    { id: 'part-a', what: `${of}part A`, amount: parts.massA, unit: 'g', basis: mix.basis },
    { id: 'part-b', what: `${of}part B`, amount: parts.massB, unit: 'g', basis: mix.basis },
    ...mixed('mix-seal-coat', 'mix for the seal coat', sealed),
    ...colours.flatMap(({ name, share }, at) =>
      mixed(`mix-colour-${at + 1}`, `mix that is ${name}`, (dose.total - sealed) * share),
    ),
    ...pigments,
    {
      id: 'cups',
      what: 'Mixing cups',
      amount: cups.length,
      unit: '{count}',
      basis: 'derived',
      note: 'A second clean one for each, where it is stirred over.',
    },
  ];
}
