// Severities by shape, beside their words: they read in black and white.
import type { Told } from "../document";

const SHAPES: Record<Told["severity"], string> = {
  error: "M6 1h8l5 5v8l-5 5H6l-5-5V6zM6.5 6.5l7 7m0-7l-7 7",
  warning: "M10 1.5L19 18H1zM10 7v5.5m0 2v1.2",
  note: "M10 1a9 9 0 1 1 0 18a9 9 0 1 1 0-18zM10 9v5.5m0-9.2v1.4",
  caution: "M10 1l9 9-9 9-9-9zM10 5.5v6m0 2v1.2",
};

export function Sign({ severity }: { severity: Told["severity"] }) {
  return (
    <svg class={`sign ${severity}`} viewBox="0 0 20 20" aria-hidden="true">
      <path d={SHAPES[severity]} />
    </svg>
  );
}
