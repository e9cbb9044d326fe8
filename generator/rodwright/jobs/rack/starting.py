"""A rack file to start from."""

from __future__ import annotations

from pathlib import Path

from rodwright.jobs.new import models_folder, write_new


def example_rack() -> Path:
    """Where the rack file lies that Rodwright ships."""
    return models_folder() / "racks" / "workshop.yaml"


def new_rack(target: Path) -> None:
    """Write a commented rack file to start from.

    Raises:
        ProblemsError: the file is there already, or it can't be written.
    """
    write_new(example_rack().read_text(encoding="utf-8"), target)
