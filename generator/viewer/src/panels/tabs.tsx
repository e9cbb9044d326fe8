// Tabs as the WAI-ARIA Authoring Practices have them: one stop of the Tab key, arrows between them.
import type { ComponentChildren } from "preact";
import { useEffect, useLayoutEffect, useRef } from "preact/hooks";

import * as state from "../state";

export interface Tab<Name extends string> {
  name: Name;
  label: string;
  /** A figure after the label, read out with it. */
  count?: string;
  /** What is shown there now, if not always the same. */
  place?: string;
  show: () => ComponentChildren;
}

export function Tabs<Name extends string>(props: {
  label: string;
  tabs: readonly Tab<Name>[];
  at: Name;
  go: (name: Name) => void;
}) {
  const list = useRef<HTMLDivElement>(null);
  const { tabs } = props;
  const now = tabs.find((tab) => tab.name === props.at) ?? tabs[0]!;
  useEffect(() => {
    list.current!.querySelector("[aria-selected=true]")?.scrollIntoView({
      block: "nearest",
      inline: "center",
    });
  }, [now.name]);
  const step = (event: KeyboardEvent) => {
    const to = stepped(event.key, tabs.indexOf(now), tabs.length);
    if (to === null) return;
    event.preventDefault();
    props.go(tabs[to]!.name);
    list.current!.querySelectorAll<HTMLElement>("[role=tab]")[to]!.focus();
  };
  return (
    <>
      <div class="tabs" role="tablist" aria-label={props.label} ref={list} onKeyDown={step}>
        {tabs.map((tab) => (
          <button
            key={tab.name}
            type="button"
            role="tab"
            id={`tab-${tab.name}`}
            aria-controls="panel"
            aria-selected={tab === now}
            tabIndex={tab === now ? 0 : -1}
            onClick={() => props.go(tab.name)}
          >
            {tab.label}
            {tab.count && <span class="count">{tab.count}</span>}
          </button>
        ))}
      </div>
      <Panel name={now.name} place={now.place ?? now.name}>
        {now.show()}
      </Panel>
    </>
  );
}

/** The panel of a tab: each tab is as far down as it was left, over a reload too. */
function Panel(props: { name: string; place: string; children: ComponentChildren }) {
  const { name, place, children } = props;
  const panel = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    // What comes late makes room for the place to go to.
    let wanted = state.scrolled.peek()[place] ?? 0;
    const go = () => {
      panel.current!.scrollTop = wanted;
      if (panel.current!.scrollTop >= wanted - 1) wanted = 0;
    };
    go();
    const grown = new ResizeObserver(() => wanted > 0 && go());
    grown.observe(panel.current!.firstElementChild!);
    return () => grown.disconnect();
  }, [place]);
  return (
    <div
      class="panel"
      role="tabpanel"
      id="panel"
      tabIndex={0}
      aria-labelledby={`tab-${name}`}
      ref={panel}
      onScrollEnd={() =>
        (state.scrolled.value = { ...state.scrolled.peek(), [place]: panel.current!.scrollTop })
      }
    >
      <div>{children}</div>
    </div>
  );
}

function stepped(key: string, from: number, count: number): number | null {
  switch (key) {
    case "ArrowRight":
      return (from + 1) % count;
    case "ArrowLeft":
      return (from - 1 + count) % count;
    case "Home":
      return 0;
    case "End":
      return count - 1;
    default:
      return null;
  }
}
