"""What each kind of amount is an amount of, so that one way to tell serves them all."""

from onewhole.languages.spanish.making import Nodes
from onewhole.number.unit import Kind


def _stuff(
    thing: str, *, feminine: bool = False, named: bool = True, takes: str = "lleva", uses: str = "usa"
) -> dict[str, Nodes]:
    """Return what goes into the holes: what is behind the first amount, what is asked, what is done with it.

    ``takes`` is what a kite does with it, ``uses`` what a class does.
    """
    return {
        "of": ("de", thing) if named else (),
        "much": ("cuánta" if feminine else "cuánto", thing),
        "left": ("queda",),
        "takes": (takes,),
        "uses": (uses,),
    }


_TIME = _stuff("tiempo", named=False)
_MONEY = _stuff("dinero", named=False, takes="cuesta", uses="gasta")
_RIBBON, _PAPER, _PAINT = _stuff("cinta", feminine=True), _stuff("papel"), _stuff("tinta", feminine=True)

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

_ROPE, _RICE, _WATER = _stuff("cuerda", feminine=True), _stuff("arroz"), _stuff("agua", feminine=True)

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
