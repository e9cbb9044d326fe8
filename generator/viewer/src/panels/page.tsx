// The whole page.
import { useEffect } from "preact/hooks";
import { effect } from "@preact/signals";

import * as state from "../state";
import { Measured } from "../tools/measured";
import { Banners } from "./banner";
import { Header } from "./header";
import { Side } from "./side";
import { Space } from "./space";
import { Toolbar, Views } from "./toolbar";

export function Page() {
  useEffect(() => followChoice(), []);
  return (
    <>
      <a class="skip" href="#panel">
        Go to findings, parts and lists
      </a>
      <Header />
      <main>
        <div class="space">
          <Space />
          <Views />
          <Banners />
        </div>
        <Measured />
        <Toolbar />
      </main>
      <Side />
    </>
  );
}

/** A part that is chosen shows its tab; let go, the tab before it comes back. */
function followChoice(): () => void {
  let before = state.tab.peek();
  return effect(() => {
    const chosen = state.selected.value !== null;
    const now = state.tab.peek();
    if (chosen && now !== "part") {
      before = now;
      state.tab.value = "part";
    } else if (!chosen && now === "part") state.tab.value = before;
  });
}
