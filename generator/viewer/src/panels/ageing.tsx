// Whether a section is of the file as it is now.
import type { Sections } from "../document";
import * as state from "../state";

export function Ageing({ section }: { section: keyof Sections }) {
  if (state.live.value === "sent") return null;
  const told = state.sections.value[section] !== null;
  const now = state.known.value[section] === state.version.value;
  const broken = state.troubles.value.length > 0;
  const failed = state.failed.value[section];
  let text = "";
  if (state.beingRead.value && told) text = "Of the file before; the file is being read.";
  else if (broken && told)
    text = "Of the last file that made a unit; not of the file as it is now.";
  else if (broken) text = "Nothing yet: the file makes no unit.";
  else if (failed?.version === state.version.value)
    text = `This couldn't be worked out: ${failed.message}`;
  else if (!told) text = "Being worked out.";
  else if (!now) text = "Of the file before; being worked out anew.";
  return (
    <p role="status" class="ageing">
      {text}
    </p>
  );
}
