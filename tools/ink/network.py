"""The network: a grey cell in, slots out; a second head says in training where each sign stands."""

from typing import Final

import torch
from torch import nn

from onewhole.presses.paper.ink_text import NOTHING, SLOTS, UNITS
from tools.ink.chance import Array
from tools.ink.drawing import HIGH, WIDE

_DIGITS = NOTHING + 1
_KINDS, _HEAT = 3, 18
#: So much of the body works at a quarter of the size.
_FINE: Final = 8
#: The widths, the layers and the later blocks of the network that is shipped: 2,529,496 numbers.
SHAPE: Final = ((24, 48, 160), (1, 2), (2, 1))
#: What the names of later blocks' numbers begin with.
_LATER: Final = ("finer.", "deeper.")
#: Queries: one a digit slot, and one each for sign, unit, kind, struck.
_QUERIES = SLOTS + 4


class Block(nn.Module):
    """Two convolutions beside a way past them; a ``later`` one changes nothing before it has learnt."""

    def __init__(self, width: int, *, later: bool = False) -> None:
        super().__init__()
        self.first = nn.Conv2d(width, width, 3, padding=1, bias=False)
        self.norm_1 = nn.BatchNorm2d(width)
        self.second = nn.Conv2d(width, width, 3, padding=1, bias=False)
        self.norm_2 = nn.BatchNorm2d(width)
        if later:
            nn.init.zeros_(self.norm_2.weight)

    def forward(self, x: Array) -> Array:
        """Return what the block makes of its input."""
        inner = self.norm_1(self.first(x)).relu()
        return (x + self.norm_2(self.second(inner))).relu()


class Attention(nn.Module):
    """Some places look at others; written out, so that every engine reads it alike."""

    def __init__(self, width: int, heads: int = 4) -> None:
        super().__init__()
        self.heads = heads
        self.ask, self.key, self.value, self.out = (nn.Linear(width, width) for _ in range(4))

    def forward(self, x: Array, seen: Array) -> Array:
        """Return what each place of `x` takes from `seen`."""
        width = x.shape[2]
        part = width // self.heads

        def split(y: Array) -> Array:
            return y.reshape(-1, y.shape[1], self.heads, part).transpose(1, 2)

        ask, key, value = split(self.ask(x)) * part**-0.5, split(self.key(seen)), split(self.value(seen))
        weight = (ask @ key.transpose(2, 3)).softmax(3)
        return self.out((weight @ value).transpose(1, 2).reshape(-1, x.shape[1], width))


class Layer(nn.Module):
    """Places look at each other, or queries at places and each other; then each thinks for itself."""

    def __init__(self, width: int, *, queries: bool) -> None:
        super().__init__()
        self.norm_1, self.norm_2 = nn.LayerNorm(width), nn.LayerNorm(width)
        self.look = Attention(width)
        self.among = Attention(width) if queries else None
        self.norm_3 = nn.LayerNorm(width) if queries else None
        self.think = nn.Sequential(nn.Linear(width, 2 * width), nn.ReLU(), nn.Linear(2 * width, width))

    def forward(self, x: Array, seen: Array | None = None) -> Array:
        """Return what the layer makes of places, or of queries that look at `seen`."""
        inner = self.norm_1(x)
        x = x + self.look(inner, inner if seen is None else seen)
        if self.among is not None and self.norm_3 is not None:
            inner = self.norm_3(x)
            x = x + self.among(inner, inner)
        return x + self.think(self.norm_2(x))


class Reader(nn.Module):
    """The whole network; ``later`` are how many blocks came later, at a quarter and an eighth of the size."""

    def __init__(
        self,
        wide: tuple[int, int, int] = (24, 48, 128),
        layers: tuple[int, int] = (1, 2),
        later: tuple[int, int] = (0, 0),
    ) -> None:
        super().__init__()
        a, b, c = wide
        self.body = nn.Sequential(
            nn.Conv2d(1, a, 5, 2, 2, bias=False),
            nn.BatchNorm2d(a),
            nn.ReLU(),
            nn.Conv2d(a, b, 3, 2, 1, bias=False),
            nn.BatchNorm2d(b),
            nn.ReLU(),
            Block(b),
            Block(b),
            nn.Conv2d(b, c, 3, 2, 1, bias=False),
            nn.BatchNorm2d(c),
            nn.ReLU(),
            Block(c),
            Block(c),
        )
        self.finer = nn.Sequential(*(Block(b, later=True) for _ in range(later[0])))
        self.deeper = nn.Sequential(*(Block(c, later=True) for _ in range(later[1])))
        places = (HIGH // 8) * (WIDE // 8)
        self.where = nn.Parameter(torch.randn(1, places, c) * 0.02)
        self.asked = nn.Parameter(torch.randn(1, _QUERIES, c) * 0.3)
        self.context = nn.ModuleList(Layer(c, queries=False) for _ in range(layers[0]))
        self.slots = nn.ModuleList(Layer(c, queries=True) for _ in range(layers[1]))
        self.norm = nn.LayerNorm(c)
        self.norm_out = nn.LayerNorm(c)
        self.digits = nn.Linear(c, _DIGITS)
        self.digit_lean = nn.Parameter(torch.zeros(1, SLOTS, _DIGITS))
        self.sign, self.unit = nn.Linear(c, 2), nn.Linear(c, len(UNITS))
        self.kind, self.struck = nn.Linear(c, _KINDS), nn.Linear(c, 1)
        self.heat = nn.Conv2d(c, _HEAT, 1)

    def take(self, numbers: dict[str, Array]) -> None:
        """Take the numbers of a network, also of one from before the later blocks."""
        missing, unknown = self.load_state_dict(numbers, strict=False)
        assert not unknown, unknown
        assert all(name.startswith(_LATER) for name in missing), missing

    def seen(self, x: Array) -> Array:
        """Return what is seen at each place of prepared cells, at an eighth of the size."""
        return self.deeper(self.body[_FINE:](self.finer(self.body[:_FINE](x))))

    def forward(self, x: Array) -> tuple[Array, ...]:
        """Return digits, sign, unit, kind, struck and heat for prepared cells."""
        seen = self.seen(x)
        heat = self.heat(seen)
        places = seen.flatten(2).transpose(1, 2) + self.where
        for layer in self.context:
            places = layer(places)
        places = self.norm(places)
        slots = self.asked.expand(x.shape[0], -1, -1)
        for layer in self.slots:
            slots = layer(slots, places)
        slots = self.norm_out(slots)
        digits = self.digits(slots[:, :SLOTS]) + self.digit_lean
        sign, unit = self.sign(slots[:, SLOTS]), self.unit(slots[:, SLOTS + 1])
        kind, struck = self.kind(slots[:, SLOTS + 2]), self.struck(slots[:, SLOTS + 3])[:, 0]
        return digits, sign, unit, kind, struck, heat


def prepared(pictures: Array) -> Array:
    """Return grey cells (whole numbers, 255 is white) as the network takes them: how much darker than paper.

    The paper is the middle of every fourth point; `onewhole.presses.paper.ink` does the same.
    """
    seen = pictures.float()
    paper = seen[:, ::4, ::4].flatten(1).sort(1).values[:, 720]
    return ((paper[:, None, None] - seen) / 96).clamp(-1, 2.5)[:, None]
