import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { caution, column, deep, doses, ids, metric, own, refused, result, value, verdict } from './resin-dose-cases.ts';

describe('an amount of mix and a ratio, without a resin', () => {
  // By hand: 100 / (1 + 1/2.32) = 69.88 of A; 100 − 69.88 = 30.12 of B.
  test('100 g at 2:1 by volume', () => {
    const given = result({ mass: '100 g', ...own });
    expect(value(given, 'massA')).toBeCloseTo(69.88, 2);
    expect(value(given, 'massB')).toBeCloseTo(30.12, 2);
    expect(value(given, 'volumeA')).toBeCloseTo(60.24, 2);
    expect(value(given, 'volumeB')).toBeCloseTo(30.12, 2);
    expect(value(given, 'mixedDensity')).toBeCloseTo(1.1067, 4);
    expect(given.figures.massA?.basis).toBe('supplier-sheet');
  });

  test('densities are read in g/ml and in kg/m³ alike', () => {
    expect(result({ mass: 100, ...own, densityA: '1160', densityB: 1000 })).toEqual(result({ mass: 100, ...own }));
  });

  // By hand: 1.16 g of A and 0.97 g of B in every 2 ml.
  test('1:1 by volume is equal volumes and 100 : 83.6 by weight', () => {
    const given = result({ ...own, ...deep, volume: '200 ml', mixRatio: '1:1', densityB: '0.97 g/ml' });
    expect(value(given, 'volumeA')).toBeCloseTo(100, 9);
    expect(value(given, 'volumeB')).toBeCloseTo(100, 9);
    expect(value(given, 'massA')).toBeCloseTo(116, 9);
    expect(value(given, 'massB')).toBeCloseTo(97, 9);
    expect(value(given, 'weightRatio')).toBeCloseTo(83.6, 1);
  });

  test('mass and volume always reconcile, however the want is stated', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 5000, noNaN: true }),
        fc.integer({ min: 20, max: 100 }),
        fc.constantFrom('volume', 'weight'),
        fc.double({ min: 0.8, max: 2, noNaN: true }),
        fc.double({ min: 0.8, max: 2, noNaN: true }),
        (amount, parts, mixRatioBy, densityA, densityB) => {
          const mix = { ...own, ...deep, mixRatio: `100:${parts}`, mixRatioBy, densityA, densityB };
          const byMass = result({ mass: amount, ...mix });
          const { massA, massB, volumeA, volumeB } = Object.fromEntries(
            Object.entries(byMass.figures).map(([name, figure]) => [name, figure.value]),
          ) as Record<string, number>;
          const [a, b, va, vb] = [massA, massB, volumeA, volumeB] as [number, number, number, number];
          expect((a + b) / amount).toBeCloseTo(1, 9);
          expect(a / densityA / va).toBeCloseTo(1, 9);
          expect(b / densityB / vb).toBeCloseTo(1, 9);
          expect((mixRatioBy === 'volume' ? vb / va : b / a) * 100).toBeCloseTo(parts, 6);
          const back = result({ volume: va + vb, ...mix });
          expect(value(back, 'mass') / amount).toBeCloseTo(1, 9);
          expect(value(back, 'massA') / a).toBeCloseTo(1, 9);
        },
      ),
      { numRuns: 60 },
    );
  });

  test.each([
    [{ mass: '100 g' }, 'resin', /No resin was named/],
    [{ mass: '100 g', mixRatio: '2:1', densityA: '1.16' }, 'densityB', /density of part B is not known/],
    [{ ...own }, 'shapes', /Nothing says what is to be filled/],
    [{ ...own, mass: '100 g', volume: '90 ml' }, 'mass', /^Both “Volume to fill” and “Mixed resin wanted” were given/],
    [{ ...own, shapes: 'oval, 90, 60' }, 'depth', /how deep/],
    [
      { ...own, shapes: 'oval, 90, 60', depth: '5 mm', depths: '4; 6' },
      'depths',
      /^Both “Depth” and “Depths” were given/,
    ],
    [{ ...own, mass: '100 g', sealCoat: '0.5 g/m²' }, 'sealCoat', /is no coat/],
    [{ ...own, mass: '50 kg', cupMass: '100 g' }, 'cupMass', /takes 500 cups, more than 120/],
    [{ resin: 'fast-coating-1-1', mass: '2 kg', timeFor100g: '10 h' }, 'timeFor100g', /Place it faster/],
    [{ ...own, mass: '100 g', layers: '1.5' }, 'layers', /not a whole number/],
    [{ ...own, mass: '100 g', mixRatio: 'equal' }, 'mixRatio', /not a mix ratio/],
    [{ ...own, drawing: 'M0 0H300V20H0Z', drawingFilled: 'holes', depth: 5 }, 'drawingFilled', /no region inside/],
    [{ ...own, shapes: 'disc, 90, 60', depth: 5 }, 'shapes', /not rectangle, oval, channel or ring/],
    [{ ...own, shapes: 'channel 420 x 38', depth: 5 }, 'shapes', /has no commas.*channel, 900 mm, 12 mm/],
    [{ ...own, shapes: 'ring, 90, 90', depth: 5 }, 'shapes', /diameters are the same/],
    [{ ...own, shapes: 'oval, 90, 60, 1.5', depth: 5 }, 'shapes', /not a whole number of pieces/],
    [{ ...own, volume: 100, colours: 'moss, 60 %; amber, 30 %' }, 'colours', /sum to 90 %/],
    [{ ...own, volume: 100, colours: 'moss, 60 %; amber' }, 'colours', /some have none/],
    [{ ...own, volume: 100, colours: 'moss, 100 %, soot 3 %' }, 'colours', /not a pigment/],
    [
      { ...own, volume: 100, colours: 'moss, 100 %, 3' },
      'colours',
      /^Colour 1, “moss, 100 %, 3”, pigment: “3” says how much, and not of what\. Write paste 3 %, or .*up to 50 %\.$/,
    ],
    [{ ...own, volume: 100, colours: 'moss, , 3 %' }, 'colours', /pigment: “3 %” says how much/],
    [{ ...own, volume: 100, colours: 'moss, 3' }, 'colours', /sum to 3 %.*such as paste 3 %\.$/],
    [{ ...own, shapes: 'oval; 90; 60', depth: 5 }, 'shapes', /Put commas between them: oval, 90, 60\.$/],
    [{ ...own, depths: '8, 60 %; 15, 30 %', volume: 100 }, 'depths', /sum to 90 %/],
    [{ ...own, water: 'a cup or so' }, 'water', /neither a volume nor a weight/],
  ])('%j is refused at %s', (raw, field, message) => {
    const error = refused(raw);
    expect(error.field).toBe(field);
    expect(error.message).toMatch(message);
  });
});

describe('a place to fill', () => {
  const plain = { ...own, ...deep, depth: undefined, residue: 0, spare: 0 };

  // By hand: 420 × 38 × 12 mm = 191.52 ml.
  test.each([
    ['shapes', { shapes: 'channel, 420 mm, 38 mm', depth: '12 mm' }, 191.52],
    ['two of a shape', { shapes: 'rectangle, 10 cm, 2 cm, 2', depth: '10 mm' }, 40],
    ['several depths', { shapes: 'rectangle, 100, 20', depths: '10; 20; 30' }, 40],
    ['depths with shares', { shapes: 'rectangle, 100, 20', depths: '10, 75 %; 30, 25 %' }, 30],
    ['a drawing', { drawing: 'M0 0H300V20H0Z', depth: 5 }, 30],
    ['regions of a drawing', { drawing: 'M0 0H400V180H0ZM60 40H340V70H60ZM60 110H340V140H60Z', depth: 10 }, 168],
    [
      'a drawing without its regions',
      { drawing: 'M0 0H400V180H0ZM60 40H340V70H60Z', drawingFilled: 'inside', depth: 10 },
      636,
    ],
    ['a volume', { volume: '8 fl oz', depth: 10 }, 236.6],
    ['measured water', { water: '240 ml', depth: 10 }, 240],
    ['weighed water', { water: '240 g', depth: 10 }, 240.5],
    ['water less the stones in it', { water: '240 ml', depth: 10, displaced: '40 ml' }, 200],
    ['a shape less what is set into it', { shapes: 'rectangle, 100, 20', depth: 10, displaced: '5 ml' }, 15],
  ])('as %s', (_, want, millilitres) => {
    const given = result({ ...plain, ...want });
    expect(value(given, 'fillVolume')).toBeCloseTo(millilitres, 1);
    expect(value(given, 'mass')).toBeCloseTo(value(given, 'fillVolume') * (3.32 / 3), 6);
  });

  // By hand: 168 ml · 3.32/3 = 185.9 g; 5 % spare and 4 % left in the cups: 185.9 · 1.05 / 0.96 = 203.4 g.
  test('loses 4 % in the cups and takes 5 % spare unless told otherwise; an amount that is wanted does not', () => {
    const drawing = { drawing: 'M0 0H400V180H0ZM60 40H340V70H60ZM60 110H340V140H60Z', depth: 10 };
    expect(value(result({ ...own, ...deep, ...drawing }), 'mass')).toBeCloseTo(203.35, 1);
    expect(value(result({ ...own, ...deep, volume: 168 }), 'mass')).toBeCloseTo(185.92, 1);
  });

  // By hand: floor 0.1 m · 0.02 m and walls 2 · 0.12 m · 0.01 m make 0.0044 m²; at 150 g/m² 0.66 g.
  test('soaks up a seal coat on floor and walls, as a cup of its own, clear', () => {
    const given = result({
      ...plain,
      shapes: 'rectangle, 100, 20',
      depth: 10,
      sealCoat: 150,
      colours: 'moss green, 100 %, paste 3 %',
      scaleDivision: '0.001 g',
    });
    expect(value(given, 'sealMass')).toBeCloseTo(0.66, 6);
    expect(column(given, 'stage')).toEqual(['Seal coat', 'Fill', '']);
    expect(column(given, 'colour')).toEqual(['clear', 'moss green', '']);
  });
});

test('a seal coat on nobody knows how much wood is left out, and said', () => {
  const given = result({ ...own, mass: '100 g', sealCoat: '150 g/m²' });
  expect(value(given, 'mass')).toBe(100);
  expect(ids(given)).toContain('no-seal-coat');
  const known = result({ ...own, mass: '100 g', sealCoat: '150 g/m²', bareArea: '400 cm²' });
  expect(value(known, 'mass')).toBeCloseTo(106, 9);
  expect(ids(known)).not.toContain('no-seal-coat');
});

describe('a cup', () => {
  test.each([
    ['22 kg with an own ratio', { ...own, cupMass: undefined, mass: '22 kg' }],
    ['a sheet without a pot life', { resin: { name: 'Silent', mixByVolume: '2:1' }, mass: '22 kg' }],
  ])('has no limit that anybody stated: %s', (_, raw) => {
    const given = result(raw);
    expect(verdict(given)).toMatchObject({
      level: 'unknown',
      text: expect.stringContaining('Nothing says how much may stand in one cup'),
    });
    expect(doses(given)).toBe(false);
  });

  test('of a size that the reader says and nobody’s pot life backs is to be minded', () => {
    const given = result({ ...own, mass: '300 g', cupMass: '300 g' });
    expect(caution(given, 'cup-unchecked')?.text).toContain('Nobody says how long a cup of 300 g lasts');
    expect(given.verdict?.level).toBe('care');
  });
});

describe('several pieces', () => {
  const trays = {
    ...own,
    greatestDepth: '20 mm',
    shapes: 'channel, 480 mm, 22 mm, 12',
    depth: '6 mm',
    sealCoat: '150 g/m²',
  };

  // By hand: 480 · 22 · 6 mm = 63.36 ml · 1.1067 = 70.1 g; 12 pieces over 4 cups are 3 each.
  test('alike get so many grams each, and each cup says which of them it fills', () => {
    const given = result({ ...trays, cupMass: '300 g' });
    expect(value(given, 'pieceMass')).toBeCloseTo(70.1, 1);
    expect(metric(given.figures.pieceMass?.note)).toContain('2.49 g of the seal coat');
    expect(column(given, 'pieces')).toEqual(['1 to 12', '1 to 3', '4 to 6', '7 to 9', '10 to 12', '']);
    expect(given.tables?.[1]?.rows).toEqual([
      ['1 to 12', expect.any(String), expect.closeTo(2.49, 2), expect.closeTo(70.1, 1)],
    ]);
  });

  test('that a cup does not fill whole are named as parts', () => {
    expect(column(result({ ...trays, cupMass: '500 g', sealCoat: 0 }), 'pieces')).toEqual(['1 to 6', '7 to 12', '']);
    expect(column(result({ ...trays, cupMass: '200 g', sealCoat: 0 }), 'pieces')[0]).toBe('1 to 2 and part of 3');
  });

  test('in several colours are not named: nobody says which colour lies where', () => {
    expect(column(result({ ...trays, colours: 'moss; amber' }), 'pieces')).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });
});

test('a ring is dosed with the word that it locks the wood inside it', () => {
  const given = result({ ...own, ...deep, shapes: 'ring, 200 mm, 160 mm' });
  expect(value(given, 'area')).toBeCloseTo(11_309.7, 0);
  expect(caution(given, 'ring-around-wood')).toMatchObject({ level: 'warning', own: true });
  expect(given.verdict?.level).toBe('care');
});

test('all that keeps a dose from being given is said at once', () => {
  const given = result({ resin: { name: 'Nothing known' }, shapes: 'rectangle, 300, 200', depth: '80 mm' });
  expect(verdict(given).text).toMatch(/^Your sheet names no mix ratio/);
  expect(ids(given)).toEqual(
    expect.arrayContaining(['no-greatest-depth', 'no-cup-limit', 'resin-skin', 'resin-cup-heat']),
  );
});

test('skin and heat are always spoken of', () => {
  expect(ids(result({ mass: '100 g', ...own }))).toEqual(expect.arrayContaining(['resin-skin', 'resin-cup-heat']));
});

describe('lists of a file', () => {
  const text = {
    ...own,
    shapes: 'channel, 480 mm, 22 mm, 12; ring, 90 mm, 60 mm',
    depths: '8 mm, 60 %; 12 mm, 40 %',
    colours: 'moss green, 70 %, paste 3 %; amber, 30 %',
    greatestDepth: '30 mm',
    cupMass: '300 g',
  };
  const objects = {
    ...text,
    shapes: [
      { kind: 'channel', length: 480, width: '22 mm', count: 12 },
      { kind: 'ring', length: '9 cm', width: 60 },
    ],
    depths: [
      { depth: 8, share: 60 },
      { depth: '12 mm', share: '40 %' },
    ],
    colours: [
      { name: 'moss green', share: 70, pigment: 'paste 3 %' },
      { name: 'amber', share: '30 %' },
    ],
  };

  test('may be objects, which say the same as the texts', () => {
    expect(result(objects)).toEqual(result(text));
  });

  test('a colour without a share may have a pigment, as a text and as an object', () => {
    const one = { ...own, mass: '200 g', colours: 'moss green, paste 3 %' };
    const other = { ...one, colours: [{ name: 'moss green', pigment: 'paste 3 %' }] };
    expect(value(result(one), 'pigment')).toBeCloseTo(6, 1);
    expect(result(other)).toEqual(result(one));
  });

  test.each([
    [{ shapes: [{ kind: 'channel', width: 22 }] }, 'shapes', /^Shape 1 has no length/],
    [{ shapes: [{ kind: 'channel', length: 480, width: 22, many: 12 }] }, 'shapes', /“many”, which is not known/],
    [{ depths: [{ depth: 8, share: 60 }, { depth: 12 }] }, 'depths', /some have none/],
    [{ colours: [{ share: 60 }] }, 'colours', /^Colour 1 has no name/],
  ])('%j names the entry', (raw, field, message) => {
    const error = refused({ ...text, ...raw });
    expect(error.field).toBe(field);
    expect(error.message).toMatch(message);
  });
});

test('the parts in the sentence add up to the sum that it names', () => {
  for (const mass of [15.37, 99.97, 149.7, 483.43, 484.6, 1009.5, 12_345.6]) {
    const said = metric(result({ ...own, ...deep, mass: `${mass} g` }).verdict?.text);
    const [sum, a, b] = [...said.matchAll(/([\d.]+) (k?)g\b/g)].map(
      ([, read, kilo]) => Number(read) * (kilo ? 1000 : 1),
    );
    expect((a ?? 0) + (b ?? 0), said).toBeCloseTo(sum ?? Number.NaN, 6);
    expect(Math.abs((sum ?? 0) / mass - 1), said).toBeLessThan(0.003);
  }
});
