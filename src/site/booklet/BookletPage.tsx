import Head from '@docusaurus/Head';
import Link from '@docusaurus/Link';
import { MDXProvider } from '@mdx-js/react';
import MDXComponents from '@theme/MDXComponents';
import { type ComponentProps, type ComponentType, createContext, useContext } from 'react';
import { CautionList } from '../../calculators/view/CautionList.tsx';
import { handbookParts } from '../mdx/parts.tsx';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { Page } from '../page/Page.tsx';
import styles from './booklet.module.css';
import { cautionsBy } from './cautions-by.ts';
import { printHandout } from './print-handout.ts';
import type { Booklet } from './types.ts';

interface BookletPageProps {
  booklet: Booklet;
  /** The how-to pages themselves, compiled, in order. */
  contents: readonly { Content: ComponentType }[];
}

/** The pages of one stage under one another, to be printed as one: names first, then every danger in full, once, then the pages. */
export default function BookletPage({ booklet, contents }: BookletPageProps) {
  const { title, pages, cautions } = booklet;
  const first = pages[0]?.name ?? '';
  return (
    <Page
      title={`Booklet: ${title}`}
      description={`The how-to pages of one stage to print as one: ${title}.`}
      width="text"
    >
      <Head>
        {/* The pages stand by themselves: who searches shall find those. */}
        <meta name="robots" content="noindex" />
      </Head>
      <article className={`theme-doc-markdown ${styles.booklet}`} data-part="booklet">
        <header>
          <h1>{title}</h1>
          <p className={styles.about}>
            {pages.length === 1 ? 'One page' : `${pages.length} pages`} of the handbook, each beginning on a sheet of
            its own.
          </p>
        </header>
        <div className="no-print">
          <NeedsScripts instead="Print this page as it is: the answers to the questions stand behind each page.">
            <p className={styles.buttons}>
              <button type="button" className="button button--main" onClick={printHandout}>
                Print for the class
              </button>
              <button type="button" className="button" onClick={() => window.print()}>
                Print with the answers
              </button>
              <Link to={`/how-to/${first}`}>Read the pages one by one</Link>
            </p>
          </NeedsScripts>
        </div>
        <nav aria-label="Pages of this booklet">
          <ol className={styles.contents}>
            {pages.map(({ name, title: page, description }) => (
              <li key={name}>
                <strong>{page}</strong> <span>{description}</span>
              </li>
            ))}
          </ol>
        </nav>
        <section aria-labelledby="dangers" className={styles.dangers}>
          <h2 id="dangers">What can hurt in this stage</h2>
          <CautionList cautions={cautionsBy(cautions)} />
        </section>
        <Said value={JSON.stringify(cautionsBy(cautions))}>
          <MDXProvider components={parts}>
            {pages.map(({ name, title: page }, at) => {
              const Content = contents[at]?.Content;
              return (
                <section key={name} className={styles.page} data-page={name} aria-label={page}>
                  <h2 className={styles.title}>{page}</h2>
                  <OnPage value={{ name, title: page }}>{Content && <Content />}</OnPage>
                </section>
              );
            })}
          </MDXProvider>
        </Said>
      </article>
    </Page>
  );
}

/** The cautions that the booklet says at its head, as data, as a calculator takes them. */
const Said = createContext('');

/** The how-to page that a part stands in. */
const OnPage = createContext({ name: '', title: '' });

type HeadingProps = ComponentProps<'h2'>;

// A heading is one lower than on its own page, and bears no anchor: every page has the same ones.
const Heading3 = ({ id, ...props }: HeadingProps) => <h3 data-section={id} {...props} />;
const Heading4 = ({ id, ...props }: HeadingProps) => <h4 data-section={id} {...props} />;
const Heading5 = ({ id, ...props }: HeadingProps) => <h5 data-section={id} {...props} />;

/** What can hurt in the work of one page, by its first line: in full it stands at the head. */
function Reminder({ ids }: { ids: readonly string[] }) {
  return (
    <ul className={styles.reminder}>
      {cautionsBy(ids).map(({ id, text }) => (
        <li key={id}>{text}</li>
      ))}
    </ul>
  );
}

/** A place in the page is one of the page itself: here several pages have the same. */
function Anchor({ href = '', ...props }: ComponentProps<'a'>) {
  const { name } = useContext(OnPage);
  return <MDXComponents.a href={href.startsWith('#') ? `/how-to/${name}${href}` : href} {...props} />;
}

/** Told apart by its page too: each page counts its own calculators. */
function Calculator({ ordinal, ...props }: ComponentProps<typeof handbookParts.Calculator>) {
  const { title } = useContext(OnPage);
  const which = ordinal ? `${title}, ${ordinal}` : title;
  return <handbookParts.Calculator {...props} ordinal={which} cautions={useContext(Said)} />;
}

const parts = { ...MDXComponents, a: Anchor, h2: Heading3, h3: Heading4, h4: Heading5, Cautions: Reminder, Calculator };
