import type { ReactNode } from 'react';

/**
 * What does nothing without scripts, as a search field or a form whose answer is worked out in the page: without them a line stands in its
 * place. Style decides, by what the browser says of itself, so that nothing jumps once the page is live.
 */
export function NeedsScripts({ instead, children }: { instead: ReactNode; children: ReactNode }) {
  return (
    <>
      <div className="needs-scripts">{children}</div>
      <p className="without-scripts">{instead}</p>
    </>
  );
}
