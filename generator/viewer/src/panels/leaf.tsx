// A button with a leaf that opens above the tool bar.
import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";

/** Escape shuts it; `on` says that what is on the leaf is in force. */
export function Leaf(props: { label: string; on: boolean; children: ComponentChildren }) {
  const details = useRef<HTMLDetailsElement>(null);
  const shut = (event: KeyboardEvent) => {
    if (event.key !== "Escape" || !details.current!.open) return;
    details.current!.open = false;
    details.current!.querySelector("summary")!.focus();
    event.stopPropagation();
  };
  return (
    <details name="tools" ref={details} onKeyDown={shut}>
      <summary class={props.on ? "on" : ""}>{props.label}</summary>
      <div class="leaf">{props.children}</div>
    </details>
  );
}
