"""What each kind of amount is an amount of, so that one way to tell serves them all."""

from dataclasses import dataclass

from onewhole.languages.spanish.making import Nodes
from onewhole.number.unit import Kind


@dataclass(frozen=True, slots=True)
class Stuff:
    """What is measured: what stands behind the first amount, what a question asks, and what is done with it.

    ``takes`` is what a kite does with it, ``uses`` what a class does.
    """

    thing: str
    feminine: bool = False
    named: bool = True
    takes: str = "lleva"
    uses: str = "usa"

    @property
    def holes(self) -> dict[str, Nodes]:
        """Return what goes into the holes of a frame.

        >>> Stuff("cinta", feminine=True).holes["much"]
        ('cuánta', 'cinta')
        """
        return {
            "of": ("de", self.thing) if self.named else (),
            "much": ("cuánta" if self.feminine else "cuánto", self.thing),
            "left": ("queda",),
            "takes": (self.takes,),
            "uses": (self.uses,),
        }


_TIME = Stuff("tiempo", named=False)
_MONEY = Stuff("dinero", named=False, takes="cuesta", uses="gasta")
_RIBBON, _PAPER, _PAINT = Stuff("cinta", feminine=True), Stuff("papel"), Stuff("pintura", feminine=True)

#: What is measured; numbers count what the class calls a whole.
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

_ROPE, _RICE, _WATER = Stuff("cuerda", feminine=True), Stuff("arroz"), Stuff("agua", feminine=True)

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
