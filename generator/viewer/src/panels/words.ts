// The makers' words for what the page names by short keys.
import type { Layer, Told } from "../document";
import type { TabName, ViewName } from "../state";

export const LAYERS: Record<Layer, string> = {
  carcass: "Carcass",
  shelves: "Shelves",
  back: "Back",
  frame: "Face frame",
  doors: "Doors",
  drawers: "Drawers",
  base: "Base",
  surround: "Surround",
  fittings: "Fittings",
  room: "Room",
};
export const VIEWS: Record<ViewName, string> = {
  corner: "Corner",
  front: "Front",
  left: "Left",
  right: "Right",
  back: "Back",
  above: "Above",
  below: "Below",
};
export const TABS: Record<TabName, string> = {
  words: "About it",
  photographs: "Photographs",
  part: "Part",
  findings: "Findings",
  nudges: "Figures",
  parts: "Parts",
  lists: "Lists",
  opening: "Opening",
  strength: "Strength",
  cutting: "Cutting",
};
/** The gravest first; cautions stand for every job of their kind. */
export const SEVERITIES: Record<Told["severity"], { one: string; many: string }> = {
  error: { one: "Error", many: "errors" },
  warning: { one: "Warning", many: "warnings" },
  note: { one: "Note", many: "notes" },
  caution: { one: "Caution", many: "cautions" },
};

/** "1 error", "2 errors". */
export function counted(count: number, severity: Told["severity"]): string {
  const { one, many } = SEVERITIES[severity];
  return `${count} ${count === 1 ? one.toLowerCase() : many}`;
}
