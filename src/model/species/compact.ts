import type { Citation, Figure } from '../evidence/index.ts';
import { assessFoodContact, type FoodInput } from './food.ts';
import { figureKinds } from './labels.ts';
import { type FigureName, figureNames, type Species, type Statement } from './types.ts';

/**
 * The committed form of the resolved woods, small enough for a browser.
 *
 * Texts that many woods share are pooled: a pooled text has `@` where the wood's own printed label stands and `#` where
 * a number stands. A figure is `[evidence, value, ...]`, its label and unit following from its name, followed by its low
 * and high ends where it has a band and then the labels and numbers that fill its texts. The food assessment is not
 * stored: it follows from the rest.
 */
export interface CompactWoods {
  /** Evidence of figures and statements, as JSON texts. */
  pool: readonly string[];
  woods: readonly CompactWood[];
}

/** A pooled text by number, then what fills its holes: label numbers of the wood for `@`, numbers for `#`. */
export type Filled = readonly number[];

export interface CompactWood {
  /** Id, where it does not follow from the name. */
  i?: string;
  /** Name. */
  n: string;
  /** Trade names. */
  t?: readonly string[];
  /** Botanical name. */
  b: string | null;
  /** Basis of the botanical name, kind and origin, pooled. */
  k: Filled;
  /** Printed labels that fill `@`. */
  l: readonly string[];
  /** Figures in the order of `figureNames`; 0 where nothing is published. */
  f: readonly (readonly number[] | 0)[];
  /** Arrangement and openness of the pores, pooled. */
  p: Filled;
  /** Statements on pores, tyloses (0 for none), decay (0), effects, taste (0). */
  s: readonly [readonly Filled[], Filled | 0, Filled | 0, readonly Filled[], Filled | 0];
}

/** Id that follows from a name: lower case, words joined by hyphens, no bracketed part. */
export function idFromName(name: string): string {
  return name
    .toLowerCase()
    .replace(/\s*\(.*\)/, '')
    .replaceAll(' ', '-');
}

const hole = /[@#]/g;

/** Writes pooled texts and remembers each once. */
class Pool {
  readonly texts: string[] = [];
  readonly #numbers = new Map<string, number>();

  /** Number of a text in the pool, and what fills its holes. */
  fill(value: unknown, labels: string[]): number[] {
    const fillings: number[] = [];
    const json = JSON.stringify(value);
    if (/[@#]/.test(json)) throw new Error(`A text to be pooled holds @ or #: ${json}`);
    const places = [...labels].map((label, at) => ({ label: JSON.stringify(label).slice(1, -1), at }));
    places.sort((one, other) => other.label.length - one.label.length);
    const pattern = places.map(({ label }) => label.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
    const number = '(?<![\\w.-])\\d+(?:\\.\\d+)?(?= (?:%|lbf|lb/ft³|to \\d)| to|,|\\.(?: |"))';
    const parts = new RegExp([...pattern.map((each) => `(?<=, )${each}(?=")`), number].join('|'), 'g');
    const text = json.replace(parts, (found) => {
      const place = places.find(({ label }) => label === found);
      if (place) {
        fillings.push(place.at);
        return '@';
      }
      const value = Number(found);
      if (String(value) !== found) return found;
      fillings.push(value);
      return '#';
    });
    let at = this.#numbers.get(text);
    if (at === undefined) {
      at = this.texts.length;
      this.texts.push(text);
      this.#numbers.set(text, at);
    }
    return [at, ...fillings];
  }
}

function locatorLabels(wood: FoodInput): string[] {
  const citations: (Citation | undefined)[] = [
    ...figureNames.map((name) => wood.figures[name]?.citation),
    ...[wood.tyloses, wood.decay, wood.taste, ...wood.effects, ...wood.pores.statements].map((each) => each?.citation),
  ];
  const labels = citations.flatMap((citation) => {
    const match = /^(?:Table [\d-]+[ab]?|Annex \d|group|chapter \d+), (.+)$/.exec(citation?.locator ?? '');
    return match?.[1] ? [match[1]] : [];
  });
  return [...new Set(labels)];
}

function writeFigure(name: FigureName, figure: Figure, pool: Pool, labels: string[]): number[] {
  const { value, low, high, label, unit, ...evidence } = figure;
  const kind = figureKinds[name];
  if (label !== kind.label || unit !== kind.unit) throw new Error(`The figure ${name} has a label or unit of its own.`);
  const [at = 0, ...fillings] = pool.fill(evidence, labels);
  const ends = low === undefined || high === undefined ? [] : [low, high];
  return [at, value, ...ends, ...fillings];
}

/**
 * Write woods in the compact form.
 *
 * @param woods resolved woods; what only a dossier has is left out
 */
export function serialiseSpecies(woods: readonly FoodInput[]): CompactWoods {
  const pool = new Pool();
  const written = woods.map((wood): CompactWood => {
    const labels = locatorLabels(wood);
    const one = (said: Statement | null) => (said === null ? 0 : pool.fill(said, labels));
    const many = (all: readonly Statement[]) => all.map((each) => pool.fill(each, labels));
    return {
      ...(idFromName(wood.name) === wood.id ? {} : { i: wood.id }),
      n: wood.name,
      ...(wood.tradeNames.length === 0 ? {} : { t: wood.tradeNames }),
      b: wood.botanical,
      k: pool.fill([wood.botanicalBasis, wood.kind, wood.origin], []),
      l: labels,
      f: figureNames.map((name) => {
        const figure = wood.figures[name];
        return figure === null ? 0 : writeFigure(name, figure, pool, labels);
      }),
      p: pool.fill([wood.pores.arrangement, wood.pores.openness], []),
      s: [many(wood.pores.statements), one(wood.tyloses), one(wood.decay), many(wood.effects), one(wood.taste)],
    };
  });
  return { pool: pool.texts, woods: written };
}

/** The text of `resolved.json`: one pooled text or one wood a line. */
export function toLines({ pool, woods }: CompactWoods): string {
  const lines = (all: readonly unknown[]) => all.map((each) => JSON.stringify(each)).join(',\n');
  return `{"pool":[\n${lines(pool)}\n],"woods":[\n${lines(woods)}\n]}\n`;
}

function read<T>(pool: readonly string[], labels: readonly string[], [at = 0, ...fillings]: Filled): T {
  let next = 0;
  const json = (pool[at] ?? 'null').replace(hole, (mark) => {
    const filling = fillings[next] ?? 0;
    next += 1;
    return mark === '@' ? JSON.stringify(labels[filling] ?? '').slice(1, -1) : String(filling);
  });
  return JSON.parse(json) as T;
}

function readFigure(name: FigureName, pool: readonly string[], labels: readonly string[], written: Filled): Figure {
  const [at = 0, value = 0, ...rest] = written;
  const banded = pool[at]?.includes('"band":') ?? false;
  const [low, high] = rest;
  const evidence = read<Omit<Figure, 'label' | 'unit' | 'value'>>(pool, labels, [
    at,
    ...(banded ? rest.slice(2) : rest),
  ]);
  return {
    ...figureKinds[name],
    value,
    ...(banded && low !== undefined && high !== undefined ? { low, high } : {}),
    ...evidence,
  };
}

/** Restore the woods from their compact form, and judge each for food contact. */
export function restoreSpecies({ pool, woods }: CompactWoods): Species[] {
  return woods.map((wood): Species => {
    const one = <T extends Statement>(filled: Filled | 0): T | null =>
      filled === 0 ? null : read<T>(pool, wood.l, filled);
    const many = (all: readonly Filled[]) => all.map((each) => read<Statement>(pool, wood.l, each));
    const [botanicalBasis, kind, origin] = read<[Species['botanicalBasis'], Species['kind'], Species['origin']]>(
      pool,
      [],
      wood.k,
    );
    const [arrangement, openness] = read<[Species['pores']['arrangement'], Species['pores']['openness']]>(
      pool,
      [],
      wood.p,
    );
    const [statements, tyloses, decay, effects, taste] = wood.s;
    const figures = Object.fromEntries(
      figureNames.map((name, at) => {
        const written = wood.f[at] ?? 0;
        return [name, written === 0 ? null : readFigure(name, pool, wood.l, written)];
      }),
    ) as Record<FigureName, Figure | null>;
    const restored: FoodInput = {
      id: wood.i ?? idFromName(wood.n),
      name: wood.n,
      tradeNames: wood.t ?? [],
      botanical: wood.b,
      botanicalBasis,
      kind,
      origin,
      figures,
      pores: { arrangement, openness, statements: many(statements) },
      tyloses: one(tyloses),
      decay: one<NonNullable<Species['decay']>>(decay),
      effects: many(effects),
      taste: one(taste),
    };
    return { ...restored, food: assessFoodContact(restored) };
  });
}
