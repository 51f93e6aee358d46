import { parse, stringify } from 'yaml';
import type { CaseOptions, WorkedMethod } from '../../../src/method/case/types.ts';
import { workMethod } from '../../../src/method/case/work.ts';
import { readMethod } from '../../../src/method/read.ts';
import { judge } from '../../../src/method/rules/judge.ts';
import type { Finding } from '../../../src/method/rules/rule.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';

/** A small method that keeps every rule. */
export const base = `
method: 1
title: A tray of hard maple, oiled
for: Whoever tries the rules.
language: en
makes: { what: Serving tray, pieces: { default: 2, least: 1, most: 12 } }
food: { claim: For serving bread and whole fruit, touches: wood, market: us }
sources: [{ text: Our own practice }]
parameters:
  wood: { kind: wood, label: Wood, default: sugar-maple }
  finish: { kind: finish, label: Oil, default: mineral-oil }
materials:
  maple: { what: Hard maple, kind: wood, needs: [{ amount: 1, per: piece }] }
  discs: { what: Discs, kind: abrasive, needs: [{ amount: 4, per: piece }] }
  oil: { what: Mineral oil, kind: finish, needs: [{ amount: 20 mL, per: piece }] }
  cloth: { what: Cotton cloths, kind: cloth, needs: [{ amount: 2, per: piece }] }
tools:
  meter: { what: Moisture meter, kind: moisture-meter }
  planer: { what: Thickness planer, kind: planer, limits: { width: 330 mm, thickness: 150 mm, leastLength: 305 mm, leastThickness: 6 mm } }
  drill: { what: Drill press, kind: drill-press }
  bit: { what: Forstner bit, kind: drill-bit }
  sander: { what: Random-orbit sander, kind: random-orbit-sander }
  extractor: { what: Dust extractor, kind: dust-extractor }
  goggles: { what: Goggles, kind: eye-protection }
  muffs: { what: Ear muffs, kind: hearing-protection }
  mask: { what: Particle mask, kind: respirator }
steps:
  look:
    title: Read the moisture
    act: inspect
    does: Push the pins in along the grain.
    uses: [maple]
    tools: [meter]
    looksFor: [moisture, cracks]
    calculations:
      year:
        use: seasonal-movement
        with: { species: { from: /parameters/wood }, width: 250 mm, thickness: 19 mm, cut: quartersawn, moistureNow: 7 %, place: duluth-mn, indoors: heated }
  thickness:
    title: Plane to thickness
    act: plane
    does: Take light passes.
    uses: [maple]
    tools: [planer, extractor, goggles, muffs]
    piece: { length: 420 mm, width: 260 mm, thickness: 25 mm }
  hole:
    title: Bore the hanging hole
    act: bore
    does: Bore into a block of waste.
    uses: [maple]
    tools: [drill, bit, goggles]
    backed: true
  smooth:
    title: Sand it
    act: sand
    does: Work through the grits.
    uses: [maple, discs]
    tools: [sander, extractor, goggles, muffs, mask]
    calculations:
      grits:
        use: grit-sequence
        with: { surface: planed, lastGrit: 320, drawer: "80, 120, 150, 220, 320", water: "yes", area: 0.2 m² }
  wet:
    title: Wet it
    act: raise-the-grain
    does: Wipe with clean water and let it dry.
    uses: [cloth]
  oiling:
    title: Oil it
    act: oil
    does: Flood it, wait and wipe it dry.
    uses: [oil, cloth]
  give:
    title: Hand it over
    act: hand-over
    does: Say how it is kept.
`;

/** The base with another value at some paths, as YAML: maps are merged, lists and texts replaced, null takes a name away (RFC 7386). */
export const patched = (...patches: readonly string[]): string =>
  stringify(patches.map((patch) => parse(patch) as unknown).reduce(merged, parse(base)));

function merged(target: unknown, patch: unknown): unknown {
  if (!isMap(patch)) return patch;
  const result: Record<string, unknown> = isMap(target) ? { ...target } : {};
  for (const [name, value] of Object.entries(patch)) {
    if (value === null) delete result[name];
    else result[name] = merged(result[name], value);
  }
  return result;
}

const isMap = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A case of the base with some patches. A method that cannot be read or worked fails the test with its problems. */
export async function workedIn(options: CaseOptions, ...patches: readonly string[]): Promise<WorkedMethod> {
  const read = readMethod(patched(...patches), 'methods/tray.yaml');
  if (!read.record) throw new Error(read.problems.map(({ field, message }) => `${field}: ${message}`).join('\n'));
  const working = await workMethod(read, options);
  if (!working.ok) throw new Error(working.problems.map(({ field, message }) => `${field}: ${message}`).join('\n'));
  return working.worked;
}

/** What the rules find in it. */
export const findingsIn = async (options: CaseOptions, ...patches: readonly string[]): Promise<readonly Finding[]> =>
  judge(await workedIn(options, ...patches));

/** The same at the method's own defaults. */
export const findingsOf = (...patches: readonly string[]) => findingsIn({}, ...patches);

/** The same as lines to read aloud, in metric; notes that an answer names something to mind are left to their own test. */
export async function told(...patches: readonly string[]): Promise<string[]> {
  const findings = await findingsOf(...patches);
  return findings
    .filter(({ rule }) => rule !== 'calculation-care')
    .map(
      ({ rule, path, message, wayOut, excepted }) =>
        `${rule} at /${path.join('/')}${excepted ? ` (excepted: ${excepted})` : ''}: ${inReaderUnits(`${message} ${wayOut}`, { ...defaultUnits, system: 'metric' })}`,
    );
}

/** Resin that is rehearsed, mixed and poured into the tray before it is sanded, with its cure, and all that this asks for. */
export const withResin = `
materials:
  resin: { what: Casting resin, kind: resin, needs: [{ amount: 100 g, per: piece }] }
  gloves: { what: Nitrile gloves, kind: gloves, needs: [{ amount: 2, per: piece }] }
  cups: { what: Cups and sticks, kind: cup-and-stick, needs: [{ amount: 1, per: piece }] }
tools:
  scale: { what: Scale, kind: scale, limits: { division: 0.1 g } }
  window: { what: Open window, kind: ventilation }
steps:
  rehearse:
    title: Rehearse the pour
    act: brief
    does: Walk through it with empty cups.
    after: [hole]
  stir:
    title: Mix the resin
    act: mix
    does: Weigh both parts and stir. {/calculations/dose/verdict}
    after: [rehearse]
    uses: [resin, gloves, cups]
    tools: [scale, goggles, window]
    interrupt: never
    calculations:
      dose:
        use: resin-dose
        with: { resin: slow-casting-2-1, mass: 100 g, measureBy: weight, scaleDivision: 0.1 g, shopTemperature: 20 °C }
  fill:
    title: Pour the inlay
    act: pour
    does: Pour it slowly.
    tell: "{/calculations/heat/verdict}"
    why: "{/calculations/clock/verdict}"
    after: [stir]
    uses: [resin, gloves]
    tools: [goggles, window]
    interrupt: never
    calculations:
      inlay:
        use: seasonal-movement
        with: { species: { from: /parameters/wood }, width: 250 mm, thickness: 19 mm, cut: quartersawn, moistureNow: 7 %, place: duluth-mn, indoors: heated, inlayWidth: 20 mm }
      heat:
        use: pour-heat
        with: { resin: slow-casting-2-1, depth: 6 mm, shopTemperature: 20 °C, base: hardwood, baseThickness: 12 mm, air: still }
      clock:
        use: cure-clock
        with: { resin: slow-casting-2-1, shopTemperature: 20 °C }
  smooth: { after: [{ step: fill, least: { from: /calculations/clock/figures/foodService, take: high } }] }
`;
