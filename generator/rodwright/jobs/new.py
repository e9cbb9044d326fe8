"""The specs that Rodwright ships, for a maker to start from."""

from __future__ import annotations

from difflib import get_close_matches
from pathlib import Path

from rodwright.problems import Problem, ProblemsError


def models_folder() -> Path:
    """Where the ready specs lie: in the installed package, or beside the sources."""
    package = Path(__file__).resolve().parents[1]
    packed = package / "models"
    return packed if packed.is_dir() else package.parents[1] / "models"


def model_names() -> tuple[str, ...]:
    """Names of the ready specs, in alphabetical order."""
    return tuple(sorted(path.stem for path in models_folder().glob("*.yaml")))


def model_path(name: str) -> Path:
    """The file of a ready spec.

    Raises:
        ProblemsError: there is none of that name.
    """
    names = model_names()
    if name in names:
        return models_folder() / f"{name}.yaml"
    near = get_close_matches(name, names, n=1)
    hint = f"Did you mean `{near[0]}`? " if near else ""
    raise ProblemsError(
        [Problem(f"there is no model called `{name}`", f"{hint}There are: {', '.join(names)}.")]
    )


def copy_model(name: str, target: Path) -> None:
    """Write a ready spec to a new file.

    Raises:
        ProblemsError: there is no such model, the file is there already, or it can't be
            written.
    """
    write_new(model_path(name).read_text(encoding="utf-8"), target)


def write_new(text: str, target: Path) -> None:
    """Write a text to a new file.

    Raises:
        ProblemsError: the file is there already, or it can't be written.
    """
    try:
        with target.open("x", encoding="utf-8") as file:
            file.write(text)
    except FileExistsError:
        raise ProblemsError(
            [Problem(f"`{target}` is there already", "Give another name, or move it away first.")]
        ) from None
    except OSError as error:
        raise ProblemsError(
            [
                Problem(
                    f"`{target}` can't be written: {error.strerror}",
                    "Give a folder that exists and that you may write to.",
                )
            ]
        ) from None
