"""Who may come in to the live page, and what every answer says of itself.

Only who knows the token in the address is let in.  Pages of other places that a browser has open
are kept out besides, even if they bring the browser to take their name for this machine's (DNS
rebinding): what is asked for must be an address and no foreign name, and a socket must come from
this page (RFC 6455, 10.2; RFC 6454).
"""

from __future__ import annotations

import ipaddress
import secrets
import socket
from dataclasses import dataclass, field
from urllib.parse import urlsplit

from rodwright.problems import Problem, ProblemsError


@dataclass(frozen=True, slots=True)
class Door:
    """Where the page is served: an IP address of this machine, loopback or not."""

    host: str
    token: str = field(default_factory=lambda: secrets.token_urlsafe(24))

    @property
    def loopback(self) -> bool:
        """Whether this machine alone can come to it."""
        return ipaddress.ip_address(self.host).is_loopback

    def knows(self, token: str) -> bool:
        """Whether a token is this page's; how long it takes doesn't tell how much of it is."""
        return secrets.compare_digest(token.encode(), self.token.encode())

    def is_called(self, host: str, port: int) -> bool:
        """Whether a request's ``Host`` is one of ours."""
        try:
            split = urlsplit(f"//{host}")
            name, asked = split.hostname or "", split.port or 80
        except ValueError:
            return False
        if asked != port or split.username is not None or split.path:
            return False
        if name == "localhost":
            return True
        try:
            address = ipaddress.ip_address(name)
        except ValueError:
            own = socket.gethostname().lower()
            return not self.loopback and name in {own, own.split(".")[0], f"{own}.local"}
        return address.is_loopback or not self.loopback

    def addresses(self, port: int) -> tuple[str, ...]:
        """The page's addresses, that for this machine first."""
        given = ipaddress.ip_address(self.host)
        if not given.is_unspecified:
            return (_address(self.host, port, self.token),)
        here = "127.0.0.1" if given.version == 4 else "::1"
        reached = _reached_at(given.version)
        return tuple(_address(each, port, self.token) for each in (here, reached) if each)


def door(host: str) -> Door:
    """The door at an address of this machine.

    Raises:
        ProblemsError: it isn't an IP address.
    """
    try:
        ipaddress.ip_address(host)
    except ValueError:
        raise ProblemsError(
            [
                Problem(
                    f"`{host}` isn't an IP address",
                    "Give one of this machine's (`192.168.1.20`), or `0.0.0.0` for all of them.",
                )
            ]
        ) from None
    return Door(host)


def _address(host: str, port: int, token: str) -> str:
    shown = f"[{host}]" if ":" in host else host
    return f"http://{shown}:{port}/{token}/"


def _reached_at(version: int) -> str:
    """The address at which other machines reach this one; empty where none does.

    Nothing is sent: a datagram's socket is only asked where it would send from.
    """
    family, far = (
        (socket.AF_INET, "192.0.2.1") if version == 4 else (socket.AF_INET6, "2001:db8::1")
    )
    try:
        with socket.socket(family, socket.SOCK_DGRAM) as asked:
            asked.connect((far, 9))
            return str(asked.getsockname()[0])
    except OSError:
        return ""
