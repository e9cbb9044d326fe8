"""`rodwright look`, as the maker runs it: where it says the page is, and why there is none."""

from __future__ import annotations

import asyncio
import errno
import socket
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import NoReturn
from urllib.error import HTTPError
from urllib.request import urlopen

import pytest
from typer.testing import CliRunner

from kit.looking import SHELF, served
from rodwright.problems import ProblemsError
from rodwright_cli.main import app


@pytest.fixture
def spec(tmp_path: Path) -> Path:
    path = tmp_path / "shelf.yaml"
    path.write_text(SHELF, encoding="utf-8")
    return path


def _status(address: str) -> int:
    try:
        with urlopen(address) as answer:
            return int(answer.status)
    except HTTPError as error:
        return error.code


def _said(running: subprocess.Popen[str], last: str) -> str:
    """What the command says up to a line with these words."""
    lines: list[str] = []
    assert running.stdout is not None
    for line in running.stdout:
        lines.append(line)
        if last in line:
            return "".join(lines)
    raise AssertionError(f"it ended, and said {lines}")


def _refused(spec: Path, *words: str) -> str:
    """What is said where nothing is served."""
    done = CliRunner().invoke(app, ["look", str(spec), "--no-open", *words])
    assert isinstance(done.exception, ProblemsError)
    assert "http://" not in done.output
    (problem,) = done.exception.problems
    return f"{problem.message}\n{problem.remedy}"


def test_on_a_network_it_warns_that_others_can_come_and_what_keeps_them_out(spec: Path) -> None:
    with served(spec, "--host", "0.0.0.0") as (address, running):
        said = _said(running, "Following")
        addresses = [address, *(line for line in said.splitlines() if line.startswith("http"))]
        assert address.startswith("http://127.0.0.1:")
        for each in addresses:
            assert _status(each) == 200
            # The long word in it is what keeps others out.
            assert _status(each[:-2] + "/") == 404
    words = " ".join(said.split())
    assert "Others on the network can come to it" in words
    assert "can change its figures" in words
    assert "Only the long word in it keeps others out" in words
    assert "isn't encrypted" in words
    assert "Without --host this machine alone has it" in words


def test_on_this_machine_alone_there_is_nothing_to_warn_of(spec: Path) -> None:
    with served(spec) as (_, running):
        assert _said(running, "Following") == f"Following {spec}; Ctrl+C ends it.\n"


@pytest.mark.parametrize(
    ("browser", "why"),
    [("/nowhere/browser", "No browser could be started"), ("", "There is no screen to open")],
)
def test_without_a_browser_it_says_the_address_and_goes_on(
    spec: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, browser: str, why: str
) -> None:
    for name in ("DISPLAY", "WAYLAND_DISPLAY"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setenv("BROWSER", browser)
    monkeypatch.setenv("PATH", str(tmp_path))  # where no other browser is found
    with served(spec, "--open") as (address, running):
        assert "open this address in" in _said(running, why)
        assert _status(address) == 200
        spec.write_text(SHELF.replace("count: 2", "count: many"), encoding="utf-8")
        assert "1 thing is wrong" in _said(running, "makes no unit")


@contextmanager
def _taken() -> Iterator[int]:
    """A port at which something else is served."""
    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        other.listen()
        yield int(other.getsockname()[1])


def test_a_port_that_is_taken_is_told_and_what_to_do(spec: Path) -> None:
    with _taken() as port:
        said = _refused(spec, "--port", str(port))
    assert said.startswith(f"port {port} is taken")
    assert "leave `--port` out" in said


def _fail_to_serve(patch: pytest.MonkeyPatch, error: type[OSError], number: int) -> None:
    async def refuse(*_: object, **__: object) -> NoReturn:
        raise error(number, "error while attempting to bind on address")

    patch.setattr(asyncio.BaseEventLoop, "create_server", refuse)


def test_a_port_that_isnt_allowed_is_told_and_what_to_do(
    spec: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    # As the system does to who isn't its administrator (POSIX, bind).
    _fail_to_serve(monkeypatch, PermissionError, errno.EACCES)
    said = _refused(spec, "--port", "80")
    assert said.startswith("port 80 may not be used here\n")
    assert "below 1024" in said
    assert "attempting" not in said


def test_a_failure_of_another_kind_is_in_the_systems_words(
    spec: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    _fail_to_serve(monkeypatch, OSError, errno.ENOBUFS)
    assert "port 80: No buffer space available\n" in _refused(spec, "--port", "80")


@pytest.mark.parametrize("port", ["-1", "65536", "http"])
def test_what_is_no_port_is_refused(spec: Path, port: str) -> None:
    done = CliRunner().invoke(app, ["look", str(spec), "--no-open", "--port", port])
    assert done.exit_code == 2
    assert "--port" in done.output


def test_an_address_that_isnt_this_machines_is_told(spec: Path) -> None:
    # TEST-NET-1 (RFC 5737): nobody's.
    said = _refused(spec, "--host", "192.0.2.1")
    assert said.startswith("this machine has no address `192.0.2.1`")
    assert "0.0.0.0" in said


def test_a_name_is_no_address(spec: Path) -> None:
    assert _refused(spec, "--host", "workshop").startswith("`workshop` isn't an IP address")
