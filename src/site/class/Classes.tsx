import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { Page } from '../page/Page.tsx';
import { ClassDesk } from './ClassDesk.tsx';
import styles from './class.module.css';

/** A class of one method: up to thirty places, each with its own wood, size and colour. */
export default function Classes() {
  return (
    <Page
      title="A class"
      description="Plan a method for a class of up to 30: one order, resin by colour, who stands at which machine, and what a missed evening asks."
    >
      <div className={styles.head}>
        <h1>A class</h1>
        <p className="lead">
          One method for up to thirty places, each with its own wood, size or colour. From a list of places this page
          works out one order for all, what is mixed of each colour, who stands at which machine in which session, and
          what somebody does who missed one. Names stay in this browser: initials are enough.
        </p>
      </div>
      <NeedsScripts instead="To plan a class needs scripts: it is worked out in this browser and kept here alone. Without them, print the method for each place.">
        <ClassDesk />
      </NeedsScripts>
    </Page>
  );
}
