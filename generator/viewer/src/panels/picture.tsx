// A drawing or photograph that opens large.
import { useRef } from "preact/hooks";
import { useSignal } from "@preact/signals";

/** How many times as large as the whole a picture is shown at most, and at each step. */
const LARGEST = 12;
const STEP = 1.5;

export function Picture({ caption, address }: { caption: string; address: string }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const image = useRef<HTMLImageElement>(null);
  const whole = useSignal(0);
  const size = useSignal(1);
  const show = () => {
    dialog.current!.showModal();
    size.value = 1;
    whole.value = fitting(image.current!);
  };
  const scale = (by: number) => (size.value = Math.min(LARGEST, Math.max(1, size.value * by)));
  return (
    <figure>
      <button type="button" class="picture" aria-label={`Enlarge: ${caption}`} onClick={show}>
        <img src={address} alt="" />
      </button>
      <figcaption>{caption}</figcaption>
      <dialog ref={dialog} aria-label={caption}>
        <p class="buttons">
          <button type="button" onClick={() => scale(STEP)}>
            Larger
          </button>
          <button type="button" onClick={() => scale(1 / STEP)}>
            Smaller
          </button>
          <button type="button" onClick={() => dialog.current!.close()}>
            Close
          </button>
        </p>
        <div class="scrolling" role="region" aria-label={caption} tabIndex={0}>
          <img
            ref={image}
            src={address}
            alt={caption}
            style={{ width: `${whole.value * size.value}px` }}
          />
        </div>
      </dialog>
    </figure>
  );
}

/** The width (px) at which a picture is seen whole. */
function fitting(image: HTMLImageElement): number {
  const { clientWidth, clientHeight } = image.parentElement!;
  const ratio = image.naturalWidth / image.naturalHeight || 1;
  return Math.min(clientWidth, clientHeight * ratio);
}
