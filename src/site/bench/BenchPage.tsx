import Link from '@docusaurus/Link';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { Page } from '../page/Page.tsx';
import styles from './intro.module.css';
import { useFetched } from './use-fetched.ts';

/** All of it is fetched on this page alone. */
const fetchBench = async () => (await import('./Bench.tsx')).default;

/** Where a teacher writes and changes methods in the browser. */
export default function BenchPage() {
  const Bench = useFetched(fetchBench);
  return (
    <Page
      title="The bench"
      description="Write and change shop methods in your browser: checked as you type, with steps, timetable and bill beside the text. Nothing leaves the browser but in a file or link that you hand on."
    >
      <h1>The bench</h1>
      <div className={styles.intro}>
        <p className="lead">
          Write a method here, or change one: its text is checked as you type, and its page stands beside it. Drafts are
          kept in this browser alone; they leave it in a file or a link that you hand on.
        </p>
        <p>
          <Link to="/reference/method-format">The format of a method</Link> says what may be written,{' '}
          <Link to="/reference/rules">the rules</Link> what is looked for. A method that passes the rules is not thereby
          safe: try it yourself before you teach it, and mind the data sheets, the manuals and your local codes.
        </p>
      </div>
      <NeedsScripts instead="To write on the bench needs scripts. Without them a method is a text file: write it in any editor after the format above, and check it with “kerf check” on the command line.">
        <div className={styles.desk}>
          {Bench && <Bench />}
          {Bench === null && (
            <p role="alert">The bench could not be fetched. Load the page again when you are connected.</p>
          )}
        </div>
      </NeedsScripts>
    </Page>
  );
}
