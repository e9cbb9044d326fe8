// The whole page.
import { useEffect } from "preact/hooks";

import { followChoice } from "../choosing";
import * as state from "../state";
import { Header } from "./header";
import { Dimensioned } from "./measured";
import { Over } from "./over";
import { Side } from "./side";
import { Space } from "./space";
import { Toolbar, Views } from "./toolbar";

export function Page() {
  useEffect(() => followChoice(), []);
  return (
    <>
      <a class="skip" href="#panel">
        Go to the words and lists beside the unit
      </a>
      <Header />
      <main class={`over-${state.drawer.value}`}>
        <Views />
        <div class="space">
          <Space />
          <Over />
        </div>
        <Dimensioned />
        <Toolbar />
      </main>
      <Side />
    </>
  );
}
