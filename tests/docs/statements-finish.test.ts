import { expect } from 'vitest';
import { measuredFinishes } from '../../src/model/finish/excluding.ts';
import { finishById } from '../../src/model/finish/index.ts';
import { figure, hold, worked, workedCase } from './statements.ts';

// Numbers in the pages on finishes, worked out again.

const hour = 3600;
const day = 24 * hour;
const week = 7 * day;

/** The ends of what is usual for a time of a finish, in a unit: `8 to 24`. */
function span(id: string, name: 'recoat' | 'fullCure', unit: number): string {
  const figure = finishById(id)?.figures[name];
  if (figure?.low === undefined || figure.high === undefined) throw new Error(`${id} has no ${name} from to`);
  return `${figure.low / unit} to ${figure.high / unit}`;
}

/** What a finish kept out after 1, 7 and 14 days, as the table prints it, %. */
function keptOut(finish: string, coats: number): readonly number[] {
  const row = measuredFinishes.find((one) => one.finish === finish && one.coats === coats);
  return row?.readings.map(({ printed }) => printed) ?? [];
}

const days = (seconds: number) => (seconds / day).toFixed(0);
const litres = (millilitres: number | undefined) => ((millilitres ?? Number.NaN) / 1000).toFixed(1);

/** A figure of the page’s tray with another finish, or with one face coated. */
function onTheTray(name: string, finish: string, more: Record<string, string> = {}) {
  const { calculator, inputs } = workedCase('choosing-a-finish');
  const { coats: _, ...tray } = inputs;
  return figure(calculator, { ...tray, finish, ...more }, name).value;
}

hold({
  'choosing-a-finish': [
    [
      'what oil and varnish kept out',
      () => {
        const [oil, varnish] = [keptOut('Linseed oil', 3), keptOut('Urethane varnish', 3)];
        return `after 1, 7 and 14 days of damp air three coats of linseed oil had kept out ${oil[0]}, ${oil[1]} and ${oil[2]} % of what bare pine took up, three of urethane varnish ${varnish[0]}, ${varnish[1]} and ${varnish[2]} %`;
      },
    ],
    ['the bare tray', () => `| bare | 100 % | ${days(worked('choosing-a-finish', 'lagBare').value)} days |`],
    [
      'the oiled tray',
      () =>
        `| raw linseed oil, three coats | ${worked('choosing-a-finish', 'swingLeft').value.toFixed(1)} % | ${days(worked('choosing-a-finish', 'lagFinished').value)} days |`,
    ],
    ...(
      [
        ['oil varnish, three coats', 'varnish', '3'],
        ['epoxy film, two coats', 'film-epoxy', '2'],
      ] as const
    ).map(([words, finish, coats]): [string, () => string] => [
      words,
      () =>
        `| ${words} | ${onTheTray('swingLeft', finish, { coats }).toFixed(0)} % | ${days(onTheTray('lagFinished', finish, { coats }))} days |`,
    ]),
  ],
  'resin-and-moving-wood': [
    [
      'what epoxy and oil kept out for a week',
      () =>
        `| epoxy, two coats, all round | ${keptOut('Two-part epoxy', 2)[1]} % of what bare wood takes up | | linseed oil, three coats, all round | ${keptOut('Linseed oil', 3)[1]} % |`,
    ],
    [
      'one face coated',
      () =>
        `let the two faces stand up to ${onTheTray('faceDifference', 'film-epoxy', { coats: '2', faces: 'one' }).toFixed(1)} points of moisture apart`,
    ],
  ],
  'oiling-and-waxing': [
    [
      'oil for twelve trays',
      () => {
        const { value, low, high } = worked('oiling-and-waxing', 'volume');
        const first = worked('oiling-and-waxing', 'firstCoat').value;
        expect(first / value).toBeCloseTo(1 / 2, 6);
        expect(worked('oiling-and-waxing', 'nextCoat').value / value).toBeCloseTo(1 / 4, 6);
        return `About ${litres(value)} litre for three coats on all twelve, ${litres(low)} to ${litres(high)}:`;
      },
    ],
    [
      'waits of mineral oil',
      () => {
        expect(span('oil-wax-paste', 'recoat', hour)).toBe(span('mineral-oil', 'recoat', hour));
        expect(finishById('mineral-oil')?.figures.fullCure).toBeNull();
        return `| mineral oil, with or without wax | ${span('mineral-oil', 'recoat', hour)} hours | when it is wiped dry |`;
      },
    ],
    [
      'waits of oil with driers',
      () =>
        `| drying oil with driers | ${span('oil-with-driers', 'recoat', hour)} hours | as the can says; ${span('oil-with-driers', 'fullCure', week)} weeks (common practice) |`,
    ],
    [
      'waits of raw oils',
      () => {
        const waits = ['linseed-oil', 'tung-oil', 'walnut-oil'].map(
          (id) => `${span(id, 'recoat', day)} days | ${span(id, 'fullCure', week)} weeks`,
        );
        expect(new Set(waits).size).toBe(1);
        return `| raw linseed, tung or walnut | ${waits[0]} (common practice) |`;
      },
    ],
    [
      'waits of hard-wax oil',
      () =>
        `| hard-wax oil | as the can says, often ${span('hard-wax-oil', 'recoat', hour)} hours | as the can says, often ${span('hard-wax-oil', 'fullCure', day)} days |`,
    ],
  ],
  'oily-rags': [
    [
      'whose rags heat themselves',
      () => {
        const hazard = (id: string) => finishById(id)?.rags.hazard;
        expect(
          ['linseed-oil', 'tung-oil', 'walnut-oil', 'oil-with-driers', 'varnish', 'hard-wax-oil'].map(hazard),
        ).toEqual(Array(6).fill('self-heating'));
        expect(hazard('mineral-oil')).toBe('none-known');
        return '| linseed, tung, walnut oil; oil with driers; Danish-type oil and varnish mixtures | **yes** |';
      },
    ],
    [
      'shellac’s are a matter of vapour',
      () => {
        expect(finishById('shellac')?.rags.hazard).toBe('vapour');
        return '| shellac in alcohol | not by itself, but [its vapour burns](./solvents.mdx) |';
      },
    ],
  ],
});
