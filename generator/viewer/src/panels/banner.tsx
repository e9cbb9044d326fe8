// Messages that lie over the last good picture.
import type { Trouble } from "../document";
import * as state from "../state";

export function Banners() {
  return (
    <div class="banners">
      <div role="alert">
        {state.troubles.value.length > 0 && <Broken troubles={state.troubles.value} />}
        {state.live.value === "gone" && <Gone />}
        {state.refused.value && (
          <div class="banner">
            <p>{state.refused.value}</p>
            <button type="button" onClick={() => (state.refused.value = "")}>
              Understood
            </button>
          </div>
        )}
      </div>
    </div>
  );
}

function Broken({ troubles }: { troubles: readonly Trouble[] }) {
  const one = troubles.length === 1;
  return (
    <div class="banner">
      <h2>
        The file as it is now makes no unit:{" "}
        {one ? "one thing is" : `${troubles.length} things are`} wrong
      </h2>
      <ul class="plain">
        {troubles.map((each) => (
          <li>
            {each.line !== null && (
              <strong>
                Line {each.line}
                {each.column !== null && `, column ${each.column}`}:{" "}
              </strong>
            )}
            {each.message} {each.remedy}
          </li>
        ))}
      </ul>
      {state.model.value && <p class="small">What is shown is the last file that made a unit.</p>}
    </div>
  );
}

function Gone() {
  return (
    <div class="banner">
      <h2>The server of this page is gone</h2>
      <p>
        The page doesn't follow the file any more. Run the command in the terminal again; as soon as
        it answers here, the page goes on by itself.
      </p>
    </div>
  );
}
