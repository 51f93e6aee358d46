import styles from './notice.module.css';

let said = false;

/**
 * Says that a part of the page did not arrive and offers to try again. A page whose own scripts are missing stays as the server sent it and
 * would answer no key without a word; what says so cannot be fetched any more, so it comes with the page.
 */
function sayMissing(): void {
  if (said) return;
  said = true;
  const box = document.body.appendChild(document.createElement('div'));
  box.className = styles.notice ?? '';
  box.setAttribute('role', 'alert');
  const words = box.appendChild(document.createElement('p'));
  words.textContent =
    'Part of this page did not arrive, so fields and buttons may not answer. What you typed before is kept. Look whether there is a network.';
  const again = box.appendChild(document.createElement('button'));
  again.className = 'button';
  again.textContent = 'Try again';
  again.onclick = () => location.reload();
}

/** Listen for parts that did not arrive and that nobody else speaks of. */
export function tellOfMissingParts(): void {
  window.addEventListener('unhandledrejection', ({ reason }) => {
    if ((reason as { name?: string } | null)?.name === 'ChunkLoadError') sayMissing();
  });
}
