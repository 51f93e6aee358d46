import { type Control, controls, isChoice, isTouched, type } from './controls.ts';
import { unfoldedIn } from './unfold.ts';

/**
 * What a reader did to a form that was only drawn, taken over by the live one in its place: whoever types before the code is there loses no
 * key.
 */
export interface CarriedOver {
  fields: readonly { key: string; value: string; checked?: boolean; files: FileList | null }[];
  /** Where the reader is: a control, what of its text is selected, and that text as it was given to the live form. */
  focus?: { key: string; start: number | null; end: number | null; text?: string };
  /** The button that has the focus: the next key is meant for it. */
  on?: string;
  /** Groups that were opened or closed by hand. */
  groups: ReadonlyMap<string, boolean>;
  /** Buttons by which something was unfolded. */
  unfolded?: readonly string[];
  /** The last button that was pressed. */
  pressed?: string;
  /** Keys that write nothing, pressed after the last that did: they pick from a list. */
  keys: readonly string[];
}

/** Keys that write nothing and that a form answers. */
export const silentKeys: ReadonlySet<string> = new Set(['ArrowDown', 'ArrowUp', 'Enter', 'Escape']);

const pressable = 'button, a[href]';

/** What an element stands in, by the name of the field, or the words that label a choice between fields. */
function placeOf(element: Element): string {
  const field = element.closest<HTMLElement>('[data-field]')?.dataset['field'];
  if (field !== undefined) return field;
  const group = element.closest('[role="radiogroup"]')?.getAttribute('aria-labelledby');
  return (group && element.ownerDocument.getElementById(group)?.textContent) || '';
}

/** The elements of a kind in a part, each with a key by which the same one is found in another drawing of it. */
function keyed<Kind extends Element>(part: Element, selector: string): Map<string, Kind> {
  const counts = new Map<string, number>();
  const found = new Map<string, Kind>();
  for (const element of part.querySelectorAll<Kind & HTMLElement>(selector)) {
    const words = element.matches('button, summary, a') ? (element.textContent ?? '').trim() : '';
    const place = `${placeOf(element)}/${words}`;
    const count = counts.get(place) ?? 0;
    counts.set(place, count + 1);
    found.set(`${place}/${count}`, element);
  }
  return found;
}

const isOpen = (summary: HTMLElement) => (summary.parentElement as HTMLDetailsElement).open;

/** The groups of a form that stand open, each by its key. */
export const openGroups = (part: Element): ReadonlySet<string> =>
  new Set([...keyed<HTMLElement>(part, 'summary')].filter(([, one]) => isOpen(one)).map(([key]) => key));

/**
 * What was done to a drawn form since the page came.
 *
 * @param pressed the last button that was pressed in it
 * @param keys the silent keys that were pressed after the last text
 * @param openAsSent the groups that stood open as the page came. One that is closed, and was, says nothing of its reader: the live form may
 *   know better, as where the address fills a field of it.
 */
export function takeFrom(
  part: Element,
  pressed?: Element,
  keys: readonly string[] = [],
  openAsSent: ReadonlySet<string> = new Set(),
): CarriedOver {
  const all = [...keyed<Control>(part, controls)];
  const held = all.find(([, control]) => control === part.ownerDocument.activeElement);
  const summaries = keyed<HTMLElement>(part, 'summary');
  const buttons = [...keyed(part, pressable)];
  const keyOf = (element: Element | null | undefined) => buttons.find(([, one]) => one === element)?.[0];
  const button = keyOf(pressed);
  const unfolded = unfoldedIn(part).flatMap((each) => keyOf(each) ?? []);
  const on = keyOf(part.ownerDocument.activeElement);
  return {
    fields: all
      .filter(([, control]) => isTouched(control))
      .map(([key, control]) => ({
        key,
        value: control.value,
        ...(isChoice(control) ? { checked: control.checked } : {}),
        files: control instanceof HTMLInputElement ? control.files : null,
      })),
    ...(held ? { focus: { key: held[0], ...selectionOf(held[1]) } } : {}),
    groups: new Map(
      [...summaries].filter(([key, one]) => isOpen(one) || openAsSent.has(key)).map(([key, one]) => [key, isOpen(one)]),
    ),
    ...(unfolded.length > 0 ? { unfolded } : {}),
    ...(on === undefined ? {} : { on }),
    ...(button === undefined ? {} : { pressed: button }),
    keys,
  };
}

function selectionOf(control: Control): { start: number | null; end: number | null } {
  if (control instanceof HTMLSelectElement) return { start: null, end: null };
  return { start: control.selectionStart, end: control.selectionEnd };
}

/**
 * Do to the live form what was done to the drawn one, and put the reader back where they were.
 *
 * @returns what found no place yet: a choice brings its fields only once it has taken effect
 */
export function giveTo(part: Element, carried: CarriedOver): CarriedOver {
  for (const [key, summary] of keyed<HTMLElement>(part, 'summary')) {
    const open = carried.groups.get(key);
    if (open !== undefined) (summary.parentElement as HTMLDetailsElement).open = open;
  }
  const there = keyed<Control>(part, controls);
  for (const field of carried.fields) {
    const control = there.get(field.key);
    if (control) give(control, field);
  }
  const { focus, on, unfolded = [], ...rest } = carried;
  if (unfolded.length > 0) {
    const buttons = keyed<HTMLElement>(part, pressable);
    for (const key of unfolded) {
      const button = buttons.get(key);
      if (button?.getAttribute('aria-expanded') === 'false') button.click();
    }
  }
  if (on !== undefined) keyed<HTMLElement>(part, pressable).get(on)?.focus();
  const held = focus && there.get(focus.key);
  if (held) hold(held, focus);
  return {
    ...rest,
    fields: carried.fields.filter(({ key }) => !there.has(key)),
    // Once more when the text that was given has taken effect: it takes the place within it along.
    ...(focus ? { focus: withText(focus, carried) } : {}),
    groups: new Map(),
  };
}

/** What was typed and chosen as a text, for the same page loaded anew; undefined where nothing was. A file cannot be written down. */
export function writeLeft({ fields }: CarriedOver): string | undefined {
  const texts = fields.filter(({ files }) => !files?.length).map(({ key, value, checked }) => [key, value, checked]);
  return texts.length > 0 ? JSON.stringify(texts) : undefined;
}

/** What `writeLeft` wrote. Anything else that stands there is left out. */
export function readLeft(text: string | undefined): CarriedOver | undefined {
  if (text === undefined) return undefined;
  try {
    const fields = (JSON.parse(text) as unknown[]).flatMap((one) => {
      const [key, value, checked] = Array.isArray(one) ? one : [];
      return typeof key === 'string' && typeof value === 'string'
        ? [{ key, value, ...(typeof checked === 'boolean' ? { checked } : {}), files: null }]
        : [];
    });
    return { fields, groups: new Map(), keys: [] };
  } catch {
    return undefined;
  }
}

/**
 * Do the rest once the first has taken effect, the press of a button last: it is about what stands in the fields.
 *
 * @param settle waits until what was done has taken effect
 */
export async function finishOn(part: Element, left: CarriedOver, settle: () => Promise<void>): Promise<void> {
  const meant = left.focus && keyed<Control>(part, controls).get(left.focus.key);
  const wentOn = isElsewhere(part, meant);
  giveTo(part, withoutWhatWentOn(part, left));
  // Keys that are held back meanwhile join at the end.
  for (const key of left.keys) {
    await settle();
    const again = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true });
    pressedAgain.add(again);
    (wentOn && meant ? meant : part.ownerDocument.activeElement)?.dispatchEvent(again);
  }
  if (left.pressed === undefined) return;
  const button = keyed<HTMLElement>(part, pressable).get(left.pressed);
  // Whoever is in no field since is on the button still, and is led on from there.
  if (left.focus === undefined && !isElsewhere(part, button)) button?.focus();
  button?.click();
}

const pressedAgain = new WeakSet<Event>();

/**
 * Hold back the reader's own silent keys, and put them behind those that are still to be pressed again: what was pressed first is to take effect
 * first.
 *
 * @returns lets them through again
 */
export function holdBack(part: Element, keys: string[]): () => void {
  const hold = (event: Event) => {
    if (!(event instanceof KeyboardEvent) || !silentKeys.has(event.key) || pressedAgain.has(event)) return;
    event.preventDefault();
    event.stopPropagation();
    keys.push(event.key);
  };
  part.addEventListener('keydown', hold, true);
  return () => part.removeEventListener('keydown', hold, true);
}

/** The place with the text that was typed there, which the live form has been given. */
function withText(
  focus: NonNullable<CarriedOver['focus']>,
  { fields }: CarriedOver,
): NonNullable<CarriedOver['focus']> {
  const text = fields.find(({ key }) => key === focus.key)?.value;
  return text === undefined ? focus : { ...focus, text };
}

/** Whether the reader has gone on to something else than the place where they were put. */
function isElsewhere(part: Element, place: Element | undefined): boolean {
  const { activeElement, body } = part.ownerDocument;
  return activeElement !== null && activeElement !== body && activeElement !== place;
}

/** Whoever has typed on in the live form, or gone on to another place, stays where they are by now. */
function withoutWhatWentOn(part: Element, left: CarriedOver): CarriedOver {
  const { focus, ...rest } = left;
  const control = focus && keyed<Control>(part, controls).get(focus.key);
  const typedOn = control && focus.text !== undefined && control.value !== focus.text;
  return typedOn || isElsewhere(part, control) ? rest : left;
}

function give(control: Control, { value, checked, files }: CarriedOver['fields'][number]): void {
  if (checked !== undefined) {
    if ((control as HTMLInputElement).checked !== checked) control.click();
  } else if (control instanceof HTMLInputElement && control.type === 'file') {
    control.files = files;
    control.dispatchEvent(new Event('change', { bubbles: true }));
  } else type(control, value);
}

function hold(control: Control, { start, end }: NonNullable<CarriedOver['focus']>): void {
  control.focus({ preventScroll: true });
  if (start !== null && !(control instanceof HTMLSelectElement)) control.setSelectionRange(start, end);
}
