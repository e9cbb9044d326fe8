// What the checks found: the gravest first, each leading to its parts.
import { choose, isPointed, point } from "../choosing";
import type { Told } from "../document";
import * as state from "../state";
import { Ageing } from "./ageing";
import { Sign } from "./sign";
import { Worded } from "./worded";
import { SEVERITIES } from "./words";

const GRAVITY = Object.keys(SEVERITIES);

export function Findings() {
  const findings = state.sections.value.findings;
  if (findings === null) return <Ageing section="findings" />;
  const ordered = [...findings].sort(
    (one, other) => GRAVITY.indexOf(one.severity) - GRAVITY.indexOf(other.severity),
  );
  return (
    <>
      <Ageing section="findings" />
      {ordered.length === 0 && <p>None: nothing is wrong that the checks can see.</p>}
      <ul class="findings plain">
        {ordered.map((finding) => (
          <Finding finding={finding} />
        ))}
      </ul>
    </>
  );
}

function Finding({ finding }: { finding: Told }) {
  const { severity, parts } = finding;
  const said = (
    <>
      <Sign severity={severity} />
      <span>
        <strong>{SEVERITIES[severity].one}: </strong>
        <Worded text={finding.message} />
      </span>
    </>
  );
  return (
    <li class={severity}>
      {parts.length > 0 ? (
        <button
          type="button"
          class="said"
          aria-pressed={isPointed(finding)}
          onClick={() => point(finding)}
        >
          {said}
        </button>
      ) : (
        <p class="said">{said}</p>
      )}
      {finding.remedy && (
        <p>
          <Worded text={finding.remedy} />
        </p>
      )}
      {parts.length > 0 && (
        <p class="small chips">
          {parts.map((ref) => (
            <button type="button" class="ref" onClick={() => choose(ref)}>
              {ref}
            </button>
          ))}
        </p>
      )}
      <details class="meaning small">
        <summary>Rule: {finding.rule}</summary>
        {finding.meaning.map(([heading, text]) => (
          <p>
            {heading && <strong>{heading}: </strong>}
            <Worded text={text} />
          </p>
        ))}
      </details>
    </li>
  );
}
