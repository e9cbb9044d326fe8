// A tab of words, drawings and tables.
import * as state from "../state";
import { Ageing } from "./ageing";
import { Listed } from "./listed";
import { Picture } from "./picture";
import { Worded } from "./worded";

export function SheetPanel({ section }: { section: "lists" | "opening" | "strength" | "cutting" }) {
  const sheet = state.sections.value[section];
  return (
    <>
      <Ageing section={section} />
      {sheet?.words.map((each) => (
        <p>
          <Worded text={each} />
        </p>
      ))}
      {sheet?.drawings.map(({ caption, svg }) => (
        <Picture
          caption={caption}
          address={`data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`}
        />
      ))}
      {sheet && sheet.notes.length > 0 && (
        <details class="notes">
          <summary>Notes and cautions: {sheet.notes.length}</summary>
          {sheet.notes.map((each) => (
            <p>
              <Worded text={each} />
            </p>
          ))}
        </details>
      )}
      {sheet?.tables.map((table) => (
        <Listed table={table} />
      ))}
    </>
  );
}
