import { render } from "preact";

import type { Start } from "./document";
import { Page } from "./panels/page";
import { follow } from "./socket";
import * as state from "./state";

const start = JSON.parse(document.getElementById("told")!.textContent!) as Start;
if (start.live) follow(start.live);
state.model.value = start.model ?? null;
state.sections.value = start.sections ?? state.NOTHING_YET;
state.words.value = start.words ?? null;
render(<Page />, document.getElementById("page")!);
