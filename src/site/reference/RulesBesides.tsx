import Link from '@docusaurus/Link';
import { besides } from '../../method/rules/besides.ts';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import { LevelMark } from './LevelMark.tsx';
import styles from './method.module.css';

/** What a check says of a file that no rule of the list finds. */
export default function RulesBesides() {
  return (
    <Page
      title="What a check says besides"
      description="What a check finds in a shop method before it asks a rule, and in the exceptions that the method makes."
      width="text"
    >
      <p className="small">
        <Link to="/reference/rules">All rules</Link>
      </p>
      <h1>What a check says besides</h1>
      {besides.map(({ id, title, text }) => (
        <section key={id} className={`card-unbroken ${styles.rule}`} data-level="stop">
          <Anchored as="h2" id={id}>
            {title}
          </Anchored>
          <p className="small">
            <LevelMark level="stop" /> <code>{id}</code>
          </p>
          <p>{text}</p>
        </section>
      ))}
    </Page>
  );
}
