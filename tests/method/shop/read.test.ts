import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readResinSheet } from '../../../src/calculators/kit/resin-sheet.ts';
import { planClock } from '../../../src/method/schedule/index.ts';
import { shopClimate, shopReadings } from '../../../src/method/shop/air.ts';
import {
  machineLimits,
  machinesOf,
  readShop,
  shopAim,
  shopConsumables,
  shopFees,
  shopGoods,
  shopOverhead,
} from '../../../src/method/shop/index.ts';
import { problemLine } from '../../../src/model/data/problem.ts';
import { sampleShop, sampleText, spoilt } from './sample.ts';

const least = 'shop: 1\nname: A bench\nzone: Europe/Oslo\ncurrency: NOK\n';

describe('the record of the demonstration', () => {
  const shop = sampleShop();

  test('reads quantities in the units of the model', () => {
    expect(shop.machines.find(({ id }) => id === 'planer')).toEqual({
      id: 'planer',
      kind: 'planer',
      count: 1,
      // 13, 6, 1/4, 12 and 1/16 in, of 25.4 mm.
      limits: { width: 330.2, thickness: 152.4, leastThickness: 6.35, leastLength: 304.8, depthOfCut: 1.5875 },
      power: 1.8,
    });
    expect(shop.machines.find(({ id }) => id === 'orbit-sander')).toMatchObject({ count: 4, power: 0.3 });
    expect(shop.air).toEqual({ place: 'duluth-mn', day: 20, night: 17, humidity: 35 });
    expect(shop.overhead).toEqual({ perMonth: 640, hoursPerMonth: 80 * 3600 });
    expect(shop.materials.find(({ id }) => id === 'casting-resin')).toEqual({
      id: 'casting-resin',
      name: 'Casting resin, both parts',
      consumable: false,
      density: 1.11,
      packs: [
        { size: { value: 1.5, unit: 'L' }, price: 62 },
        { size: { value: 6, unit: 'L' }, price: 198 },
        { size: { value: 18, unit: 'L' }, price: 540, available: 1 },
      ],
      onHand: { value: 0.4, unit: 'L' },
    });
    expect(shop.grits).toContain('P120');
  });

  test('gives a resin as its sheet and as the texts that a calculator takes', () => {
    const [resin] = shop.resins;
    expect(resin?.entries).toMatchObject({ name: 'Lakeside casting resin, sheet of March', potLife: '6 h' });
    expect(readResinSheet(resin?.entries ?? {})).toEqual({ ok: true, value: resin?.sheet });
    expect(resin?.sheet.figures).toMatchObject({ potLife: 21_600, weightRatio: 0.43 });
  });

  test('has its opening hours in its own zone', async () => {
    expect(shop.calendar?.zone).toBe('America/Chicago');
    expect(shop.calendar?.week?.mon).toEqual(['17:00-21:00']);
    const clock = await planClock(shop.zone, '2027-03-15 00:00');
    // A Monday: open from 17:00 to 21:00, minutes 1020 to 1260.
    expect(shop.calendar && clock.openSpans(shop.calendar, 1440)).toEqual([{ start: 1020, end: 1260 }]);
  });

  test('says that its prices are invented', () => {
    expect(sampleText).toMatch(/invented for the demonstration/);
    expect(shop.about).toMatch(/invented for the demonstration/);
  });

  test('gives the limits as the calculators ask for them', () => {
    expect(machineLimits(shop.machines)).toEqual({
      jointerWidth: 152.4,
      jointerLeastLength: 304.8,
      jointerLeastThickness: 12.7,
      planerWidth: 330.2,
      planerLeastLength: 304.8,
      planerLeastThickness: 6.35,
    });
  });

  test('gives its materials as a bill asks for them', () => {
    expect(shopGoods(shop).find(({ id }) => id === 'sugar-maple')).toEqual({
      id: 'sugar-maple',
      what: 'Sugar maple, rough',
      packs: [{ size: { value: 1, unit: '[bf_i]' }, price: 9 }],
      onHand: undefined,
      density: undefined,
    });
  });

  test('gives its fees, overhead and margin as a price asks for them', () => {
    expect(shopFees(shop)).toEqual([
      { id: 'fair-stall', what: 'Stall at the spring fair', per: 'batch', fixed: 85 },
      { id: 'card-payment', what: 'Card payments', per: 'piece', share: 0.027, fixed: 0.1 },
    ]);
    expect(shopOverhead(shop)).toEqual({ perMonth: 640, hoursPerMonth: 80 });
    expect(shopOverhead({ overhead: { perHour: 6.5 } })).toEqual({ perHour: 6.5 });
    expect(shopOverhead({})).toBeUndefined();
    expect(shopAim(shop)).toEqual({ margin: 0.25 });
    expect(shopAim({ markup: 60 })).toEqual({ markup: 0.6 });
    expect(shopAim({})).toBeUndefined();
    expect([...shopConsumables(shop)]).toEqual(expect.arrayContaining(['disc-p120', 'gloves', 'mixing-cup']));
  });

  test('names a place that the climate tables have', () => {
    const climate = shopClimate(shop);
    expect(climate.ok && climate.value?.id).toBe('duluth-mn');
    expect(shopReadings(shop)).toEqual({ ok: true, value: undefined });
  });
});

test('the least that a record says: all else is an empty list or left out', () => {
  const { shop, problems } = readShop(least);
  expect(problems).toEqual([]);
  expect(shop).toEqual({
    shop: 1,
    name: 'A bench',
    zone: 'Europe/Oslo',
    currency: 'NOK',
    machines: [],
    moulds: [],
    clamps: [],
    scales: [],
    bits: [],
    grits: [],
    resins: [],
    people: [],
    materials: [],
    fees: [],
  });
  expect(machineLimits([])).toEqual({});
});

test('the widest machine of a kind speaks for it, and one of which there is none does not', () => {
  const { shop } = readShop(
    `${least}machines:\n  - { id: a, kind: planer, limits: { width: 10 in, leastLength: 8 in } }\n  - { id: b, kind: planer, limits: { width: 15 in } }\n  - { id: c, kind: jointer, count: 0, limits: { width: 8 in } }\n`,
  );
  expect(machineLimits(shop?.machines ?? [])).toEqual({ planerWidth: 381 });
  expect(machinesOf(shop?.machines ?? [], 'planer').map(({ id }) => id)).toEqual(['a', 'b']);
  expect(machinesOf(shop?.machines ?? [], 'jointer')).toEqual([]);
});

test('a place that the tables do not have is refused with the nearest, and readings that cannot be read with their reason', () => {
  const place = shopClimate({ air: { place: 'dulut-mn' } });
  expect(place.ok ? '' : place.errors).toEqual([
    { field: 'air.place', message: expect.stringMatching(/“dulut-mn” is not a place.*duluth-mn/) },
  ]);
  const readings = shopReadings({ air: { readings: 'warm and dry' } });
  expect(readings.ok ? [] : readings.errors.map(({ field }) => field)).toEqual(['air.readings']);
  const good = shopReadings({ air: { readings: 'Jan, 20 °C, 25 %; Jul, 24 °C, 58 %' } });
  expect(good.ok && good.value?.readings).toHaveLength(2);
});

describe('what is wrong is told at its place, with what was read, what is allowed and a way out', () => {
  /** Line and column at which a text starts in the record. */
  const placeOf = (text: string, needle: string) => {
    const before = text.slice(0, text.indexOf(needle)).split('\n');
    return `${before.length}:${(before.at(-1) ?? '').length + 1}`;
  };
  test.each<[name: string, from: string, to: string, at: string, words: RegExp]>([
    [
      'a kind of machine misspelt',
      'kind: planer',
      'kind: plainer',
      'plainer',
      /“plainer” is not one of planer, jointer.*Did you mean “planer”\?/,
    ],
    [
      'a limit that the kind does not have',
      'throat: 17 in',
      'ripWidth: 17 in',
      'ripWidth: 17 in',
      /“ripWidth” is not a field.*throat/,
    ],
    ['a limit misspelt', 'width: 13 in', 'widht: 13 in', 'widht: 13 in', /“widht” is not a field.*“width”/],
    [
      'a length without a unit',
      'width: 13 in',
      'width: 13',
      '13, thick',
      /13 cannot be used.*with its unit, such as 305 mm/,
    ],
    [
      'a length without a unit, in quotes',
      'width: 13 in',
      "width: '13'",
      "'13', thick",
      /“13” has no unit.*305 mm or 12 in/,
    ],
    ['a weight for a length', 'width: 13 in', 'width: 13 kg', '13 kg', /“13 kg” is a weight.*Use mm/],
    [
      'a width that no machine has',
      'width: 13 in',
      'width: 900 in',
      '900 in',
      /“900 in” is more than this takes: 0.1 mm to 20000 mm/,
    ],
    ['a zone misspelt', 'America/Chicago', 'America/Chicgo', 'America/Chicgo', /Did you mean America\/Chicago\?/],
    ['an offset for a zone', 'America/Chicago', "'-06:00'", "'-06:00'", /“-06:00” is not a time zone/],
    [
      'a currency in small letters',
      'currency: USD',
      'currency: usd',
      'usd',
      /“usd” is not a currency code of ISO 4217\. Did you mean USD\?$/,
    ],
    [
      'a currency in words',
      'currency: USD',
      'currency: dollars',
      'dollars',
      /“dollars” is not a currency code of ISO 4217/,
    ],
    [
      'a price finer than its coin',
      'price: 62.00',
      'price: 62.005',
      '62.005',
      /62.005 has more decimals than USD, which has 2/,
    ],
    ['a price with a sign', 'price: 62.00', 'price: $62', '$62', /“\$62” is not a sum of money/],
    ['a price below nothing', 'price: 62.00', 'price: -62', '-62', /“-62” is not a sum of money/],
    ['a price that is no number', 'price: 62.00', 'price: .nan', '.nan', /no number that can be counted with/],
    ['a size of nothing', 'size: 1.5 L', 'size: 0 L', '0 L', /“0 L” is nothing/],
    ['a size in no unit', 'size: 1.5 L', 'size: 1.5 litrs', '1.5 litrs', /“1.5 litrs” is no amount of goods/],
    [
      'an id given twice',
      'id: jointer',
      'id: planer',
      'planer\n    kind: jointer',
      /“planer” is the id of something else already \(machines, entry 1\)/,
    ],
    [
      'one id for a machine and a material',
      'id: white-ash',
      'id: planer',
      'planer\n    name: White',
      /machines, entry 1/,
    ],
    ['an id in capitals', 'id: jointer', 'id: Jointer', 'Jointer', /lower case with hyphens/],
    ['a margin and a mark-up', 'margin: 25 %', 'margin: 25 %\nmarkup: 30 %', '30 %', /Keep one of them/],
    ['another version', 'shop: 1', 'shop: 2', '2\n', /version 1/],
    ['a grit without its grading', 'P100,', "'100',", "'100'", /“100” does not say its grading/],
    ['a grit that no table has', 'P100,', 'P101,', 'P101', /nearest grade is P100/],
    ['a grit twice', 'P100,', 'P80,', 'P80, P120', /stands in the drawer already/],
    ['a wrong entry of a sheet', 'potLifeMass: 100 g', 'potLifeMass: 100 h', '100 h', /“100 h” is a time/],
    ['a sheet that contradicts itself', 'potLife: 6 h\n', 'cure: 6 d\n', '', /says nothing without it/],
    ['overhead said twice', 'perMonth: 640.00,', 'perHour: 3, perMonth: 640.00,', '{ perHour', /Give one of the two/],
    ['a fee of nothing', 'percent: 2.7 %, fixed: 0.10', 'per: piece', '{ id: card-payment', /Give at least one/],
    ['limits that cross', 'leastTurns: 250', 'leastTurns: 9000', '9000 rpm', /“leastTurns” is more than “mostTurns”/],
    ['a day misspelt', '    tue: [', '    teu: [', 'teu: [', /“teu” is not a field.*“tue”/],
    [
      'hours that close before they open',
      '17:00-21:00',
      '17:00-16:00',
      '"17:00-16:00',
      /closes no later than it opens/,
    ],
    [
      'hours of another zone',
      'calendar:\n',
      'calendar:\n  zone: Europe/Oslo\n',
      'Europe/Oslo',
      /“Europe\/Oslo” is not the zone of the shop, America\/Chicago/,
    ],
    ['a field that is not there', 'name: Lakeside community workshop\n', '', '', /name/],
  ])('%s', (_, from, to, at, words) => {
    const text = spoilt(from, to);
    const { shop, problems } = readShop(text, 'shop.yaml');
    expect(shop).toBeUndefined();
    const [line = ''] = problems.map(problemLine);
    expect(line).toMatch(words);
    if (at) expect(line).toContain(`shop.yaml:${placeOf(text, at)}`);
    expect(line).not.toContain('⟦');
  });

  test('volume and weight of one material need its density, and are told so', () => {
    const text = `${least}materials:\n  - { id: resin, name: Resin, packs: [{ size: 5 L, price: 100 }, { size: 5 kg, price: 90 }] }\n`;
    expect(readShop(text).problems.map(problemLine)).toEqual([
      'shop.yaml:6:74 materials.0.packs.1.size: 5 kg cannot be compared with 5 l of the same material. Add its density, such as “density: 1.1 g/ml”.',
    ]);
    expect(readShop(text.replace('Resin,', 'Resin, density: 1.1 g/ml,')).problems).toEqual([]);
    const metres = readShop(text.replace('5 kg', '5 m')).problems.map(problemLine);
    expect(metres).toEqual([expect.stringMatching(/5 m cannot be compared with 5 l.*Write both in the same measure/)]);
  });

  test('a calendar that never opens says so', () => {
    expect(readShop(`${least}calendar: { holidays: [2027-12-24] }\n`).problems.map(problemLine)).toEqual([
      expect.stringMatching(/^shop\.yaml:5:\d+ calendar: It is never open/),
    ]);
  });

  test('a currency without minor coins takes whole sums', () => {
    const text = `${least.replace('NOK', 'JPY')}materials:\n  - { id: oil, name: Oil, packs: [{ size: 1 L, price: 980.5 }] }\n`;
    expect(readShop(text).problems.map(({ message }) => message)).toEqual([
      '980.5 has more decimals than JPY, which has none. Write the price as it is paid.',
    ]);
  });
});

test('names that every object bears are names like any other, or refused; nothing is polluted', () => {
  const { shop } = readShop(
    `${least}machines: [{ id: constructor, kind: planer }]\nmaterials: [{ id: valueof, name: __proto__ }]\n`,
  );
  expect(shop?.machines[0]?.id).toBe('constructor');
  for (const line of [
    '__proto__: { polluted: true }',
    'constructor: 1',
    'machines: [{ id: a, kind: __proto__ }]',
    'machines: [{ id: a, kind: toString }]',
    'materials: [{ id: __proto__, name: Oil }]',
    'resins: [{ id: a, sheet: { name: A, toString: 1 } }]',
  ]) {
    const { problems } = readShop(`${least}${line}\n`);
    expect(problems.length, line).toBeGreaterThan(0);
  }
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
});

test('whatever stands in place of a value, reading gives a shop or problems with their place, and throws nothing', () => {
  const scalars = [...sampleText.matchAll(/(?<=: )[^\s{}[\],][^\n{}[\],]*/g)].map((match) => match);
  fc.assert(
    fc.property(
      fc.nat(scalars.length - 1),
      fc.oneof(
        fc.constantFrom('~', '[]', '{}', '-1', '1e400', '.inf', '""', '__proto__', '[[1]]', '12 in', '1'),
        fc.string({ maxLength: 12 }),
      ),
      (at, value) => {
        const match = scalars[at] as RegExpMatchArray;
        const start = match.index ?? 0;
        const text =
          sampleText.slice(0, start) + value.replace(/[\n\r]/g, ' ') + sampleText.slice(start + match[0].length);
        const { shop, problems } = readShop(text, 'shop.yaml');
        expect(shop === undefined).toBe(problems.length > 0);
        for (const problem of problems) {
          expect(problem.line).toBeGreaterThan(0);
          expect(problem.message.length).toBeGreaterThan(10);
        }
        expect(JSON.stringify(shop ?? {})).not.toMatch(/NaN|Infinity|:null/);
      },
    ),
    { numRuns: 60 },
  );
});

test('a fault is told in the units of whoever reads it', () => {
  const hot = 'shop: 1\nname: Barn\nzone: Europe/Oslo\ncurrency: NOK\nair: { day: 80 °C }\n';
  const told = (system: 'metric' | 'inch') =>
    readShop(hot, 'shop.yaml', { system, inches: 'sixteenths' }).problems.map(({ message }) => message);
  expect(told('metric')).toEqual([expect.stringMatching(/: [-−]30 °C to 50 °C\./)]);
  expect(told('inch')).toEqual([expect.stringMatching(/: [-−]22 °F to 122 °F\./)]);
});
