export {
  amount,
  asTyped,
  atLeast,
  atMost,
  holdsAmount,
  inReaderUnits,
  lookAlike,
  ofEach,
  sumOf,
  toldApart,
  wordsInReaderUnits,
} from './amounts.ts';
export { columnUnit, numberIn } from './column.ts';
export { findNamed, type Named, surelyNamed } from './find-named.ts';
export { parseGoods } from './goods.ts';
export * from './lists.ts';
export { nameKey } from './names.ts';
export { likeliest, nearest } from './nearest.ts';
export { parseQuantity, type QuantityReading, type ReadingOptions, withUnit } from './read.ts';
export { regionOf, systemOfRegion } from './region.ts';
export { excerpt, type FieldProblem, listed, type Read } from './text.ts';
export {
  canonicalUnit,
  convert,
  type Dimension,
  defaultUnits,
  type ReaderUnits,
  readerUnit,
  type Unit,
  unitByCode,
  unitEvidence,
  unitLabel,
  units,
} from './units.ts';
export { formatBand, formatClosely, formatNumber, formatQuantity, shownAtMost, type WritingOptions } from './write.ts';
