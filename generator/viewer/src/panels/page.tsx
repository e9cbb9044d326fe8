// The whole page.
import { useEffect } from "preact/hooks";

import { remember } from "../remember";
import * as state from "../state";
import { Dimensioned } from "../tools/measured";
import { followChoice } from "./choosing";
import { Header } from "./header";
import { Over } from "./over";
import { filter } from "./parts";
import { Side } from "./side";
import { Space } from "./space";
import { scrolled } from "./tabs";
import { Toolbar, Views } from "./toolbar";

remember("selected", state.selected);
remember("tab", state.tab);
remember("drawer", state.drawer);
remember("cut", state.cut);
remember("measuring", state.measuring);
remember("dimensioned", state.dimensioned);
remember("filter", filter);
remember("scrolled", scrolled);

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
