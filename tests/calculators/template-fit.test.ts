import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { RawInputs } from '../../src/calculators/kit/calculator.ts';
import { templateFitCalculator } from '../../src/calculators/template-fit/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { tilesForEither } from '../../src/model/outline/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

const { example } = templateFitCalculator;

function result(raw: RawInputs): Result {
  const outcome = answer(templateFitCalculator, raw);
  if (!outcome.ok) throw new Error(outcome.errors.map(({ field, message }) => `${field}: ${message}`).join(' '));
  return outcome.value.result;
}

function refused(raw: RawInputs): Record<string, string> {
  const outcome = answer(templateFitCalculator, raw);
  return outcome.ok ? {} : Object.fromEntries(outcome.errors.map(({ field, message }) => [field, message]));
}

const value = (raw: RawInputs, figure: string) => result(raw).figures[figure]?.value;
const cautionIds = (raw: RawInputs) => result(raw).cautions.map(({ id }) => id);

/** A square of 200 mm with a notch whose inside corner is sharp. */
const notched = 'M0 0H200V100H100V200H0Z';

describe('the worked case, a paddle', () => {
  test.each(['metric', 'inch'] as const)(
    'is answered in full in %s units, but for the window of an inlay that it has not',
    (system) => {
      expect(Object.keys(result(example[system]).figures)).toEqual(
        Object.keys(templateFitCalculator.figures).filter((id) => !id.startsWith('window')),
      );
    },
  );

  test('has the measures of its drawing', () => {
    const figures = result(example.metric).figures;
    expect(figures.boxLength?.value).toBeCloseTo(540, 6);
    expect(figures.roughWidth?.value).toBeCloseTo(216, 6);
    expect(figures.neck?.value).toBeCloseTo(45, 2);
    expect(figures.holeToEdge?.value).toBeCloseTo(17.5, 2);
    expect(figures.shortGrain?.value).toBeCloseTo(20, 2);
    expect(figures.insideRadius?.value).toBeCloseTo(5, 6);
  });

  test('says that the bit does not enter the hole, and numbers no stretch in it', () => {
    const { figures, tables, drawings } = result(example.metric);
    expect(figures.leftStanding?.note).toContain('does not enter one hole');
    const rows = tables?.find(({ id }) => id === 'stretches')?.rows ?? [];
    expect(rows.filter((row) => row[1] === 'hole 1').every((row) => String(row[6]).startsWith('not routed'))).toBe(
      true,
    );
    const labels = drawings?.[0]?.shapes.flatMap(({ label }) => (label && /\d/.test(label) ? [Number(label)] : []));
    expect(labels).toEqual(rows.flatMap((row) => (row[1] === 'outer' ? [row[0]] : [])));
  });
});

describe('an inlay that stands proud while the edge is trimmed', () => {
  const tray = { shape: 'rounded-rectangle', length: '420 mm', width: '220 mm', cornerRadius: '30 mm' };
  const inlaid = { ...tray, inlayLength: '280 mm', inlayWidth: '18 mm' };

  test('gets a window in the template, a finger wider all round, and the board none', () => {
    const { figures, documents } = result(inlaid);
    expect(figures.windowLength?.value).toBe(320);
    expect(figures.windowWidth?.value).toBe(58);
    expect(figures.perimeter?.value).toBe(result(tray).figures.perimeter?.value);
    const template = documents?.find(({ id }) => id === 'template');
    expect(inReaderUnits(template?.title ?? '', defaultUnits)).toContain('window 320 mm × 58 mm');
    const drawn = template?.blocks.flatMap((block) => (block.kind === 'drawing' ? block.drawing.shapes : [])) ?? [];
    const spans = drawn
      .filter(({ role }) => role === 'finished')
      .map(({ points }) => [0, 1].map((at) => points.map((point) => point[at] as number)))
      .map((axes) => axes.map((values) => Math.round(10 * (Math.max(...values) + Math.min(...values))) / 20));
    const sizes = drawn
      .filter(({ role }) => role === 'finished')
      .map(({ points }) => [0, 1].map((at) => points.map((point) => point[at] as number)))
      .map((axes) => axes.map((values) => Math.round(Math.max(...values) - Math.min(...values))));
    expect(sizes).toEqual([
      [420, 220],
      [320, 58],
    ]);
    expect(spans[1]).toEqual(spans[0]);
  });

  test('too long for its tray is refused with a way out', () => {
    expect(refused({ ...inlaid, inlayLength: '345 mm' }).inlayLength).toContain('less than 20 mm of template');
    expect(refused({ ...inlaid, inlayLength: '338 mm' })).toEqual({});
  });
});

const said = (raw: RawInputs) => {
  const { verdict } = result(raw);
  return [verdict?.level, inReaderUnits(verdict?.text ?? '', defaultUnits)] as const;
};

describe('the verdict', () => {
  const paddle = example.metric as RawInputs;
  test('a bit that is too wide for the shoulders: how much stands, where, and the largest that fits', () => {
    const [level, text] = said({ ...paddle, shoulderRadius: '3.2 mm', bitDiameter: '12.7 mm' });
    expect(level).toBe('stop');
    expect(text).toMatch(/^The bit does not fit: 2 corners keep 1\.\d mm; largest bit 6\.4 mm\. Bore the hole/);
    expect(said({ ...paddle, shoulderRadius: '3.2 mm', bitDiameter: '6.4 mm' })[1]).toMatch(/^The bit fits\./);
  });
  test('a sharp corner is reached by no bit', () => {
    expect(said({ shape: 'drawing', drawing: notched, bitDiameter: '6 mm' })[1]).toMatch(
      /no bit reaches a sharp corner/,
    );
  });
  test('a board that is too small comes first, with what it lacks', () => {
    const [level, text] = said({ ...paddle, boardLength: '500 mm' });
    expect(level).toBe('stop');
    expect(text).toMatch(/^The board is \d+ mm too short for the outline\./);
  });
  test('24 × 9 in fits what was ordered for it, in millimetres too', () => {
    const tray = { shape: 'rounded-rectangle', clearance: '3 mm', boardLength: '28 1/4 in', boardWidth: '9 1/4 in' };
    for (const size of [
      { length: '24 in', width: '9 in' },
      { length: '610 mm', width: '229 mm' },
    ]) {
      const fit = result({ ...tray, ...size });
      expect(fit.figures.swing?.value).toBe(0);
      expect(fit.figures.spareWidth?.value).toBeGreaterThanOrEqual(0);
      expect(fit.cautions.map(({ id }) => id)).not.toContain('does-not-fit');
    }
  });
  test('what tears is minded, and this case’s own dangers come before those of all routing', () => {
    const { verdict, cautions } = result(paddle);
    expect(verdict?.level).toBe('care');
    const own = cautions.map((caution) => caution.own === true);
    expect(own.lastIndexOf(true)).toBeLessThan(own.indexOf(false));
  });
  test('a thin template is told from a thick one', () => {
    expect(cautionIds({ ...paddle, template: '6 mm' })).toContain('bearing-off-template');
    expect(cautionIds({ ...paddle, template: '30 mm' })).not.toContain('bearing-off-template');
  });
  test('nothing is drawn as left by the bit where nothing is', () => {
    const roles = (raw: RawInputs) => result(raw).drawings?.[0]?.shapes.map(({ role }) => role) ?? [];
    expect(roles(paddle)).not.toContain('left');
    expect(roles({ ...paddle, shoulderRadius: '3.2 mm' })).toContain('left');
  });
});

describe('an own drawing', () => {
  const drawing = { shape: 'drawing', drawing: notched, bitDiameter: '12.7 mm' };

  test('is read as millimetres where it is path data', () => {
    expect(value(drawing, 'boxLength')).toBeCloseTo(200, 6);
  });

  test('takes the size of its file, or the width given', () => {
    const svg = `<svg width="10in" height="10in" viewBox="0 0 200 200"><path d="${notched}"/></svg>`;
    expect(value({ ...drawing, drawing: svg }, 'boxLength')).toBeCloseTo(254, 3);
    expect(value({ ...drawing, drawing: svg, drawingWidth: '300 mm' }, 'boxLength')).toBeCloseTo(300, 3);
  });

  test('with a sharp inside corner: what the bit leaves, and that no bit reaches it', () => {
    expect(value(drawing, 'leftStanding')).toBeCloseTo((Math.SQRT2 - 1) * 6.35, 2);
    expect(value(drawing, 'insideRadius')).toBe(0);
    expect(cautionIds(drawing)).toEqual(expect.arrayContaining(['sharp-corner', 'bit-too-wide']));
  });

  test('what was mended or left out is told', () => {
    const { cautions } = result({ ...drawing, drawing: `${notched}M300 0h20v20h-20z` });
    expect(cautions.filter(({ id }) => id.startsWith('drawing-')).map(({ text }) => text)).toEqual([
      'A smaller path outside the outline was left out.',
    ]);
  });

  test.each([
    [{ drawing: '' }, 'drawing', 'No drawing was given'],
    [{ drawing: 'hello' }, 'drawing', 'breaks off'],
    [{ drawing: '<svg width="9"><rect width="9" height="9"/></svg>' }, 'drawingWidth', 'does not say how large it is'],
    [{ drawing: 'M0 0L100 50V0L0 50Z' }, 'drawing', 'crosses itself'],
    [{ drawing: '<svg><script>alert(1)</script></svg>' }, 'drawing', 'holds no shapes'],
  ])('%j is refused at %s', (patch, field, words) => {
    expect(refused({ ...drawing, ...patch })[field]).toContain(words);
  });
});

describe('refusals', () => {
  test.each([
    [{ cornerRadius: '150 mm' }, 'cornerRadius', 'half the shorter side'],
    [{ handleWidth: '150 mm' }, 'handleWidth', 'between the corners and shoulders'],
    [{ boardLength: '' }, 'boardLength', 'Give “Board length” too, or leave “Board width” empty.'],
    [{ sheetWidth: '' }, 'sheetWidth', 'Give “Blank width” too, or leave “Blank length” empty.'],
    [{ copies: '2.5' }, 'copies', 'is not a whole number'],
    [{ shape: 'heart' }, 'shape', 'is not one of'],
  ])('%j is refused at %s', (patch, field, words) => {
    expect(refused({ ...example.metric, ...patch })[field]).toContain(words);
  });
});

describe('cautions', () => {
  test('a climb cut is never advised at a table', () => {
    const table = result({ ...example.metric, routing: 'table' });
    expect(table.cautions.find(({ id }) => id === 'table-feed')?.text).toMatch(/^Never/);
    const remedies = table.tables?.find(({ id }) => id === 'stretches')?.rows.map((row) => String(row[6])) ?? [];
    expect(remedies.join()).not.toContain('rotation');
  });

  test('short grain is told with the grain across the handle, a bad fit with a short board', () => {
    expect(cautionIds({ ...example.metric, holeDiameter: '0', grain: '90 °' })).toContain('short-grain');
    expect(cautionIds({ ...example.metric, boardLength: '500 mm' })).toContain('does-not-fit');
    expect(value({ ...example.metric, boardLength: '500 mm' }, 'waste')).toBeUndefined();
  });

  test('those of routing always stand', () => {
    expect(cautionIds({ shape: 'oval' })).toEqual(
      expect.arrayContaining(['template-routing', 'router-setup', 'marked-speed', 'wood-dust']),
    );
  });
});

describe('limits', () => {
  test('uphill and downhill change places between a handheld router and a table', () => {
    const hand = { shape: 'leaf', grain: '20 °' };
    const note = result({ ...hand, routing: 'table' }).figures.uphill?.note ?? '';
    expect(note).toContain(`Turned over it would be ${Math.round(value(hand, 'uphill') ?? 0)} %`);
  });

  test('copies on one blank are a document: each with its place, within the blank and apart from the others', () => {
    const document = result(example.metric).documents?.find(({ id }) => id === 'copies');
    const blocks = document?.blocks ?? [];
    const table = blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : []))[0];
    const rows = (table?.rows ?? []) as [string, number, number, string][];
    expect(rows).toHaveLength(value(example.metric, 'copies') ?? 0);
    expect(rows.length).toBeGreaterThan(2);
    // The paddle of 420 by 220 mm with 15 mm around it, on 1220 by 610 mm.
    for (const [, along, across, lies] of rows) {
      expect(along).toBeGreaterThan(15 - 0.01);
      expect(across).toBeGreaterThan(15 - 0.01);
      expect(along + 420).toBeLessThan(1220 - 15 + 0.01);
      expect(across + 220).toBeLessThan(610 - 15 + 0.01);
      expect(['as drawn', 'turned by half']).toContain(lies);
    }
    expect(new Set(rows.map(([, along, across]) => `${along} ${across}`)).size).toBe(rows.length);
    expect(blocks.some((block) => block.kind === 'drawing' && block.drawing.id === 'nest')).toBe(true);
    const { sheetLength: _, sheetWidth: __, ...one } = example.metric;
    expect(result(one).documents?.map(({ id }) => id)).toEqual(['template']);
  });

  test('copies: as many as fit, or as many as are wanted', () => {
    expect(value({ ...example.metric, copies: '2' }, 'copies')).toBe(2);
    const { drawings } = result(example.metric);
    expect(drawings?.map(({ id }) => id)).toEqual(['outline', 'nest']);
  });
});

describe('the template as a document', () => {
  const shapesOf = (raw: RawInputs) => {
    const [template] = result(raw).documents ?? [];
    const [block] = template?.blocks ?? [];
    return { template, shapes: block?.kind === 'drawing' ? block.drawing.shapes : [] };
  };
  const tray = { shape: 'rounded-rectangle', length: '610 mm', width: '229 mm', clearance: '3 mm' };

  test('bears name and sizes, the finished edge at true size, and the line of the saw outside it', () => {
    const { template, shapes } = shapesOf(tray);
    expect(template).toMatchObject({ id: 'template', form: 'true-size' });
    expect(inReaderUnits(template?.title ?? '', defaultUnits)).toBe(
      'Template: rounded rectangle 610 mm × 229 mm, face up',
    );
    const span = (role: string, at: 0 | 1) => {
      const values = shapes.filter((shape) => shape.role === role).flatMap(({ points }) => points.map((p) => p[at]));
      return Math.max(...values) - Math.min(...values);
    };
    expect([span('finished', 0), span('finished', 1)]).toEqual([expect.closeTo(610, 2), expect.closeTo(229, 2)]);
    expect([span('rough', 0), span('rough', 1)]).toEqual([expect.closeTo(616, 1), expect.closeTo(235, 1)]);
  });

  test('has no line for the saw where no clearance is left', () => {
    expect(shapesOf({ ...tray, clearance: '0 mm' }).shapes.map(({ role }) => role)).not.toContain('rough');
  });

  test('takes four sheets, on A4 and on Letter alike', () => {
    const points = shapesOf(tray).shapes.flatMap((shape) => shape.points);
    const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
    const size = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)] as const;
    expect(tilesForEither(...size).tiles).toHaveLength(4);
  });
});
