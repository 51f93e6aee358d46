import { shopKey } from '../../calculators/view/keeps-own.ts';
import { useWasSent } from '../../calculators/view/was-sent.ts';
import styles from './method.module.css';

/** That what stands is not yet the case that the reader knows to be theirs. */
export const notYours =
  'What stands here is still the method’s own case, not that of your shop record or of this address. It changes to yours as soon as that is worked out.';

/** The same once it is known that it will not come by itself. */
export const neverYours =
  'What stands here is the method’s own case, not that of your shop record or of this address: yours could not be worked out. Reload the page to try again.';

/** Runs before the page is painted and long before its code: it shows the words beside it to a reader whose case is another. */
const showScript = `(function (script) {
  var kept = {};
  try { kept = JSON.parse(localStorage.getItem(${JSON.stringify(shopKey)})) || kept; } catch (error) {}
  if ((kept.text && !kept.aside) || location.search.length > 1) script.previousElementSibling.hidden = false;
  script.remove();
})(document.currentScript)`;

/** What stands in the page as sent, to React: the same each time, or it would be written anew, and be gone. */
const asSent = { __html: '' };

/** The words in a page as sent, hidden until the script beside them finds a case of the reader's own. */
export function NotYoursAsSent({ isWritten }: { isWritten: boolean }) {
  const wasSent = useWasSent();
  if (!wasSent) return null;
  if (!isWritten)
    // biome-ignore lint/security/noDangerouslySetInnerHtml: an empty text, by which React leaves alone what stands there
    return <div suppressHydrationWarning dangerouslySetInnerHTML={asSent} />;
  return (
    <div>
      <p className={styles.problem} role="status" data-part="not-yours" hidden>
        {notYours}
      </p>
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own text, the same on every page, which the policy names by its hash */}
      <script dangerouslySetInnerHTML={{ __html: showScript }} />
    </div>
  );
}
