import frame from '../../calculators/view/frame.module.css';

/** The way back of something that was taken off a list, or struck on it: nothing is lost by one press. */
export function PutBack({ what, onPutBack }: { what?: string; onPutBack: () => void }) {
  return (
    <button
      type="button"
      className={`${frame.button} no-print`}
      aria-label={what === undefined ? undefined : `Put it back: ${what}`}
      onClick={onPutBack}
    >
      Put it back
    </button>
  );
}

interface RemovedProps {
  /** Name of what was removed last; undefined where nothing was. */
  name: string | undefined;
  className?: string | undefined;
  onPutBack: () => void;
}

/** What was removed last from a list, told where a screen reader hears it, with the way back. */
export function Removed({ name, className, onPutBack }: RemovedProps) {
  return (
    <p role="status" className={className}>
      {name !== undefined && (
        <>
          “{name}” is removed. <PutBack onPutBack={onPutBack} />
        </>
      )}
    </p>
  );
}
