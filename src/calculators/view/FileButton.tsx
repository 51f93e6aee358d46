import { type ReactNode, useRef } from 'react';
import frame from './frame.module.css';

interface FileButtonProps {
  /** What the browser's window offers, as in the attribute `accept`. */
  accept: string;
  /** Name of the part, by which it is found. */
  part: string;
  onFile: (file: File) => void;
  children: ReactNode;
}

/** A button that asks for a file of the reader's. The same file may be given twice, so that one mended in between is read again. */
export function FileButton({ accept, part, onFile, children }: FileButtonProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={input}
        type="file"
        accept={accept}
        hidden
        aria-hidden="true"
        tabIndex={-1}
        data-part={part}
        onChange={(event) => {
          const file = event.target.files?.[0];
          if (file) onFile(file);
          event.target.value = '';
        }}
      />
      <button type="button" className={frame.button} onClick={() => input.current?.click()}>
        {children}
      </button>
    </>
  );
}
