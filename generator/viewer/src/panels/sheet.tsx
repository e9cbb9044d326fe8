// A tab of words, drawings and tables.
import { isLit, light } from "../choosing";
import type { Table } from "../document";
import * as state from "../state";
import { Ageing } from "./ageing";
import { Picture } from "./picture";

export function SheetPanel({ section }: { section: "lists" | "opening" | "strength" | "cutting" }) {
  const sheet = state.sections.value[section];
  return (
    <>
      <Ageing section={section} />
      {sheet?.words.map((each) => (
        <p>{each}</p>
      ))}
      {sheet?.drawings.map(({ caption, svg }) => (
        <Picture
          caption={caption}
          address={`data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`}
        />
      ))}
      {sheet?.tables.map((table) => (
        <Listed table={table} />
      ))}
    </>
  );
}

function Listed({ table }: { table: Table }) {
  return (
    <section>
      <h2>{table.title}</h2>
      <div class="scrolling" role="region" aria-label={table.title} tabIndex={0}>
        <table>
          <thead>
            <tr>
              {table.columns.map((column, at) => (
                <th scope="col" class={table.figures[at] ? "figure" : ""}>
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map((row, number) => (
              <Row table={table} row={row} refs={table.refs[number] ?? []} />
            ))}
          </tbody>
        </table>
      </div>
      {table.note && <p class="small">{table.note}</p>}
    </section>
  );
}

function Row(props: { table: Table; row: readonly string[]; refs: readonly string[] }) {
  const { table, row, refs } = props;
  const lit = isLit(refs);
  return (
    <tr
      class={`${refs.length > 0 ? "touched" : ""} ${lit ? "lit" : ""}`}
      onClick={refs.length > 0 ? () => light(refs) : undefined}
    >
      {row.map((text, at) => (
        <td class={table.figures[at] ? "figure" : ""}>
          {at === 0 && refs.length > 0 ? (
            <button type="button" class="row" aria-pressed={lit}>
              {text}
            </button>
          ) : (
            text
          )}
        </td>
      ))}
    </tr>
  );
}
