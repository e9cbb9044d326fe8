// What is printed: the unit as it stands on the screen, then words, photographs and parts.
import { useEffect, useRef } from "preact/hooks";

import * as state from "../state";
import { FactList } from "./about";

export function Printed() {
  const picture = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const take = () => picture.current!.replaceChildren(...taken());
    const drop = () => picture.current!.replaceChildren();
    addEventListener("beforeprint", take);
    addEventListener("afterprint", drop);
    return () => {
      removeEventListener("beforeprint", take);
      removeEventListener("afterprint", drop);
    };
  }, []);
  const model = state.model.value;
  const words = state.words.value;
  return (
    <div class="printed">
      <h1>{model?.title}</h1>
      <p>{[model?.size, words?.maker, words?.draft].filter(Boolean).join(". ")}</p>
      <div ref={picture} />
      {words?.paragraphs.map((each) => (
        <p>{each}</p>
      ))}
      {words && <FactList facts={words.facts} />}
      {[...(words?.photographs ?? []), ...(words?.drawings ?? [])].map(([caption, address]) => (
        <figure>
          <img src={address} alt="" />
          <figcaption>{caption}</figcaption>
        </figure>
      ))}
      <PartsTable />
    </div>
  );
}

function PartsTable() {
  const model = state.model.value;
  if (!model) return null;
  return (
    <>
      <h2>Parts, length × width × thickness in {model.unit}</h2>
      <table>
        <tbody>
          {model.parts.map((part) => (
            <tr>
              <td>{part.ref}</td>
              <td>{part.name}</td>
              <td class="figure">{part.size}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

/** A picture of the unit that printing can't lose, as what is drawn in space can be. */
function taken(): HTMLCanvasElement[] {
  const { stage } = window;
  if (!stage) return [];
  stage.renderer.render(stage.scene, stage.camera);
  const picture = document.createElement("canvas");
  picture.width = stage.canvas.width;
  picture.height = stage.canvas.height;
  picture.getContext("2d")!.drawImage(stage.canvas, 0, 0);
  return [picture];
}
