// What of the page's state is kept over a reload, each by the name it is kept under.
import { remember, rememberSet } from "./remember";
import * as state from "./state";

/** Take up what was kept, and keep it from now on. */
export function keep(): void {
  remember("selected", state.selected);
  remember("tab", state.tab);
  remember("drawer", state.drawer);
  remember("share", state.share);
  remember("filter", state.filter);
  remember("scrolled", state.scrolled);
  remember("apart", state.apart);
  rememberSet("open", state.open);
  rememberSet("hidden", state.hidden);
  rememberSet("aside", state.aside);
  remember("pose", state.pose);
  remember("cut", state.cut);
  remember("measuring", state.measuring);
  remember("measures", state.measures);
  remember("dimensioned", state.dimensioned);
}
