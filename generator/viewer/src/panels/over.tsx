// What lies over the picture: messages, and what isn't as it seems.
import type { Trouble } from "../document";
import * as state from "../state";
import { Measured } from "./measured";
import { Sign } from "./sign";
import { Worded } from "./worded";

export function Over() {
  const parts = state.model.value?.parts ?? [];
  const aside = parts.filter((part) => state.aside.value.has(part.ref)).length;
  return (
    <div class="over">
      <Measured />
      {aside > 0 && (
        <p class="strip">
          {aside === 1 ? "1 part is" : `${aside} parts are`} out of sight
          <button type="button" onClick={() => (state.aside.value = new Set())}>
            Show all
          </button>
        </p>
      )}
      <div role="alert">
        {state.refused.value && <Refused />}
        {state.troubles.value.length > 0 && <Broken troubles={state.troubles.value} />}
        {state.live.value === "gone" && <Gone />}
        {state.live.value === "other" && <Gone other />}
      </div>
    </div>
  );
}

function Broken({ troubles }: { troubles: readonly Trouble[] }) {
  const one = troubles.length === 1;
  const now = state.beingRead.value ? (one ? "was" : "were") : one ? "is" : "are";
  const count = `${one ? "one thing" : `${troubles.length} things`} ${now}`;
  return (
    <div class="banner" tabIndex={0} role="group" aria-label="What is wrong in the file">
      <h2>
        <Sign severity="error" />
        {state.beingRead.value
          ? `The file is being read. Version ${state.read.value}, before it, made no unit: ${count} wrong`
          : `The file as it is now makes no unit: ${count} wrong`}
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
            <Worded text={each.message} />
            {each.remedy && (
              <>
                <br />
                <Worded text={each.remedy} />
              </>
            )}
          </li>
        ))}
      </ul>
      {state.model.value && (
        <p class="small">What is shown is of the last file that made a unit.</p>
      )}
    </div>
  );
}

function Gone({ other }: { other?: boolean }) {
  return (
    <div class="banner">
      <h2>
        <Sign severity="error" />
        The server of this page is gone
      </h2>
      <p>
        {other
          ? "Another server has taken its place. Open the address that the terminal shows now."
          : "The page doesn't follow the file any more. If the command was ended, run it again and " +
            "open the address that it shows. If only the line was cut, the page goes on by itself."}
      </p>
    </div>
  );
}

function Refused() {
  return (
    <div class="banner">
      <h2>
        <Sign severity="warning" />
        Not written to the file
      </h2>
      <p>
        <Worded text={state.refused.value} />
      </p>
      <button type="button" onClick={() => (state.refused.value = "")}>
        Understood
      </button>
    </div>
  );
}
