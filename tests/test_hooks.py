"""The hooks do what the build does, and nothing else."""

from __future__ import annotations

from pathlib import Path

from ruamel.yaml import YAML

ROOT = Path(__file__).parents[1]


def test_every_hook_runs_what_the_build_runs() -> None:
    """A hook may narrow a command to what was changed, or pytest to what is quick."""
    config = YAML(typ="safe", pure=True).load(ROOT / ".pre-commit-config.yaml")
    hooks = [hook["entry"].split() for repo in config["repos"] for hook in repo["hooks"]]
    build = [
        line.removeprefix(".venv/bin/").split()
        for line in (ROOT / ".ci" / "run").read_text(encoding="utf-8").splitlines()
        if line.startswith(".venv/bin/")
    ]
    tools = [words[:2] if words[0] == "ruff" else words[:1] for words in hooks]
    run = [words[:2] if words[0] == "ruff" else words[:1] for words in build]
    assert tools == [words for words in run if words[0] not in ("pip", "python")]
