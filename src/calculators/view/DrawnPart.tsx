import {
  Component,
  type ReactNode,
  startTransition,
  useCallback,
  useEffect,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import { afterPaint } from './after-paint.ts';
import { InBothUnits } from './both-units.tsx';
import {
  type CarriedOver,
  finishOn,
  giveTo,
  holdBack,
  openGroups,
  readLeft,
  silentKeys,
  takeFrom,
  writeLeft,
} from './carry-over.ts';
import { keepClearOfStrip } from './clear-of-strip.ts';
import drawn from './drawn.module.css';
import type { Rest } from './drawn.ts';
import { leaveBehind, takeUp, whenLeaving } from './leaving.ts';
import { watchScrolling } from './scrolling.ts';
import { selectWhole } from './select-whole.ts';
import { foldBy, unfoldBy } from './unfold.ts';
import { useWasSent } from './was-sent.ts';

export interface DrawnPartProps<Fetched> {
  /** What is fetched and left behind for it is found by this: another for each part, the same each time. */
  name: string;
  /** Fetches its code, and runs it while the reader rests. */
  load: (rest: Rest) => Promise<Fetched>;
  /** What it is drawn with where the page is being written; a browser has to fetch it. */
  here: Fetched | undefined;
  /** Draws it. */
  draw: (fetched: Fetched) => ReactNode;
  /** Drawn beside what was sent, with nothing to be seen, and before the live part takes its place: says once what that needs is worked out. */
  ahead?: (fetched: Fetched, done: () => void) => ReactNode;
  /** Whether this browser knows something that changes what was sent, which stands in `part`; asked once the page is alive. */
  own: (part: Element) => boolean;
  /** Sent in both systems of units, and shown in the reader's own. */
  inBoth?: boolean;
  /** What of it is approached by whoever means to change something, as a selector; all of it unless told. */
  near?: string;
}

/** What a reader does to a drawn part that its code has to answer. */
const wakes = ['pointerdown', 'pointerenter', 'focusin', 'keydown', 'input', 'change'] as const;

const noted = ['focusin', 'input', 'keydown', 'submit'] as const;

/** What stands in the page as sent, to React: the same each time, or it would be written anew, and be gone. */
const asSent = { __html: '' };

/** What this page has fetched already, by name: whoever comes back to a part finds it at once. */
const fetchedBefore = new Map<string, unknown>();

const failedWords =
  'What works this out could not be fetched: there may be no connection. What you type stays; the answer below is that of the worked case. ';

/** Words about waiting come only after this, ms. */
const patience = 400;

/**
 * A part of a page that was sent drawn: its form and the answer to its worked case. Its code is fetched when somebody comes near, or where this
 * browser knows something that changes the case. Until it is there what was sent stands, and what is done to it meanwhile is done to the live one.
 */
export function DrawnPart<Fetched>({ name, load, here, draw, ahead, own, inBoth, near }: DrawnPartProps<Fetched>) {
  const sent = useWasSent();
  const [live, setLive] = useState<{ fetched: Fetched } | undefined>(() =>
    !sent && fetchedBefore.has(name) ? { fetched: fetchedBefore.get(name) as Fetched } : undefined,
  );
  const [working, setWorking] = useState<{ fetched: Fetched }>();
  const [failed, setFailed] = useState(false);
  const [late, setLate] = useState(false);
  const box = useRef<HTMLDivElement>(null);
  const fetching = useRef<Promise<void>>(undefined);
  const carried = useRef<CarriedOver>(undefined);
  const pressed = useRef<Element>(undefined);
  const keys = useRef<string[]>([]);
  const openAsSent = useRef<ReadonlySet<string>>(new Set());
  const doing = useRef<Doing>({ isDown: false, up: longAgo, key: longAgo, arrived: undefined });
  const arrived = useRef<{ fetched: Fetched }>(undefined);
  const couldNot = useRef(false);

  // A form with its drawings is much to draw at once: drawn as a transition it leaves room for what the reader does meanwhile.
  const rest = useCallback(() => {
    doing.current.arrived ??= performance.now();
    return rested(doing);
  }, []);
  const show = useCallback(
    async (its: { fetched: Fetched }) => {
      await rest();
      startTransition(() => setLive(its));
    },
    [rest],
  );
  const ready = useCallback(
    (its: { fetched: Fetched }) => {
      arrived.current = its;
      void show(its);
    },
    [show],
  );
  const worksAhead = ahead !== undefined;
  const fetchIt = useCallback(() => {
    // To ask for its files takes a slow phone as long as a tap may: that is seen first.
    fetching.current ??= rested(doing)
      .then(() => load(rest))
      .then(
        async (fetched) => {
          fetchedBefore.set(name, fetched);
          couldNot.current = false;
          setFailed(false);
          await rest();
          if (worksAhead) setWorking({ fetched });
          else ready({ fetched });
        },
        () => {
          fetching.current = undefined;
          couldNot.current = true;
          setFailed(true);
        },
      );
  }, [name, load, rest, ready, worksAhead]);
  const worked = useCallback(() => working && ready(working), [working, ready]);
  const takeWhatWasDone = () => {
    if (box.current) carried.current = takeFrom(box.current, pressed.current, keys.current, openAsSent.current);
  };

  useEffect(() => {
    // Without a server nothing was sent.
    const part = sent ? box.current : null;
    if (!part || part.childElementCount === 0 || own(part)) fetchIt();
  }, [sent, own, fetchIt]);

  useEffect(() => {
    const part = box.current;
    if (!part || live) return;
    openAsSent.current = openGroups(part);
    const approached = near === undefined ? [part] : [...part.querySelectorAll(near)];
    const beginAgain = () => {
      if (!arrived.current) return;
      setLive(undefined);
      void show(arrived.current);
    };
    const down = () => {
      doing.current.isDown = true;
      // What is being drawn must not take the place of a button that is held down: it is begun again once that is let go.
      beginAgain();
    };
    const wake = () => fetchIt();
    const wasTypedIn = () => takeFrom(part).fields.length > 0;
    // A link as sent leads to the case as sent: one of another case waits for the live one, which knows it.
    const leadsElsewhere = (link: Element | null) =>
      link !== null && !link.getAttribute('href')?.startsWith('#') && !couldNot.current && (own(part) || wasTypedIn());
    const press = (event: MouseEvent) => {
      const { target } = event;
      if (!(target instanceof Element)) return;
      const link = target.closest('a[href]');
      if (isPlain(event) && leadsElsewhere(link)) {
        event.preventDefault();
        pressed.current = link ?? undefined;
        fetchIt();
        return;
      }
      const button = target.closest('button') ?? undefined;
      if (button && unfoldBy(button)) return;
      pressed.current = button;
      if (button) fetchIt();
    };
    const up = () => {
      doing.current.isDown = false;
      doing.current.up = performance.now();
    };
    const note = (event: Event) => {
      const { target } = event;
      // As the live one does: whoever enters a field means to write another text, and to see it.
      if (event.type === 'focusin' && target instanceof HTMLInputElement && target.type === 'text')
        selectWhole(target, event);
      if (event.type === 'focusin') keepClearOfStrip(target);
      if (event.type === 'input') {
        keys.current = [];
        doing.current.key = performance.now();
        if (isTyping(doing.current)) beginAgain();
      }
      if (event instanceof KeyboardEvent && silentKeys.has(event.key)) keys.current.push(event.key);
      if (event instanceof KeyboardEvent && event.key === 'Escape') foldBy(target as Element);
      // A drawn form has nobody to send itself to: it would load the page anew.
      if (event.type === 'submit') event.preventDefault();
    };
    // What was typed before anybody listened is asked for too.
    if (wasTypedIn()) fetchIt();
    for (const type of noted) part.addEventListener(type, note);
    for (const each of approached) for (const type of wakes) each.addEventListener(type, wake);
    part.addEventListener('pointerdown', down);
    part.addEventListener('click', press);
    window.addEventListener('pointerup', up);
    window.addEventListener('pointercancel', up);
    const unrehearsed = rehearsed([note, press, up]);
    return () => {
      unrehearsed();
      for (const each of approached) for (const type of wakes) each.removeEventListener(type, wake);
      for (const type of noted) part.removeEventListener(type, note);
      part.removeEventListener('pointerdown', down);
      part.removeEventListener('click', press);
      window.removeEventListener('pointerup', up);
      window.removeEventListener('pointercancel', up);
    };
  }, [live, near, own, fetchIt, show]);

  useEffect(() => (box.current && !live ? watchScrolling(box.current) : undefined), [live]);

  // A page that is left before its code was there says to itself what was typed.
  useEffect(() => {
    const part = box.current;
    if (!part || live) return;
    const key = `form:${window.location.pathname}:${name}`;
    const before = readLeft(takeUp(key));
    if (before) giveTo(part, before);
    return whenLeaving(() => {
      const left = writeLeft(takeFrom(part));
      if (left !== undefined) leaveBehind(key, left);
    });
  }, [name, live]);

  // Somebody waits for it once they have done something, not while it comes by itself.
  useEffect(() => {
    const part = box.current;
    if (!part || live) return;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const wait = () => {
      if (fetching.current) timer ??= setTimeout(() => setLate(true), patience);
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
    const keys = [...left.keys];
    const letThrough = holdBack(part, keys);
    // A choice brings its fields once it has taken effect.
    const timer = setTimeout(() => finishOn(part, { ...left, keys }, turn).finally(letThrough));
    return () => {
      clearTimeout(timer);
      letThrough();
    };
  }, [live]);

  const inPlace = (part: ReactNode) => (
    <JustBefore change={live} done={takeWhatWasDone}>
      {part}
    </JustBefore>
  );
  if (live) {
    return inPlace(
      <div ref={stage} key="live">
        {draw(live.fetched)}
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
      {working && ahead?.(working.fetched, worked)}
      {here && sent ? (
        <div ref={box}>{inBoth ? <InBothUnits>{draw(here)}</InBothUnits> : draw(here)}</div>
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

/** A click that goes on in this window. */
const isPlain = ({ button, ctrlKey, metaKey, shiftKey, altKey }: MouseEvent) =>
  button === 0 && !ctrlKey && !metaKey && !shiftKey && !altKey;

/**
 * Have listeners compiled while nobody waits: a browser compiles a function when it is first called, which would be in the first tap, and costs a
 * slow phone a frame.
 *
 * @param listeners that do nothing at an event that nobody sent
 * @returns gives it up
 */
function rehearsed(listeners: readonly ((event: MouseEvent) => void)[]): () => void {
  if (typeof requestIdleCallback === 'undefined') return () => undefined;
  const idle = requestIdleCallback(() => {
    for (const listener of listeners) listener(new MouseEvent('rehearsal'));
  });
  return () => cancelIdleCallback(idle);
}

/** What a reader is at while the code of a part comes. */
interface Doing {
  /** Whether a button or finger is down. */
  isDown: boolean;
  /** When the last one went up, on the page's own clock, ms. */
  up: number;
  /** When the last text was typed, on the page's own clock, ms. */
  key: number;
  /** When the code was there, ms. */
  arrived: number | undefined;
}

/** Before anything was done on a page, on its own clock, ms. */
const longAgo = Number.NEGATIVE_INFINITY;

/** A browser takes so long to make a click of a finger that went up, ms. */
const click = 100;
/** Whoever has typed nothing for so long has paused, ms: the next key need not wait until a whole form has been laid out. */
const pause = 500;
/** Whoever types on and on is answered all the same so long after the code was there, ms. */
const longest = 2500;

const isTyping = ({ key, arrived }: Doing, now = performance.now()) =>
  arrived !== undefined && now - key < pause && now - arrived < longest;

/** What is pressed must still be there when it is let go, and when that has become a click. */
const isPressing = ({ isDown, up }: Doing) => isDown || performance.now() - up < click;

/** Once nobody presses anything or types, and what was done last has been painted. */
function rested(doing: { readonly current: Doing }): Promise<void> {
  const isBusy = () => isPressing(doing.current) || isTyping(doing.current);
  return new Promise((resolve) => {
    const look = (): unknown => (isBusy() ? setTimeout(look, 30) : afterPaint(again));
    const again = () => (isBusy() ? look() : resolve());
    setTimeout(look, 0);
  });
}
