"""What each kind of amount is an amount of, so that one way to tell serves them all."""

from dataclasses import dataclass

from onewhole.languages.english.making import Nodes
from onewhole.number.unit import Kind


@dataclass(frozen=True, slots=True)
class Stuff:
    """What is measured: what stands behind the first amount, what a question asks, and what is done with it.

    ``takes`` is what a kite does with it, ``take`` the same after "does"; ``uses`` and ``use`` are a class's.
    """

    thing: str
    named: bool = True
    takes: str = "takes"
    take: str = "take"
    uses: str = "uses"
    use: str = "use"

    @property
    def holes(self) -> dict[str, Nodes]:
        """Return what goes into the holes of a frame.

        >>> Stuff("ribbon").holes["of"], Stuff("time", named=False).holes["of"]
        (('of', 'ribbon'), ())
        """
        return {
            "of": ("of", self.thing) if self.named else (),
            "much": ("how much", self.thing),
            "are": ("is",),
            "takes": (self.takes,),
            "take": (self.take,),
            "uses": (self.uses,),
            "use": (self.use,),
        }


_TIME = Stuff("time", named=False)
_MONEY = Stuff("money", named=False, takes="costs", take="cost", uses="spends", use="spend")
_RIBBON, _PAPER, _PAINT = Stuff("ribbon"), Stuff("paper"), Stuff("paint")

#: What is measured in the stories of the kite club; numbers count what the class calls a whole.
STUFF = {
    Kind.LENGTH: _RIBBON,
    Kind.WEIGHT: _PAPER,
    Kind.VOLUME: _PAINT,
    Kind.TIME: _TIME,
    Kind.METRIC_LENGTH: _RIBBON,
    Kind.MASS: _PAPER,
    Kind.METRIC_VOLUME: _PAINT,
    Kind.MONEY: _MONEY,
}

_ROPE, _RICE, _WATER = Stuff("rope"), Stuff("rice"), Stuff("water")

#: What is measured in the stories of a class that names its own things.
OWN_STUFF = {
    **STUFF,
    Kind.LENGTH: _ROPE,
    Kind.WEIGHT: _RICE,
    Kind.VOLUME: _WATER,
    Kind.METRIC_LENGTH: _ROPE,
    Kind.MASS: _RICE,
    Kind.METRIC_VOLUME: _WATER,
}
