// What the page is of, and how its file stands.
import * as state from "../state";
import { counted, SEVERITIES } from "./words";
import type { Told } from "../document";

export function Header() {
  const model = state.model.value;
  return (
    <header>
      <h1>{model?.title ?? "Nothing yet"}</h1>
      <p>{model?.size}</p>
      {state.live.value !== "sent" && (
        <p class="stand" role="status">
          {standing()}
        </p>
      )}
    </header>
  );
}

function standing(): string {
  if (state.live.value === "waiting") return "Looking for the file.";
  if (state.live.value === "gone") return "Not followed any more.";
  const reading = `Reading ${state.version.value}`;
  if (state.troubles.value.length > 0) return `${reading}: makes no unit`;
  const findings = state.sections.value.findings;
  if (findings === null || state.known.value.findings !== state.version.value)
    return `${reading}: being checked`;
  const grave = (Object.keys(SEVERITIES) as Told["severity"][])
    .slice(0, 2)
    .map((severity) => [severity, findings.filter((each) => each.severity === severity).length])
    .filter(([, count]) => count)
    .map(([severity, count]) => counted(count as number, severity as Told["severity"]));
  return `${reading}: ${grave.join(", ") || "no errors, no warnings"}`;
}
