import { besides } from '../../method/rules/besides.ts';
import { Anchored } from '../page/Anchored.tsx';
import { LevelMark } from './LevelMark.tsx';
import styles from './method.module.css';
import { PageOfPart } from './PageOfPart.tsx';
import { listOfRules } from './rule-parts.ts';

/** What a check says of a file that no rule of the list finds. */
export default function RulesBesides() {
  return (
    <PageOfPart
      title="What a check says besides"
      description="What a check finds in a shop method before it asks a rule, and in the exceptions that the method makes."
      list={listOfRules}
    >
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
    </PageOfPart>
  );
}
