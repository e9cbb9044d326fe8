// The live page's talk with its server.
import { batch } from "@preact/signals";

import type { Message, Model, Sections, Shape, Texture, Wish } from "./document";
import * as state from "./state";

// The server says something every two seconds; after three times that in silence it isn't there.
const BEAT = 2000;
const MOST_MISSED = 3;
const PATIENCE = 1000;

let shapes: Record<string, Shape> = {};
let textures: Record<string, Texture> = {};
let socket: WebSocket | null = null;

/** Follow the server at this address; try again while it is gone. */
export function follow(address: string): void {
  if (state.live.value === "sent") state.live.value = "waiting";
  const at = new URL(address, location.href);
  at.protocol = at.protocol.replace("http", "ws");
  const talk = new WebSocket(at);
  socket = talk;
  let missed = 0;
  let beats = false;
  // Counted, not timed: while the machine sleeps, nothing counts.
  const heartbeat = setInterval(() => {
    missed += 1;
    if (missed > MOST_MISSED && (beats || talk.readyState === WebSocket.CONNECTING)) lost();
  }, BEAT);
  const lost = () => {
    if (socket !== talk) return;
    socket = null;
    clearInterval(heartbeat);
    talk.close();
    if (state.live.value !== "other") state.live.value = "gone";
    void ask().then((answer) => {
      state.live.value = answer;
      setTimeout(() => follow(address), PATIENCE);
    });
  };
  talk.onopen = () => {
    // This server tells everything again.
    shapes = {};
    textures = {};
    // What wasn't done while it was gone can be wished anew.
    state.refused.value = "";
    state.live.value = "there";
  };
  talk.onmessage = (event) => {
    missed = 0;
    const message = JSON.parse(event.data as string) as Message;
    beats ||= message.kind === "alive";
    hear(message);
  };
  talk.onclose = lost;
}

/** Tell the server what is wished. */
export function wish(wished: Wish): void {
  if (socket?.readyState === WebSocket.OPEN) socket.send(JSON.stringify(wished));
  else state.refused.value = "The server of this page isn't there, so nothing was changed.";
}

/** Who is there once the talk has ended: nobody, or a server that doesn't know this page. */
async function ask(): Promise<"gone" | "other"> {
  try {
    // A server that hangs takes what is asked and never answers.
    const signal = AbortSignal.timeout(BEAT);
    const answer = await fetch(location.pathname, { method: "HEAD", cache: "no-store", signal });
    return answer.ok ? "gone" : "other";
  } catch {
    return "gone";
  }
}

function hear(message: Message): void {
  batch(() => {
    switch (message.kind) {
      case "reading":
        state.reading.value = message.version;
        break;
      case "model":
        state.version.value = state.read.value = message.version;
        // What makes a unit has none.
        state.troubles.value = [];
        state.model.value = whole(message.model);
        break;
      case "troubles":
        state.read.value = message.version;
        state.troubles.value = message.troubles;
        break;
      case "sections":
        if (message.version === state.version.value) take(message.version, message.sections);
        break;
      case "failed":
        state.failed.value = {
          ...state.failed.value,
          [message.section]: { version: message.version, message: message.message },
        };
        break;
      case "nudges":
        state.figured.value = message.version;
        state.nudges.value = message.nudges;
        state.back.value = message;
        break;
      case "refused":
        state.refused.value = message.message;
        break;
      case "alive":
    }
  });
}

function take(version: number, { textures: seen, ...sections }: Partial<Sections>): void {
  const told = Object.keys(sections).map((name) => [name, version]);
  state.known.value = { ...state.known.value, ...Object.fromEntries(told) };
  // Of what woods look like the page is told but once.
  if (seen) textures = { ...textures, ...seen };
  state.sections.value = { ...state.sections.value, ...sections, textures };
}

// The server doesn't tell again what this page has: the shapes of the model before, and no others.
function whole(model: Model): Model {
  const needed = [...model.parts, ...model.fittings].map((each) => each.shape);
  shapes = Object.fromEntries(
    needed.map((name) => [name, model.shapes[name] ?? shapes[name]!] as const),
  );
  textures = Object.fromEntries(
    Object.entries(textures).filter(([name]) => name in model.surfaces),
  );
  return { ...model, shapes };
}
