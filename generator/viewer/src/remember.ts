// What a page keeps over a reload, in its tab's storage (HTML standard, 12.2: sessionStorage).
import { effect, type Signal } from "@preact/signals";

/** Keep a signal's value under a name; what was kept there is read at once. */
export function remember<T>(name: string, kept: Signal<T>): void {
  rememberAs(
    name,
    kept,
    (value) => value,
    (read) => read as T,
  );
}

/** Keep a signal that holds a set. */
export function rememberSet<T extends string>(name: string, kept: Signal<ReadonlySet<T>>): void {
  rememberAs(
    name,
    kept,
    (value) => [...value],
    (read) => new Set(read as T[]),
  );
}

/** Keep a signal's value as JSON of what `out` makes of it; `back` makes it again. */
function rememberAs<T>(
  name: string,
  kept: Signal<T>,
  out: (value: T) => unknown,
  back: (read: unknown) => T,
): void {
  const store = storage();
  if (!store) return;
  // Pages from disk share one storage: the path tells them apart.
  const key = `${location.pathname} ${name}`;
  const text = store.getItem(key);
  if (text !== null) kept.value = back(JSON.parse(text));
  effect(() => store.setItem(key, JSON.stringify(out(kept.value))));
}

// A frame without an origin of its own (a notebook's) has none: then nothing is kept.
function storage(): Storage | null {
  try {
    return sessionStorage;
  } catch {
    return null;
  }
}
