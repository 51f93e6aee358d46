/** Words of a button that unfolds something. Both stand in it, one of them hidden, so that a page that has no code yet can turn them too (`unfold.ts`). */
export const FoldWords = ({ open, more, less = 'Less' }: { open: boolean; more: string; less?: string }) => (
  <>
    <span data-when="closed" hidden={open}>
      {more}
    </span>
    <span data-when="open" hidden={!open}>
      {less}
    </span>
  </>
);
