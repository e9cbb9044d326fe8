// What a page is told: mirrors rodwright/page/document.py, where each is explained.

export type Vector = [number, number, number];
export type Layer =
  | "carcass"
  | "shelves"
  | "back"
  | "frame"
  | "doors"
  | "drawers"
  | "base"
  | "surround"
  | "fittings"
  | "room";

export interface Shape {
  points: string;
  normals: string;
  triangles: string;
  edges: string;
}
export interface Texture {
  face: string;
  edge: string;
  end: string;
  size: Vector;
}
export interface Surface {
  colour: string;
  roughness: number;
  metal: boolean;
  clear: boolean;
}
export type Side = "-x" | "+x" | "-y" | "+y";
export interface Place {
  line: number;
  column: number;
  text: string;
}
export interface Part {
  ref: string;
  name: string;
  layer: Layer;
  shape: string;
  surface: string;
  grain: "length" | "width" | "none";
  matrix: number[];
  size: string;
  stock: string;
  kind: "sheet" | "board";
  lie: [number, number, number, number];
  edges: Partial<Record<Side, string>>;
  told: boolean;
}
export interface Fitting {
  ref: string;
  shape: string;
  surface: string;
  inner: boolean;
}
export interface Motion {
  label: string;
  refs: string[];
  hinge: number[];
  angle: number;
  travel: number[];
}
export interface Model {
  title: string;
  unit: "mm" | "in";
  size: string;
  low: Vector;
  high: Vector;
  shapes: Record<string, Shape>;
  surfaces: Record<string, Surface>;
  parts: Part[];
  fittings: Fitting[];
  motions: Motion[];
  room: Vector[][];
}
export interface Detail {
  material: string;
  weight: string;
  finish: string;
  edges: string;
  laid: string[];
  workings: string[];
  joined: { ref: string; how: string }[];
  place: Place | null;
}
export interface Told {
  severity: "error" | "warning" | "note" | "caution";
  rule: string;
  message: string;
  remedy: string;
  parts: string[];
  source: string;
  at: number[];
  meaning: [heading: string, text: string][];
}
export interface Table {
  title: string;
  columns: string[];
  figures: boolean[];
  rows: string[][];
  refs: string[][];
  note: string;
}
export interface Drawing {
  caption: string;
  svg: string;
}
export interface Sheet {
  words: string[];
  drawings: Drawing[];
  tables: Table[];
  notes: string[];
}
export interface Dimension {
  start: Vector;
  end: Vector;
  offset: Vector;
  text: string;
}
export interface Sections {
  textures: Record<string, Texture> | null;
  apart: Record<string, Vector> | null;
  details: Record<string, Detail> | null;
  dimensions: Dimension[] | null;
  findings: Told[] | null;
  lists: Sheet | null;
  opening: Sheet | null;
  strength: Sheet | null;
  cutting: Sheet | null;
  hanging: Record<string, Hanging> | null;
}
export interface Hanging {
  changes: string[];
  moves: string[];
  sizes: string[];
  nothing: boolean;
}
export interface Nudge {
  key: string;
  group: string;
  label: string;
  value: string;
  unit: string;
  number: number | null;
  least: number;
  most: number;
  step: number;
  line: number;
  also: string[];
  written: boolean;
  feet: [foot: string, between: string, inch: string] | null;
}
export interface Back {
  undo: boolean;
  redo: boolean;
  overtaken: boolean;
}
export interface Trouble {
  message: string;
  remedy: string;
  line: number | null;
  column: number | null;
}
export interface Fact {
  word: string;
  lines: [said: string, colour: string][];
}
export interface Words {
  maker: string;
  draft: string;
  paragraphs: string[];
  facts: Fact[];
  beside: string[];
}

// What stands in the page as it is loaded: `live` is the socket's address, or all the rest is there.
export interface Start {
  live?: string;
  model?: Model;
  sections?: Sections;
  words?: Words;
}

// What the server says.  `version` counts the readings of the file: sections of an older one are late.
// `reading` comes as soon as a save is seen, and what it makes later: a `model` or `troubles`.
export type Message =
  | { kind: "reading"; version: number }
  | { kind: "model"; version: number; model: Model }
  | { kind: "troubles"; version: number; troubles: Trouble[] }
  | { kind: "sections"; version: number; sections: Partial<Sections> }
  | ({ kind: "nudges"; version: number; nudges: Nudge[] } & Back)
  | { kind: "failed"; version: number; section: keyof Sections; message: string }
  | { kind: "refused"; message: string }
  | { kind: "alive" };

// What the page says.  Nudges of one figure with the same `drag` are undone as one.
export type Wish =
  | { kind: "nudge"; key: string; value: string; version: number; drag: string }
  | { kind: "undo" }
  | { kind: "redo" };
