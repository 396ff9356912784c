/** The handle by which a row is dragged. It is for pointers alone: keys and buttons do the same. */
export function RowHandle() {
  return (
    <span className="write-handle" data-handle aria-hidden="true">
      <svg width="20" height="24" viewBox="0 0 20 24" aria-hidden="true">
        <path d="M6 8l4 -5l4 5M6 16l4 5l4 -5M3 12h14" />
      </svg>
    </span>
  );
}
