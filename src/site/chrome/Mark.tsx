/** The site's mark: the end of a flatsawn board, its growth rings and the saw kerf that parts it. */
export function Mark({ className }: { className?: string }) {
  return (
    <svg
      className={className}
      viewBox="0 0 32 32"
      fill="none"
      stroke="currentColor"
      aria-hidden="true"
      focusable="false"
    >
      <path d="M2 7h28v18H2z" strokeWidth="2" />
      <path d="M3 20.5C9 15.5 23 15.5 29 20.5M3 15.5C9 10 23 10 29 15.5M5 9.5C11 6.6 21 6.6 27 9.5" strokeWidth="1.5" />
      <path d="M9 24.6C12 20.6 20 20.6 23 24.6" strokeWidth="1.5" />
      <path d="M20 2v28" stroke="var(--kerf-paper)" strokeWidth="3.4" />
    </svg>
  );
}
