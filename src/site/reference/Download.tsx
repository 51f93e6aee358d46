import Link from '@docusaurus/Link';
import type { ReactNode } from 'react';

/** A link to a file of the data folder, which the router must leave to the browser. */
export function Download({ file, children }: { file: string; children: ReactNode }) {
  return (
    <Link to={`pathname:///data/${file}`} target="_self" className="download">
      {children}
    </Link>
  );
}
