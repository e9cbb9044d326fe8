// How things move by themselves.

/** Whether the maker wants nothing to. */
export function still(): boolean {
  return matchMedia("(prefers-reduced-motion: reduce)").matches;
}

/** How far one has come after a share of the time: slow at both ends. */
export function eased(gone: number): number {
  return gone * gone * (3 - 2 * gone);
}
