import Link from '@docusaurus/Link';
import type { ReactNode } from 'react';
import { Page } from '../page/Page.tsx';

interface PageOfPartProps {
  title: string;
  description: string;
  width?: 'wide' | 'text';
  /** The list that this is a part of: where it stands, and the words that lead there. */
  list: { to: string; all: string };
  children: ReactNode;
}

/** The page of one part of a long list: the way back to the list stands above its title. */
export function PageOfPart({ title, description, width = 'text', list, children }: PageOfPartProps) {
  return (
    <Page title={title} description={description} width={width}>
      <p className="small">
        <Link to={list.to}>{list.all}</Link>
      </p>
      <h1>{title}</h1>
      {children}
    </Page>
  );
}
