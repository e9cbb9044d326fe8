// A list. Its text wraps to the room there is; where not even that is enough, each row becomes a
// block of its own, with the headings beside its figures, so that nothing is out of sight.
import { useLayoutEffect, useRef, useState } from "preact/hooks";

import { isLit, light } from "../choosing";
import type { Table } from "../document";

export function Listed({ table }: { table: Table }) {
  const { room, folded } = useFolding(table);
  return (
    <section>
      <h2>{table.title}</h2>
      <div class="scrolling" role="region" aria-label={table.title} tabIndex={0} ref={room}>
        {/* Its roles are said, since blocks alone would be none. */}
        <table role="table" class={folded ? "folded" : ""}>
          <thead role="rowgroup">
            <tr role="row">
              {table.columns.map((column, at) => (
                <th scope="col" role="columnheader" class={table.figures[at] ? "figure" : ""}>
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody role="rowgroup">
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

/** Whether a list has to be folded to be as wide as its room. */
function useFolding(table: Table) {
  const room = useRef<HTMLDivElement>(null);
  const [folded, setFolded] = useState(false);
  useLayoutEffect(() => {
    const div = room.current!;
    const list = div.firstElementChild!;
    const fit = () => {
      // Its width unfolded isn't known but by trying.
      list.classList.remove("folded");
      const wide = div.scrollWidth > div.clientWidth;
      list.classList.toggle("folded", wide);
      setFolded(wide);
    };
    fit();
    let width = div.clientWidth;
    // It grows in height when it folds, which is no reason to try again.
    const sized = new ResizeObserver(() => {
      if (div.clientWidth === width) return;
      width = div.clientWidth;
      fit();
    });
    sized.observe(div);
    return () => sized.disconnect();
  }, [table]);
  return { room, folded };
}

function Row(props: { table: Table; row: readonly string[]; refs: readonly string[] }) {
  const { table, row, refs } = props;
  const lit = isLit(refs);
  return (
    <tr
      role="row"
      class={`${refs.length > 0 ? "touched" : ""} ${lit ? "lit" : ""}`}
      onClick={refs.length > 0 ? () => light(refs) : undefined}
    >
      {row.map((text, at) => (
        <td role="cell" class={table.figures[at] ? "figure" : ""} data-of={table.columns[at]}>
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
