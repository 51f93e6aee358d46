import type { BatchEntry, BatchRecord } from '../../../src/method/batch/record.ts';
import { type BatchOptions, batchState, type WorkedBatch } from '../../../src/method/batch/state.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';

/** A board with an inlay, from the seal coat to the hand-over: short, and with every clock that the record of a batch asks. Invented. */
export const inlaidBoard = `method: 1
title: A board with an inlay
for: Whoever tries a record first.
language: en
makes:
  what: Board with an amber inlay
  pieces: { default: 2, least: 1, most: 6 }
food: { claim: For serving bread, touches: wood, market: us }
sources:
  - text: Invented for a test.
parameters:
  wood: { kind: wood, label: Wood, default: sugar-maple, among: [sugar-maple, black-cherry] }
  resin: { kind: resin, label: Resin, default: slow-casting-2-1, among: [slow-casting-2-1, medium-2-1] }
  finish: { kind: finish, label: Oil, default: mineral-oil, among: [mineral-oil, tung-oil] }
  shop: { kind: quantity, label: Shop temperature, default: 22 °C, least: 5 °C, most: 40 °C }
materials:
  resin-a: { what: "Resin, part A", kind: resin, needs: [{ amount: 100 g, per: batch }] }
  oil: { what: Mineral oil, kind: finish, needs: [{ amount: 30 ml, per: piece }] }
  gloves: { what: Nitrile gloves, kind: gloves, needs: [{ amount: 2, per: piece }] }
tools:
  goggles: { what: Goggles, kind: eye-protection, count: 4 }
  fresh-air: { what: Two open windows, kind: ventilation, count: 4 }
  scraper: { what: Scraper, kind: scraper }
  muffs: { what: Ear muffs, kind: hearing-protection, count: 4 }
  masks: { what: Fitted masks, kind: respirator, count: 4 }
  extractor: { what: Dust extractor, kind: dust-extractor }
steps:
  seal:
    title: Seal the pocket
    act: seal
    does: Brush a thin coat on.
    hands: { setUp: 10 min, each: 5 min }
    uses: [resin-a, gloves]
    interrupt: never
    tools: [goggles, fresh-air]
    calculations:
      clock:
        use: cure-clock
        with: { resin: { from: /parameters/resin }, shopTemperature: { from: /parameters/shop } }
  pour:
    title: Pour
    act: pour
    does: A thin stream.
    hands: { setUp: 10 min, each: 5 min }
    uses: [resin-a, gloves]
    interrupt: never
    tools: [goggles, fresh-air]
    after:
      - step: seal
        least: { from: /calculations/clock/figures/recoatOpens, take: high }
        most: { from: /calculations/clock/figures/recoatCloses, take: low }
        missed: { do: "Let it cure, sand it dull, and pour", adds: 5 min, abrades: true }
  level:
    title: Level the inlay
    act: level
    does: Scrape it level.
    hands: { setUp: 5 min, each: 10 min }
    tools: [goggles, muffs, masks, scraper, extractor]
    after: [{ step: pour, least: { from: /calculations/clock/figures/fullCure, take: high } }]
  oil:
    title: Oil it
    act: oil
    does: Wipe a thin coat on.
    hands: { setUp: 5 min, each: 5 min }
    uses: [oil]
    calculations:
      coats:
        use: finish-coats
        with: { shape: rounded-rectangle, length: 400 mm, width: 250 mm, cornerRadius: 25 mm, thickness: 19 mm, boards: { from: /makes/pieces }, finish: { from: /parameters/finish }, coats: 1, resin: inlay }
  label:
    title: Write the label
    act: label
    does: Write it.
    hands: { each: 2 min }
    calculations:
      food:
        use: food-contact
        with: { market: us, food: dry, species: { from: /parameters/wood }, finish: { from: /parameters/finish }, resinPlace: beside-food, resin: { from: /parameters/resin }, papers: none }
      care:
        use: care-card
        with: { market: us, food: dry, species: { from: /parameters/wood }, finish: { from: /parameters/finish }, resinPlace: beside-food, resin: { from: /parameters/resin }, papers: none, shop: Lakeside workshop }
  hand-over:
    title: Hand it over
    act: hand-over
    does: Hand it over.
    hands: { each: 2 min }
    after:
      - label
      - { step: oil, least: { from: /calculations/coats/figures/use, take: high } }
      - { step: pour, least: { from: /calculations/clock/figures/foodService, take: high } }
`;

export const hours = {
  zone: 'America/Chicago',
  week: Object.fromEntries(['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'].map((day) => [day, ['08:00-20:00']])),
};

/** A local winter time of the shop as a moment. */
export const at = (local: string): string => `${local.replace(' ', 'T')}:00-06:00`;

export function batchOf(entries: readonly BatchEntry[], more: Partial<BatchRecord> = {}): BatchRecord {
  return {
    batch: 1,
    id: 'fair-trays',
    title: 'Trays for the fair',
    opened: at('2027-01-12 08:00'),
    zone: 'America/Chicago',
    method: { file: 'inlaid-board.yaml', text: inlaidBoard },
    case: { start: '2027-01-12', people: 1, hours },
    ...more,
    entries: [...entries],
  };
}

type Pieces = [number, number];
const span = (pieces: Pieces | undefined) => (pieces ? { pieces } : {});

export const started = (id: string, step: string, when: string, pieces?: Pieces): BatchEntry => ({
  kind: 'started',
  id,
  at: at(when),
  step,
  when: at(when),
  ...span(pieces),
});
export const finished = (id: string, step: string, when: string, pieces?: Pieces): BatchEntry => ({
  kind: 'finished',
  id,
  at: at(when),
  step,
  when: at(when),
  ...span(pieces),
});
export const read = (id: string, step: string, when: string, value: string, input = 'shopTemperature'): BatchEntry => ({
  kind: 'reading',
  id,
  at: at(when),
  step,
  calculation: 'clock',
  input,
  value,
  when: at(when),
});
export const strike = (id: string, strikes: string, when: string): BatchEntry => ({
  kind: 'correction',
  id,
  at: at(when),
  strikes,
  why: 'Mistyped.',
});

const memo = new Map<string, unknown>();

/** A batch worked out at a local time. */
export async function stateAt(
  entries: readonly BatchEntry[],
  now: string,
  more: Partial<BatchRecord> = {},
  options: BatchOptions = {},
): Promise<WorkedBatch> {
  const answer = await batchState(batchOf(entries, more), at(now), { memo, ...options });
  if (!answer.ok) throw new Error(answer.problems.map(({ message }) => message).join('\n'));
  return answer.worked;
}

export const told = (text: string): string => inReaderUnits(text, defaultUnits);

/** Today’s list as lines. */
export const linesOf = ({ state }: WorkedBatch): string[] =>
  state.today.map((item) => `${item.state} ${item.title}${item.which}: ${told(item.text)}`);
