import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  areaOfShape,
  compactDrawing,
  type DrawingOptions,
  largestDrawing,
  perimeterOfShape,
  readDrawing,
} from '../../../src/model/outline/index.ts';
import { drawn, sound, wavyOutline, wavyPath } from './reference.ts';

const svg = (attributes: string, content: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${content}</svg>`;

/** 200 × 100 mm, two units to a millimetre. */
const sheet = (content: string) => svg('width="200mm" height="100mm" viewBox="0 0 400 200"', content);

function read(text: string, options: DrawingOptions = {}) {
  const outcome = readDrawing(text, options);
  if (!outcome.ok) throw new Error(outcome.errors.map(({ field, message }) => `${field}: ${message}`).join(' '));
  return { ...outcome.value, area: areaOfShape(sound(outcome.value.outline)) };
}

function refusal(text: string, options: DrawingOptions = {}): string {
  const outcome = readDrawing(text, options);
  return outcome.ok ? 'it was read' : outcome.errors.map(({ field, message }) => `${field}: ${message}`).join(' ');
}

describe('the size of a drawing', () => {
  const box = '<rect x="10" y="20" width="96" height="48"/>';
  test.each([
    ['millimetres and a viewBox', svg('width="96mm" height="96mm" viewBox="0 0 96 96"', box), 96],
    ['centimetres', svg('width="9.6cm" height="9.6cm" viewBox="0 0 96 96"', box), 96],
    ['inches', svg('width="2in" height="2in" viewBox="0 0 96 96"', box), 50.8],
    ['points', svg('width="72pt" height="72pt" viewBox="0 0 96 96"', box), 25.4],
    ['picas', svg('width="6pc" height="6pc" viewBox="0 0 96 96"', box), 25.4],
    ['quarter millimetres', svg('width="384Q" height="384Q" viewBox="0 0 96 96"', box), 96],
    ['pixels, 96 to the inch', svg('width="96px" height="96px" viewBox="0 0 96 96"', box), 25.4],
    ['millimetres without a viewBox, whose units are pixels', svg('width="200mm" height="200mm"', box), 25.4],
    ['a width alone', svg('width="192mm" viewBox="0 0 96 96"', box), 192],
    ['a height alone', svg('height="192mm" viewBox="0 0 96 96"', box), 192],
    ['a box that fits by its height', svg('width="500mm" height="96mm" viewBox="0 0 96 96"', box), 96],
    [
      'a box that is cut off',
      svg('width="192mm" height="96mm" viewBox="0 0 96 96" preserveAspectRatio="xMidYMid slice"', box),
      192,
    ],
    [
      'a box that is stretched',
      svg('width="192mm" height="96mm" viewBox="0 0 96 96" preserveAspectRatio="none"', box),
      192,
    ],
  ])('by %s', (_what, text, width) => {
    expect(read(text).width).toBeCloseTo(width, 6);
  });

  test.each([
    ['no size', svg('', box)],
    ['numbers without a unit', svg('width="96" height="96" viewBox="0 0 96 96"', box)],
    ['percent', svg('width="100%" height="100%" viewBox="0 0 96 96"', box)],
    ["letters' heights", svg('width="10em" viewBox="0 0 96 96"', box)],
    ['path data', 'M0 0H100V50H0Z'],
  ])('is asked for where the drawing has %s', (_what, text) => {
    expect(refusal(text)).toMatch(/^drawingWidth: .*Give the width of the finished outline\.$/);
    expect(read(text, { width: 300 }).width).toBeCloseTo(300, 3);
  });

  test('asked for overrules the file, whatever its own scale is', () => {
    expect(read(svg('width="2in" height="2in" viewBox="0 0 96 96"', box), { width: 300 })).toMatchObject({ holes: 0 });
    for (const factor of [1e-4, 1, 1e4]) {
      const text = `M0 0H${100 * factor}V${50 * factor}H0Z`;
      const { width, height } = read(text, { width: 250 });
      expect(width).toBeCloseTo(250, 2);
      expect(height).toBeCloseTo(125, 2);
    }
  });

  test('of pasted path data by its unit', () => {
    expect(read('M0 0H100V50H0Z', { unit: 'mm' }).width).toBe(100);
    expect(read('M0 0H10V5H0Z', { unit: 'in' }).width).toBeCloseTo(254, 9);
  });

  test.each([
    [{ width: 1 }, 'drawingWidth: A width of 1 mm is outside'],
    [{ width: Number.NaN }, 'drawingWidth: A width of NaN mm is outside'],
    [{ unit: 'mm' as const }, ''],
  ])('asked for as %j', (options, words) => {
    expect(refusal('M0 0H100V50H0Z', options)).toContain(words);
  });

  test('that no board has is refused', () => {
    expect(
      refusal(svg('width="96mm" height="96mm" viewBox="0 0 9600 9600"', '<rect width="96" height="48"/>')),
    ).toContain('drawingWidth: The outline comes out at 0.96 × 0.48 mm');
    expect(refusal('M0 0H30000V20H0Z', { unit: 'mm' })).toContain('comes out at 30000 × 20 mm');
  });
});

describe('shapes', () => {
  test.each([
    ['rect', '<rect x="10" y="10" width="300" height="100"/>', 150 * 50],
    [
      'rect with round corners',
      '<rect x="10" y="10" width="300" height="100" rx="20"/>',
      150 * 50 - (4 - Math.PI) * 100,
    ],
    ['rect whose corners are too round', '<rect width="300" height="100" rx="500" ry="50"/>', Math.PI * 75 * 25],
    ['circle', '<circle cx="100" cy="100" r="80"/>', Math.PI * 1600],
    ['ellipse', '<ellipse cx="100" cy="100" rx="80" ry="40"/>', Math.PI * 800],
    ['polygon', '<polygon points="0,0 100,0 100,100"/>', 1250],
    ['polyline that ends where it starts', '<polyline points="0,0 100,0 100,100 0,0"/>', 1250],
    ['lines that meet', '<line x2="100"/><line x1="100" x2="100" y2="100"/><line x2="100" y2="100"/>', 1250],
    ['path of lines, relative', '<path d="m10 10h100v100h-100z"/>', 2500],
    ['path of a quadratic curve', '<path d="M0 0Q100 100 200 0Z"/>', (2 / 3) * 100 * 25],
    ['path of smooth curves', '<path d="M0 100C0 50 50 50 100 100S200 150 200 100V200H0Z"/>', 5000],
    [
      'path of arcs with their flags run together',
      '<path d="M20 100a80 80 0 01160 0a80 80 0 01-160 0z"/>',
      Math.PI * 1600,
    ],
    ['namespaced elements', '<s:rect xmlns:s="http://www.w3.org/2000/svg" width="100" height="100"/>', 2500],
  ])('%s', (_what, content, area) => {
    expect(read(sheet(content)).area).toBeCloseTo(area, 1);
  });

  test.each([
    ['moved', '<g transform="translate(50 20)"><rect width="100" height="50"/></g>', 1250],
    ['turned', '<rect width="100" height="50" transform="rotate(33 10 20)"/>', 1250],
    [
      'scaled in nested groups',
      '<g transform="scale(2)"><g transform="scale(1 0.5) translate(3,4)"><rect width="100" height="50"/></g></g>',
      2500,
    ],
    ['skewed', '<rect width="100" height="50" transform="skewX(30)"/>', 1250],
    [
      'mirrored',
      '<ellipse cx="50" cy="20" rx="50" ry="20" transform="matrix(-1 0.5 0.5 1 0 0)"/>',
      Math.PI * 250 * 1.25,
    ],
    [
      'in a drawing inside the drawing',
      '<svg x="20" y="30" width="200" height="100" viewBox="0 0 20 10"><rect width="10" height="5"/></svg>',
      1250,
    ],
  ])('%s', (_what, content, area) => {
    expect(read(sheet(content)).area).toBeCloseTo(area, 1);
  });

  test('a transform that cannot be read is refused rather than left out', () => {
    for (const transform of ['rotate(ten)', 'spin(3)', 'translate(1 2 3)', 'matrix(1 2 3)', 'scale(1']) {
      expect(refusal(sheet(`<rect width="100" height="50" transform="${transform}"/>`))).toContain(
        'A transform cannot be read',
      );
    }
    expect(refusal(sheet('<rect width="100" height="50" style="fill:red; transform: scale(2)"/>'))).toContain(
      'A transform cannot be read',
    );
  });

  test.each([
    ['definitions', '<defs><rect width="300" height="100"/></defs>'],
    ['clipping paths', '<clipPath id="c"><rect width="300" height="100"/></clipPath>'],
    [
      'hidden objects',
      '<g style="display:none"><rect width="300" height="100"/></g><rect width="300" height="100" visibility="hidden"/>',
    ],
    ['texts and pictures', '<text>R</text><image width="300" height="100"/>'],
  ])('%s are not outlines', (_what, content) => {
    expect(read(sheet(`${content}<rect width="100" height="50"/>`)).width).toBe(50);
  });

  test('a linked copy is refused, unless it is among the definitions', () => {
    expect(refusal(sheet('<use href="#a"/>'))).toContain('linked copy of a shape');
    expect(read(sheet('<defs><use href="#a"/></defs><rect width="100" height="50"/>')).width).toBe(50);
  });
});

describe('which path is the outline', () => {
  test('the largest, with those inside it as holes and the rest left out and said', () => {
    const { holes, notes, area } = read(
      sheet(
        '<circle cx="350" cy="50" r="20"/><rect width="300" height="200"/><circle cx="60" cy="60" r="20"/><circle cx="60" cy="60" r="5"/><rect x="290" y="50" width="30" height="30"/><path d="M0 0H50"/>',
      ),
    );
    expect(holes).toBe(1);
    expect(area).toBeCloseTo(150 * 100 - Math.PI * 100, 2);
    expect(notes).toEqual([
      'An open path was left out.',
      'A smaller path outside the outline was left out.',
      'A path that crosses the outline or a hole was left out.',
      'A path inside a hole was left out.',
    ]);
  });

  test('a compound path has its inner subpaths as holes', () => {
    expect(read(sheet('<path d="M0 0H300V200H0ZM40 40h50v50h-50z"/>'))).toMatchObject({ holes: 1, notes: [] });
  });

  test('a fill and its border count once', () => {
    const both = '<rect width="300" height="200"/>'.repeat(2);
    expect(read(sheet(both))).toMatchObject({ holes: 0, notes: ['A path that repeats the outline was left out.'] });
  });

  test('two sides of a drawn line are told', () => {
    expect(read(sheet('<path d="M0 0H300V200H0ZM4 4H296V196H4Z"/>')).notes.join()).toContain('sides of a drawn line');
  });

  test('a gap smaller than a tenth of a millimetre is closed, a wider one refused with its width', () => {
    expect(read(sheet('<path d="M0 0.15H100V50H0V0.3"/>')).notes).toEqual([
      'A path whose ends lay within 0.1 mm of each other was closed.',
    ]);
    expect(refusal(sheet('<path d="M0 0H100V50H0V10"/>'))).toContain('the smallest gap is 5.0 mm wide');
  });

  test('pieces in any order and direction are joined where their ends meet', () => {
    const { area, notes } = read(
      sheet(
        '<path d="M100 100H200"/><path d="M300 0V0.1L200 100"/><path d="M100 100C50 50 50 50 0 0"/><path d="M300 0L0 0.1"/>',
      ),
    );
    expect(area).toBeCloseTo((150 + 50) * 0.5 * 50, -1);
    expect(notes).toEqual(['4 separate pieces whose ends meet within 0.1 mm were joined into a closed path.']);
  });
});

describe('an outline that crosses itself', () => {
  test('in a small loop is mended, and where is said', () => {
    const { area, notes } = read(sheet('<path d="M0 0H200V100H102L98 98V102L102 100H0Z"/>'));
    expect(area).toBeCloseTo(5000, -1);
    expect(notes.join()).toMatch(/^The outline crosses or touches itself 5[01]\.\d mm from the left/);
  });

  test.each([
    [
      'like an eight with equal halves',
      '<path d="M0 0L100 50V0L0 50Z"/>',
      'crosses itself, so that its two sides cancel out',
    ],
    ['like an eight with a larger half', '<path d="M0 0L100 80V0L0 50Z"/>', 'it is not clear which side is wood'],
    ['like a star', '<path d="M100 0L160 180L0 70H200L40 180Z"/>', 'it is not clear which side is wood'],
  ])('%s is refused', (_what, content, words) => {
    expect(refusal(sheet(content))).toContain(words);
  });
});

describe('a drawing with active parts', () => {
  const evil = sheet(
    '<script>globalThis.ran = true</script><foreignObject><body onload="globalThis.ran = true"/></foreignObject><a href="javascript:globalThis.ran=1"><rect width="100" height="50" onclick="globalThis.ran = true"/></a>',
  );

  test('is read without them, and says so', () => {
    const { notes, outline } = read(evil);
    expect(notes).toEqual(['The file carries 5 scripts or other active parts; nothing of that was run or kept.']);
    expect((globalThis as { ran?: unknown }).ran).toBeUndefined();
    expect(JSON.stringify(outline)).not.toMatch(/script|ran|onclick/);
  });

  test('and entities that would grow without end are not expanded', () => {
    const bomb = `<!DOCTYPE svg [<!ENTITY a "${'x'.repeat(1000)}"><!ENTITY b "${'&a;'.repeat(1000)}"><!ENTITY c "${'&b;'.repeat(1000)}">]>${sheet('<title>&c;</title><rect width="100" height="50"/>')}`;
    expect(read(bomb).width).toBe(50);
  });

  test('only numbers and path letters leave any drawing', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const outcome = readDrawing(
          sheet(
            `<g id="${text.replace(/["<&]/g, '')}"><title>${text.replace(/[<&]/g, '')}</title><rect width="100" height="50"/></g>`,
          ),
        );
        if (outcome.ok) expect(outcome.value.outline.outer).toMatch(/^[MLCAZ0-9. -]+$/);
      }),
    );
  });
});

describe('a broken text', () => {
  test.each([
    ['nothing', '  ', 'drawing: The drawing is empty'],
    ['a cut-off file', '<svg width="10mm"><path d="M0 0', 'not well-formed XML'],
    ['tags that do not match', '<svg>\n<g>\n</svg>', 'Line 3: The file is not well-formed XML'],
    ['another kind of file', '<html><body/></html>', 'it starts with html'],
    ['an empty drawing', sheet(''), 'holds no shapes'],
    ['only a line', sheet('<path d="M0 0H100"/>'), 'No path in the drawing is closed'],
    ['only a speck', sheet('<circle r="0.5"/>'), 'comes out at 0.50 × 0.50 mm'],
    ['only a hair', sheet('<path d="M0 0L300 200Z"/>'), 'no path that goes around anything'],
    ['words', 'hello', 'Give'],
  ])('%s is refused', (_what, text, words) => {
    expect(refusal(text, text === 'hello' ? { unit: 'mm' } : {})).toContain(words);
  });

  test('a path that breaks off is read up to there, and says so', () => {
    expect(read(sheet('<path d="M0 0H100V50H0ZL10 banana"/>')).notes.join()).toMatch(
      /^Line 1: a path breaks off: .*What stands before that was read\.$/,
    );
  });
});

describe('a huge drawing', () => {
  test('of more than 5 MB is refused at once', () => {
    expect(refusal(sheet(`<path d="M0 0${' L1 1'.repeat(largestDrawing / 5)}"/>`))).toMatch(
      /^drawing: The drawing is 5\.\d MB long; at most 5 MB are read/,
    );
  });

  test('of nearly 5 MB is thinned out and read', () => {
    const text = `<svg width="300mm" height="300mm" viewBox="-150 -150 300 300"><path d="${wavyPath(140, [{ order: 3, swing: 0.05, phase: 1 }], 250_000)}"/></svg>`;
    expect(text.length).toBeGreaterThan(0.8 * largestDrawing);
    const { notes, outline } = read(text);
    expect(notes.join()).toContain('thinned out');
    const thin = sound(outline);
    expect(thin.outer.x.length).toBeLessThan(2000);
    const full = sound({ outer: wavyPath(140, [{ order: 3, swing: 0.05, phase: 1 }], 5000), holes: [] });
    expect(Math.abs(areaOfShape(thin) - areaOfShape(full))).toBeLessThan(0.02 * perimeterOfShape(full));
  });

  test('a scribble of half a million crossings is refused, not mended', () => {
    let seed = 7;
    const next = () => {
      seed = (seed * 16807) % 2147483647;
      return ((seed / 2147483647) * 300).toFixed(1);
    };
    const points = Array.from({ length: 6000 }, () => `${next()} ${next()}`).join(' ');
    expect(refusal(sheet(`<path d="M${points}Z"/>`))).toContain('crosses itself');
  });

  test('of groups nested without end is read', () => {
    expect(refusal(`<svg>${'<g>'.repeat(50_000)}${'</g>'.repeat(50_000)}</svg>`)).toContain('holds no shapes');
  });
});

describe('path data for an address', () => {
  test('keeps true curves where they are short', () => {
    const { shape } = read(sheet('<circle cx="100" cy="100" r="80"/><path d="M60 100h20v20z"/>'));
    const { text, thinnedTo } = compactDrawing(shape);
    expect(thinnedTo).toBeUndefined();
    expect(read(text, { unit: 'mm' }).area).toBeCloseTo(areaOfShape(shape), 1);
  });

  test('is thinned out where it would be too long, and says to what', () => {
    const { shape } = read(wavyPath(140, [{ order: 3, swing: 0.05, phase: 1 }], 2000), { unit: 'mm' });
    const { text, thinnedTo } = compactDrawing(shape);
    expect(text.length).toBeLessThanOrEqual(6000);
    const again = read(text, { unit: 'mm' });
    expect(Math.abs(again.area - areaOfShape(shape))).toBeLessThan((thinnedTo ?? 0) * perimeterOfShape(shape));
  });
});

describe('reading', () => {
  test('gives back what was written', () => {
    for (const id of ['rounded-rectangle', 'oval', 'half-moon', 'leaf', 'paddle']) {
      const outline = drawn(id);
      const { outline: again } = read([outline.outer, ...outline.holes].join(''), { unit: 'mm' });
      expect(areaOfShape(sound(again)) / areaOfShape(sound(outline))).toBeCloseTo(1, 5);
      expect(again.holes).toHaveLength(outline.holes.length);
    }
  });

  test('keeps area and holes of any wavy outline', () => {
    fc.assert(
      fc.property(wavyOutline, fc.double({ min: -180, max: 180, noNaN: true }), (outline, degrees) => {
        const paths = [outline.outer, ...outline.holes].map((data) => `<path d="${data}"/>`).join('');
        const text = `<svg width="500mm" height="500mm" viewBox="-250 -250 500 500"><g transform="rotate(${degrees})">${paths}</g></svg>`;
        const again = read(text);
        expect(again.area).toBeCloseTo(areaOfShape(sound(outline)), -1);
        expect(again.holes).toBe(outline.holes.length);
      }),
      { numRuns: 30 },
    );
  });

  const fragment = fc.constantFrom(
    '<svg',
    ' width="10mm"',
    ' viewBox="0 0 9 9"',
    '>',
    '</svg>',
    '<g transform="rotate(9)">',
    '</g>',
    '<path d="',
    'M0 0',
    'L9 9',
    'A1 1 0 0 1 5 5',
    'C',
    'Z',
    'z',
    '"/>',
    '1e999',
    '-.5',
    ',',
    'NaN',
    '<rect width="9" height="9"/>',
    '<circle r="4"/>',
    '<!--',
    '-->',
    '&amp;',
    '<![CDATA[',
    ']]>',
    'M',
    'H1e308',
    '<polygon points="0 0 9 0 9 9"/>',
  );

  test('never throws and never gives a number that is not finite, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary' }),
          fc.array(fragment, { maxLength: 30 }).map((parts) => parts.join('')),
        ),
        fc.record({
          width: fc.option(fc.double(), { nil: undefined }),
          unit: fc.constantFrom(undefined, 'mm' as const, 'px' as const),
        }),
        (text, given) => {
          const options: DrawingOptions = {
            ...(given.width === undefined ? {} : { width: given.width }),
            ...(given.unit ? { unit: given.unit } : {}),
          };
          const outcome = readDrawing(text, options);
          if (!outcome.ok) {
            expect(outcome.errors.length).toBeGreaterThan(0);
            for (const { message } of outcome.errors) expect(message).toMatch(/\.$/);
            return;
          }
          const { outline, width, height } = outcome.value;
          expect(Number.isFinite(width) && Number.isFinite(height)).toBe(true);
          expect(outline.outer).not.toMatch(/NaN|Infinity/);
          expect(areaOfShape(sound(outline))).toBeGreaterThan(0);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
