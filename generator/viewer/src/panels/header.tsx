// What the page is of, and how its file stands.
import { useEffect } from "preact/hooks";

import type { Told } from "../document";
import * as state from "../state";
import { Sign } from "./sign";
import { counted } from "./words";

// The live page is loaded with the file's name as its title.
const FILE = document.title;

export function Header() {
  const model = state.model.value;
  const live = state.live.value !== "sent";
  const title = live && model ? `${model.title}: ${FILE}` : FILE;
  useEffect(() => void (document.title = title), [title]);
  return (
    <header>
      <h1 title={model?.title}>{model?.title ?? FILE}</h1>
      {model && <p>{model.size}</p>}
      {live && <Standing />}
      {!live && <p>{state.words.value?.maker}</p>}
    </header>
  );
}

function Standing() {
  const { sign, text } = standing();
  return (
    <p class="stand" role="status">
      {sign && <Sign severity={sign} />}
      <span>
        <span class="file">{FILE}, </span>
        {text}
      </span>
    </p>
  );
}

interface Stand {
  sign?: Told["severity"];
  text: string;
}

function standing(): Stand {
  if (state.live.value === "gone" || state.live.value === "other")
    return { sign: "error", text: "not followed any more" };
  if (state.beingRead.value) return { text: `version ${state.reading.value}: being read` };
  if (state.read.value === 0) return { text: "being read" };
  const reading = `version ${state.read.value}`;
  if (state.troubles.value.length > 0) return { sign: "error", text: `${reading}: makes no unit` };
  const findings = state.sections.value.findings;
  if (findings === null || state.known.value.findings !== state.version.value)
    return { text: `${reading}: being checked` };
  const grave = (["error", "warning"] as const)
    .map((each) => ({ each, count: findings.filter(({ severity }) => severity === each).length }))
    .filter(({ count }) => count > 0);
  const [first] = grave;
  if (!first) return { text: `${reading}: no errors, no warnings` };
  const counts = grave.map(({ each, count }) => counted(count, each)).join(", ");
  return { sign: first.each, text: `${reading}: ${counts}` };
}
