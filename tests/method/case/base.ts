import { parse, stringify } from 'yaml';
import type { CaseOptions, WorkedMethod } from '../../../src/method/case/types.ts';
import { workMethod } from '../../../src/method/case/work.ts';
import { readMethod } from '../../../src/method/read.ts';

/** A small method that is whole: a blank is moved about by a season, oiled, and handed over. Invented. */
export const smallMethod = `method: 1
title: A plain board
for: Whoever tries a method first.
language: en
makes:
  what: Plain board
  pieces: { default: 2, least: 1, most: 12 }
sources:
  - text: Invented for a test.
parameters:
  wood: { kind: wood, label: Wood, default: sugar-maple, among: [sugar-maple, black-cherry] }
  width: { kind: quantity, label: Width of the board, default: 250 mm, least: 100 mm, most: 400 mm }
  from: { kind: quantity, label: Moisture now, default: 8 %, least: 4 %, most: 12 % }
  day: { kind: quantity, label: Shop by day, default: 20 °C, least: 10 °C, most: 30 °C, shop: /air/day }
  outline: { kind: outline, label: Outline, default: { shape: rounded-rectangle, length: 400 mm, width: 250 mm, cornerRadius: 25 mm } }
materials:
  oil:
    what: Mineral oil
    kind: finish
    needs: [{ from: /calculations/coats/uses/finish, per: batch }]
    spare: 10 %
  cloths: { what: Cotton cloths, kind: cloth, needs: [{ amount: 2, per: piece }] }
tools:
  planer: { what: Thickness planer, kind: planer, limits: { width: 330 mm, leastLength: 300 mm } }
steps:
  read:
    title: Read the moisture
    act: inspect
    does: "Expect {/calculations/change/figures/change} of change."
    hands: { setUp: 5 min, each: 2 min }
    calculations:
      change:
        use: width-change
        with:
          species: { from: /parameters/wood }
          width: { from: /parameters/width }
          moistureFrom: { from: /parameters/from }
          moistureTo: 6 %
  oil:
    title: Oil the board
    act: oil
    does: Wipe on a thin coat.
    hands: { setUp: 10 min, each: 5 min }
    uses: [oil, cloths]
    calculations:
      coats:
        use: finish-coats
        with:
          shape: { from: /parameters/outline/shape }
          length: { from: /parameters/outline/length }
          width: { from: /parameters/outline/width }
          cornerRadius: { from: /parameters/outline/cornerRadius }
          thickness: 19 mm
          boards: { from: /makes/pieces }
          finish: mineral-oil
  again:
    title: Oil it again
    act: oil
    does: Wipe on another.
    hands: { each: 5 min }
    uses: [oil]
    after: [{ step: oil, least: { from: /calculations/coats/figures/recoat }, most: 3 d, missed: { do: Wipe with a damp cloth and let it dry, adds: 2 min } }]
  give:
    title: Hand it over
    act: hand-over
    does: With its card.
    after: [again]
`;

type Data = Record<string, unknown>;

/** The text of the small method after a change of its data. */
export function changed(change: (data: Data) => void): string {
  const data = parse(smallMethod) as Data;
  change(data);
  return stringify(data);
}

/** The value at a path of data. */
export function inside(data: Data, ...path: string[]): Data {
  return path.reduce((value, key) => value[key] as Data, data);
}

/** Everything wrong with a text, one line a problem, without the file's name. */
export async function problemsOf(text: string, options: CaseOptions = {}): Promise<string[]> {
  const read = readMethod(text, 'm.yaml');
  const working = read.record ? await workMethod(read, options) : undefined;
  const problems = working ? (working.ok ? [] : working.problems) : read.problems;
  return problems.map(({ line, column, field, message }) => `${line}:${column} ${field}: ${message}`);
}

/** A method that must work. */
export async function worked(text: string, options: CaseOptions = {}): Promise<WorkedMethod> {
  const working = await workMethod(readMethod(text, 'm.yaml'), options);
  if (!working.ok) throw new Error(working.problems.map(({ message }) => message).join('\n'));
  return working.worked;
}
