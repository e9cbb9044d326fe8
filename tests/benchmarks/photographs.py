"""How near photographs come to a long render, and what they take.

    cd tests
    python -m benchmarks.photographs  # rewrites benchmarks/PHOTOGRAPHS.md; some minutes

A picture of a ready model is traced with more and more paths a pixel and held to one of 512 that
isn't denoised.  The peak signal-to-noise ratio is that of the pictures as shown, 8 bits a channel:
10 log10(255^2 / mean squared difference).
"""

from __future__ import annotations

import time
from pathlib import Path

import numpy as np

import rodwright
from rodwright.photo import tracing
from rodwright.photo.developing import developed
from rodwright.photo.grades import QUALITIES
from rodwright.photo.shots import meter_of
from rodwright.photo.tracing import Quality, Tracer
from rodwright.photo.views import closed
from rodwright.unit.laid import laid_unit

RESULTS = Path(__file__).parent / "PHOTOGRAPHS.md"
_MODEL, _SIZE, _LONG = "reading-alcove", 144, 512
_SAMPLES = (4, 8, 16, 32, 64)


def main() -> None:
    spec = rodwright.read_spec(Path(__file__).parents[2] / "models" / f"{_MODEL}.yaml")
    unit = laid_unit(rodwright.set_out(spec))
    tracer = Tracer()
    scene = closed(unit, _SIZE)
    meter = meter_of(scene, tracer)

    def picture(samples: int, seed: int) -> tuple[np.ndarray, float]:
        begun = time.process_time()
        traced = tracer.trace(scene, Quality(_SIZE, samples), seed=seed)
        took = time.process_time() - begun
        return np.asarray(developed(traced, meter)).astype(float), took

    denoised, tracing._denoised = tracing._denoised, lambda colour, *_: colour  # noqa: SLF001
    long, _ = picture(_LONG, 1)
    plain = {samples: picture(samples, 0)[0] for samples in _SAMPLES}
    tracing._denoised = denoised  # noqa: SLF001
    lines = [
        f"# Photographs against a long render\n\nMade by `python -m benchmarks.photographs` in "
        f"`tests/`, of {_MODEL}, closed, {scene.camera.width} x {scene.camera.height} pixels, "
        f"against {_LONG} paths a pixel that aren't denoised. Decibels of the picture as shown; "
        "seconds of processor time, all cores together, on a machine that did other things "
        "too.\n",
        "| paths a pixel | as traced | denoised | seconds |",
        "| ---: | ---: | ---: | ---: |",
    ]
    for samples in _SAMPLES:
        shown, took = picture(samples, 0)
        lines.append(
            f"| {samples} | {_psnr(plain[samples], long):.1f} | {_psnr(shown, long):.1f} "
            f"| {took:.1f} |"
        )
        print(lines[-1], flush=True)
    lines += [
        "",
        "| grade | longer side | paths a pixel | seconds |",
        "| --- | ---: | ---: | ---: |",
    ]
    pixels = scene.camera.width * scene.camera.height
    for grade, quality in QUALITIES.items():
        paths = pixels * (quality.size / _SIZE) ** 2 * quality.samples
        seconds = paths * took / (pixels * _SAMPLES[-1])
        lines.append(f"| {grade} | {quality.size} | {quality.samples} | {seconds:.0f} |")
    lines.append("\nSeconds of the grades are those of a path above, times their paths.")
    RESULTS.write_text("\n".join(lines) + "\n", encoding="utf-8")


def _psnr(one: np.ndarray, other: np.ndarray) -> float:
    return float(10 * np.log10(255**2 / np.mean((one - other) ** 2)))


if __name__ == "__main__":
    main()
