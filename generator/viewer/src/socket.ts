// The live page's talk with its server.
import { batch } from "@preact/signals";

import type { Message, Model, Shape, Surface, Texture, Wish } from "./document";
import * as state from "./state";

const shapes: Record<string, Shape> = {};
const surfaces: Record<string, Surface> = {};
const textures: Record<string, Texture> = {};
let socket: WebSocket | null = null;

/** Follow the server at this address; try again while it is gone. */
export function follow(address: string): void {
  state.live.value = "waiting";
  const at = new URL(address, location.href);
  at.protocol = at.protocol.replace("http", "ws");
  const talk = new WebSocket(at);
  socket = talk;
  talk.onopen = () => (state.live.value = "there");
  talk.onmessage = (event) => hear(JSON.parse(event.data as string) as Message);
  talk.onclose = () => {
    state.live.value = "gone";
    setTimeout(() => follow(address), 1000);
  };
}

/** Tell the server what is wished. */
export function wish(wished: Wish): void {
  socket?.send(JSON.stringify(wished));
}

function hear(message: Message): void {
  batch(() => {
    switch (message.kind) {
      case "model":
        state.version.value = message.version;
        state.model.value = whole(message.model);
        break;
      case "troubles":
        state.troubles.value = message.troubles;
        break;
      case "sections":
        if (message.version === state.version.value) {
          state.sections.value = { ...state.sections.value, ...message.sections };
          const told = Object.keys(message.sections).map((name) => [name, message.version]);
          state.known.value = { ...state.known.value, ...Object.fromEntries(told) };
        }
        // What a wood looks like holds whatever the version, and isn't told again.
        Object.assign(textures, message.sections.textures);
        state.sections.value = { ...state.sections.value, textures: { ...textures } };
        break;
      case "nudges":
        state.figured.value = message.version;
        state.nudges.value = message.nudges;
        state.undo.value = { undo: message.undo, redo: message.redo };
        break;
      case "refused":
        state.refused.value = message.message;
    }
  });
}

// The server doesn't tell again what this page has.
function whole(model: Model): Model {
  Object.assign(shapes, model.shapes);
  Object.assign(surfaces, model.surfaces);
  return { ...model, shapes, surfaces };
}
