"""How certain a page makes of steady ideas, and how many of its problems are needed for that."""

from collections.abc import Iterable, Mapping

from lab.trials import Trial


def certainty(trials: Iterable[Trial]) -> float:
    """Return the mean odds given to the truth, over pupils with a steady idea.

    Where a page cannot show an idea, nothing is certain about it: those pupils count 0.
    """
    found = [one.certainty for one in trials if one.steady]
    return sum(found) / len(found) if found else 0.0


def needed(curve: Mapping[int, float], wanted: float) -> float | None:
    """Return how many problems reach a certainty, between the sizes that were measured; None where none does.

    >>> needed({3: 0.2, 5: 0.6, 8: 0.9}, 0.4), needed({3: 0.2}, 0.4)
    (4.0, None)
    """
    before, low = 0, 0.0
    for size, reached in sorted(curve.items()):
        if reached >= wanted:
            return (
                before + (size - before) * (wanted - low) / (reached - low) if reached > low else float(size)
            )
        before, low = size, max(low, reached)
    return None
