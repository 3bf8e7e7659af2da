"""Labels of problems in few characters, for the teacher."""

from collections.abc import Collection, Sequence

#: A run shorter than this is written out: "3, 4" is no longer than "3–4".
SHORTEST_RUN = 3


def runs(labels: Collection[str], page: Sequence[str]) -> str:
    """Write labels in the order of the page, three or more neighbours on it as a run.

    ``page`` are all labels of the page in order; those of ``labels`` that are not on it are left out.

    >>> runs({"3", "5", "4", "7"}, ["1", "2", "3", "4", "5", "6", "7"])
    '3–5, 7'
    """
    found: list[list[str]] = []
    before = False
    for label in page:
        here = label in labels
        if here and before:
            found[-1].append(label)
        elif here:
            found.append([label])
        before = here
    return ", ".join(_written(run) for run in found)


def _written(run: Sequence[str]) -> str:
    return f"{run[0]}–{run[-1]}" if len(run) >= SHORTEST_RUN else ", ".join(run)
