"""What is said to a maker about each kind of fault in a spec."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from typing import Any, NamedTuple, get_args

from pydantic_core.core_schema import ErrorType

from rodwright.lengths import LengthUnit, format_length
from rodwright.problems import KeyPath
from rodwright.wishes.reading.file_kinds import SPEC, FileKind
from rodwright.wishes.reading.schema import Shape, both, either
from rodwright.wishes.reading.trade_words import Meant, choice_for, key_for

_PYDANTIC_KINDS = frozenset(get_args(ErrorType))
_LONGEST_SHOWN = 40


class Wording(NamedTuple):
    """What is wrong, and what to do about it."""

    message: str
    remedy: str


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing the validation found.

    ``kind``, ``message`` and ``context`` are pydantic's.  ``value`` is what is written at ``path``,
    ``shape`` what may stand there; ``holder`` and ``parent`` are the same for the group or
    list around it.  ``variants`` names, by path, the variant the fault is about.  ``elsewhere`` is
    the one other place, from the top, where a key that isn't known here may stand; ``file`` is what
    kind of file it is.
    """

    kind: str
    message: str
    context: Mapping[str, Any]
    path: KeyPath
    value: object
    shape: Shape | None
    parent: Shape | None
    holder: object
    variants: Mapping[KeyPath, str]
    elsewhere: str | None = None
    file: FileKind = SPEC

    @property
    def name(self) -> str:
        """What is wrong, in a sentence."""
        return _name_of(self.path, self.file)

    @property
    def holder_name(self) -> str:
        """What it stands in, in a sentence."""
        return _name_of(self.path[:-1], self.file)

    @property
    def trade_word(self) -> Meant | None:
        """For a key that isn't known: what it is called here, if it is a word of the trade."""
        if not self.file.has_trade_words:
            return None
        return key_for(str(self.path[-1]), self.known_keys)

    @property
    def is_wrong_type(self) -> bool:
        """True where something of another kind than what is written belongs."""
        if self.kind == "literal_error":  # a word is wanted, and keys or a list are written
            return isinstance(self.value, list | dict)
        return self.kind in _PYDANTIC_KINDS and self.kind.endswith(("_type", "_parsing"))

    @property
    def known_keys(self) -> list[str]:
        """The keys that may be written beside this one."""
        return self.parent.key_names(self.holder) if self.parent else []

    @property
    def meant(self) -> str | None:
        """For a key that isn't known: the one of those known here that was probably meant."""
        key = str(self.path[-1])
        written = self.holder if isinstance(self.holder, dict) else {}
        return self._near(key, [each for each in self.known_keys if each not in written])

    @property
    def beside(self) -> str | None:
        """For a key that isn't known: the one that was probably meant, and is written too."""
        return self._near(str(self.path[-1]), self.known_keys)

    def _near(self, key: str, unused: list[str]) -> str | None:
        words = self.file.has_trade_words
        if words and (word := key_for(key, unused)) is not None and word.name in unused:
            return word.name
        # A key of another place is more likely than a misspelt one, but for a letter or two.
        astray = self.goes_with or self.elsewhere is not None
        return _nearest(key, unused, cutoff=0.85 if astray else 0.6)

    @property
    def decimal_comma(self) -> tuple[str, str, str] | None:
        """For a key that isn't known: the key before it, its whole number, and what follows a
        decimal comma, which between braces begins a key of its own."""
        tail, written = str(self.path[-1]), self.holder
        if self.kind != "extra_forbidden" or not isinstance(written, dict):
            return None
        keys = list(written)
        before = keys[max(0, keys.index(self.path[-1]) - 1)]
        whole = str(written[before])
        if self.value is not None or not tail[:1].isdigit() or not whole.isdigit():
            return None
        return str(before), whole, tail

    @property
    def goes_with(self) -> str:
        """For a key that isn't known here, but with another choice: `kind: plinth`, say."""
        name = self.parent.discriminator if self.parent else None
        if self.parent is None or name is None:
            return ""
        choices = [
            choice
            for choice in self.parent.choices()
            if str(self.path[-1]) in self.parent.key_names({name: choice})
        ]
        return f"`{name}: {' or '.join(choices)}`" if choices else ""

    @property
    def size(self) -> int:
        """How many items, keys or characters are written."""
        return len(self.value) if isinstance(self.value, list | dict | str) else 0

    @property
    def takes(self) -> str:
        """What may be written at ``path``."""
        return (self.shape.takes() if self.shape else "") or "something else"


def word(fault: Fault, unit: LengthUnit) -> Wording:
    """What to say about a fault; ``unit`` is what limits of lengths are shown in."""
    name = fault.name
    kind = fault.kind
    if kind not in _PYDANTIC_KINDS:
        remedy = fault.context.get("remedy") or f"Write {fault.takes}."
        return Wording(f"{name}: {fault.message}", str(remedy))
    if kind in ("value_error", "assertion_error"):
        return Wording(f"{name}: {fault.context['error']}", "Change what is written here.")
    if kind in ("missing", "union_tag_not_found"):
        return _missing(fault)
    if kind == "extra_forbidden":
        return _unknown_key(fault)
    if kind in ("literal_error", "enum", "union_tag_invalid"):
        return _not_a_choice(fault, name)
    if kind in _LIMITS:
        return _out_of_limits(fault, name, unit)
    if kind in _SIZES:
        return _wrong_size(fault, name)
    if kind == "string_pattern_mismatch":
        hint = fault.shape.description if fault.shape else ""
        return Wording(
            f"{name} isn't in the right form; {written(fault.value)}", hint or "Check its form."
        )
    return _wrong_type(fault, name)


def _name_of(path: KeyPath, file: FileKind) -> str:
    """A value's name in a sentence: its key, or its number in the list it is in."""
    if not path:
        return file.whole
    step = path[-1]
    if isinstance(step, int):
        return f"item {step + 1} of {_name_of(path[:-1], file)}"
    return f"`{step}`"


def written(value: object) -> str:
    """What was found, as the second half of a sentence."""
    if value is None:
        return "nothing is written here"
    if isinstance(value, bool):
        return f"`{str(value).lower()}` is written here"
    if isinstance(value, dict):
        return "keys are written here"
    if isinstance(value, list):
        return "a list is written here"
    if isinstance(value, str):
        return f"`{_shortened(value)}` is text" if value.strip() else "empty text is written here"
    return f"`{value}` is a number"


def _missing(fault: Fault) -> Wording:
    shape = fault.shape
    if shape is not None and fault.kind == "union_tag_not_found":
        holder, key = fault.name, shape.discriminator
        takes = _quoted_choices(shape)
    else:
        holder, key = fault.holder_name, str(fault.path[-1])
        takes = " ".join([f"{fault.takes}.", shape.description if shape else ""]).strip(" .")
    return Wording(f"{holder} needs `{key}`", f"Add `{key}:` and {takes}.")


def _unknown_key(fault: Fault) -> Wording:
    key, holder = str(fault.path[-1]), fault.holder_name
    if comma := fault.decimal_comma:
        before, whole, tail = comma
        return Wording(
            f"`{before}: {whole},{tail}` has a decimal comma",
            f"Write a decimal point, not a comma: `{before}: {whole}.{tail}`.",
        )
    name, colon, value = key.partition(":")
    if colon and name in fault.known_keys:
        return Wording(
            f"a space is missing after `{name}:`", f"Write `{name}: {_shortened(value.strip())}`."
        )
    message = f"`{_shortened(key)}` isn't a key of {holder}"
    at_top = f"at the top of {fault.file.whole}"
    if word := fault.trade_word:
        under = f"under `{word.under}`" if word.under else at_top
        place = "" if word.under is None else f" {under}"
        shown = word.name if ":" in word.name else f"{word.name}:"
        return Wording(f"{message}; it is called `{shown}` here", f"Write `{shown}`{place}.")
    if fault.meant:
        return Wording(f"{message}; did you mean `{fault.meant}`?", f"Write `{fault.meant}:`.")
    if fault.beside:
        return Wording(
            f"{message}; did you mean `{fault.beside}`, which is said too?",
            f"Say it under `{fault.beside}:`, once.",
        )
    if fault.goes_with:
        with_it = f"it goes with {fault.goes_with}"
        return Wording(
            f"{message} as it is; {with_it}", f"Take it out, or write {fault.goes_with}."
        )
    if fault.elsewhere is not None:
        under = f"under `{fault.elsewhere}`" if fault.elsewhere else at_top
        return Wording(f"{message}; it stands {under}", f"Write `{_shortened(key)}:` {under}.")
    return Wording(
        message, f"The keys here are {both([f'`{each}`' for each in fault.known_keys])}."
    )


def _not_a_choice(fault: Fault, name: str) -> Wording:
    takes = _quoted_choices(fault.shape) if fault.shape else "something else"
    choices = fault.shape.choices() if fault.shape else []
    meant = choice_for(str(fault.value), choices)
    if meant is not None:
        shown = _shortened(str(fault.value))
        return Wording(
            f"{name} takes {takes}; `{shown}` is called `{meant}` here", f"Write `{meant}`."
        )
    meant = _nearest(str(fault.value), choices)
    found = written(fault.value)
    if isinstance(fault.value, str) and fault.value.strip():
        found = f"`{_shortened(fault.value)}` isn't one of them"
    remedy = f"Did you mean `{meant}`?" if meant else "Write one of them."
    return Wording(f"{name} takes {takes}; {found}", remedy)


_LIMITS = {
    "greater_than": ("more than", "gt", "larger"),
    "greater_than_equal": ("at least", "ge", "larger"),
    "less_than": ("less than", "lt", "smaller"),
    "less_than_equal": ("at most", "le", "smaller"),
    "multiple_of": ("a multiple of", "multiple_of", "different"),
}


def _out_of_limits(fault: Fault, name: str, unit: LengthUnit) -> Wording:
    words, key, change = _LIMITS[fault.kind]
    limit, what = f"{fault.context[key]:g}", "number"
    if fault.shape is not None and fault.shape.is_length:
        what = "length"
        if fault.context[key]:
            limit = f"{format_length(fault.context[key], unit)} {unit}"
    message = f"{name} has to be {words} {limit}; it is `{_shortened(str(fault.value))}`"
    return Wording(message, f"Write a {change} {what}.")


_SIZES = {
    "string_too_short": ("min_length", "at least", "character"),
    "string_too_long": ("max_length", "at most", "character"),
    "too_short": ("min_length", "at least", "item"),
    "too_long": ("max_length", "at most", "item"),
}


def _wrong_size(fault: Fault, name: str) -> Wording:
    key, words, each = _SIZES[fault.kind]
    if isinstance(fault.value, dict):
        each = "key"
    elif isinstance(fault.value, str):
        each = "character"
    limit = fault.context[key]
    count = f"{limit} {each}" if limit == 1 else f"{limit} {each}s"
    has = f"there are {fault.size}" if fault.size != 1 else "there is 1"
    if fault.value == "":
        return Wording(f"{name} is empty", "Write some text.")
    return Wording(f"{name} takes {words} {count}; {has}", f"Write {words} {count}.")


def _wrong_type(fault: Fault, name: str) -> Wording:
    value = fault.value
    takes = fault.takes
    remedy = f"Write {takes}."
    if value is None:
        key = fault.path[-1] if fault.path else ""
        if fault.parent and isinstance(key, str) and key not in fault.parent.required(fault.holder):
            remedy = f"Write {takes}, or take `{key}:` out."
    elif takes == "text" and not isinstance(value, list | dict):
        shown = str(value).lower() if isinstance(value, bool) else str(value)
        remedy = f'Put it in quotes: `"{shown}"`.'
    elif takes in ("a number", "a whole number") and isinstance(value, str) and _is_number(value):
        remedy = "Take the quotes and anything but digits and a point off it."
    elif fault.kind == "int_from_float" or (takes == "a whole number" and isinstance(value, float)):
        return Wording(f"{name} takes a whole number; `{value}` isn't one", "Write a whole number.")
    elif takes.startswith("the keys"):
        remedy = "Write the keys on lines of their own below it, indented by two spaces."
    return Wording(f"{name} takes {takes}; {written(value)}", remedy)


def _quoted_choices(shape: Shape) -> str:
    return either([f"`{each}`" for each in shape.choices()])


def _is_number(text: str) -> bool:
    try:
        float(text)
    except ValueError:
        return False
    return True


def _nearest(text: str, known: list[str], cutoff: float = 0.6) -> str | None:
    return next(iter(get_close_matches(text.lower(), known, n=1, cutoff=cutoff)), None)


def _shortened(text: str) -> str:
    line = " ".join(text.split())
    return line if len(line) <= _LONGEST_SHOWN else f"{line[:_LONGEST_SHOWN]}…"
