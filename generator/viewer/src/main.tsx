import { render } from "preact";

import { keep } from "./kept";
import { Page } from "./panels/page";
import { takeBackByKeys } from "./panels/undoing";
import { Printed } from "./print/printed";
import { follow } from "./socket";
import * as state from "./state";
import { told, withPictures } from "./told";

async function begin(): Promise<void> {
  keep();
  const start = await told();
  // What stands in the page then tells what it can.
  if (!start) return;
  if (start.live) {
    follow(start.live);
    takeBackByKeys();
  }
  state.model.value = start.model ?? null;
  state.sections.value = start.sections ?? state.NOTHING_YET;
  state.words.value = start.words ? withPictures(start.words) : null;
  const page = document.getElementById("page")!;
  page.replaceChildren();
  document.body.classList.remove("still");
  render(<Page />, page);
  const printed = document.createElement("div");
  printed.id = "printed";
  document.body.append(printed);
  render(<Printed />, printed);
}

void begin();
