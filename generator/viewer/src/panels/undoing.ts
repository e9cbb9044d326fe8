// Changes taken back and made again, by button or key.
import { wish } from "../socket";
import * as state from "../state";
import { drafts } from "./trying";

/** Whether there is anything to take back the server knows best: the last change may be on its way. */
export function takeBack(kind: "undo" | "redo"): void {
  state.refused.value = "";
  drafts.value = new Map();
  wish({ kind });
}

/** Ctrl+Z takes back, Ctrl+Shift+Z and Ctrl+Y make again, but where a text field has its own. */
export function takeBackByKeys(): void {
  document.addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || writes(event.target)) return;
    const key = event.key.toLowerCase();
    if (key !== "z" && key !== "y") return;
    event.preventDefault();
    takeBack(key === "y" || event.shiftKey ? "redo" : "undo");
  });
}

function writes(target: EventTarget | null): boolean {
  if (target instanceof HTMLInputElement)
    return !["range", "checkbox", "radio", "button"].includes(target.type);
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement;
}
