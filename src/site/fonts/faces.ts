import faces from './faces.json' with { type: 'json' };

/** A file with a part of a face, as `scripts/fonts.py` cut it. */
export interface FaceFile {
  family: string;
  style: string;
  /** CSS weights that the file holds. */
  weight: string;
  /** Name under static/fonts. */
  file: string;
  bytes: number;
  /** The characters that it holds, as a CSS unicode-range. */
  range: string;
}

export const faceFiles: readonly FaceFile[] = faces;

/** What nearly every page shows at once. */
const first = ['kerf-book.woff2', 'kerf-sans.woff2'];

/**
 * Faces of the reader's machine, drawn to the measure of ours, so that the lines do not move when ours arrive. Size is the mean
 * width of a character over the text of the how-to pages, ours by theirs; ascent and descent are ours by that size, per cent.
 */
const standIns = [
  { family: 'Kerf Book Georgia', local: ['Georgia'], size: 105.5, ascent: 98.2, descent: 31.8 },
  {
    family: 'Kerf Book Times',
    local: ['Times New Roman', 'Liberation Serif', 'Tinos', 'Times'],
    size: 115.3,
    ascent: 89.9,
    descent: 29.1,
  },
  { family: 'Kerf Book DejaVu', local: ['DejaVu Serif'], size: 90.4, ascent: 114.7, descent: 37.1 },
  {
    family: 'Kerf Sans Arial',
    local: ['Arial', 'Liberation Sans', 'Arimo', 'Helvetica'],
    size: 93.3,
    ascent: 107.2,
    descent: 35,
  },
  { family: 'Kerf Sans Roboto', local: ['Roboto'], size: 93.5, ascent: 107, descent: 34.9 },
  { family: 'Kerf Sans DejaVu', local: ['DejaVu Sans'], size: 81.6, ascent: 122.6, descent: 40 },
];

/**
 * The rules that name the faces. `folder` is the address of static/fonts. A face that is not there as the page is first drawn waits for the next
 * page: text that stands never moves under a reader.
 */
function fontFaces(folder: string): string {
  const own = faceFiles.map(
    ({ family, style, weight, file, range }) =>
      `@font-face{font-family:"${family}";font-style:${style};font-weight:${weight};font-display:optional;src:url("${folder}${file}")format("woff2");unicode-range:${range}}`,
  );
  const theirs = standIns.map(
    ({ family, local, size, ascent, descent }) =>
      `@font-face{font-family:"${family}";src:${local.map((name) => `local("${name}")`).join(',')};size-adjust:${size}%;ascent-override:${ascent}%;descent-override:${descent}%;line-gap-override:0%}`,
  );
  return [...own, ...theirs].join('');
}

interface HeadTag {
  tagName: string;
  attributes?: Record<string, string>;
  innerHTML?: string;
}

/** What the head of every page says of the faces: named there rather than in the style sheet, they are asked for at once. */
export function fontTags(folder: string): HeadTag[] {
  const preloads = first.map((file) => ({
    tagName: 'link',
    attributes: { rel: 'preload', as: 'font', type: 'font/woff2', crossorigin: 'anonymous', href: `${folder}${file}` },
  }));
  return [...preloads, { tagName: 'style', innerHTML: fontFaces(folder) }];
}
