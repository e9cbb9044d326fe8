// All that the page shows, as signals: panels and the stage follow them, and nothing else is shared.
import { computed, signal } from "@preact/signals";

import type { Back, Layer, Model, Nudge, Sections, Told, Trouble, Vector } from "./document";
import type { Pose } from "./stage/pose";
import type { Surroundings } from "./told";

export type ViewName = "corner" | "front" | "back" | "left" | "right" | "above" | "below";
export type TabName =
  | "part"
  | "findings"
  | "parts"
  | "lists"
  | "opening"
  | "strength"
  | "cutting"
  | "nudges"
  | "words"
  | "photographs";

/** A point of a part, in its frame, and what of the part it is. */
export interface Mark {
  ref: string;
  point: Vector;
  what: "corner" | "centre of a hole" | "middle of an edge" | "edge" | "face";
}
/** The unit's width, depth or height: an axis of the unit frame. */
export type Axis = 0 | 1 | 2;
/** A cut square to an axis, at so many mm of the unit frame. */
export interface Cut {
  axis: Axis;
  at: number;
}
export interface Measure {
  from: Mark;
  to: Mark;
}
/** A distance in words, and in mm as it is; along the unit's width, depth and height. */
export interface Measured {
  from: string;
  to: string;
  mm: number;
  distance: string;
  along: Readonly<Record<"width" | "depth" | "height", string>>;
}

export const NOTHING_YET: Sections = {
  textures: null,
  apart: null,
  details: null,
  dimensions: null,
  findings: null,
  lists: null,
  opening: null,
  strength: null,
  cutting: null,
  hanging: null,
};

export const model = signal<Model | null>(null);
export const version = signal(0);
/** Which reading of the file was last begun, and which was last told: a model, or its troubles. */
export const reading = signal(0);
export const read = signal(0);
/** Whether the file is being read: what is told is of the one before. */
export const beingRead = computed(() => read.value < reading.value);
export const sections = signal<Sections>(NOTHING_YET);
// What is drawn of them: it follows these, so that it isn't done again when another section comes.
export const textures = computed(() => sections.value.textures);
export const moves = computed(() => sections.value.apart);
export const dimensions = computed(() => sections.value.dimensions);
export const hanging = computed(() => sections.value.hanging);
export const words = signal<Surroundings | null>(null);
export const troubles = signal<readonly Trouble[]>([]);
export const nudges = signal<readonly Nudge[]>([]);
/** Which reading of the file the figures are of. */
export const figured = signal(0);
/** What can be taken back. */
export const back = signal<Back>({ undo: false, redo: false, overtaken: false });
export const refused = signal("");
/**
 * Whether the page follows a file, and if so whether its server is there: `other` where another one
 * answers, which doesn't know this page.
 */
export const live = signal<"sent" | "waiting" | "there" | "gone" | "other">("sent");

export const selected = signal<string | null>(null);
/** Refs of the parts that light up, of a finding or a row. */
export const lit = signal<readonly string[]>([]);
/** The finding whose parts light up and whose place is marked. */
export const pointed = signal<Told | null>(null);
export const apart = signal(0);
/** Labels of the doors and drawers that stand open. */
export const open = signal<ReadonlySet<string>>(new Set());
/** The lines of the room are there once they are asked for. */
export const hidden = signal<ReadonlySet<Layer>>(new Set(["room"]));
export const cut = signal<Cut | null>(null);
export const measuring = signal(false);
/** The first point, in words, while a second is awaited. */
export const held = signal<string | null>(null);
/** Points between which was measured. */
export const measures = signal<readonly Measure[]>([]);
/** What was measured, as the maker reads it; in the order of `measures`. */
export const measured = signal<readonly Measured[]>([]);
export const dimensioned = signal(false);
/** Refs of single parts put out of sight. */
export const aside = signal<ReadonlySet<string>>(new Set());
/** The standard view asked for; another object each time it is asked. */
export const look = signal<{ name: ViewName } | null>(null);
/** Where the eye came to rest. */
export const pose = signal<Pose | null>(null);

/** Which reading of the file each section was told of. */
export const known = signal<Partial<Record<keyof Sections, number>>>({});
/** Sections that couldn't be worked out, of which reading, and why. */
export const failed = signal<Partial<Record<keyof Sections, { version: number; message: string }>>>(
  {},
);
export const tab = signal<TabName>("findings");
/** What is sought in the list of parts. */
export const filter = signal("");
/** How far down (px) each panel stands, by what it shows. */
export const scrolled = signal<Readonly<Record<string, number>>>({});
/** How much of the page's width (per cent) the panel beside the unit has, unless somebody moves its edge. */
export const USUAL_SHARE = 38;
export const share = signal(USUAL_SHARE);
/** How far the drawer of a narrow screen is drawn out. */
export const drawer = signal<"shut" | "half" | "full">("half");
