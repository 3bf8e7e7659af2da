"""Long work as a page: how far it is, and where what it made can be looked at."""

from onewhole.desk.classes.class_records import NotThere
from onewhole.web.ask import Ask, Shown, Told
from onewhole.web.long_work import Work


def look(ask: Ask) -> Shown:
    """Show work; the page asks again by itself."""
    work = _work(ask)
    return Shown("work.html", {"work": work, "far": how_far(work, ask.door.works.seconds(work))})


def now(ask: Ask) -> Told:
    """Tell one of our scripts how far work is."""
    work = _work(ask)
    draft = work.draft
    made = {"typed": draft.typed, "told": list(draft.told), "recipe": draft.recipe} if draft else {}
    return Told(
        {
            **made,
            "far": how_far(work, ask.door.works.seconds(work)),
            "done": work.done,
            "of": work.of,
            "ended": work.ended,
            "goes": work.goes,
            "said": work.said,
            "refused": work.refused,
        }
    )


def how_far(work: Work, seconds: int | None) -> str:
    """Return how far work is, in words; ``seconds`` is how long it goes on, None before its turn comes.

    >>> how_far(Work("a", "A page is composed", "/", done=2, of=5), 9), how_far(Work("a", "", "/"), 1)
    ('2 of 5', '1 second so far')
    """
    if work.of:
        return f"{work.done} of {work.of}"
    if seconds is None:
        return "Waits for other work to end"
    return f"{seconds} second{'' if seconds == 1 else 's'} so far"


def _work(ask: Ask) -> Work:
    try:
        return ask.door.works[str(ask.place["work"])]
    except KeyError:
        raise NotThere(
            "There is no such work any more", remedy="Go back to the page and start it again."
        ) from None
