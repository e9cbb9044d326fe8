// What the page was told when it was made: it stands in the page, a page to send has it packed.
import type { Start } from "./document";

/** What stands in the page; null if this browser can't unpack it. */
export async function told(): Promise<Start | null> {
  const element = document.getElementById("told") as HTMLScriptElement;
  const text = element.textContent;
  if (element.type === "application/json") return JSON.parse(text) as Start;
  if (typeof DecompressionStream === "undefined") return null;
  const packed = Uint8Array.from(atob(text), (each) => each.charCodeAt(0));
  const unpacked = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return withPictures((await new Response(unpacked).json()) as Start);
}

// The pictures stand in the markup, once, for who runs no script.
function withPictures(start: Start): Start {
  if (!start.words) return start;
  const { photographs, drawings } = start.words;
  const words = {
    ...start.words,
    photographs: [...photographs, ...standing("photograph")],
    drawings: [...drawings, ...standing("drawing")],
  };
  return { ...start, words };
}

function standing(kind: string): [caption: string, address: string][] {
  const found = document.querySelectorAll<HTMLImageElement>(`.standing .${kind} img`);
  return [...found].map((each) => [each.alt, each.src]);
}
