"""The bundled script and style are those of their sources, and bear the terms of what they hold."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
from hashlib import sha256
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).parents[2] / "generator"
VIEWER, BUNDLED = ROOT / "viewer", ROOT / "rodwright" / "page"
FILES = ("viewer.css", "viewer.js")


def _sources() -> str:
    names = [
        path.relative_to(VIEWER).as_posix()
        for path in (VIEWER / "src").rglob("*")
        if path.suffix in {".ts", ".tsx", ".css"}
    ]
    digest = sha256()
    for name in sorted([*names, "build.mjs", "package-lock.json"]):
        digest.update(name.encode() + b"\0" + (VIEWER / name).read_bytes() + b"\0")
    return digest.hexdigest()


def _packages() -> dict[str, Any]:
    """What is bundled: the locked packages that aren't for building alone."""
    lock = json.loads((VIEWER / "package-lock.json").read_text(encoding="utf-8"))
    return {
        place.removeprefix("node_modules/"): package
        for place, package in lock["packages"].items()
        if place and not package.get("dev")
    }


@pytest.mark.parametrize("name", FILES)
def test_the_bundle_is_made_of_the_sources_as_they_are(name: str) -> None:
    """If not: `npm ci` and `npm run build` in generator/viewer."""
    first = (BUNDLED / name).read_text(encoding="utf-8").partition("\n")[0]
    assert first == f"/* Rodwright's viewer, from sources of SHA-256 {_sources()} */"


def test_the_terms_of_all_that_is_bundled_are_in_it() -> None:
    script = (BUNDLED / "viewer.js").read_text(encoding="utf-8")
    head = script[: script.index("*/", script.index("It holds:"))]
    packages = _packages()
    assert {"three", "preact", "@preact/signals"} <= packages.keys()
    for name, package in packages.items():
        assert package["license"] == "MIT", f"{name}: look what its terms ask for"
        assert f"\n{name} {package['version']}\n" in head
    assert head.count("Permission is hereby granted, free of charge") == len(packages)
    assert head.count("Copyright") >= len(packages)


def test_nothing_in_the_script_ends_its_element_early() -> None:
    """HTML standard, 4.12.1.3: neither may stand in a script that stands in a page."""
    script = (BUNDLED / "viewer.js").read_text(encoding="utf-8").lower()
    assert "</script" not in script and "<!--" not in script


@pytest.mark.skipif(
    not os.environ.get("CI") and not (shutil.which("node") and (VIEWER / "node_modules").is_dir()),
    reason="bundling anew needs Node and the packages of generator/viewer",
)
def test_bundling_anew_gives_the_same_bytes(tmp_path: Path) -> None:
    subprocess.run(["node", "build.mjs", str(tmp_path)], cwd=VIEWER, check=True)
    for name in FILES:
        assert (tmp_path / name).read_bytes() == (BUNDLED / name).read_bytes(), name
