// What stays in the room round the unit, as light lines: the opening, a sloping ceiling, pipes.
import { effect } from "@preact/signals";
import { BufferGeometry, LineBasicMaterial, LineSegments, Vector3 } from "three";

import type { Vector } from "../document";
import type { Stage } from "../stage/stage";
import * as state from "../state";

/** Lighter than any drawn edge. */
const CHALK = 0x9a8f7e;

/** Draw the room's lines on a stage as long as they aren't hidden. */
export function room(stage: Stage): () => void {
  const lines = new LineSegments(new BufferGeometry(), new LineBasicMaterial({ color: CHALK }));
  stage.scene.add(lines);
  const stops = [
    effect(() => {
      lines.geometry.dispose();
      const points = (state.model.value?.room ?? []).flatMap(pairs);
      lines.geometry = new BufferGeometry().setFromPoints(points);
      stage.draw();
    }),
    effect(() => {
      lines.visible = !state.hidden.value.has("room");
      stage.draw();
    }),
  ];
  return () => {
    stops.forEach((stop) => stop());
    lines.removeFromParent();
    lines.geometry.dispose();
    lines.material.dispose();
  };
}

function pairs(line: readonly Vector[]): Vector3[] {
  return line
    .slice(1)
    .flatMap((end, number) => [new Vector3(...line[number]!), new Vector3(...end)]);
}
