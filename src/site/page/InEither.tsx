import { defaultUnits, type ReaderUnits } from '../../model/quantity/units.ts';

interface InEitherProps {
  /** Writes it in some units. */
  write: (units: ReaderUnits) => string;
  /** How inches are written; for lengths alone. */
  inches?: ReaderUnits['inches'];
}

/**
 * A few words in both systems of units, of which style shows the reader's from the first paint on: nothing turns, and nothing need be drawn anew, as
 * the page comes to life.
 */
export function InEither({ write, inches = defaultUnits.inches }: InEitherProps) {
  const metric = write({ system: 'metric', inches });
  const inch = write({ system: 'inch', inches });
  if (metric === inch) return metric;
  return (
    <>
      {/* A space for whoever reads the page without its style. */}
      <span className="in-metric">{metric}</span> <span className="in-inches">{inch}</span>
    </>
  );
}
