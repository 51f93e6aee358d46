import { useEffect, useLayoutEffect, useRef } from 'react';
import { type Control, controls, isChoice, isTouched, type } from '../../calculators/view/controls.ts';

/** What somebody did to a control before the page was alive. */
interface Early {
  control: Control;
  value: string;
  checked: boolean;
  /** Where in its text the reader is. */
  held?: { start: number | null; end: number | null };
}

/** A drawn calculator sees to its own form, whose controls are others once it is alive. */
const seesToItself = '[data-part="sent"]';

function typedEarly(): Early[] {
  return [...document.querySelectorAll<Control>(controls)]
    .filter((control) => isTouched(control) && !control.closest(seesToItself))
    .map((control) => ({
      control,
      value: control.value,
      checked: isChoice(control) && control.checked,
      ...(control === document.activeElement && !(control instanceof HTMLSelectElement)
        ? { held: { start: control.selectionStart, end: control.selectionEnd } }
        : {}),
    }));
}

/** The same control, or the one that stands in its place. */
function now({ control }: Early): Control | undefined {
  if (control.isConnected) return control;
  const other = control.id === '' ? null : document.getElementById(control.id);
  return other?.matches(controls) ? (other as Control) : undefined;
}

/** Do it once more, as if it was done now. The page tells a change by what it saw last, which may be what the browser shows already. */
function doAgain(early: Early): void {
  const control = now(early);
  if (!control) return;
  const { value, checked, held } = early;
  if (isChoice(control)) {
    control.checked = !checked;
    control.click();
  } else if (control instanceof HTMLInputElement && control.type === 'file') {
    control.dispatchEvent(new Event('change', { bubbles: true }));
  } else if (control instanceof HTMLSelectElement) type(control, value);
  else {
    control.value = control.defaultValue;
    type(control, value);
    if (held && held.start !== null && control === document.activeElement)
      control.setSelectionRange(held.start, held.end);
  }
}

/**
 * Take over what was typed and chosen anywhere on the page before it was alive: the browser shows it, and nobody has told the page. It belongs to what
 * surrounds every page. It is looked at before anything is drawn anew, which would put the page's own text in its place, and done again
 * once every part has begun with what it has kept.
 */
export function useTypedEarly(): void {
  const early = useRef<readonly Early[]>([]);
  useLayoutEffect(() => {
    early.current = typedEarly();
  }, []);
  useEffect(() => {
    // Not within the drawing itself, which would put the text that it began with back once more.
    const timer = setTimeout(() => {
      for (const each of early.current) doAgain(each);
      early.current = [];
    });
    return () => clearTimeout(timer);
  }, []);
}
