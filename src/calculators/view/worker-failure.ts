/** The part of a worker's error that is used here. */
export type WorkerFailure = Pick<ErrorEvent, 'preventDefault'>;

/**
 * What to do once a worker has failed, as where the network went before all of it came. Whoever does something about it says so in the page; the
 * browser need not complain besides.
 *
 * @param instead what is done
 */
export const onFailure =
  (instead: () => void) =>
  (event: Partial<WorkerFailure>): void => {
    event.preventDefault?.();
    instead();
  };
