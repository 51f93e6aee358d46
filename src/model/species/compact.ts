import type { Citation, Figure } from '../evidence/index.ts';
import { newtonsPerPound } from '../quantity/constants.ts';
import { deriveCoefficient, deriveDensity } from './derive.ts';
import { kilogramsPerCubicMetre } from './equations.ts';
import { assessFoodContact, type FoodInput } from './food.ts';
import { figureKinds } from './labels.ts';
import { Pool, readPooled } from './pool.ts';
import { tidy } from './printed.ts';
import { type FigureName, figureNames, type OtherMovement, type Species, type Statement } from './types.ts';

/**
 * The committed form of the resolved woods, small enough for a browser.
 *
 * What follows from the rest is not stored: labels and units of figures, figures derived from the wood's other figures,
 * the food assessment. Texts that many woods share are pooled (see pool.ts).
 */
export interface CompactWoods {
  /** Evidence of figures, statements and the like, as JSON texts with holes. */
  pool: readonly string[];
  woods: readonly CompactWood[];
}

export interface CompactWood {
  /** Id, where it does not follow from the name. */
  i?: string;
  /** Name. */
  n: string;
  /** Trade names. */
  t?: readonly string[];
  /** Botanical name. */
  b: string | null;
  /** 1 where the Food Code names the wood. */
  c?: 1;
  /** Pooled: basis of the botanical name, kind, origin, arrangement and openness of the pores. */
  k: number;
  /** What fills `@`: a printed label, or the number of one that follows from the wood's names. */
  l: readonly (string | number)[];
  /**
   * Figures: the number of a shape in the pool, then the numbers that fill it. A shape has, in the order of
   * `figureNames`, 0 where nothing is published, 1 where the figure is derived from the wood's other figures, else the
   * number of its evidence in the pool and of the labels that fill it. The numbers are those of each figure in turn: its
   * value (left out where it is the one printed number in another unit), its low and high ends if it has a band, and the
   * printed numbers that fill its evidence.
   */
  f: readonly number[];
  /** Movement by other sources, each: number of its evidence in the pool, labels and numbers that fill it, the two coefficients. */
  m?: readonly [
    at: number,
    labels: readonly number[],
    numbers: readonly number[],
    radial: number,
    tangential: number,
  ][];
  /**
   * Statements on pores, tyloses, decay, effects and taste: the number of a shape in the pool, in which each statement is
   * the number of its text in the pool and of the labels that fill it, and 0 where there is none.
   */
  s: number;
}

type Traits = [Species['botanicalBasis'], Species['kind'], Species['origin'], ...PoreTraits];
type PoreTraits = [Species['pores']['arrangement'], Species['pores']['openness']];
/** One statement in a shape. */
type Said = [text: number, ...labels: number[]];
type StatementShape = [Said[], Said | 0, Said | 0, Said[], Said | 0];

/** Id that follows from a name: lower case, words joined by hyphens, no bracketed part. */
export function idFromName(name: string): string {
  return name
    .toLowerCase()
    .replace(/\s*\(.*\)/, '')
    .replaceAll(' ', '-');
}

/** Labels that follow from a wood's names, such as `Maple: Sugar`, `Maple, sugar`, `Maples` and `Acer`. */
function impliedLabels({ n, b, k }: { n: string; b: string | null; k: Traits }): string[] {
  const words = n.split(' ');
  const last = words.at(-1) ?? '';
  const first = words.slice(0, -1).join(' ');
  const title = last.charAt(0).toUpperCase() + last.slice(1);
  const botanical = b ?? '';
  return [
    n,
    `${title}: ${first}`,
    `${title}, ${first.charAt(0).toLowerCase()}${first.slice(1)}`,
    `${title}, ${first}`,
    title,
    `${title}s`,
    botanical,
    botanical.split(' ')[0] ?? '',
    `sheet ${botanical} (${k[2]})`,
    `Oak, red: ${first}`,
    `Oak, white: ${first}`,
  ];
}

/** The parts of a wood's locators that are its own: row labels, and names of its sheets. */
function locatorLabels(wood: FoodInput): string[] {
  const citations: (Citation | undefined)[] = [
    ...figureNames.map((name) => wood.figures[name]?.citation),
    ...wood.otherMovement.map((each) => each.citation),
    ...[wood.tyloses, wood.decay, wood.taste, ...wood.effects, ...wood.pores.statements].map((each) => each?.citation),
  ];
  const labels = citations.flatMap((citation) => {
    const locator = citation?.locator ?? '';
    const label = /^(?:(?:Table [\d-]+[ab]?|Annex \d|chapter \d+), |group )(.+)$/.exec(locator)?.[1];
    if (label !== undefined && !/^(?:text under|footnote)/.test(label)) return [label];
    return locator.startsWith('sheet ') || citation?.source === 'cirad-krvf0e' ? [locator] : [];
  });
  return [...new Set(labels)];
}

type Figures = Readonly<Record<FigureName, Figure | null>>;

/** The figure that would be derived for a name from the wood's other figures, or null. */
function derived(name: FigureName, figures: Partial<Figures>): Figure | null {
  const start = figures.shrinkageStart ?? null;
  switch (name) {
    case 'radialCoefficient':
      return deriveCoefficient(name, figures.radialShrinkage ?? null, start);
    case 'tangentialCoefficient':
      return deriveCoefficient(name, figures.tangentialShrinkage ?? null, start);
    case 'density12':
      return deriveDensity(figures.specificGravity12 ?? null);
    default:
      return null;
  }
}

/** Value of a figure that is one printed number in another unit, from its evidence and what fills it; null for others. */
function converted(text: string, printed: readonly number[]): number | null {
  const unit = /Given as # (lbf|lb\/ft³)/.exec(text)?.[1];
  if (unit === undefined) return null;
  return tidy((printed[0] ?? 0) * (unit === 'lbf' ? newtonsPerPound : kilogramsPerCubicMetre));
}

/** The part of a shape that stands for one figure. */
type Part = 0 | 1 | [evidence: number, ...labels: number[]];

/** Write one figure: gives its part of the shape, and adds its numbers. */
function writeFigure(name: FigureName, figures: Figures, pool: Pool, labels: string[], numbers: number[]): Part {
  const figure = figures[name];
  if (figure === null) return 0;
  if (JSON.stringify(figure) === JSON.stringify(derived(name, figures))) return 1;
  const { value, low, high, label, unit, ...evidence } = figure;
  const kind = figureKinds[name];
  if (label !== kind.label || unit !== kind.unit) throw new Error(`The figure ${name} has a label or unit of its own.`);
  const pooled = pool.fill(evidence, labels);
  const known = converted(pool.texts[pooled.at] ?? '', pooled.numbers);
  if (known !== null && known !== value) throw new Error(`The figure ${name} is not what its source prints.`);
  numbers.push(...(known === null ? [value] : []));
  numbers.push(...(low === undefined || high === undefined ? [] : [low, high]), ...pooled.numbers);
  return [pooled.at, ...pooled.labels];
}

function writeMovement(
  { radial, tangential, ...evidence }: OtherMovement,
  pool: Pool,
  labels: readonly string[],
): NonNullable<CompactWood['m']>[number] {
  const pooled = pool.fill(evidence, labels);
  return [pooled.at, pooled.labels, pooled.numbers, radial, tangential];
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
    const { arrangement, openness, statements } = wood.pores;
    const traits: Traits = [wood.botanicalBasis, wood.kind, wood.origin, arrangement, openness];
    const implied = impliedLabels({ n: wood.name, b: wood.botanical, k: traits });
    const numbers: number[] = [];
    const shape = figureNames.map((name) => writeFigure(name, wood.figures, pool, labels, numbers));
    const say = (statement: Statement): Said => {
      const pooled = pool.fill(statement, labels);
      return [pooled.at, ...pooled.labels];
    };
    const maybe = (statement: Statement | null) => (statement === null ? 0 : say(statement));
    const said: StatementShape = [
      statements.map(say),
      maybe(wood.tyloses),
      maybe(wood.decay),
      wood.effects.map(say),
      maybe(wood.taste),
    ];
    return {
      ...(idFromName(wood.name) === wood.id ? {} : { i: wood.id }),
      n: wood.name,
      ...(wood.tradeNames.length === 0 ? {} : { t: wood.tradeNames }),
      b: wood.botanical,
      ...(wood.namedByFoodCode ? { c: 1 as const } : {}),
      k: pool.fill(traits, []).at,
      l: labels.map((label) => (implied.includes(label) ? implied.indexOf(label) : label)),
      f: [pool.add(JSON.stringify(shape)), ...numbers],
      ...(wood.otherMovement.length === 0
        ? {}
        : { m: wood.otherMovement.map((each) => writeMovement(each, pool, labels)) }),
      s: pool.add(JSON.stringify(said)),
    };
  });
  return { pool: pool.texts, woods: written };
}

/** The text of `resolved.json`: one pooled text or one wood a line. */
export function toLines({ pool, woods }: CompactWoods): string {
  const lines = (all: readonly unknown[]) => all.map((each) => JSON.stringify(each)).join(',\n');
  return `{"pool":[\n${lines(pool)}\n],"woods":[\n${lines(woods)}\n]}\n`;
}

/** Read one figure; takes its numbers from the front of the list. */
function readFigure(
  name: FigureName,
  part: [number, ...number[]],
  pool: readonly string[],
  labels: string[],
  numbers: number[],
): Figure {
  const [at, ...ownLabels] = part;
  const text = pool[at] ?? '';
  const isConverted = converted(text, []) !== null;
  const [own = 0] = isConverted ? [] : numbers.splice(0, 1);
  const [low, high] = text.includes('"band":') ? numbers.splice(0, 2) : [];
  const printed = numbers.splice(0, text.split('#').length - 1);
  const value = converted(text, printed) ?? own;
  const evidence = readPooled<Omit<Figure, 'label' | 'unit' | 'value'>>(pool, labels, {
    at,
    labels: ownLabels,
    numbers: printed,
  });
  const ends = low === undefined || high === undefined ? {} : { low, high };
  return { ...figureKinds[name], value, ...ends, ...evidence };
}

/** What of a wood is written out only when somebody asks for it: three hundred woods are listed by name, and one or two are looked at. */
type Rest = Omit<Species, 'id' | 'name' | 'tradeNames' | 'botanical' | 'namedByFoodCode'>;

function restoreOne(wood: CompactWood, pool: readonly string[]): Species {
  let known: Rest | undefined;
  const rest = (): Rest => {
    known ??= restoreRest(names, wood, pool);
    return known;
  };
  const names = {
    id: wood.i ?? idFromName(wood.n),
    name: wood.n,
    tradeNames: wood.t ?? [],
    botanical: wood.b,
    ...(wood.c ? { namedByFoodCode: true as const } : {}),
  };
  return {
    ...names,
    get botanicalBasis() {
      return rest().botanicalBasis;
    },
    get kind() {
      return rest().kind;
    },
    get origin() {
      return rest().origin;
    },
    get figures() {
      return rest().figures;
    },
    get otherMovement() {
      return rest().otherMovement;
    },
    get pores() {
      return rest().pores;
    },
    get tyloses() {
      return rest().tyloses;
    },
    get decay() {
      return rest().decay;
    },
    get effects() {
      return rest().effects;
    },
    get taste() {
      return rest().taste;
    },
    get food() {
      return rest().food;
    },
  };
}

function restoreRest(names: Omit<Species, keyof Rest>, wood: CompactWood, pool: readonly string[]): Rest {
  const traits = readPooled<Traits>(pool, [], { at: wood.k, labels: [], numbers: [] });
  const [botanicalBasis, kind, origin, arrangement, openness] = traits;
  const implied = impliedLabels({ n: wood.n, b: wood.b, k: traits });
  const labels = wood.l.map((label) => (typeof label === 'number' ? (implied[label] ?? '') : label));
  const hear = <T extends Statement>([text, ...own]: Said) =>
    readPooled<T>(pool, labels, { at: text, labels: own, numbers: [] });
  const perhaps = <T extends Statement>(said: Said | 0) => (said === 0 ? null : hear<T>(said));
  const [statements, tyloses, decay, effects, taste] = JSON.parse(pool[wood.s] ?? '[]') as StatementShape;
  const [at = 0, ...numbers] = wood.f;
  const shape = JSON.parse(pool[at] ?? '[]') as Part[];
  const figures: Partial<Record<FigureName, Figure | null>> = {};
  // Derived figures follow those that they are derived from, in the order of the names.
  figureNames.forEach((name, at) => {
    const part = shape[at] ?? 0;
    if (part === 0) figures[name] = null;
    else figures[name] = part === 1 ? derived(name, figures) : readFigure(name, part, pool, labels, numbers);
  });
  const read = {
    botanicalBasis,
    kind,
    origin,
    figures: figures as Figures,
    otherMovement: (wood.m ?? []).map(([at, own, numbers, radial, tangential]) => ({
      ...readPooled<Omit<OtherMovement, 'radial' | 'tangential'>>(pool, labels, {
        at,
        labels: [...own],
        numbers: [...numbers],
      }),
      radial,
      tangential,
    })),
    pores: { arrangement, openness, statements: statements.map((each) => hear<Statement>(each)) },
    tyloses: perhaps(tyloses),
    decay: perhaps<NonNullable<Species['decay']>>(decay),
    effects: effects.map((each) => hear<Statement>(each)),
    taste: perhaps(taste),
  };
  return { ...read, food: assessFoodContact({ ...names, ...read }) };
}

/** Restore the woods from their compact form: their names at once; figures, statements and what may touch food when first asked for. */
export function restoreSpecies({ pool, woods }: CompactWoods): Species[] {
  return woods.map((wood) => restoreOne(wood, pool));
}
