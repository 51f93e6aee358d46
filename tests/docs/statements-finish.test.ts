import { expect } from 'vitest';
import { measuredFinishes } from '../../src/model/finish/excluding.ts';
import { finishById } from '../../src/model/finish/index.ts';
import { tray } from '../../src/site/mdx/tray.ts';
import { figure, hold, worked, workedCase } from './statements.ts';

// Numbers in the pages on finishes, worked out again.

const hour = 3600;
const day = 24 * hour;
const week = 7 * day;

/** The ends of what is usual for a time of a finish, in a unit: `8 to 24`. */
function span(id: string, name: 'recoat' | 'fullCure' | 'lightUse', unit: number): string {
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
        return `| linseed oil, three coats | ${oil.join(' % | ')} % | | urethane varnish, three coats | ${varnish.join(' % | ')} % |`;
      },
    ],
    [
      'the bare tray, and the oiled one',
      () => {
        const { inputs } = workedCase('choosing-a-finish');
        expect(inputs).toMatchObject({
          width: `${tray.width} mm`,
          thickness: `${tray.thickness} mm`,
          species: 'sugar-maple',
        });
        expect(worked('choosing-a-finish', 'swingLeft').value).toBe(100);
        expect(worked('choosing-a-finish', 'lagFinished').value).toBe(worked('choosing-a-finish', 'lagBare').value);
        return `| bare, or mineral oil | 100 % | ${days(worked('choosing-a-finish', 'lagBare').value)} days |`;
      },
    ],
    [
      'the tray with linseed oil',
      () =>
        `| raw linseed oil, three coats | ${onTheTray('swingLeft', 'linseed-oil', { coats: '3' }).toFixed(1)} % | ${days(onTheTray('lagFinished', 'linseed-oil', { coats: '3' }))} days |`,
    ],
    [
      'whose cloths heat themselves, and what dries',
      () => {
        const hazards = ['linseed-oil', 'tung-oil', 'walnut-oil', 'oil-with-driers', 'hard-wax-oil', 'varnish'].map(
          (id) => finishById(id)?.rags.hazard,
        );
        expect(new Set(hazards)).toEqual(new Set(['self-heating']));
        expect(finishById('mineral-oil')?.rags.hazard).toBe('none-known');
        expect(finishById('mineral-oil')?.sets).toBe('never');
        expect(finishById('shellac')?.washable).toBe(false);
        return 'Its cloths are not known to heat by themselves (from memory)';
      },
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
      'twice as much in the first coat as in the second, and half as much again at hand',
      () => {
        const { value, high } = worked('oiling-and-waxing', 'volume');
        expect(worked('oiling-and-waxing', 'firstCoat').value / value).toBeCloseTo(2 / 3, 6);
        expect(worked('oiling-and-waxing', 'nextCoat').value / value).toBeCloseTo(1 / 3, 6);
        expect((high ?? Number.NaN) / value).toBeLessThan(1.5);
        return 'The rates behind it are from memory: have half as much again at hand.';
      },
    ],
    [
      'waits of mineral oil',
      () => {
        expect(span('oil-wax-paste', 'recoat', hour)).toBe(span('mineral-oil', 'recoat', hour));
        expect(finishById('mineral-oil')?.figures.fullCure).toBeNull();
        return `| mineral oil, with or without wax | ${span('mineral-oil', 'recoat', hour)} hours | ${span('mineral-oil', 'lightUse', hour)} hours, wiped dry; it never cures |`;
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
