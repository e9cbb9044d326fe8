// Figures of the spec, to be tried: sliders and fields that write the file, in the live page alone.
import { isLit, light } from "../choosing";
import type { Nudge } from "../document";
import * as state from "../state";
import { Ageing } from "./ageing";
import { type Draft, begin, drafts, enter, letGo, tried, typed } from "./trying";
import { takeBack } from "./undoing";
import { beside, figured, isWhole, offered, said, shown, wrote } from "./written";

export function Nudges() {
  const all = state.nudges.value;
  const chosen = state.selected.value;
  const { changing, moving } = hangingOn(chosen);
  const others = all.filter((each) => !changing.includes(each) && !moving.includes(each));
  const broken = state.troubles.value.length > 0;
  return (
    <div class="nudges">
      <BackButtons />
      {all.length === 0 ? (
        <p>{broken ? "The file can't be read as it is now; mend it first." : "No figures yet."}</p>
      ) : (
        <p class="small">Each writes the file as soon as it is moved; comments and layout stay.</p>
      )}
      <HangsNotYet />
      {changing.length > 0 && <h3>What changes {chosen}</h3>}
      <Groups nudges={changing} />
      {moving.length > 0 && <h3>What only moves {chosen}</h3>}
      <Groups nudges={moving} />
      {others.length < all.length && others.length > 0 && <h3>All other figures</h3>}
      <Groups nudges={others} />
    </div>
  );
}

/** The figures that change a part; nothing where there are none. */
export function OwnNudges({ part }: { part: string }) {
  const { changing, moving } = hangingOn(part);
  if (state.live.value === "sent" || state.nudges.value.length === 0) return null;
  return (
    <section class="nudges">
      <h3>Figures that change it</h3>
      <BackButtons />
      <HangsNotYet />
      <Groups nudges={changing} />
      {moving.length > 0 && (
        <details class="folded">
          <summary>
            {moving.length === 1
              ? "One figure that only moves it"
              : `${moving.length} figures that only move it`}
          </summary>
          <Groups nudges={moving} />
        </details>
      )}
    </section>
  );
}

/** They stay in sight while figures below them are moved. */
function BackButtons() {
  const { undo, redo, overtaken } = state.back.value;
  return (
    <div class="back">
      <p class="buttons">
        <button type="button" disabled={!undo} onClick={() => takeBack("undo")}>
          Undo
        </button>
        <button type="button" disabled={!redo} onClick={() => takeBack("redo")}>
          Redo
        </button>
      </p>
      <p class="small" role="status">
        {overtaken &&
          "The file was saved from elsewhere since, so what was changed here is taken back there."}
      </p>
    </div>
  );
}

/** More than the parts of any unit. */
const MANY = 1e6;

/**
 * The figures that make a part another, those of its size and of the fewest parts first; and those
 * that only move it.
 */
function hangingOn(part: string | null): { changing: Nudge[]; moving: Nudge[] } {
  const hanging = state.hanging.value ?? {};
  const by = (how: "changes" | "moves") =>
    state.nudges.value
      .filter(({ key }) => part !== null && hanging[key]?.[how].includes(part))
      .sort((one, other) => rank(one, how) - rank(other, how));
  const rank = ({ key }: Nudge, how: "changes" | "moves") => {
    const { [how]: refs, sizes } = hanging[key]!;
    return sizes.includes(part!) ? refs.length : refs.length + MANY;
  };
  return { changing: by("changes"), moving: by("moves") };
}

/** What is known is shown until it is known anew: nothing shifts under the hand. */
function HangsNotYet() {
  return state.hanging.value ? null : <Ageing section="hanging" />;
}

function Groups({ nudges }: { nudges: readonly Nudge[] }) {
  const groups = new Map<string, Nudge[]>();
  for (const nudge of nudges) groups.set(nudge.group, [...(groups.get(nudge.group) ?? []), nudge]);
  return (
    <>
      {[...groups].map(([group, each]) => (
        <fieldset key={group} class="figures">
          <legend>{group}</legend>
          {each.map((nudge) => (
            <Row key={nudge.key} nudge={nudge} />
          ))}
        </fieldset>
      ))}
    </>
  );
}

function Row({ nudge }: { nudge: Nudge }) {
  const draft = drafts.value.get(nudge.key);
  const id = `nudge-${nudge.key}`;
  const unit = beside(nudge, draft?.text ?? shown(nudge));
  const alone = nudge.unit === "share" && nudge.number === null;
  return (
    <div class="nudge">
      <div class="named">
        <label for={id}>{nudge.label}</label>
        <span class="small">{nudge.written ? `line ${nudge.line}` : "not in the file yet"}</span>
        <Hangs nudge={nudge} />
      </div>
      <Field id={id} nudge={nudge} draft={draft} />
      {!isWhole(nudge) && <span class="unit">{unit}</span>}
      {nudge.number !== null && <Slider nudge={nudge} draft={draft} />}
      {alone && <p class="small">The only share here: it takes all that is left.</p>}
      {!nudge.written && <p class="small">So unless the file says otherwise.</p>}
      {nudge.also.length > 0 && <Also also={nudge.also} />}
    </div>
  );
}

/** What is another by this figure, and what only stands elsewhere, as far as that is known. */
function Hangs({ nudge }: { nudge: Nudge }) {
  const hanging = state.hanging.value?.[nudge.key];
  if (!hanging) return null;
  const { changes, moves, nothing } = hanging;
  return (
    <>
      {nothing && <span class="small">changes nothing as it is</span>}
      <Lights nudge={nudge} does="changes" refs={changes} />
      <Lights nudge={nudge} does="moves" refs={moves} />
    </>
  );
}

function Lights(props: { nudge: Nudge; does: "changes" | "moves"; refs: readonly string[] }) {
  const { nudge, does, refs } = props;
  if (refs.length === 0) return null;
  const text = `${does} ${refs.length} ${refs.length === 1 ? "part" : "parts"}`;
  return (
    <button
      type="button"
      class="lights"
      aria-pressed={isLit(refs)}
      aria-label={`${nudge.group}: ${nudge.label} ${text}`}
      onClick={() => light(refs)}
    >
      {text}
    </button>
  );
}

/** What else changes with it: one figure in the file that is used again by its name. */
function Also({ also }: { also: readonly string[] }) {
  if (also.length === 1) return <p class="small">Changes {also[0]} too.</p>;
  return (
    <details class="also small">
      <summary>Changes {also.length} others too</summary>
      <p>{also.join("; ")}.</p>
    </details>
  );
}

function Field(props: { id: string; nudge: Nudge; draft: Draft | undefined }) {
  const { nudge } = props;
  const done = (event: KeyboardEvent & { currentTarget: HTMLInputElement }) => {
    if (event.key === "Enter") enter(nudge);
    if (event.key !== "Escape") return;
    typed(nudge, null);
    event.stopPropagation();
  };
  return (
    <input
      id={props.id}
      type="text"
      class={isWhole(nudge) ? "figure whole" : "figure"}
      inputMode={nudge.unit === "" ? "numeric" : "text"}
      autocomplete="off"
      spellcheck={false}
      value={props.draft?.text ?? shown(nudge)}
      onInput={(event) => typed(nudge, event.currentTarget.value)}
      onBlur={() => enter(nudge)}
      onKeyDown={done}
    />
  );
}

function Slider({ nudge, draft }: { nudge: Nudge; draft: Draft | undefined }) {
  const { least, most, step } = offered(nudge);
  const now = draft?.number ?? nudge.number!;
  return (
    <input
      type="range"
      min={least}
      max={most}
      step={step}
      value={now}
      aria-label={`${nudge.group}: ${nudge.label}`}
      aria-valuetext={said(nudge, figured(nudge, now))}
      onPointerDown={() => begin(nudge)}
      onKeyDown={(event) => !event.repeat && begin(nudge)}
      onInput={(event) => {
        const number = event.currentTarget.valueAsNumber;
        const text = figured(nudge, number);
        wrote(nudge, text);
        // What was refused goes back to the file's figure, under the hand.
        if (!tried(nudge, text, number)) event.currentTarget.value = `${nudge.number}`;
      }}
      onChange={() => letGo(nudge)}
    />
  );
}
