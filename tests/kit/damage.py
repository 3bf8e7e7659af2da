"""Damage to the bytes of a file, chosen by seeded chance."""

import random
from collections.abc import Callable

PAGE = 4096
Damage = Callable[[bytearray, random.Random], None]


def _bit(content: bytearray, chance: random.Random) -> None:
    content[chance.randrange(len(content))] ^= 1 << chance.randrange(8)


def _byte(content: bytearray, chance: random.Random) -> None:
    content[chance.randrange(len(content))] = chance.randrange(256)


def _head(content: bytearray, chance: random.Random) -> None:
    content[chance.randrange(100)] = chance.randrange(256)


def _tables(content: bytearray, chance: random.Random) -> None:
    """In the list of tables, which stands at the end of the first page."""
    content[chance.randrange(100, PAGE)] = chance.randrange(256)


def _page_head(content: bytearray, chance: random.Random) -> None:
    """In the head of a page, where its kind and the places of its cells stand."""
    content[_page(content, chance) + chance.randrange(24)] = chance.randrange(256)


def _flips(content: bytearray, chance: random.Random) -> None:
    for _ in range(chance.randint(2, 40)):
        _byte(content, chance)


def _cut(content: bytearray, chance: random.Random) -> None:
    del content[chance.randrange(len(content)) :]


def _cut_at_page(content: bytearray, chance: random.Random) -> None:
    del content[_page(content, chance) :]


def _zeros(content: bytearray, chance: random.Random) -> None:
    at = _page(content, chance)
    content[at : at + PAGE] = bytes(PAGE)


def _noise(content: bytearray, chance: random.Random) -> None:
    at = _page(content, chance)
    content[at : at + PAGE] = chance.randbytes(PAGE)


def _swap(content: bytearray, chance: random.Random) -> None:
    one, other = _page(content, chance), _page(content, chance)
    content[one : one + PAGE], content[other : other + PAGE] = (
        content[other : other + PAGE],
        content[one : one + PAGE],
    )


def _copied(content: bytearray, chance: random.Random) -> None:
    one, other = _page(content, chance), _page(content, chance)
    content[one : one + PAGE] = content[other : other + PAGE]


def _put_in(content: bytearray, chance: random.Random) -> None:
    at = chance.randrange(len(content))
    content[at:at] = chance.randbytes(chance.randint(1, 64))


def _behind(content: bytearray, chance: random.Random) -> None:
    content += chance.randbytes(chance.randint(1, 3 * PAGE))


def _page(content: bytearray, chance: random.Random) -> int:
    return chance.randrange(len(content) // PAGE) * PAGE


DAMAGES: tuple[Damage, ...] = (
    _bit,
    _byte,
    _head,
    _tables,
    _page_head,
    _flips,
    _cut,
    _cut_at_page,
    _zeros,
    _noise,
    _swap,
    _copied,
    _put_in,
    _behind,
)


def damaged(content: bytes, chance: random.Random) -> bytes:
    """Return the bytes damaged in one way."""
    made = bytearray(content)
    chance.choice(DAMAGES)(made, chance)
    return bytes(made)
