import {
  Component,
  type ReactNode,
  startTransition,
  useCallback,
  useEffect,
  useLayoutEffect,
  useRef,
  useState,
  useSyncExternalStore,
} from 'react';
import { marketOfRegion } from '../../model/food/market-of-region.ts';
import { defaultUnits } from '../../model/quantity/units.ts';
import { useSearch } from './address-bar.ts';
import type { CalculatorViewProps } from './CalculatorView.tsx';
import {
  type CarriedOver,
  finishOn,
  giveTo,
  openGroups,
  readLeft,
  silentKeys,
  takeFrom,
  writeLeft,
} from './carry-over.ts';
// What the answer is drawn with stands in the page before the code that draws it.
import './caution.module.css';
import './chart.module.css';
import './document.module.css';
import './drawing.module.css';
import drawn from './drawn.module.css';
import type { Drawn, Live } from './drawn.ts';
import './evidence.module.css';
import './form.module.css';
import './frame.module.css';
import './onward.module.css';
import './paper.module.css';
import './resin.module.css';
import './result.module.css';
import './rows.module.css';
import './take-away.module.css';
import './timeline.module.css';
import './verdict.module.css';
import { keepsOwn } from './keeps-own.ts';
import { leaveBehind, takeUp, whenLeaving } from './leaving.ts';
import { useUnits } from './units.tsx';

export interface DrawnCalculatorProps extends Omit<CalculatorViewProps, 'shown'> {
  calculator: Drawn;
}

/** What a reader does to a drawn calculator that its code has to answer. */
const wakes = ['pointerdown', 'pointerenter', 'focusin', 'keydown', 'input', 'change'] as const;

const noted = ['focusin', 'input', 'keydown', 'submit'] as const;

/** What stands in the page as sent, to React: the same each time, or it would be written anew, and be gone. */
const asSent = { __html: '' };

/** What this page has fetched already, by id: whoever comes back to a calculator finds it at once. */
const fetchedBefore = new Map<string, Live>();

const failedWords =
  'What works this out could not be fetched: there may be no connection. What you type stays; the answer below is that of the worked case. ';

/** Words about waiting come only after this, ms. */
const patience = 400;

const never = () => () => undefined;

/** False while a page that was sent comes to life, and from the start where this browser draws the page itself. */
const useDrawsItself = () =>
  useSyncExternalStore(
    never,
    () => true,
    () => false,
  );

/**
 * A calculator as what a page is about. The page as sent holds its form and the answer to its worked case; its code, with the woods, places
 * and sources, is fetched when somebody comes near, or where this browser knows something that changes the case: a case in the address,
 * inches, a shop record. Until it is there what was sent stands, and what is done to it meanwhile is done to the live one.
 */
export function DrawnCalculator({ calculator, ...props }: DrawnCalculatorProps) {
  const drawsItself = useDrawsItself();
  const [sent] = useState(!drawsItself);
  const [live, setLive] = useState<Live | undefined>(() =>
    drawsItself ? fetchedBefore.get(calculator.id) : undefined,
  );
  const [failed, setFailed] = useState(false);
  const [late, setLate] = useState(false);
  const box = useRef<HTMLDivElement>(null);
  const fetching = useRef<Promise<void>>(undefined);
  const carried = useRef<CarriedOver>(undefined);
  const pressed = useRef<Element>(undefined);
  const keys = useRef<string[]>([]);
  const openAsSent = useRef<ReadonlySet<string>>(new Set());
  const isDown = useRef(false);
  const fetched = useRef<Live>(undefined);
  const { id, load, asksMarket } = calculator;

  // A form with its drawings is much to draw at once: drawn as a transition it leaves room for what the reader does meanwhile.
  const show = useCallback(async (its: Live) => {
    await released(isDown);
    startTransition(() => setLive(its));
  }, []);
  const fetchIt = useCallback(() => {
    fetching.current ??= load().then(
      (its) => {
        fetchedBefore.set(id, its);
        fetched.current = its;
        setFailed(false);
        return show(its);
      },
      () => {
        fetching.current = undefined;
        setFailed(true);
      },
    );
  }, [id, load, show]);
  const takeWhatWasDone = () => {
    if (box.current) carried.current = takeFrom(box.current, pressed.current, keys.current, openAsSent.current);
  };

  const units = useUnits();
  const search = useSearch();
  const { prefix = '', remembers } = props;
  const addressed = [...new URLSearchParams(search).keys()].some(
    (key) => prefix === '' || key.startsWith(`${prefix}.`),
  );
  const own = addressed || units.system !== defaultUnits.system;
  useEffect(() => {
    // Without a server nothing was sent.
    const empty = box.current?.childElementCount === 0;
    const market = () => marketOfRegion(navigator.languages ?? []);
    const elsewhere = () => JSON.stringify(market()) !== JSON.stringify(marketOfRegion([]));
    if (!sent || empty || own || (remembers && (keepsOwn() || (asksMarket && elsewhere())))) fetchIt();
  }, [sent, own, remembers, asksMarket, fetchIt]);

  useEffect(() => {
    const part = box.current;
    if (!part || live) return;
    openAsSent.current = openGroups(part);
    const wake = ({ type }: Event) => {
      if (type === 'pointerdown') {
        isDown.current = true;
        if (fetched.current) {
          // What is being drawn must not take the place of a button that is held down: it is begun again once that is let go.
          setLive(undefined);
          void show(fetched.current);
        }
      }
      fetchIt();
    };
    const press = ({ target }: Event) => {
      pressed.current = (target as Element).closest('button') ?? undefined;
    };
    const up = () => {
      isDown.current = false;
    };
    const note = (event: Event) => {
      const { target } = event;
      // As the live one does: whoever enters a field means to write another text.
      if (event.type === 'focusin' && target instanceof HTMLInputElement && target.type === 'text') target.select();
      if (event.type === 'input') keys.current = [];
      if (event instanceof KeyboardEvent && silentKeys.has(event.key)) keys.current.push(event.key);
      // A drawn form has nobody to send itself to: it would load the page anew.
      if (event.type === 'submit') event.preventDefault();
    };
    for (const type of noted) part.addEventListener(type, note);
    for (const type of wakes) part.addEventListener(type, wake);
    part.addEventListener('click', press);
    window.addEventListener('pointerup', up);
    window.addEventListener('pointercancel', up);
    return () => {
      for (const type of wakes) part.removeEventListener(type, wake);
      for (const type of noted) part.removeEventListener(type, note);
      part.removeEventListener('click', press);
      window.removeEventListener('pointerup', up);
      window.removeEventListener('pointercancel', up);
    };
  }, [live, fetchIt, show]);

  // A page that is left before its code was there says to itself what was typed.
  useEffect(() => {
    const part = box.current;
    if (!part || live) return;
    const name = `form:${window.location.pathname}:${id}`;
    const before = readLeft(takeUp(name));
    if (before) giveTo(part, before);
    return whenLeaving(() => {
      const left = writeLeft(takeFrom(part));
      if (left !== undefined) leaveBehind(name, left);
    });
  }, [id, live]);

  // Somebody waits for it once they have done something, not while it comes by itself.
  useEffect(() => {
    const part = box.current;
    if (!part || live) return;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const wait = () => {
      timer ??= setTimeout(() => setLate(true), patience);
    };
    for (const type of ['input', 'change', 'click']) part.addEventListener(type, wait);
    return () => {
      clearTimeout(timer);
      for (const type of ['input', 'change', 'click']) part.removeEventListener(type, wait);
    };
  }, [live]);

  const stage = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const part = stage.current;
    const before = carried.current;
    carried.current = undefined;
    if (!live || !part || !before) return;
    const left = giveTo(part, before);
    // A choice brings its fields once it has taken effect.
    const timer = setTimeout(() => finishOn(part, left, turn));
    return () => clearTimeout(timer);
  }, [live]);

  const inPlace = (part: ReactNode) => (
    <JustBefore change={live} done={takeWhatWasDone}>
      {part}
    </JustBefore>
  );
  if (live) {
    return inPlace(
      <div ref={stage} key="live">
        <live.View shown={live.shown} {...props} />
      </div>,
    );
  }
  const again = () => {
    setFailed(false);
    fetchIt();
  };
  const message = (failed || late || !sent) && (
    <div className={sent ? drawn.over : drawn.alone} data-part="fetching">
      <p role="status">
        {failed ? failedWords : 'One moment: what works this out is being fetched. What you type stays. '}
        {failed && (
          <button type="button" className={drawn.again} onClick={again}>
            Try again
          </button>
        )}
      </p>
    </div>
  );
  return inPlace(
    <div key="sent" data-part="sent" className={drawn.place}>
      {message || null}
      {calculator.live && sent ? (
        <div ref={box}>
          <calculator.live.View shown={calculator.live.shown} {...props} />
        </div>
      ) : (
        sent && (
          // What was sent stays as it is: nothing of it is drawn again before its code is there.
          // biome-ignore lint/security/noDangerouslySetInnerHtml: an empty text, by which React leaves alone what stands there
          <div ref={box} suppressHydrationWarning dangerouslySetInnerHTML={asSent} />
        )
      )}
    </div>,
  );
}

interface JustBeforeProps {
  /** What changes. */
  change: unknown;
  /** Called once a change has been worked out and nothing on the page has changed yet. */
  done: () => void;
  children: ReactNode;
}

/** The last look at what stands on the page, before what was worked out takes its place: only a class is asked for one. */
class JustBefore extends Component<JustBeforeProps> {
  override getSnapshotBeforeUpdate({ change }: JustBeforeProps): null {
    if (change !== this.props.change) this.props.done();
    return null;
  }
  override componentDidUpdate(): void {}
  override render(): ReactNode {
    return this.props.children;
  }
}

/** The next turn of the page, when what was done has been drawn. */
const turn = () => new Promise<void>((resolve) => setTimeout(resolve));

/** Once no button or finger is down: what is pressed must still be there when it is let go. */
function released(isDown: { readonly current: boolean }): Promise<void> {
  return new Promise((resolve) => {
    const look = () => (isDown.current ? setTimeout(look, 30) : resolve());
    setTimeout(look, 0);
  });
}
