import { formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';
import { InEither } from '../page/InEither.tsx';
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

/** The same for each line of the whole list, in both systems. Not for lengths, which a reader may want in other steps of an inch. */
export function AmountInBoth({ cell, unit, digits = 3 }: { cell: Cell | null; unit: string; digits?: number }) {
  if (!cell) return <span className="unknown">not published</span>;
  return (
    <>
      <span className="num unit">
        <InEither write={(units) => formatQuantity(cell.value, unit, units, { digits })} />
      </span>
      {cell.basis === 'memory' && <span className={styles.memory}> from memory</span>}
    </>
  );
}
