// The panel beside the unit; on a narrow screen a drawer below it.
import * as state from "../state";
import type { TabName } from "../state";
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
      <Tabs
        label="About the unit"
        tabs={state.live.value === "sent" ? sent() : live()}
        at={state.tab.value}
        go={(name) => (state.tab.value = name)}
      />
    </aside>
  );
}

function live(): Tab<TabName>[] {
  const findings = state.sections.value.findings;
  return [
    ...chosen(),
    tab("findings", () => <Findings />, findings ? `${findings.length}` : undefined),
    tab("nudges", () => <Nudges />),
    tab("parts", () => <Parts />, `${state.model.value?.parts.length ?? 0}`),
    ...SHEETS.map((section) => tab(section, () => <SheetPanel section={section} />)),
  ];
}

function sent(): Tab<TabName>[] {
  return [...chosen(), tab("parts", () => <Parts />)];
}

function chosen(): Tab<TabName>[] {
  return state.selected.value === null ? [] : [tab("part", () => <PartPanel />)];
}

function tab(name: TabName, show: Tab<TabName>["show"], count?: string): Tab<TabName> {
  return { name, label: TABS[name], show, ...(count !== undefined && { count }) };
}
