// Files that lie beside the page, by which a phone places the unit in a room.
import * as state from "../state";

/** A unit against a wall, in the page's ink. */
const ROOM =
  "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' width='44' height='44' viewBox='0 0 44 44' fill='none' stroke='%23221e18' stroke-width='3'%3E%3Cpath d='M4 40V4h36v36zM4 32h36M14 32V14h16v18M14 23h16'/%3E%3C/svg%3E";

export function Placing() {
  const beside = state.words.value?.beside ?? [];
  // From disk nobody knows whether they lie there, and phones take them from the web alone.
  if (!location.protocol.startsWith("http")) return null;
  const [glb, usdz] = [".glb", ".usdz"].map((end) => beside.find((name) => name.endsWith(end)));
  const places = document.createElement("a").relList.supports("ar");
  if (!(places ? usdz : glb)) return null;
  return (
    <p class="placing">
      {usdz && places && (
        <>
          {/* Quick Look opens a room at once only where a picture is all that the link holds. */}
          <a rel="ar" href={usdz}>
            <img src={ROOM} alt="Place it in your room" />
          </a>{" "}
          Place it in your room
        </>
      )}
      {glb && !places && (
        <a href={glb} download>
          The model for a 3D viewer or an Android phone (GLB)
        </a>
      )}
    </p>
  );
}
