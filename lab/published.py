"""Parts of the table that are held against published figures."""

from collections.abc import Sequence
from concurrent.futures import Executor

from lab.nights import Typed
from lab.observed import FILE, Observed, observed
from lab.pages import composed, in_columns
from lab.pupils import COLUMNS, SUBTRACTING, steady_pupils
from lab.rates import USUAL
from lab.right_wrong import ceiling, diagnosed
from lab.table import Part, percent
from lab.trials import Trial, problems, trials

TWELVE = 12
CHUNK = 50


def lee_and_corter(steady: int, pool: Executor | None) -> Part:
    """Measure steady pupils on pages built for the patterns, as in Lee & Corter (2011)."""
    rows = []
    for words, ideas, make in (
        ("mixed numbers, composed", SUBTRACTING, composed),
        ("columns of whole numbers", COLUMNS, in_columns),
    ):
        page = make(TWELVE, 1)
        seen = _raw(page, ideas, steady, pool)
        told = [one for one in seen if one.truth]
        whole = sum(one.credit for one in told) / len(told)
        among = sum(one.named for one in told) / len(told)
        pupils = steady_pupils(USUAL, ideas, steady, "published")
        scores = diagnosed(pupils, problems(page), ideas, "published 0")
        most = ceiling(problems(page), ideas)
        rows.append(
            (
                words,
                str(len(ideas)),
                str(len(told)),
                percent(whole),
                percent(among),
                percent(scores),
                percent(most),
            )
        )
    return Part(
        "Steady pupils on a page of 12 built for the patterns",
        "Published (Lee & Corter 2011, subtraction in columns): 99 % right with items built for the bugs, "
        "about 85 % from right and wrong alone. Right: naming one of k that fit equally well counts 1/k. "
        "Among: the true one is among them. The most that could be: from right and wrong alone, ideas that "
        "are wrong on the same problems cannot be told apart by anybody; were nobody to slip, so many in a "
        "hundred could be named. Their set of bugs is not the same as ours.",
        (
            "problems",
            "ideas",
            "pupils",
            "right",
            "among",
            "from right and wrong alone",
            "the most that could be",
        ),
        tuple(rows),
    )


def _raw(page: Typed, ideas: Sequence[str], steady: int, pool: Executor | None) -> list[Trial]:
    pupils = steady_pupils(USUAL, ideas, steady, "published")
    chunks = [pupils[at : at + CHUNK] for at in range(0, steady, CHUNK)]
    found = (pool.map if pool else map)(
        trials, chunks, [problems(page)] * len(chunks), ["published 0"] * len(chunks)
    )
    return [one for some in found for one in some]


def siegler() -> Part:
    """Hold the catalogue against pupils' own answers and the study's coding of them."""
    title = "Wrong answers of 48 pupils (Siegler, Thompson & Schneider 2011)"
    found = observed()
    if found is None:
        return Part(
            title,
            "",
            ("what", "measured"),
            (("not measured", f"{FILE.name} does not lie beside the project"),),
        )
    return Part(title, _note(), ("what", "measured"), tuple(_rows(found)))


def _note() -> str:
    return (
        "The study coded each answer as independent components (numerators and denominators each worked by "
        "themselves: A18, A19, B01, B02, B06, B13, P01, P02) or as kept denominator (B03, B04, B09, B10, "
        "P06)."
    )


def _rows(found: Observed) -> list[tuple[str, str]]:
    rows = [("wrong answers", str(found.wrong))]
    rows += [
        (f"  {how}", f"{count} ({percent(count / found.wrong)})")
        for how, count in found.explained.most_common()
    ]
    rows.append(("coded by the study, and given the same code by our patterns", percent(found.coded)))
    rows.append(("of those to which our patterns give a code, the same", percent(found.agree)))
    return rows
