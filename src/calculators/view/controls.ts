/** What takes what a reader enters. */
export type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

export const controls = 'input, select, textarea';

export const isChoice = (control: Control): control is HTMLInputElement & { type: 'radio' | 'checkbox' } =>
  control instanceof HTMLInputElement && (control.type === 'radio' || control.type === 'checkbox');

/** Whether somebody has changed a control since the page was sent. */
export function isTouched(control: Control): boolean {
  if (isChoice(control))
    // A choice of several is told by the one that was taken; a box may be ticked or cleared.
    return control.checked !== control.defaultChecked && (control.checked || control.type === 'checkbox');
  if (control instanceof HTMLSelectElement) {
    const sent = [...control.options].find(({ defaultSelected }) => defaultSelected) ?? control.options[0];
    return sent !== undefined && control.value !== sent.value;
  }
  if (control instanceof HTMLInputElement && control.type === 'file') return (control.files?.length ?? 0) > 0;
  return control.value !== control.defaultValue;
}

/** Set the text of a control as typing does, so that whoever listens to it hears of it. */
export function type(control: Control, value: string): void {
  const prototype = Object.getPrototypeOf(control) as object;
  Object.getOwnPropertyDescriptor(prototype, 'value')?.set?.call(control, value);
  control.dispatchEvent(new Event(control instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }));
}
