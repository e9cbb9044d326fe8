// The unit in space: its canvas, and what follows the signals there.
import { effect } from "@preact/signals";
import { useEffect, useRef, useState } from "preact/hooks";

import { printing } from "../print/picture";
import { turnByKeys } from "../stage/keys";
import { Stage } from "../stage/stage";
import * as state from "../state";
import { formatLength } from "../tools/lengths";
import { room } from "../tools/room";
import { Sight } from "../tools/sight";
import { tools } from "../tools/tools";
import { Unseen } from "./unseen";

const KEYS =
  "The unit in space. Arrow keys turn it, with Shift they move it; plus and minus zoom; 0 shows the whole. " +
  "N and P choose the next part and the one before; O opens or shuts a door or drawer; Escape lets go. " +
  "While you measure, C aims at corners of the chosen part, and Enter takes one.";

export function Space() {
  const canvas = useRef<HTMLCanvasElement>(null);
  const labels = useRef<HTMLDivElement>(null);
  const [blind, setBlind] = useState(false);
  const [drawn, setDrawn] = useState(false);
  const [lost, setLost] = useState(false);
  useEffect(() => {
    const stage = begun(canvas.current!);
    if (!stage) {
      setBlind(true);
      return undefined;
    }
    const sight = new Sight(stage);
    // Tests ask where things are and what is seen there, and for the words of lengths.
    Object.assign(window, { stage, sight, formatLength });
    const layer = labels.current!;
    const unseen = stage.onDraw(() => {
      if (!stage.pieces.size) return;
      unseen();
      setDrawn(true);
    });
    const stops = [
      unseen,
      turnByKeys(stage),
      ...following(stage),
      room(stage),
      tools(sight, layer),
      printing(stage, layer),
      hearLoss(stage.canvas, setLost),
    ];
    return () => stops.forEach((stop) => stop());
  }, []);
  if (blind) return <Unseen lost={false} />;
  return (
    <>
      <canvas ref={canvas} tabIndex={0} role="application" aria-label={KEYS} />
      <div class="labels" ref={labels} />
      {lost ? <Unseen lost /> : !drawn && <Coming />}
    </>
  );
}

/** What stands there until there is a first picture. */
function Coming() {
  if (!state.model.value && state.troubles.value.length > 0) return null;
  return (
    <p class="coming" role="status">
      {state.model.value ? "The unit is being drawn." : "The file is being read."}
    </p>
  );
}

function begun(canvas: HTMLCanvasElement): Stage | null {
  // Asked first: the renderer would tell the console, not the maker.
  if (!document.createElement("canvas").getContext("webgl2")) return null;
  return new Stage(canvas);
}

/**
 * Hear when the browser takes what it is drawn with away (a driver begins anew, a phone puts the page
 * away) and gives it back; the stage then draws again.
 */
function hearLoss(canvas: HTMLCanvasElement, tell: (lost: boolean) => void): () => void {
  const hear = ({ type }: Event) => tell(type === "webglcontextlost");
  const kinds = ["webglcontextlost", "webglcontextrestored"];
  for (const kind of kinds) canvas.addEventListener(kind, hear);
  return () => {
    for (const kind of kinds) canvas.removeEventListener(kind, hear);
  };
}

/** What the stage shows follows the signals. */
function following(stage: Stage): (() => void)[] {
  const pose = state.pose.peek();
  if (pose) stage.eye.restore(pose);
  stage.eye.rested = (rested) => (state.pose.value = rested);
  return [
    effect(() => {
      if (state.model.value) stage.show(state.model.value);
    }),
    effect(() => {
      if (state.model.value) void stage.clothe(state.textures.value ?? {});
    }),
    effect(() => stage.pull(state.moves.value, state.apart.value)),
    effect(() => stage.swing(state.open.value)),
    effect(() => stage.hide(state.hidden.value, state.aside.value)),
    effect(() => {
      const lit = state.lit.value;
      stage.light(state.pointed.value ? whole(lit) : lit, state.selected.value);
    }),
    effect(() => {
      if (state.look.value) stage.view(state.look.value.name);
    }),
  ];
}

/** Parts, and of a door or drawer all others with them: a finding names one part of each. */
function whole(refs: readonly string[]): readonly string[] {
  const moved = (state.model.value?.motions ?? []).filter((motion) =>
    motion.refs.some((ref) => refs.includes(ref)),
  );
  return [...new Set([...refs, ...moved.flatMap((motion) => motion.refs)])];
}
