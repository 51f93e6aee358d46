import { basisOfSeen, type Figure, type Table } from '../evidence/index.ts';
import { rungs } from './authority.ts';
import type { Candidate } from './candidates.ts';
import { chooseCoefficients, passedOverPair } from './coefficients.ts';
import { deriveDensity } from './derive.ts';
import { assessFoodContact } from './food.ts';
import { fromDensityDatabase } from './from-database.ts';
import { fromDocuments } from './from-documents.ts';
import {
  fromCoefficients,
  fromDomesticHardness,
  fromImportedHardness,
  fromMachining,
  fromPainting,
  fromShrinkage,
} from './from-handbook.ts';
import { fromTrees, movementOfTrees } from './from-trees.ts';
import { figureKinds } from './labels.ts';
import { choose, figureOf } from './ladder.ts';
import { poresOf } from './pores.ts';
import type { SpeciesRecord } from './record.ts';
import { remarksOf } from './remarks.ts';
import { indexRows, isOfDocument, type JoinedRow, joinRows, number, type RowIndex } from './rows.ts';
import { decayOf, effectsOf, tasteOf } from './statements.ts';
import type { FigureName, SpeciesDossier } from './types.ts';

/** Moisture content at which shrinkage starts in most woods, %; a row of Table 13-5 with another says so. */
const usualStart = 30;

/** Where Table 13-5 takes the wood's shrinkage to start. Its footnote was not read, whatever of the row was. */
function startOf(rows: readonly JoinedRow[]): Figure {
  const row = rows.find((each) => each.table === 'dimensional-change-coefficients' && !each.group);
  const printed = row ? number(row, 'shrinkage_start_mc_pct') : null;
  if (printed !== null && printed !== usualStart) {
    return {
      ...figureKinds.shrinkageStart,
      value: printed,
      basis: 'memory',
      citation: { source: 'fpl-gtr-190', locator: 'Table 13-5, footnote', seen: 'memory' },
    };
  }
  return {
    ...figureKinds.shrinkageStart,
    value: usualStart,
    basis: 'published',
    citation: { source: 'fpl-gtr-190', locator: 'chapter 13, text under Eq. 13-3', seen: 'source-text' },
    note: 'Assumed for most species.',
  };
}

function candidatesOf(rows: readonly JoinedRow[]): Candidate[] {
  const of = (table: JoinedRow['table'], read: (row: JoinedRow) => Candidate[]) =>
    rows.filter((row) => row.table === table).flatMap(read);
  return [
    ...of('shrinkage-domestic', fromShrinkage),
    ...of('shrinkage-imported', fromShrinkage),
    ...of('dimensional-change-coefficients', fromCoefficients),
    ...of('hardness-domestic', fromDomesticHardness),
    ...of('hardness-imported', fromImportedHardness),
    ...of('porosity-table-16-1', fromPainting),
    ...fromTrees(rows.filter((row) => row.table === 'cirad-wood-density')),
    ...fromDocuments(rows.filter(isOfDocument)),
    ...fromDensityDatabase(rows.filter((row) => row.table === 'wood-density-database')),
    ...of('machining-quality-1999', fromMachining),
  ];
}

function resolveOne(record: SpeciesRecord, index: RowIndex): SpeciesDossier {
  const rows = joinRows(record, index);
  const candidates = candidatesOf(rows);
  const simple = (name: FigureName) => choose(name, candidates);
  const shrinkageStart = startOf(rows);
  const choices = {
    radialShrinkage: simple('radialShrinkage'),
    tangentialShrinkage: simple('tangentialShrinkage'),
    volumetricShrinkage: simple('volumetricShrinkage'),
    shrinkageStart: {
      chosen: { name: 'shrinkageStart' as const, figure: shrinkageStart, rung: rungs.olderHandbook, group: false },
      rest: [],
    },
    specificGravityGreen: simple('specificGravityGreen'),
    specificGravity12: simple('specificGravity12'),
    density12: simple('density12'),
    densityAirDry: simple('densityAirDry'),
    sideHardnessGreen: simple('sideHardnessGreen'),
    sideHardness12: simple('sideHardness12'),
  };
  const coefficients = chooseCoefficients(
    candidates.filter((each) => each.name === 'radialCoefficient' || each.name === 'tangentialCoefficient'),
    record.rows['dimensional-change-coefficients']?.[0],
    {
      radialShrinkage: figureOf(choices.radialShrinkage),
      tangentialShrinkage: figureOf(choices.tangentialShrinkage),
      shrinkageStart,
    },
  );
  const all = { ...choices, ...coefficients };
  const derivedDensity = deriveDensity(figureOf(choices.specificGravity12));
  const density12 = figureOf(choices.density12) ?? derivedDensity;
  const figures = {
    radialShrinkage: figureOf(all.radialShrinkage),
    tangentialShrinkage: figureOf(all.tangentialShrinkage),
    volumetricShrinkage: figureOf(all.volumetricShrinkage),
    shrinkageStart,
    radialCoefficient: figureOf(all.radialCoefficient),
    tangentialCoefficient: figureOf(all.tangentialCoefficient),
    specificGravityGreen: figureOf(all.specificGravityGreen),
    specificGravity12: figureOf(all.specificGravity12),
    density12,
    densityAirDry: figureOf(all.densityAirDry),
    sideHardnessGreen: figureOf(all.sideHardnessGreen),
    sideHardness12: figureOf(all.sideHardness12),
  };
  const trees = rows.filter((row) => row.table === 'cirad-wood-density');
  const { decay, rest } = decayOf(rows);
  const wood = {
    id: record.id,
    name: record.name,
    tradeNames: record.tradeNames,
    botanical: record.botanical,
    botanicalBasis: basisOfSeen(record.botanicalSeen),
    ...(record.namedByFoodCode ? { namedByFoodCode: true as const } : {}),
    kind: record.kind,
    origin: record.origin,
    figures,
    otherMovement: [...passedOverPair(coefficients), ...movementOfTrees(trees, figures)],
    ...poresOf(record, rows),
    decay,
    effects: effectsOf(rows),
    taste: tasteOf(rows),
  };
  const passedOver = Object.values(all).flatMap((choice) => choice.rest);
  const unnamed = candidates.filter((each) => each.name === 'other');
  const otherDensity =
    derivedDensity && density12 !== derivedDensity ? [{ name: 'density12' as const, figure: derivedDensity }] : [];
  return {
    ...wood,
    food: assessFoodContact(wood),
    others: [...passedOver, ...unnamed].map(({ name, figure }) => ({ name, figure })).concat(otherDensity),
    remarks: [...(record.remarks ?? []), ...remarksOf(rows, figures, rest)],
    rows: rows.map(({ table, label, line }) => ({ table, label, line })),
  };
}

/**
 * Join records to the tables and choose a figure for each name.
 *
 * @param records the woods; a label that no table has joins nothing (`missingRows` reports it)
 * @param tables parsed tables by name
 * @returns one dossier a record, in order of name
 */
export function resolveSpecies(
  records: readonly SpeciesRecord[],
  tables: ReadonlyMap<string, Table>,
): SpeciesDossier[] {
  const index = indexRows(tables);
  return records
    .map((record) => resolveOne(record, index))
    .sort((one, other) => (one.name < other.name ? -1 : one.name > other.name ? 1 : 0));
}
