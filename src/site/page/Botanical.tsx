import type { ReactNode } from 'react';

/** A botanical name: Latin, so that a screen reader does not read it as English. */
export function Botanical({ children, className = '' }: { children: ReactNode; className?: string | undefined }) {
  return (
    <span lang="la" className={`botanical ${className}`.trim()}>
      {children}
    </span>
  );
}
