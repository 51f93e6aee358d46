import { sayOver } from './say-over.ts';

let said = false;

/**
 * Says that a part of the page did not arrive and offers to try again. A page whose own scripts are missing stays as the server sent it and
 * would answer no key without a word.
 */
function sayMissing(): void {
  if (said) return;
  said = true;
  sayOver(
    'Part of this page did not arrive, so fields and buttons may not answer. What you typed before is kept. Look whether there is a network.',
    [{ label: 'Try again', act: () => location.reload() }],
  );
}

/** Listen for parts that did not arrive and that nobody else speaks of. */
export function tellOfMissingParts(): void {
  window.addEventListener('unhandledrejection', ({ reason }) => {
    if ((reason as { name?: string } | null)?.name === 'ChunkLoadError') sayMissing();
  });
}
