"""What each kind of amount is an amount of, so that one way to tell serves them all."""

from onewhole.languages.english.making import Nodes
from onewhole.number.unit import Kind


def _stuff(
    thing: str, *does: str, named: bool = True, takes: str = "takes", take: str = "take"
) -> dict[str, Nodes]:
    """Return what goes into the holes: what is behind the first amount, what is asked, what is done with it.

    ``takes`` is what a kite does with it, ``take`` the same after "does"; ``does`` are those of a class.
    """
    uses, use = does or ("uses", "use")
    return {
        "of": ("of", thing) if named else (),
        "much": ("how much", thing),
        "are": ("is",),
        "takes": (takes,),
        "take": (take,),
        "uses": (uses,),
        "use": (use,),
    }


_TIME = _stuff("time", named=False)
_MONEY = _stuff("money", "spends", "spend", named=False, takes="costs", take="cost")
_RIBBON, _PAPER, _PAINT = _stuff("ribbon"), _stuff("paper"), _stuff("paint")

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

_ROPE, _RICE, _WATER = _stuff("rope"), _stuff("rice"), _stuff("water")

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
