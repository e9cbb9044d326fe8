// What goes on paper instead of the page: it lies ready, so that its pictures are read by then.
import type { Fact } from "../document";
import { FactWords } from "../panels/about";
import { dimensionedWords } from "../panels/measured";
import * as state from "../state";

/** Where the picture of the unit is put when it is printed. */
export const PICTURE = "printed-picture";

export function Printed() {
  const model = state.model.value;
  const words = state.words.value;
  if (!model) return null;
  return (
    <>
      <h1>{model.title}</h1>
      <p>{[model.size, words?.maker].filter(Boolean).join(" · ")}</p>
      {words?.draft && <p class="draft">{words.draft}</p>}
      <div id={PICTURE} />
      <Dimensions />
      {words?.paragraphs.map((each) => (
        <p>{each}</p>
      ))}
      {words && <Facts facts={words.facts} />}
      {words && <Pictures kind="photographs" pictures={words.photographs} />}
      {words && <Pictures kind="drawings" pictures={words.drawings} />}
    </>
  );
}

/** By itself: it changes as the unit is taken apart, and the rest doesn't. */
function Dimensions() {
  const words = dimensionedWords();
  return words && <p>{words}</p>;
}

function Facts({ facts }: { facts: Fact[] }) {
  return (
    <dl>
      {facts.map((fact) => (
        <div>
          <FactWords fact={fact} />
        </div>
      ))}
    </dl>
  );
}

function Pictures({ kind, pictures }: { kind: string; pictures: [string, string][] }) {
  return (
    <div class={kind}>
      {pictures.map(([caption, address]) => (
        <figure>
          <img src={address} alt="" />
          <figcaption>{caption}</figcaption>
        </figure>
      ))}
    </div>
  );
}
