import type { CalculatorId } from '../../calculators/registry.ts';
import type { DataProblem } from '../../model/data/problem.ts';
import type { Span } from '../../model/data/yaml.ts';
import type { Basis, Caution, FieldError, Result } from '../../model/evidence/index.ts';
import type { Dimension } from '../../model/quantity/index.ts';
import type { Act } from '../acts/index.ts';
import type {
  Calculation,
  Exception,
  LimitName,
  Material,
  MethodRecord,
  Parameter,
  SecondWay,
  Step,
  Tool,
} from '../record/index.ts';
import type { Shop } from '../shop/index.ts';
/** Path to a place in the file of a method, from its root. */
export type Path = readonly (string | number)[];

/** A number of the case with its unit, as a reference hands it on. */
export interface CaseQuantity {
  kind: 'quantity';
  value: number;
  low?: number;
  high?: number;
  /** UCUM code; `{count}` for things that are counted, `1` for a bare ratio. */
  unit: string;
  label: string;
  /** As somebody wrote it, where somebody did: it is handed on as it is. */
  typed?: string;
  /** What it may measure, where its unit leaves that open; that of its unit where left out. */
  dimensions?: readonly Dimension[];
  /** Of a figure: how it is known, what its band means, how finely. */
  basis?: Basis;
  band?: string;
  digits?: number;
  /** In its metric unit for every reader. */
  kept?: boolean;
  /** Only the seasons show it. */
  foretold?: boolean;
  /** A length that must not be passed: it is shown rounded down. */
  limit?: boolean;
}

/** Anything that a pointer may reach. */
export type CaseValue =
  | CaseQuantity
  /** `id` is what a calculator takes where that is not the text. */
  | { kind: 'text'; text: string; label: string; id?: string }
  | { kind: 'data'; data: unknown; label: string; text?: string };

/** A parameter as it stands in this case. */
export interface WorkedParameter {
  name: string;
  record: Parameter;
  /** What stands: texts and numbers as a calculator takes them. */
  raw: unknown;
  value: CaseValue;
  /** Who said it. */
  from: 'method' | 'shop' | 'reader';
}

/** A calculation as it was asked and answered. */
export interface WorkedCalculation {
  name: string;
  /** Id of the step that it stands in. */
  step: string;
  record: Calculation;
  use: CalculatorId;
  /** Inputs with every reference put in place. */
  raw: Readonly<Record<string, unknown>>;
  /** The same as the calculator read them: canonical units, records in place of ids. */
  inputs?: Readonly<Record<string, unknown>>;
  result?: Result;
  /** Why there is no result. */
  errors?: readonly FieldError[];
  /** Pointers that its inputs refer to, by input. */
  refers: Readonly<Record<string, string>>;
}

/** How long to wait after another step. */
export interface WorkedLink {
  /** Id of the earlier step. */
  step: string;
  counts: 'start' | 'end';
  /** min. */
  least?: number;
  most?: number;
  missed?: SecondWay & { addsMinutes?: number };
  /** Place of the link in the file; that of the step where it follows the one above. */
  path: Path;
}

/** A step with its numbers. */
export interface WorkedStep {
  id: string;
  record: Step;
  act: Act;
  /** Hands-on time, min. */
  hands: { setUp: number; each: number };
  people: number;
  interrupt: 'anywhere' | 'between-pieces' | 'never';
  after: readonly WorkedLink[];
  calculations: readonly WorkedCalculation[];
  /** Size of the piece as it comes to the machine, mm. */
  piece?: { length?: number; width?: number; thickness?: number };
  /** Those of its act, then those of its calculations that are its own, each once. */
  cautions: readonly Caution[];
  path: Path;
}

/** A need of a material, worked out for all pieces. */
export interface WorkedNeed {
  /** For the whole batch, in `unit`. */
  amount: number;
  unit: string;
  /** The step that asks for it, and the pointer of the figure where it is one. */
  step: string | undefined;
  from: string | undefined;
}

/** A material of a method as its case needs it. */
export interface WorkedMaterial {
  name: string;
  record: Material;
  /** Share for mishaps, 0.1 for a tenth. */
  spare: number;
  needs: readonly WorkedNeed[];
  path: Path;
}

/** A tool of a method as its case needs it. */
export interface WorkedTool {
  name: string;
  record: Tool;
  count: number;
  /** In canonical units: mm for lengths, /min for turns, g for a scale's division and capacity. */
  limits: Readonly<Partial<Record<LimitName, CaseQuantity>>>;
  /** Whose limits they are. */
  from: 'method' | 'shop';
  path: Path;
}

/** A method worked out for one case: every reference in its place, every calculation answered. */
export interface WorkedMethod {
  /** Path shown in messages. */
  file: string;
  record: MethodRecord;
  /** Where the value of a path stands in the text, or its name. */
  spanOf(path: Path, part?: 'key' | 'value'): Span;
  pieces: number;
  parameters: Readonly<Record<string, WorkedParameter>>;
  /** In the order of resolution. */
  calculations: Readonly<Record<string, WorkedCalculation>>;
  materials: Readonly<Record<string, WorkedMaterial>>;
  tools: Readonly<Record<string, WorkedTool>>;
  /** In the order of the file. */
  steps: readonly WorkedStep[];
  exceptions: readonly Exception[];
  /** References that reach nothing in this case, though they might in another: a cure that never ends has no end. */
  gaps: readonly Gap[];
  shop?: Shop;
  /** What stands at a pointer; undefined where nothing does, which a worked method has found out before. */
  at(pointer: string): CaseValue | undefined;
}

/** A reference that reaches nothing in this case. */
export interface Gap {
  path: Path;
  step?: string;
  pointer: string;
  /** Why, a sentence. */
  message: string;
  /** What to write instead, where that is known. */
  wayOut?: string;
}

/** How a case differs from the method's own. */
export interface CaseOptions {
  pieces?: number;
  /** Parameters by name, as texts. */
  set?: Readonly<Record<string, string>>;
  shop?: Shop;
  /** Inputs of calculations that were measured since, by name of the calculation, then of the input: each stands in place of what the method says. */
  measured?: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** Answers kept from one case to the next: the same question is asked once. */
  memo?: Map<string, unknown>;
}

/** A shop in which a method does not hold: its name, and what its record holds of the parameters that refuse it, by name, as a field shows it. */
export interface ShopBeyond {
  shop: string;
  held: Readonly<Record<string, string>>;
}

/** A worked method, or everything wrong with its file or its options. */
export type Working =
  | { ok: true; worked: WorkedMethod }
  | { ok: false; problems: readonly DataProblem[]; beyond?: ShopBeyond };
