"""Long work as a page: how far it is, and where what it made can be looked at."""

from onewhole.desk.classbook import NotThere
from onewhole.web.ask import Ask, Shown, Told
from onewhole.web.long_work import Work


def look(ask: Ask) -> Shown:
    """Show work; the page asks again by itself."""
    work = _work(ask)
    return Shown("work.html", {"work": work, "seconds": ask.door.works.seconds(work)})


def now(ask: Ask) -> Told:
    """Tell one of our scripts how far work is."""
    work = _work(ask)
    draft = work.draft
    made = {"typed": draft.typed, "told": list(draft.told), "recipe": draft.recipe} if draft else {}
    return Told(
        {
            **made,
            "seconds": ask.door.works.seconds(work),
            "done": work.done,
            "of": work.of,
            "ended": work.ended,
            "goes": work.goes,
            "said": work.said,
            "refused": work.refused,
        }
    )


def _work(ask: Ask) -> Work:
    try:
        return ask.door.works[str(ask.place["work"])]
    except KeyError:
        raise NotThere(
            "There is no such work any more", remedy="Go back to the page and start it again."
        ) from None
