// What the page was told when it was made: it stands in the page, a page to send has it packed.
import type { Start, Words } from "./document";

/** What stands in the page; null if this browser can't unpack it. */
export async function told(): Promise<Start | null> {
  const element = document.getElementById("told") as HTMLScriptElement;
  const text = element.textContent;
  if (element.type === "application/json") return JSON.parse(text) as Start;
  if (typeof DecompressionStream === "undefined") return null;
  const packed = Uint8Array.from(atob(text), (each) => each.charCodeAt(0));
  const unpacked = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return (await new Response(unpacked).json()) as Start;
}

export type Picture = [caption: string, address: string];
/** What stands round the unit, and its pictures. */
export interface Surroundings extends Words {
  photographs: Picture[];
  drawings: Picture[];
}

/** Words with the pictures, which stand in the markup, once, for who runs no script. */
export function withPictures(words: Words): Surroundings {
  return { ...words, photographs: standing("photograph"), drawings: standing("drawing") };
}

function standing(kind: string): Picture[] {
  const found = document.querySelectorAll<HTMLImageElement>(`.standing .${kind} img`);
  return [...found].map((each) => [each.alt, each.src]);
}
