import type { Citation } from '../evidence/index.ts';
import { rungs } from './authority.ts';
import { type Candidate, candidate, type Given, sentences } from './candidates.ts';
import { sourceOfDocument } from './documents.ts';
import { figureKinds } from './labels.ts';
import { readPrinted, tidy } from './printed.ts';
import { documentOf, type JoinedRow, seenOf, text } from './rows.ts';
import type { FigureName } from './types.ts';

/** What a row's property and condition mean: one of our figures, or another one. */
function meaning(property: string, condition: string): FigureName | 'other' {
  const shipment = /^shipment \w+(; )?/;
  const state = condition.replace(shipment, '');
  const toOvendry = state === 'green to ovendry' || state.startsWith('green to 0% MC');
  const dry = state.startsWith('12% MC') || state.startsWith('dry') || state === 'air-dry';
  switch (property) {
    case 'radial shrinkage':
      return toOvendry ? 'radialShrinkage' : 'other';
    case 'tangential shrinkage':
      return toOvendry ? 'tangentialShrinkage' : 'other';
    case 'volumetric shrinkage':
      return toOvendry ? 'volumetricShrinkage' : 'other';
    case 'specific gravity, ovendry mass and green volume':
      return 'specificGravityGreen';
    case 'specific gravity':
      if (state === 'green') return 'specificGravityGreen';
      return dry ? 'specificGravity12' : 'other';
    case 'density':
      if (state === '12% MC') return 'density12';
      return state.startsWith('air-dry') ? 'densityAirDry' : 'other';
    case 'unit shrinkage, radial':
      return 'radialCoefficient';
    case 'unit shrinkage, tangential':
      return 'tangentialCoefficient';
    case 'side hardness':
    case 'side hardness (Janka)':
      if (state.startsWith('green')) return 'sideHardnessGreen';
      return dry ? 'sideHardness12' : 'other';
    default:
      return 'other';
  }
}

/** Words for a condition that the figure's name does not already say. */
function conditionNote(name: FigureName | 'other', condition: string): string | undefined {
  if (name === 'other' || condition === '') return undefined;
  if (name === 'densityAirDry')
    return condition === 'air-dry' ? undefined : 'Printed for wood air-dry or at 12 % moisture content.';
  if (name === 'sideHardness12' || name === 'specificGravity12') {
    if (condition === '12% MC') return undefined;
    if (condition.startsWith('12% MC; ')) return `${capital(condition.slice(8))}.`;
    return `Printed for ${condition.split(';')[0]} wood, without a moisture content.${condition.includes('about') ? ' Printed as about.' : ''}`;
  }
  const rest = condition.replace(/(^|; )(green to ovendry|green to 0% MC|green|12% MC)(; |$)/, '');
  return rest === '' ? undefined : `${capital(rest)}.`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The place itself, without what is said of the copy read. */
export function placeAlone(place: string): string {
  return /^(?:\([^)]*\)|[^;(])*/.exec(place)?.[0] ?? place;
}

/**
 * Citation of a row that names its own document.
 *
 * @param place where in the document; what follows a semicolon is about the copy read, not the place, and is left out
 */
export function citeDocument(row: JoinedRow, document: string, place: string | null): Citation | undefined {
  const source = sourceOfDocument(document);
  if (source === undefined) return undefined;
  return { source, ...(place === null ? {} : { locator: placeAlone(place) }), seen: seenOf(row) };
}

/** The figure of one row of the table of other documents; none where the row is words, or the row is of no use. */
function fromDocument(row: JoinedRow): Candidate[] {
  const property = text(row, 'property') ?? '';
  const condition = text(row, 'condition') ?? '';
  const printed = readPrinted(String(row.cells.value ?? ''));
  const document = documentOf(row);
  const citation = citeDocument(row, document, text(row, 'page'));
  if (printed === null || citation === undefined) return [];
  const name = meaning(property, condition);
  const note = sentences(
    conditionNote(name, condition),
    citation.source === 'record-1914' && name !== 'other' ? 'One shipment, often of five trees.' : undefined,
  );
  const given: Given = {
    name,
    label: condition === '' ? capital(property) : `${capital(property)} (${condition})`,
    printed,
    unit: text(row, 'unit') ?? '1',
    seen: seenOf(row),
    citation,
    group: row.group,
    ...(note === undefined ? {} : { note }),
  };
  return [candidate(given)];
}

/**
 * Candidates of all rows of other documents for one wood. Where one document measured several shipments, no one of them
 * stands for the wood: their mean does, with the lowest and highest, and the single values stay among the others.
 */
export function fromDocuments(rows: readonly JoinedRow[]): Candidate[] {
  const all = rows.flatMap(fromDocument);
  const means = (Object.keys(figureKinds) as FigureName[]).flatMap((name): Candidate[] => {
    const shipments = all.filter(
      (each) => each.name === name && !each.group && each.figure.citation?.source === 'record-1914',
    );
    const [first] = shipments;
    if (!first || shipments.length < 2) return [];
    const values = shipments.map((each) => each.figure.value);
    const { note: _note, ...kept } = first.figure;
    const figure = {
      ...kept,
      value: tidy(values.reduce((sum, value) => sum + value, 0) / values.length),
      low: Math.min(...values),
      high: Math.max(...values),
      band: 'Lowest and highest shipment.',
      basis: 'derived' as const,
      note: `Mean of ${values.length} shipments measured one by one.`,
    };
    // Several lots together are a mean of their own, which a remembered average must not outrank.
    return [{ name, figure, rung: rungs.derived, group: false }];
  });
  const averaged = new Set(means.map((mean) => mean.name));
  const rest = all.map(
    (each): Candidate =>
      averaged.has(each.name as FigureName) && each.figure.citation?.source === 'record-1914'
        ? { ...each, name: 'other', figure: { ...each.figure, label: `${each.figure.label}, one shipment` } }
        : each,
  );
  return [...rest, ...means];
}
