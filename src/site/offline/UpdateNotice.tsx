import { useEffect, useRef, useState } from 'react';
import { createRoot } from 'react-dom/client';
import { takesText } from './calm.ts';
import styles from './notice.module.css';

interface NoticeProps {
  /** Called once what is typed has been stored. */
  accept: () => void;
  storing: number;
  close: () => void;
}

/** That there is a newer site, and two ways: to take it now, or later. It stands aside while somebody types. */
function UpdateNotice({ accept, storing, close }: NoticeProps) {
  const [text, setText] = useState(false);
  const [going, setGoing] = useState(false);
  const box = useRef<HTMLDivElement>(null);
  // A region that is there before its words is read out.
  const [spoken, setSpoken] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setSpoken(true), 100);
    const look = () => setText(takesText(document.activeElement));
    document.addEventListener('focusin', look);
    document.addEventListener('focusout', look);
    return () => {
      clearTimeout(timer);
      document.removeEventListener('focusin', look);
      document.removeEventListener('focusout', look);
    };
  }, []);
  const take = () => {
    setGoing(true);
    setTimeout(accept, storing);
  };
  return (
    <div ref={box} className={styles.notice} role="status" aria-label="Newer version" hidden={text}>
      {spoken && (
        <>
          <p>
            {going
              ? 'The newer version is being opened.'
              : 'There is a newer version of this site. What you typed stays; every open tab of the site is loaded anew.'}
          </p>
          {!going && (
            <p className={styles.ways}>
              <button type="button" className="button" onClick={take}>
                Use it now
              </button>
              <button type="button" className="button" onClick={close}>
                Later
              </button>
            </p>
          )}
        </>
      )}
    </div>
  );
}

/**
 * Show the notice over the page, whichever page it is and wherever the reader goes from it.
 *
 * @param accept takes the newer version
 * @param storing how long what was typed last may take to be stored, ms
 */
export function showNotice(accept: () => void, storing: number): void {
  const place = document.body.appendChild(document.createElement('div'));
  const root = createRoot(place);
  const close = () => {
    root.unmount();
    place.remove();
  };
  root.render(<UpdateNotice accept={accept} storing={storing} close={close} />);
}
