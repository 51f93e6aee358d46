import { defaultUnits, formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';
import type { Cell } from './row.ts';
import styles from './woods.module.css';

/** A number of the list in the reader's units; what is still from memory says so, and what is not published too. */
export function Amount({
  cell,
  unit,
  units,
  digits = 3,
}: {
  cell: Cell | null;
  unit: string;
  units: ReaderUnits;
  digits?: number;
}) {
  if (!cell) return <span className="unknown">not published</span>;
  return (
    <>
      <span className="num unit">{formatQuantity(cell.value, unit, units, { digits })}</span>
      {cell.basis === 'memory' && <span className={styles.memory}> from memory</span>}
    </>
  );
}

const inch: ReaderUnits = { ...defaultUnits, system: 'inch' };

/**
 * The same for each line of the whole list, in both systems, of which style shows the reader's: some hundred lines drawn anew would hold up whoever
 * reads in inches as the page comes to life. Not for lengths, which a reader may want in other steps of an inch.
 */
export function AmountInBoth(of: { cell: Cell | null; unit: string; digits?: number }) {
  const { cell, unit, digits = 3 } = of;
  const written = (units: ReaderUnits) => cell && formatQuantity(cell.value, unit, units, { digits });
  if (!cell || written(defaultUnits) === written(inch)) return <Amount {...of} units={defaultUnits} />;
  return (
    <>
      <span className="num unit in-metric">{written(defaultUnits)}</span>
      <span className="num unit in-inches">{written(inch)}</span>
      {cell.basis === 'memory' && <span className={styles.memory}> from memory</span>}
    </>
  );
}
