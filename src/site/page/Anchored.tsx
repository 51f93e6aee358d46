import useBrokenLinks from '@docusaurus/useBrokenLinks';
import type { ReactNode } from 'react';

/** A heading that can be linked to: its id is made known, so that a link to a wrong one fails the build. */
export function Anchored({ as: Tag, id, children }: { as: 'h2' | 'h3' | 'h4'; id: string; children: ReactNode }) {
  useBrokenLinks().collectAnchor(id);
  return (
    <Tag id={id}>
      {children}
      <a className="hash-link" href={`#${id}`}>
        <span className="visually-hidden">Link to this heading</span>
      </a>
    </Tag>
  );
}

/** A row of a table that can be linked to. */
export function AnchoredRow({ id, children }: { id: string; children: ReactNode }) {
  useBrokenLinks().collectAnchor(id);
  return <tr id={id}>{children}</tr>;
}
