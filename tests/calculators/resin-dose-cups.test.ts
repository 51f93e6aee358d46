import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { resinDoseCalculator } from '../../src/calculators/resin-dose/calculator.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import {
  caution,
  column,
  doses,
  ids,
  metric,
  own,
  type Raw,
  refused,
  result,
  value,
  verdict,
  workingTime,
} from './resin-dose-cases.ts';

describe('cups, layers and colours', () => {
  test('a pour deeper than the sheet allows is split into layers, and cups hold what the pot life is stated for', () => {
    const given = result({ resin: 'slow-casting-2-1', shapes: 'channel, 600, 80', depth: '30 mm', scaleDivision: 0.1 });
    expect(value(given, 'layers')).toBe(2);
    expect(value(given, 'layerThickness')).toBe(15);
    expect(value(given, 'largestCup')).toBeLessThanOrEqual(100.5);
    expect(new Set(column(given, 'stage'))).toEqual(new Set(['Layer 1', 'Layer 2', '']));
    expect(ids(given)).toContain('layers-wait');
    expect(ids(given)).not.toContain('layer-too-deep');
  });

  test('fewer layers than that are not planned, and the answer says how many it takes', () => {
    const given = result({ resin: 'slow-casting-2-1', shapes: 'channel, 600, 80', depth: '30 mm', layers: 1 });
    expect(verdict(given)).toEqual({
      level: 'stop',
      text: 'A layer of 30 mm is deeper than the 19 mm that this resin bears in one pour: it can overheat, crack, smoke or burn. Pour 2 layers of 15 mm.',
    });
    expect(doses(given)).toBe(false);
    expect(value(given, 'fillVolume')).toBe(1440);
  });

  test('the cups sum to the row of all of them, and that is the parts to a division a colour', () => {
    const given = result({
      ...own,
      mass: '1234 g',
      cupMass: '150 g',
      colours: 'moss, 60 %; amber, 40 %',
      scaleDivision: '1 g',
    });
    for (const [part, figure] of [
      ['massA_g', 'massA'],
      ['massB_g', 'massB'],
    ] as const) {
      const cells = column(given, part) as number[];
      const total = cells[cells.length - 1] as number;
      expect(cells.slice(0, -1).reduce((sum, cell) => sum + cell, 0)).toBeCloseTo(total, 9);
      expect(Math.abs(total - value(given, figure))).toBeLessThanOrEqual(2 * 3.32);
    }
  });

  test('time limits a cup to what is placed in half of the time that just that cup can be worked', () => {
    const resin = 'fast-coating-1-1';
    const by = (more: Raw) => result({ resin, mass: '300 g', depth: 3, scaleDivision: 0.1, ...more });
    const slow = by({ timeFor100g: '25 min' });
    const limit = Number(/above ([\d.]+) g/.exec(metric(slow.figures.cups?.note))?.[1]);
    const work = (mass: number, shopTemperature = '25 °C') =>
      workingTime({ resin, mass: `${mass} g`, shopTemperature });
    expect((25 * 60 * limit) / 100 / (work(limit) / 2)).toBeCloseTo(1, 1);
    expect(value(by({ timeFor100g: '5 min' }), 'cups')).toBe(3);
    // 35 °C leave half the time, so cups half as large or less.
    const hot = by({ timeFor100g: '25 min', depth: 1, shopTemperature: '35 °C' });
    const hotLimit = Number(/above ([\d.]+) g/.exec(metric(hot.figures.cups?.note))?.[1]);
    expect(hotLimit).toBeLessThan(0.55 * limit);
    expect((25 * 60 * hotLimit) / 100 / (work(hotLimit, '35 °C') / 2)).toBeCloseTo(1, 1);
  });

  test('a pot life that means usable does not let a cup of three times its mass take the whole of it', () => {
    const sheet = {
      name: 'Ours',
      mixByVolume: '2:1',
      densityA: '1.1',
      densityB: '1',
      potLife: '30 min',
      potLifeMass: '100 g',
    };
    const resin = JSON.stringify({
      ...sheet,
      potLifeTemperature: '25 °C',
      potLifeMeans: 'usable',
      greatestDepth: '3 mm',
    });
    const given = result({
      resin,
      mass: '600 g',
      depth: 3,
      cupMass: '300 g',
      timeFor100g: '10 min',
      scaleDivision: 0.1,
    });
    expect(value(given, 'largestCup')).toBeLessThan(151);
  });

  test('the largest cup is looked at, not the average', () => {
    // A seal coat and small colours pull the average far below the one large cup.
    const given = result({
      resin: 'fast-coating-1-1',
      shapes: 'channel, 400, 38, 4',
      depth: '3 mm',
      sealCoat: '100 g/m²',
      colours: 'moss, 90 %, paste 2 %; amber, 10 %, ink 1 %',
      cupMass: '500 g',
      scaleDivision: '0.01 g',
    });
    expect(value(given, 'largestCup')).toBeGreaterThan(150);
    expect(value(given, 'mass') / value(given, 'cups')).toBeLessThan(100);
    expect(caution(given, 'cup-beyond-pot-life')?.text).toMatch(/^A cup of 1\d\d g heats itself more than the 100 g/);
    expect(given.verdict?.level).toBe('care');
  });

  test.each([
    ['5 kg of a fast resin', { resin: 'fast-coating-1-1', mass: '5 kg', cupMass: '5 kg' }],
    ['1 kg of it', { resin: 'fast-coating-1-1', mass: '1 kg', cupMass: '1 kg' }],
    ['500 g of it in a hot shop', { resin: 'fast-coating-1-1', mass: '500 g', cupMass: '500 g', shopTemperature: 35 }],
  ])('%s in one cup is no dose: nobody empties it in half of its time', (_, raw) => {
    const given = result({ ...raw, depth: 1 });
    expect(verdict(given)).toEqual({
      level: 'stop',
      text: expect.stringMatching(
        /in one cup is too thick to work after .* the 100 g that the pot life is stated for\.$/,
      ),
    });
    expect(doses(given)).toBe(false);
  });

  test('300 g of it, poured at once, are a cup to be minded; 1 kg of a slow resin too', () => {
    for (const raw of [
      { resin: 'fast-coating-1-1', mass: '300 g', cupMass: '300 g' },
      { resin: 'slow-casting-2-1', mass: '1 kg', cupMass: '1 kg' },
    ]) {
      const given = result({ ...raw, depth: 3 });
      expect(value(given, 'cups')).toBe(1);
      expect(caution(given, 'cup-beyond-pot-life')?.text).toContain('Have it empty within');
      expect(given.verdict?.level).toBe('care');
    }
  });

  test('pigment is added on top, by the mass of the mix', () => {
    const colours = 'moss green, 75 %, paste 4 %; amber, 25 %, ink 1 %';
    const given = result({ ...own, mass: '200 g', colours });
    expect(value(given, 'pigment')).toBeCloseTo(0.04 * 150 + 0.01 * 50, 2);
    expect(value(given, 'massA') + value(given, 'massB')).toBeCloseTo(200, 9);
  });

  test.each([
    ['paste 6 %', false],
    ['paste 7 %', true],
    ['powder 5 %', false],
    ['mica powder 6 %', true],
    ['alcohol ink 2 %', false],
    ['ink 3 %', true],
  ])('%s goes beyond practice: %s', (pigment, warned) => {
    const given = result({ ...own, mass: '200 g', colours: `moss, 100 %, ${pigment}` });
    expect(ids(given).includes('pigment-beyond-limit')).toBe(warned);
    // Only what is dry hangs in the air.
    expect(ids(given).includes('pigment-dust')).toBe(pigment.includes('powder'));
  });

  test('several colours with too much pigment are one caution', () => {
    const given = result({ ...own, mass: '200 g', colours: 'moss, 50 %, paste 9 %; amber, 50 %, ink 4 %' });
    expect(ids(given).filter((id) => id.startsWith('pigment'))).toEqual(['pigment-beyond-limit']);
    expect(caution(given, 'pigment-beyond-limit')?.text).toMatch(/moss, 9 % .*; amber, 4 %/);
  });

  test('the maker’s limit outranks practice', () => {
    const resin = { name: 'Bench', mixByVolume: '2:1', pigmentLimit: '2 %' };
    const given = result({ resin, mass: '200 g', cupMass: '300 g', colours: 'moss, 100 %, paste 3 %' });
    expect(caution(given, 'pigment-beyond-limit')).toMatchObject({
      basis: 'supplier-sheet',
      text: expect.stringContaining('the sheet: 2 %'),
    });
  });
});

describe('what the scale allows', () => {
  test('1 g on 20 g of hardener leaves 2.5 % open, and the answer says what would do', () => {
    // 2:1 by weight: 60 g are 40 of A and 20 of B.
    const mix = { ...own, mixRatio: '2:1', mixRatioBy: 'weight' };
    const given = result({ mass: '60 g', ...mix, scaleDivision: '1 g' });
    expect(value(given, 'dosingError')).toBeCloseTo(2.5, 9);
    expect(value(given, 'roundingError')).toBeCloseTo(0, 9);
    expect(caution(given, 'dosing-error')?.text).toContain('Measure to 0.2 g');
    expect(given.verdict?.level).toBe('care');
    expect(ids(result({ mass: '60 g', ...mix, scaleDivision: '0.1 g' }))).not.toContain('dosing-error');
  });

  test('measured by volume it is the marks of the cup that count', () => {
    const given = result({ ...own, mass: '400 g', measureBy: 'volume', volumeDivision: '5 ml' });
    expect(column(given, 'volumeA_ml')).toEqual([240, 240]);
    expect(column(given, 'volumeB_ml')).toEqual([120, 120]);
    // 400 g are 120.5 ml of hardener.
    expect(value(given, 'dosingError')).toBeCloseTo(100 * (2.5 / 120.48), 2);
    expect(ids(given)).toContain('dosing-error');
  });

  test.each([
    [
      { mass: '100 g', measureBy: 'volume', volumeDivision: '5 ml' },
      /With marks of 5 ml the ratio .* 8\.3 %, too far to pour/,
    ],
    [{ mass: '100 g', measureBy: 'volume' }, /With marks of 5 ml \(taken: say yours\)/],
    [{ mass: '2 g', scaleDivision: '1 g' }, /needs 0\.6 g of one part, and a scale of 1 g cannot measure that/],
  ])('%j is too far off to pour, and no plan of it is given', (raw, text) => {
    const given = result({ ...own, ...raw });
    expect(verdict(given)).toEqual({ level: 'stop', text: expect.stringMatching(text) });
    expect(doses(given)).toBe(false);
    expect(value(given, 'dosingError')).toBeGreaterThan(3);
  });

  test('the sentence says the parts that the cups of the mixing sheet come to', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 30, max: 1300, noNaN: true }),
        fc.constantFrom('0.01 g', '0.1 g', '0.2 g', '1 g', '2 g'),
        (mass, scaleDivision) => {
          const given = result({ ...own, mass: `${mass.toFixed(2)} g`, scaleDivision });
          if (!doses(given)) return;
          const said = inReaderUnits(verdict(given)?.text ?? '', defaultUnits);
          const parts = / ([\d.]+) g of A and ([\d.]+) g of B/.exec(said)?.slice(1).map(Number);
          const sheet = given.documents?.find(({ id }) => id === 'mixing-sheet');
          const all = /All cups: A ([\d.]+) g, B ([\d.]+) g\./.exec(JSON.stringify(sheet))?.slice(1).map(Number);
          expect(parts, said).toEqual(all);
        },
      ),
    );
  });

  test('a scale marked in ounces gets its own columns, and nobody else does', () => {
    const given = result({ ...own, mass: '30 oz', scaleDivision: '0.05 oz' });
    for (const cell of column(given, 'massA_oz') as number[]) expect((cell / 0.05) % 1).toBeCloseTo(0, 6);
    for (const id of ['massA_oz', 'volumeA_floz'])
      expect(column(result({ ...own, mass: '10 oz' }), id)).toEqual([undefined, undefined]);
  });

  test('resin is in grams and millilitres for every reader', () => {
    const given = result(resinDoseCalculator.example.inch);
    for (const [name, figure] of Object.entries(given.figures))
      if (['g', 'mL', 'g/mL'].includes(figure.unit)) expect(figure.kept, name).toBe(true);
    const inch = { system: 'inch', inches: 'thirty-seconds' } as const;
    const said = inReaderUnits(
      JSON.stringify([given.verdict, given.cautions.filter((one) => one.own), given.figures]),
      inch,
    );
    expect(said).not.toMatch(/\d (oz|lb|fl oz)\b/);
    expect(said).toMatch(/Mix [\d.]+ kg: [\d.]+ g of A and/);
  });
});

describe('the mixing sheet, as it is followed', () => {
  interface Told {
    ratio: number;
    a: number;
    b: number;
  }

  /** Grams of A alone and of B in each cup by the tables of the sheet: coloured A is A by the share that the line of its colour says. */
  function cupsByTheSheet(given: ReturnType<typeof result>): Told[] {
    const blocks = (given.documents ?? []).flatMap(({ blocks }) => blocks);
    const tables = blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : []));
    const grams = (cell: unknown) => Number(/^[\d.]+/.exec(String(cell))?.[0]);
    const cell = (table: (typeof tables)[number], row: (typeof tables)[number]['rows'][number], id: string) =>
      row[table.columns.findIndex((one) => one.id === id)];
    const share = new Map(
      tables
        .filter(({ id }) => id.startsWith('colour-'))
        .flatMap((table) =>
          table.rows.map((row) => {
            const [a, pigment] = [grams(cell(table, row, 'a')), grams(cell(table, row, 'pigment'))];
            return [`${table.id.slice(7)}, ${cell(table, row, 'colour')}`, a / (a + pigment)] as const;
          }),
        ),
    );
    return tables
      .filter(({ id }) => id.startsWith('mix-'))
      .flatMap((table) =>
        table.rows.map((row) => {
          const colour = String(cell(table, row, 'cup')).replace(/^Cup \d+, /, '');
          return {
            ratio: value(given, 'weightRatio') / 100,
            a: grams(cell(table, row, 'a')) * (share.get(`${table.id.slice(4)}, ${colour}`) ?? 1),
            b: grams(cell(table, row, 'b')),
          };
        }),
      );
  }

  test('gives every cup its ratio within the division of the scale, whatever is coloured', () => {
    fc.assert(
      fc.property(
        fc.record({
          mass: fc.integer({ min: 150, max: 2000 }),
          cupMass: fc.integer({ min: 80, max: 300 }),
          pigment: fc.integer({ min: 0, max: 50 }),
          share: fc.integer({ min: 20, max: 100 }),
          scaleDivision: fc.constantFrom('0.1 g', '0.5 g', '1 g'),
          resin: fc.constantFrom('slow-casting-2-1', 'slow-casting-3-1'),
        }),
        ({ mass, cupMass, pigment, share, scaleDivision, resin }) => {
          const colours = `moss, ${share} %, paste ${pigment / 10} %${share < 100 ? `; amber, ${100 - share} %, paste 2 %` : ''}`;
          const given = result({
            resin,
            mass: `${mass} g`,
            depth: '6 mm',
            cupMass: `${cupMass} g`,
            colours,
            scaleDivision,
          });
          const division = Number.parseFloat(scaleDivision);
          for (const { a, b, ratio } of cupsByTheSheet(given)) {
            // Half a division is the rounding of B, and half of one of A is less than half of one of B.
            expect(Math.abs(b - a * ratio)).toBeLessThanOrEqual(division);
          }
        },
      ),
    );
  });

  test('colours all of A in one line, and then says coloured A in each cup', () => {
    // 480 g at 100 : 43 in five cups; 2 % of it is 9.6 g, and a cup of 67.1 g of A takes its share of that with it.
    const given = result({
      resin: 'slow-casting-2-1',
      mass: '480 g',
      depth: '6 mm',
      cupMass: '100 g',
      colours: 'amber, 100 %, paste 2 %',
      scaleDivision: '0.1 g',
    });
    const text = JSON.stringify(given.documents);
    expect(text).toContain('colour all of A before any cup');
    expect(text).toContain('Pour coloured A');
    expect(text).not.toContain('"Pour A"');
    const told = cupsByTheSheet(given);
    expect(told).toHaveLength(5);
    const poured = column(given, 'coloured_g') as number[];
    expect((poured[0] as number) - (told[0]?.a as number)).toBeCloseTo(9.6 / 5, 1);
  });

  test('one cup of a colour takes its pigment in the cup, and so do cups that are measured by volume', () => {
    const one = { resin: 'slow-casting-2-1', mass: '90 g', depth: '6 mm', colours: 'amber, 100 %, paste 2 %' };
    for (const given of [
      result({ ...one, scaleDivision: '0.1 g' }),
      result({ ...one, mass: '480 g', cupMass: '100 g', measureBy: 'volume', volumeDivision: '1 ml' }),
    ]) {
      const text = JSON.stringify(given.documents);
      expect(text).toContain('pigment into its A');
      expect(text).not.toContain('coloured A');
    }
  });
});

describe('pieces with names', () => {
  const three = {
    resin: 'slow-casting-2-1',
    shapes: 'channel, 300 mm, 20 mm, 2; oval, 90 mm, 60 mm',
    depth: '8 mm',
    cupMass: '40 g',
    scaleDivision: '0.1 g',
  };

  test('are named wherever a number would stand for them, and no figure changes by it', () => {
    const numbered = result(three);
    const named = result({ ...three, pieceNames: 'Oak tray; ash tray\nsmall board' });
    expect(named.figures).toEqual(numbered.figures);
    const fills = column(named, 'pieces').join('; ');
    expect(fills).toMatch(/^part of Oak tray/);
    expect(fills).toContain('small board');
    expect(fills).not.toMatch(/\d/);
    expect(column(numbered, 'pieces').join('; ')).toMatch(/^[\d, ;a-z]+$/);
    const rows = named.tables?.find(({ id }) => id === 'pieces')?.rows.map(([whose]) => whose);
    expect(rows).toEqual(['Oak tray and ash tray', 'small board']);
    const sheet = JSON.stringify(named.documents);
    expect(sheet).toContain('Oak tray and ash tray: ⟦');
    expect(sheet).toContain('"Fills"');
    expect(sheet).not.toMatch(/[Pp]ieces? \d|Fills pieces/);
  });

  test('have as many names as there are shapes, and none where they are not given as shapes', () => {
    expect(refused({ ...three, pieceNames: 'Oak tray' })).toEqual({
      field: 'pieceNames',
      message: expect.stringContaining('1 name stands beside 3 shapes'),
    });
    const { shapes: _, ...rest } = three;
    expect(refused({ ...rest, mass: '120 g', pieceNames: 'Oak tray' }).field).toBe('pieceNames');
    expect(refused({ ...three, pieceNames: [{ name: 'Oak tray' }, { name: ' ' }, { name: 'board' }] }).field).toBe(
      'pieceNames',
    );
  });
});
