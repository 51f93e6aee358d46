import { afterPaint } from './after-paint.ts';

/** What the browsers that cheap phones have say of the device an event came by. */
interface FromDevice {
  sourceCapabilities?: { firesTouchEvents: boolean } | null;
}

/**
 * Select the text of a field that somebody has just entered: whoever enters it means to write another. To tap what is selected is long work for a
 * phone, as it asks whether a menu is wanted: a field entered by a tap is seen to be entered first.
 *
 * @param field that was entered
 * @param entering the event of the browser that told so
 */
export function selectWhole(field: HTMLInputElement, entering: Event): void {
  if (!(entering as FromDevice).sourceCapabilities?.firesTouchEvents) {
    field.select();
    return;
  }
  const { value } = field;
  afterPaint(() => {
    if (document.activeElement === field && field.value === value) field.select();
  });
}
