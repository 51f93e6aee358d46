export { amount, atMost, holdsAmount, inReaderUnits, wordsInReaderUnits } from './amounts.ts';
export { findNamed, type Named } from './find-named.ts';
export { nameKey } from './names.ts';
export { parseQuantity, type QuantityReading, type ReadingOptions, withUnit } from './read.ts';
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
export { formatNumber, formatQuantity } from './write.ts';
