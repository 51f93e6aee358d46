import Layout from '@theme/Layout';
import type { ReactNode } from 'react';

interface PageProps {
  title: string;
  description: string;
  /** `wide` for tables and calculators, `text` for what is read line by line. */
  width?: 'wide' | 'text';
  children: ReactNode;
}

/** A page of the site's own, outside the how-to pages: one `main`, one measure. */
export function Page({ title, description, width = 'wide', children }: PageProps) {
  return (
    <Layout title={title} description={description}>
      <main className={width === 'text' ? 'page page--text' : 'page'}>{children}</main>
    </Layout>
  );
}
