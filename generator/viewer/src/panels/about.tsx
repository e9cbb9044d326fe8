// What the maker tells of the piece, on a page to send.
import type { Fact } from "../document";
import * as state from "../state";
import { Picture } from "./picture";
import { Placing } from "./placing";

/** Letters of a title that stand in the two lines there are for it above the unit, on a phone. */
const SHORT = 60;

export function About() {
  const words = state.words.value;
  const title = state.model.value?.title ?? "";
  if (!words) return null;
  return (
    <>
      {words.draft && <p class="ageing">{words.draft}</p>}
      {title.length > SHORT && <p class="title">{title}</p>}
      {words.paragraphs.map((each) => (
        <p>{each}</p>
      ))}
      <FactList facts={words.facts} />
      <Placing />
      {words.drawings.map(([caption, address]) => (
        <Picture caption={caption} address={address} />
      ))}
    </>
  );
}

export function Photographs() {
  return (
    <>
      {state.words.value?.photographs.map(([caption, address]) => (
        <Picture caption={caption} address={address} />
      ))}
    </>
  );
}

function FactList({ facts }: { facts: readonly Fact[] }) {
  if (facts.length === 0) return null;
  return (
    <dl class="facts">
      {facts.map((fact) => (
        <FactWords fact={fact} />
      ))}
    </dl>
  );
}

/** A fact's word and its lines, those of colours with a swatch. */
export function FactWords({ fact }: { fact: Fact }) {
  return (
    <>
      <dt>{fact.word}</dt>
      {fact.lines.map(([said, colour]) => (
        <dd>
          {colour && <span class="swatch" style={{ background: colour }} />}
          {said}
        </dd>
      ))}
    </>
  );
}
