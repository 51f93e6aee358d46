import type { ReactNode } from 'react';

export type HeadingLevel = 2 | 3 | 4 | 5 | 6;

/** A heading whose level the page decides, so that an embedded part keeps the page's outline whole. */
export function Heading({
  level,
  id,
  className,
  children,
}: {
  level: HeadingLevel;
  id?: string | undefined;
  className?: string | undefined;
  children: ReactNode;
}) {
  const Tag = `h${level}` as const;
  return (
    <Tag id={id} className={className}>
      {children}
    </Tag>
  );
}
