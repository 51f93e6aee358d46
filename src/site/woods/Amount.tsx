import { formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';
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
