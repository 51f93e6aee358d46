import Link from '@docusaurus/Link';
import { Page } from '../page/Page.tsx';
import { CodeWords } from './CodeWords.tsx';
import styles from './library.module.css';
import { type LibrarySummary, libraryExample, packageName } from './library-data.ts';

/** The package for programs: what can be imported from it. */
export default function Library({ rooms }: { rooms: readonly LibrarySummary[] }) {
  return (
    <Page
      title="The library"
      description="The model, the calculators and the methods as a package for programs: what can be imported, from the docstrings."
      width="text"
    >
      <h1>The library</h1>
      <p className="lead">
        What these pages reckon with is also a package for programs, with types and without a page in it. A room of it
        is imported by its name; every figure says what it is known by, and every verdict is to be heeded.
      </p>
      <pre className={styles.code}>
        <code>{libraryExample}</code>
      </pre>
      <p>
        The same answers come in a terminal from its command, <code>kerf</code>. In the project’s folder{' '}
        <code>npm run package</code> writes the package.
      </p>
      <ul className="index-list">
        {rooms.map(({ name, about, count }) => (
          <li key={name}>
            <Link to={`/reference/library/${name}`}>
              <strong>
                {packageName}/{name}
              </strong>
              <span>
                <CodeWords text={about} /> · {count} exports
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </Page>
  );
}
