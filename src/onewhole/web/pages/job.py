"""A background job as a page: how far it is, and a link to what it made."""

from onewhole.desk.classes.class_records import NotThere
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import HtmlPage, Json
from onewhole.web.http.templates import rendered
from onewhole.web.jobs import Job


def look(request: PageRequest) -> HtmlPage:
    """Show work; the page asks again by itself."""
    job = _job(request)
    return HtmlPage("job.html", {"job": job, "far": how_far(job, request.app.jobs.seconds(job))})


def now(request: PageRequest) -> Json:
    """Tell one of our scripts how far work is."""
    job = _job(request)
    draft = job.draft
    made = (
        {"typed": draft.typed, "told": rendered("_told.html", {"told": draft.told}), "recipe": draft.recipe}
        if draft
        else {}
    )
    return Json(
        {
            **made,
            "far": how_far(job, request.app.jobs.seconds(job)),
            "done": job.done,
            "of": job.of,
            "ended": job.ended,
            "goes": job.goes,
            "said": job.said,
            "refused": job.refused,
        }
    )


def how_far(job: Job, seconds: int | None) -> str:
    """Return how far a job is, in words; ``seconds`` is how long it has run, None before its turn comes.

    >>> how_far(Job("a", "A page is composed", "/", done=2, of=5), 9), how_far(Job("a", "", "/"), 1)
    ('2 of 5', '1 second so far')
    """
    if job.of:
        return f"{job.done} of {job.of}"
    if seconds is None:
        return "Waits for other work to end"
    return f"{seconds} second{'' if seconds == 1 else 's'} so far"


def _job(request: PageRequest) -> Job:
    try:
        return request.app.jobs[str(request.path_params["job"])]
    except KeyError:
        raise NotThere(
            "There is no such work any more", remedy="Go back to the page and start it again."
        ) from None
