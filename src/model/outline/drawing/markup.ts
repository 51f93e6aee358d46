import { SaxesParser } from 'saxes';
import { answer, type Outcome, refuse } from '../../evidence/index.ts';
import type { Matrix } from '../path.ts';
import { type Attributes, pathOfElement, type ShapeName, shapeNames } from './elements.ts';
import { compose, identity, readTransform, readViewBox, viewBoxMap } from './transform.ts';
import { inUserUnits } from './units.ts';

/** A shape of a drawing: path data in its own axes and the map from them to the axes inside the root element. */
export interface DrawnShape {
  data: string;
  matrix: Matrix;
  /** Line of the file on which it stands. */
  line: number;
}

/** What is taken from a drawing: numbers only. */
export interface Markup {
  width: string | undefined;
  height: string | undefined;
  viewBox: readonly number[] | undefined;
  preserveAspectRatio: string | undefined;
  shapes: readonly DrawnShape[];
  /** What was left out and why, one sentence each. */
  notes: readonly string[];
}

/** Elements whose content is not drawn where it stands. */
const notDrawn = new Set([
  'defs',
  'symbol',
  'clipPath',
  'mask',
  'pattern',
  'marker',
  'linearGradient',
  'radialGradient',
  'filter',
  'metadata',
  'title',
  'desc',
  'style',
  'namedview',
  'animate',
  'animateTransform',
  'animateMotion',
  'set',
  'view',
]);

/** Elements that may run or fetch something; they are passed over and said. */
const active = new Set([
  'script',
  'foreignObject',
  'iframe',
  'embed',
  'object',
  'audio',
  'video',
  'handler',
  'listener',
]);

/** More shapes than this are a picture, not an outline. */
const mostShapes = 20_000;

interface Open {
  matrix: Matrix;
  /** Whether what stands inside is passed over. */
  skipped: boolean;
}

class Refused extends Error {
  readonly line: number;
  readonly wayOut: string;
  constructor(line: number, problem: string, wayOut: string) {
    super(problem);
    this.line = line;
    this.wayOut = wayOut;
  }
}

/**
 * Read the shapes of an SVG file.
 *
 * The text goes through a parser that only reports names and attributes; nothing in it is run, fetched or shown, entities
 * of its document type are not expanded, and only path data and numbers are kept.
 */
export function readMarkup(text: string, field: string): Outcome<Markup> {
  const reader = new MarkupReader();
  try {
    return answer(reader.read(text));
  } catch (error) {
    // The reader throws only to leave the parser's callbacks early.
    const at =
      error instanceof Refused
        ? error
        : new Refused(0, 'The file cannot be read as SVG', 'Save the drawing as plain SVG again.');
    return refuse(field, `${at.line > 0 ? `Line ${at.line}: ` : ''}${at.message}`, at.wayOut);
  }
}

class MarkupReader {
  readonly #open: Open[] = [];
  readonly #shapes: DrawnShape[] = [];
  readonly #counts = new Map<string, number>();
  #root: Attributes | undefined;

  read(text: string): Markup {
    const parser = new SaxesParser({ fragment: false });
    parser.on('error', (error) => {
      // Entities of a document type are not expanded. They stand in names and titles, never in numbers that are used.
      if (/entity/i.test(error.message)) return;
      const [, line, words] = /^(\d+):\d+: (.*)$/s.exec(error.message) ?? [];
      throw new Refused(
        Number(line ?? 0),
        `The file is not well-formed XML (${(words ?? error.message).replace(/\.$/, '')})`,
        'Save the drawing as plain SVG again; it may have been cut short.',
      );
    });
    parser.on('opentag', (tag) => this.#enter(tag.name, tag.attributes as Attributes, parser.line));
    parser.on('closetag', () => {
      this.#open.pop();
    });
    parser.write(text).close();
    const root = this.#root;
    if (!root) throw new Refused(0, 'The file holds no svg element', 'Choose an SVG drawing.');
    return {
      width: root.width,
      height: root.height,
      viewBox: readViewBox(root.viewBox),
      preserveAspectRatio: root.preserveAspectRatio,
      shapes: this.#shapes,
      notes: this.#notes(),
    };
  }

  #enter(qualified: string, attributes: Attributes, line: number): void {
    const name = qualified.slice(qualified.indexOf(':') + 1);
    const around = this.#open[this.#open.length - 1];
    if (!this.#root) {
      if (name !== 'svg')
        throw new Refused(
          line,
          `The file is not an SVG drawing: it starts with ${plainName(name)}`,
          'Choose an SVG drawing.',
        );
      this.#root = attributes;
      this.#count(attributes);
      this.#open.push({ matrix: identity, skipped: false });
      return;
    }
    const outside = around ?? { matrix: identity, skipped: false };
    this.#count(attributes);
    if (active.has(name)) this.#tell('active');
    if (name === 'text') this.#tell('text');
    if (name === 'image') this.#tell('image');
    const skipped =
      outside.skipped || notDrawn.has(name) || active.has(name) || name === 'text' || this.#hidden(attributes);
    if (skipped) {
      this.#open.push({ matrix: outside.matrix, skipped });
      return;
    }
    if (name === 'use') {
      throw new Refused(
        line,
        'The drawing holds a linked copy of a shape (use), which is not followed',
        'Unlink the copy or turn it into a path, and save again.',
      );
    }
    const matrix = this.#matrixOf(name, attributes, outside.matrix, line);
    this.#open.push({ matrix, skipped: false });
    if (!(shapeNames as readonly string[]).includes(name)) return;
    const data = pathOfElement(name as ShapeName, attributes);
    if (data === undefined) {
      this.#tell('empty');
      return;
    }
    if (this.#shapes.length >= mostShapes) {
      throw new Refused(
        line,
        `The drawing holds more than ${mostShapes} shapes`,
        'Save only the outline and its holes.',
      );
    }
    this.#shapes.push({ data, matrix, line });
  }

  #matrixOf(name: string, attributes: Attributes, outside: Matrix, line: number): Matrix {
    let matrix = outside;
    const written = attributes.transform;
    const styled = /(?:^|;)\s*(transform|translate|rotate|scale)\s*:/.test(attributes.style ?? '');
    const own = written === undefined ? identity : readTransform(written);
    if (!own || styled) {
      throw new Refused(
        line,
        'A transform cannot be read',
        'Flatten the transforms of the drawing (ungroup it, or turn objects into paths), and save again.',
      );
    }
    matrix = compose(matrix, own);
    if (name !== 'svg') return matrix;
    // A drawing inside the drawing.
    const [x, y] = [inUserUnits(attributes.x) ?? 0, inUserUnits(attributes.y) ?? 0];
    matrix = compose(matrix, [1, 0, 0, 1, x, y]);
    const viewBox = readViewBox(attributes.viewBox);
    if (!viewBox) return matrix;
    const [width, height] = [inUserUnits(attributes.width), inUserUnits(attributes.height)];
    if (width === undefined || height === undefined) {
      throw new Refused(line, 'A drawing inside the drawing has no size', 'Ungroup it and save again.');
    }
    return compose(matrix, viewBoxMap(viewBox, width, height, attributes.preserveAspectRatio));
  }

  #hidden(attributes: Attributes): boolean {
    const style = attributes.style ?? '';
    const hidden =
      attributes.display === 'none' ||
      attributes.visibility === 'hidden' ||
      /(?:^|;)\s*(?:display\s*:\s*none|visibility\s*:\s*hidden)/.test(style);
    if (hidden) this.#tell('hidden');
    return hidden;
  }

  /** Look for attributes that would run something. */
  #count(attributes: Attributes): void {
    for (const [name, value] of Object.entries(attributes)) {
      if (/^on/i.test(name) || (/href$/i.test(name) && /^\s*(?:javascript|data):/i.test(value ?? '')))
        this.#tell('active');
    }
  }

  #tell(what: string): void {
    this.#counts.set(what, (this.#counts.get(what) ?? 0) + 1);
  }

  #notes(): string[] {
    const words: Record<string, (count: number) => string> = {
      active: (count) =>
        `The file carries ${count === 1 ? 'a script or other active part' : `${count} scripts or other active parts`}; nothing of that was run or kept.`,
      text: (count) =>
        `${count === 1 ? 'A text was' : `${count} texts were`} left out; turn letters into paths to cut them.`,
      image: (count) => `${count === 1 ? 'A picture was' : `${count} pictures were`} left out.`,
      hidden: (count) => `${count === 1 ? 'A hidden object was' : `${count} hidden objects were`} left out.`,
      empty: (count) => `${count === 1 ? 'A shape without size was' : `${count} shapes without size were`} left out.`,
    };
    return [...this.#counts].map(([what, count]) => words[what]?.(count) ?? '').filter((note) => note !== '');
  }
}

/** A name of the file that may stand in a message: letters only, cut short. */
function plainName(name: string): string {
  return name.replace(/[^a-zA-Z0-9-]/g, '').slice(0, 20) || 'something else';
}
