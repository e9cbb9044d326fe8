// The panel beside the unit; on a narrow screen a drawer below it.
import { useRef } from "preact/hooks";

import * as state from "../state";
import type { TabName } from "../state";
import { About, Photographs } from "./about";
import { Edge } from "./edge";
import { Findings } from "./findings";
import { PartPanel } from "./part";
import { Nudges } from "./nudges";
import { Parts } from "./parts";
import { SheetPanel } from "./sheet";
import { Tabs, type Tab } from "./tabs";
import { TABS } from "./words";

const SHEETS = ["lists", "opening", "strength", "cutting"] as const;

export function Side() {
  return (
    <aside class={`side ${state.drawer.value}`} aria-label="About the unit">
      <Edge />
      <Handle />
      <Tabs
        label="About the unit"
        tabs={state.live.value === "sent" ? sent() : live()}
        at={state.tab.value}
        go={(name) => {
          state.tab.value = name;
          if (state.drawer.value === "shut") state.drawer.value = "half";
        }}
      />
    </aside>
  );
}

function live(): Tab<TabName>[] {
  const findings = state.sections.value.findings;
  return [
    part(),
    tab("findings", () => <Findings />, findings ? `${findings.length}` : undefined),
    tab("nudges", () => <Nudges />),
    tab("parts", () => <Parts />, `${state.model.value?.parts.length ?? 0}`),
    ...SHEETS.map((section) => tab(section, () => <SheetPanel section={section} />)),
  ];
}

function sent(): Tab<TabName>[] {
  const words = state.words.value;
  const listed = state.model.value?.parts.filter((part) => part.told).length ?? 0;
  const told = words && (words.paragraphs.length || words.facts.length || words.drawings.length);
  return [
    ...(told ? [tab("words", () => <About />)] : []),
    ...(words?.photographs.length ? [tab("photographs", () => <Photographs />)] : []),
    part(),
    tab("parts", () => <Parts />, `${listed}`),
  ];
}

function part(): Tab<TabName> {
  return { ...tab("part", () => <PartPanel />), place: `part ${state.selected.value}` };
}

function tab(name: TabName, show: Tab<TabName>["show"], count?: string): Tab<TabName> {
  return { name, label: TABS[name], show, ...(count !== undefined && { count }) };
}

const STEPS = ["shut", "half", "full"] as const;
/** So far (px) a finger has to go before it means something. */
const FAR = 24;

function Handle() {
  const at = STEPS.indexOf(state.drawer.value);
  // Where a finger took hold.
  const held = useRef<number | null>(null);
  const go = (by: 1 | -1) => (state.drawer.value = STEPS[at + by] ?? state.drawer.value);
  const drop = (event: PointerEvent) => {
    const moved = (held.current ?? event.clientY) - event.clientY;
    held.current = null;
    if (Math.abs(moved) > FAR) go(moved > 0 ? 1 : -1);
  };
  const hold = (event: PointerEvent) => {
    (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
    held.current = event.clientY;
  };
  return (
    <>
      <div class="grip" onPointerDown={hold} onPointerUp={drop} />
      <div class="handle">
        <button
          type="button"
          disabled={at === 0}
          aria-label="Lower the panel"
          onClick={() => go(-1)}
        />
        <button
          type="button"
          disabled={at === STEPS.length - 1}
          aria-label="Raise the panel"
          onClick={() => go(1)}
        />
      </div>
    </>
  );
}
