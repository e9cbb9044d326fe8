"""The live page's server: it follows its file, and pages are told what it makes."""

from __future__ import annotations

import asyncio
import base64
import os
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest
from aiohttp import ClientSession, WSMsgType, WSServerHandshakeError

from kit.looking import SHELF, Looking, looking, run
from rodwright.jobs.look import look
from rodwright.jobs.look.doors import Door, door
from rodwright.problems import ProblemsError

BROKEN = SHELF.replace("count: 2", "count: many")
MORE = SHELF.replace("count: 2", "count: 3")


@pytest.fixture
def spec(tmp_path: Path) -> Path:
    path = tmp_path / "Schrank für Zoë.yaml"
    path.write_text(SHELF, encoding="utf-8")
    return path


def save(path: Path, text: str) -> None:
    path.write_text(text, encoding="utf-8")


def moved_in(path: Path, text: str) -> None:
    """As many editors save: a new file beside it, moved into its place."""
    new = path.with_name(path.name + "~")
    save(new, text)
    new.replace(path)


def test_a_page_is_told_the_unit_and_what_may_be_changed(spec: Path) -> None:
    async def test() -> None:
        async with looking(spec) as there:
            tab = await there.tab()
            model = (await tab.until("model"))["model"]
            assert model["title"] == "Shelf"
            refs = {each["ref"] for each in model["parts"]}
            assert len(refs) == len(model["parts"]) >= 6
            assert {each["shape"] for each in model["parts"]} == model["shapes"].keys()
            assert (await tab.until("troubles"))["troubles"] == []
            nudges = await tab.until("nudges")
            assert {each["value"] for each in nudges["nudges"]} >= {"2", "600"}

    run(test)


@pytest.mark.parametrize("by", [save, moved_in])
def test_a_save_is_followed_and_unchanged_shapes_arent_told_again(
    spec: Path, by: Callable[[Path, str], None]
) -> None:
    async def test() -> None:
        async with looking(spec) as there:
            tab = await there.tab()
            before = (await tab.until("model"))["model"]
            by(spec, SHELF.replace("height: 900", "height: 950"))
            after = await tab.until("model", version=2)
            assert after["model"]["size"] == "600 x 950 x 300 mm"
            used = {each["shape"] for each in after["model"]["parts"]}
            assert used - after["model"]["shapes"].keys() <= before["shapes"].keys()
            assert 0 < len(after["model"]["shapes"]) < len(used)
            shape = next(iter(after["model"]["shapes"].values()))
            assert len(base64.b64decode(shape["points"])) % 12 == 0

    run(test)


def test_what_is_broken_is_told_with_its_place_and_goes_when_mended(spec: Path) -> None:
    async def test() -> None:
        async with looking(spec) as there:
            tab = await there.tab()
            await tab.until("model")
            save(spec, BROKEN)
            (trouble,) = (await tab.until("troubles", version=2))["troubles"]
            assert (trouble["line"], trouble["column"]) == (8, 20)
            assert "number" in trouble["message"]
            late = await there.tab()
            assert (await late.until("model"))["version"] == 1
            assert (await late.until("troubles"))["version"] == 2
            save(spec, MORE)
            assert (await tab.until("troubles", version=3))["troubles"] == []
            assert [each["kind"] for each in tab.told].count("model") == 2
            # As soon as a save is seen, before anything is known of it.
            of_third = [each["kind"] for each in tab.told if each.get("version") == 3]
            assert of_third[:3] == ["reading", "model", "troubles"]
            await tab.until("nudges", version=3)  # the last of what is told of a reading
            assert [reading.parts is None for reading in there.readings] == [False, True, False]

    run(test)


def test_a_page_opens_though_the_first_reading_is_broken(spec: Path) -> None:
    async def test() -> None:
        save(spec, BROKEN)
        async with looking(spec) as there:
            tab = await there.tab()
            assert (await tab.until("troubles"))["troubles"]
            assert "model" not in [each["kind"] for each in tab.told]
            save(spec, SHELF)
            assert (await tab.until("model"))["version"] == 2

    run(test)


def test_a_save_caught_in_the_middle_is_not_told(spec: Path) -> None:
    async def test() -> None:
        async with looking(spec) as there:
            tab = await there.tab()
            await tab.until("model")
            for share in (0.0, 0.3, 0.8):
                save(spec, MORE[: int(len(MORE) * share)] + ("" if share in {0.0} else "\n  : ["))
                await asyncio.sleep(0.08)
            save(spec, MORE)
            await tab.until("model", version=2)
            await tab.until("troubles", version=2)
            assert not any(each.get("troubles") for each in tab.told)

    run(test)


def _deleted(path: Path) -> None:
    path.unlink()


def _a_folder(path: Path) -> None:
    path.unlink()
    path.mkdir()


def _a_pipe(path: Path) -> None:
    path.unlink()
    os.mkfifo(path)


def _not_text(path: Path) -> None:
    path.write_bytes(b"title: \xff\xfe")


def _without_its_folder(path: Path) -> None:
    shutil.rmtree(path.parent)


@pytest.mark.parametrize(
    ("away", "said"),
    [
        (_deleted, "there is no file"),
        (_a_folder, "is a folder"),
        (_a_pipe, "the file is empty"),
        (_not_text, "isn't UTF-8"),
        (_without_its_folder, "there is no file"),
    ],
)
def test_a_file_that_goes_is_told_and_followed_when_it_is_back(
    spec: Path, away: Callable[[Path], None], said: str
) -> None:
    async def test() -> None:
        async with looking(spec) as there:
            tab = await there.tab()
            await tab.until("model")
            away(spec)
            (trouble,) = (await tab.until("troubles", version=2))["troubles"]
            assert said in trouble["message"]
            if spec.is_dir():
                spec.rmdir()
            elif spec.is_fifo():
                spec.unlink()
            spec.parent.mkdir(exist_ok=True)
            save(spec, MORE)
            await tab.until("model", version=3)

    run(test)


def test_a_link_is_followed_to_what_it_leads_to_now(spec: Path, tmp_path: Path) -> None:
    async def test() -> None:
        other, link = tmp_path / "other.yaml", tmp_path / "link.yaml"
        save(other, MORE)
        link.symlink_to(spec)
        async with looking(link) as there:
            tab = await there.tab()
            await tab.until("model")
            save(spec, SHELF.replace("600", "610"))
            assert "610" in (await tab.until("model", version=2))["model"]["size"]
            new = tmp_path / "new"
            new.symlink_to(other)
            new.replace(link)
            assert "600" in (await tab.until("model", version=3))["model"]["size"]

    run(test)


def test_all_pages_are_told_the_same_and_a_new_one_everything(spec: Path) -> None:
    async def test() -> None:
        async with looking(spec) as there:
            tabs = [await there.tab() for _ in range(3)]
            for tab in tabs:
                await tab.until("model", version=1)
            save(spec, MORE)
            told = [await tab.until("model", version=2) for tab in tabs]
            assert told[0] == told[1] == told[2]
            late = (await (await there.tab()).until("model", version=2))["model"]
            assert late["parts"] == told[0]["model"]["parts"]
            assert {each["shape"] for each in late["parts"]} == late["shapes"].keys()

    run(test)


def test_a_wish_changes_the_file_and_is_taken_back(spec: Path) -> None:
    async def test() -> None:
        async with looking(spec) as there:
            tab, other = await there.tab(), await there.tab()
            nudges = (await tab.until("nudges"))["nudges"]
            count = next(each for each in nudges if each["value"] == "2")
            await tab.socket.send_json(
                {"kind": "nudge", "key": count["key"], "value": "3", "version": 1, "drag": ""}
            )
            await other.until("model", version=2)
            assert spec.read_text(encoding="utf-8") == MORE
            assert (await tab.until("nudges", version=2))["undo"]
            await other.socket.send_json({"kind": "undo"})
            again = await tab.until("nudges", version=3)
            assert (again["undo"], again["redo"]) == (False, True)
            assert spec.read_text(encoding="utf-8") == SHELF

    run(test)


def test_a_wish_of_an_older_file_is_refused_once_the_newer_one_was_told(spec: Path) -> None:
    async def test() -> None:
        async with looking(spec) as there:
            tab = await there.tab()
            nudges = (await tab.until("nudges"))["nudges"]
            key = next(each["key"] for each in nudges if each["value"] == "2")
            wish = {"kind": "nudge", "key": key, "value": "3", "drag": ""}
            edited = SHELF + "# a word more\n"
            spec.write_text(edited, encoding="utf-8")
            await tab.socket.send_json({**wish, "version": 1})
            told = await tab.until("refused")
            assert f"`{spec.name}` was changed" in told["message"]
            assert spec.read_text(encoding="utf-8") == edited
            newest = max(each["version"] for each in tab.told if each["kind"] == "nudges")
            assert newest > 1
            await tab.socket.send_json({**wish, "version": newest})
            await tab.until("nudges", version=newest + 1)
            assert spec.read_text(encoding="utf-8") == MORE + "# a word more\n"

    run(test)


@pytest.mark.parametrize(
    "said",
    [
        "",
        "undo",
        "[]",
        '{"kind": "nudge"}',
        '{"kind": "undo", "path": "/etc/passwd"}',
        '{"kind": "nudge", "key": "a", "value": "' + "9" * 400 + '", "version": 1, "drag": ""}',
        '{"kind": "nudge", "key": "../../etc", "value": "1", "version": 1, "drag": ""}',
        '{"kind": "nudge", "key": "size/width", "value": 5, "version": 1, "drag": ""}',
    ],
)
def test_what_isnt_understood_is_refused_and_changes_nothing(spec: Path, said: str) -> None:
    async def test() -> None:
        async with looking(spec) as there:
            tab = await there.tab()
            await tab.until("nudges")
            await tab.socket.send_str(said)
            assert (await tab.until("refused"))["message"]
            assert spec.read_text(encoding="utf-8") == SHELF

    run(test)


def test_a_message_that_is_too_long_ends_the_talk(spec: Path) -> None:
    async def test() -> None:
        async with looking(spec) as there:
            tab = await there.tab()
            await tab.until("nudges")
            await tab.socket.send_str("x" * 100_000)
            while (message := await tab.socket.receive()).type is WSMsgType.TEXT:
                pass
            assert message.type in {WSMsgType.CLOSE, WSMsgType.CLOSED}
            await (await there.tab()).until("model")

    run(test)


async def _statuses(there: Looking, client: ClientSession) -> dict[str, int]:
    page, port = there.address, there.address.split(":")[2].split("/")[0]
    asked = {
        "page": (page, {}),
        "by name": (page.replace("127.0.0.1", "localhost"), {}),
        "no token": (f"{there.origin}/", {}),
        "wrong token": (page[:-2] + ("a" if page[-2] != "a" else "b") + "/", {}),
        "token cut short": (page[:-2] + "/", {}),
        "a file": (page + "viewer.js", {}),
        "out of it": (page + "..%2f..%2fetc%2fpasswd", {}),
        "by a foreign name": (page, {"Host": f"example.org:{port}"}),
        "by a name like ours": (page, {"Host": f"127.0.0.1.example.org:{port}"}),
        "at another port": (page, {"Host": "127.0.0.1:1"}),
        "by the network's address": (page, {"Host": f"192.168.1.5:{port}"}),
        "socket without origin": (page + "socket", {}),
        "socket of a foreign page": (page + "socket", {"Origin": "http://example.org"}),
        "socket of a file": (page + "socket", {"Origin": "null"}),
        "socket of another port": (page + "socket", {"Origin": "http://127.0.0.1:1"}),
    }
    found = {}
    for name, (address, headers) in asked.items():
        async with client.get(address, headers=headers) as answer:
            found[name] = answer.status
            assert answer.headers["X-Content-Type-Options"] == "nosniff"
            assert answer.headers["Referrer-Policy"] == "no-referrer"
            assert answer.headers["Cache-Control"] == "no-store"
            assert "frame-ancestors 'none'" in answer.headers["Content-Security-Policy"]
            assert "unsafe" not in answer.headers["Content-Security-Policy"]
    async with client.post(page) as answer:
        found["written to"] = answer.status
    return found


def test_nobody_else_is_let_in_and_nothing_else_is_served(spec: Path) -> None:
    async def test() -> None:
        async with looking(spec) as there, ClientSession() as client:
            found = await _statuses(there, client)
            assert found == {
                "page": 200,
                "by name": 200,
                "no token": 404,
                "wrong token": 404,
                "token cut short": 404,
                "a file": 404,
                "out of it": 404,
                "by a foreign name": 421,
                "by a name like ours": 421,
                "at another port": 421,
                "by the network's address": 421,
                "socket without origin": 403,
                "socket of a foreign page": 403,
                "socket of a file": 403,
                "socket of another port": 403,
                "written to": 404,
            }
            with pytest.raises(WSServerHandshakeError):
                await client.ws_connect(there.address + "socket", origin="http://example.org")

    run(test)


def test_tokens_are_long_and_new_each_time() -> None:
    tokens = {Door("127.0.0.1").token for _ in range(100)}
    assert len(tokens) == 100
    assert min(map(len, tokens)) >= 32


@pytest.mark.parametrize(
    ("host", "called", "ours"),
    [
        ("127.0.0.1", "127.0.0.1:80", True),
        ("127.0.0.1", "127.0.0.1", True),
        ("127.0.0.1", "localhost:80", True),
        ("127.0.0.1", "[::1]:80", True),
        ("127.0.0.1", "10.0.0.1:80", False),
        ("127.0.0.1", "user@127.0.0.1:80", False),
        ("127.0.0.1", "127.0.0.1:80/x", False),
        ("127.0.0.1", "127.0.0.1:eighty", False),
        ("127.0.0.1", "", False),
        ("0.0.0.0", "10.0.0.1:80", True),
        ("0.0.0.0", "rebound.example.org:80", False),
        ("192.168.1.5", "192.168.1.5:80", True),
    ],
)
def test_only_addresses_are_ours_and_no_foreign_name(host: str, called: str, ours: bool) -> None:
    assert door(host).is_called(called, 80) is ours


def test_an_address_that_is_a_name_is_refused() -> None:
    with pytest.raises(ProblemsError, match="isn't an IP address"):
        door("my-machine")


def test_a_port_that_is_taken_is_told(spec: Path) -> None:
    async def test() -> None:
        async with looking(spec) as there:
            port = int(there.address.split(":")[2].split("/")[0])
            with pytest.raises(ProblemsError, match=f"port {port} is taken"):
                await asyncio.to_thread(look, spec, port=port, ready=print)

    run(test)


def test_an_address_of_another_machine_is_told(spec: Path) -> None:
    with pytest.raises(ProblemsError, match="this machine has no address"):
        look(spec, host="192.0.2.1", ready=print)


@pytest.mark.parametrize("what", ["nothing", "a folder", "a device"])
def test_what_cant_be_followed_is_refused(tmp_path: Path, what: str) -> None:
    at = {"nothing": tmp_path / "x.yaml", "a folder": tmp_path, "a device": Path("/dev/null")}
    with pytest.raises(ProblemsError):
        look(at[what], ready=print)
