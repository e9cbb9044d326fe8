// What stands in the place of the unit in space where that can't be drawn, or not now.
import * as state from "../state";

/** `lost`: it was drawn, and will be again. */
export function Unseen({ lost }: { lost: boolean }) {
  const words = state.words.value;
  const [picture] = [...(words?.photographs ?? []), ...(words?.drawings ?? [])];
  return (
    <div class="unseen" role="region" aria-label="Instead of the picture" tabIndex={0}>
      <p role="status">
        {lost
          ? "The browser has taken the picture in space away, as it does when a page was put away " +
            "for long or the graphics begin anew. It comes back by itself, as it was; if it " +
            "doesn't, load this page again."
          : "This browser can't draw in space (it has no WebGL 2, or it is switched off), so the " +
            "unit can't be turned here."}{" "}
        Everything else on this page holds.
      </p>
      {picture && <img class="instead" src={picture[1]} alt={picture[0]} />}
    </div>
  );
}
