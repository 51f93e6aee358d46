import { answer, type Outcome } from '../evidence/index.ts';
import type { Banded } from './band.ts';
import type { MovementProperties } from './properties.ts';
import {
  type BoardGeometry,
  type BoardYear,
  boardThroughYear,
  type Labelled,
  largest,
  type NamedMoisture,
  swingOf,
} from './season.ts';

/** One stave of a panel: a board of its own. */
export interface Stave {
  /** mm across the panel, at `moistureNow`. */
  width: number;
  geometry: BoardGeometry;
  properties: MovementProperties;
}

/** A panel glued edge to edge from staves with their grain parallel. */
export interface PanelYearInput {
  staves: readonly Stave[];
  /** mm, the same for all staves at `moistureNow`. */
  thickness: number;
  /** Moisture content of all staves when the panel was made flat, %. */
  moistureNow: number;
  moistures: readonly NamedMoisture[];
}

/** A panel at one moisture content. Lengths in mm; changes are from the panel as it is now. */
export interface PanelState extends NamedMoisture {
  width: Banded;
  change: Banded;
  /** Largest difference in thickness between two neighbouring staves of average wood: half of it shows on each face. */
  step: number;
}

/** A panel through a set of moisture contents. It has no cup of its own; each stave's is in `staves`. */
export interface PanelYear {
  /** Each stave as if it were free. */
  staves: readonly BoardYear[];
  states: readonly PanelState[];
  narrowest: Labelled;
  widest: Labelled;
  swing: Banded;
  changeFromNow: { low: Labelled; high: Labelled };
  /** The largest step between neighbours, mm, and when. */
  greatestStep: { value: number; label: string };
}

/** What an answer about a panel must say. */
export const panelNotes = {
  band: 'The band takes all staves to be alike in moving more or less than the average, as staves of one board or lot are. Staves from unlike boards would partly cancel, and the true band would be narrower.',
  cup: 'Cup is given for each stave as if it were free. Across glued joints it is not computed: staves that all have the bark side up curve into one arc, staves turned by turns leave a ripple.',
} as const;

/** Sum of bands whose ends fall together. */
function sum(parts: readonly Banded[]): Banded {
  return parts.reduce<Banded>(
    (total, part) => ({ value: total.value + part.value, low: total.low + part.low, high: total.high + part.high }),
    { value: 0, low: 0, high: 0 },
  );
}

/**
 * A panel's width at each of several moisture contents, the sum of its staves.
 *
 * The bands add up end to end: see `panelNotes.band`.
 *
 * @returns the year; errors as of `boardThroughYear`, those of a stave on `staves.<index>.<field>`
 */
export function panelThroughYear({ staves, thickness, moistureNow, moistures }: PanelYearInput): Outcome<PanelYear> {
  if (staves.length === 0) {
    return { ok: false, errors: [{ field: 'staves', message: 'No stave was given. Give at least one.' }] };
  }
  const outcomes = staves.map((stave) => boardThroughYear({ ...stave, thickness, moistureNow, moistures }));
  const errors = outcomes.flatMap((outcome, index) =>
    outcome.ok
      ? []
      : outcome.errors.map(({ field, message }) => ({
          field: /^(thickness|moisture)/.test(field) ? field : `staves.${index}.${field}`,
          message,
        })),
  );
  if (errors.length > 0) {
    // What the staves share is wrong once, not once a stave.
    const once = new Map(errors.map((error) => [`${error.field}\n${error.message}`, error]));
    return { ok: false, errors: [...once.values()] };
  }
  const years = outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : []));
  const states = moistures.map(({ label, moisture }, at): PanelState => {
    const each = years.flatMap((year) => year.states.slice(at, at + 1));
    const thicknesses = each.map((state) => state.thickness.value);
    const steps = thicknesses.slice(1).map((next, index) => Math.abs(next - (thicknesses[index] as number)));
    return {
      label,
      moisture,
      width: sum(each.map((state) => state.width)),
      change: sum(each.map((state) => state.change)),
      step: Math.max(0, ...steps),
    };
  }) as [PanelState, ...PanelState[]];
  const narrow = largest(states, (state) => -state.width.value);
  const wide = largest(states, (state) => state.width.value);
  const step = largest(states, (state) => state.step);
  return answer({
    staves: years,
    states,
    narrowest: { ...narrow.width, label: narrow.label },
    widest: { ...wide.width, label: wide.label },
    swing: swingOf(narrow.change, wide.change),
    changeFromNow: { low: { ...narrow.change, label: narrow.label }, high: { ...wide.change, label: wide.label } },
    greatestStep: { value: step.step, label: step.label },
  });
}
