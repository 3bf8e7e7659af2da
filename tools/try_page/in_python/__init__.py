"""The part of msgspec that the pure rooms use, in Python alone: its compiled part does not run in a browser.

`build.py` packs this folder as `msgspec`; tests/house/test_trying.py compares what is told with both.
Source: "Structs" of msgspec's documentation.
"""

from dataclasses import dataclass, field, fields
from typing import Any, ClassVar, cast, dataclass_transform

__all__ = ["Struct", "field"]


#: What a class is asked for, and hands on to those that are made from it.
_ASKED: dict[type, dict[str, bool]] = {}


@dataclass_transform(field_specifiers=(field,))
class _StructMeta(type):
    """Makes a class whose annotations are its fields a dataclass, as it is asked for beside its bases."""

    __struct_fields__: tuple[str, ...]

    def __new__(
        cls, name: str, bases: tuple[type, ...], namespace: dict[str, Any], **asked: bool
    ) -> "_StructMeta":
        made: Any = super().__new__(cls, name, bases, namespace)
        handed_on = [_ASKED[base] for base in reversed(bases) if base in _ASKED]
        _ASKED[made] = {key: value for each in (*handed_on, asked) for key, value in each.items()}
        if handed_on:
            dataclass(**_ASKED[made])(made)
            made.__struct_fields__ = tuple(one.name for one in fields(made))
        return cast("_StructMeta", made)

    def __init__(cls, name: str, bases: tuple[type, ...], namespace: dict[str, Any], **_asked: bool) -> None:
        super().__init__(name, bases, namespace)


class Struct(metaclass=_StructMeta):
    """A record: its annotations are its fields, in order."""

    __struct_fields__: ClassVar[tuple[str, ...]] = ()
