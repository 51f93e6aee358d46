import { Fragment } from 'react';

/** A sentence in which names of code stand between back quotes. */
export function CodeWords({ text }: { text: string }) {
  return text.split(/`([^`]+)`/).map((part, at) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one sentence never change their order.
    <Fragment key={at}>{at % 2 === 1 ? <code>{part}</code> : part}</Fragment>
  ));
}
