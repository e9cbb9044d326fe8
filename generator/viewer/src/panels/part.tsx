// All there is to say of the part that is chosen.
import { choose, motionOf, swing, turned } from "../choosing";
import type { Detail, Part } from "../document";
import * as state from "../state";
import { OwnNudges } from "./nudges";
import { LAYERS } from "./words";

export function PartPanel() {
  const model = state.model.value;
  const ref = state.selected.value;
  const part = model?.parts.find((each) => each.ref === ref);
  if (!model || !part) return <p>Touch a part, or choose one in the list of parts.</p>;
  const detail = state.sections.value.details?.[part.ref];
  return (
    <article aria-labelledby="part-name">
      <h2 id="part-name">
        <span class="ref">{part.ref}</span> {part.name}
      </h2>
      <dl>
        <dt>Size</dt>
        <dd class="size">
          {part.size} {model.unit}
        </dd>
        <Said word="Stock" text={part.stock} />
        <Said word="Material" text={detail?.material} />
        <Said word="Weight" text={detail?.weight} />
        <Said word="Finish" text={detail?.finish} />
        <Said word="Edges" text={detail?.edges} />
        <Said word="Layer" text={LAYERS[part.layer]} />
      </dl>
      <Actions part={part} />
      <OwnNudges part={part.ref} />
      {detail && <Details detail={detail} />}
    </article>
  );
}

function Said({ word, text }: { word: string; text: string | undefined }) {
  if (!text) return null;
  return (
    <>
      <dt>{word}</dt>
      <dd>{text}</dd>
    </>
  );
}

function Actions({ part }: { part: Part }) {
  const model = state.model.value!;
  const motion = motionOf(part.ref);
  const alone = model.parts.every((each) => each === part || state.aside.value.has(each.ref));
  const away = state.aside.value.has(part.ref);
  const others = model.parts.map((each) => each.ref).filter((each) => each !== part.ref);
  return (
    <>
      <p class="buttons">
        {motion && (
          <button type="button" onClick={() => swing(part.ref)}>
            {state.open.value.has(motion.label) ? "Close" : "Open"} it
          </button>
        )}
        <button
          type="button"
          aria-pressed={away}
          onClick={() => (state.aside.value = turned(state.aside.value, part.ref))}
        >
          Hide this part
        </button>
        <button
          type="button"
          aria-pressed={alone}
          onClick={() => (state.aside.value = new Set(alone ? [] : others))}
        >
          Show only this
        </button>
        <button type="button" onClick={() => choose(null)}>
          Choose none
        </button>
      </p>
      {motion && (
        <p class="small">
          A second touch on it in the picture, or a double click, opens and closes it too.
        </p>
      )}
    </>
  );
}

function Details({ detail }: { detail: Detail }) {
  return (
    <>
      {detail.laid.length + detail.workings.length > 0 && (
        <section>
          <h3>Workings</h3>
          {detail.laid.map((each) => (
            <p>{each}</p>
          ))}
          <ul>
            {detail.workings.map((each) => (
              <li>{each}</li>
            ))}
          </ul>
        </section>
      )}
      {detail.joined.length > 0 && (
        <section>
          <h3>Joined to</h3>
          <ul class="plain joined">
            {detail.joined.map(({ ref, how }) => (
              <li>
                <button type="button" class="how" onClick={() => choose(ref)}>
                  {how}
                </button>
              </li>
            ))}
          </ul>
        </section>
      )}
      {detail.place && (
        <section>
          <h3>Wished for in the file</h3>
          <p>
            Line {detail.place.line}: <code>{detail.place.text.trim()}</code>
          </p>
        </section>
      )}
    </>
  );
}
