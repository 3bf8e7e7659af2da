"""The routes, written by hand: method, address, page function, what its form has, how it uses the file."""

from onewhole.web.http.handling import PageMount, PageRoute
from onewhole.web.http.request_store import FileUse
from onewhole.web.pages import (
    checking,
    class_days,
    class_page,
    job,
    keep,
    marking,
    page_desk,
    papers,
    printing,
    pupil,
    reading,
    recording,
    start,
    tomorrow,
    walkthrough,
    week,
    welcome,
)

#: The pages of one night of a class.
_NIGHT: tuple[PageRoute | PageMount, ...] = (
    PageRoute("POST", "/step", week.done, fields=("step",), use=FileUse.TRANSACTION),
    PageRoute("POST", "/printed", printing.night, use=FileUse.ITSELF),
    PageRoute("GET", "/tomorrow", tomorrow.look),
    PageRoute("POST", "/tomorrow/move", tomorrow.moved, fields=("code", "key", "script", "saw", "stays")),
    PageRoute("POST", "/tomorrow/changes", tomorrow.changes, fields=("take", "saw")),
    PageRoute("POST", "/tomorrow/merge", tomorrow.merged, fields=("key", "into")),
    PageRoute(
        "POST",
        "/tomorrow/groups",
        tomorrow.settings,
        fields=("meets", "smallest", "largest", "saw"),
        use=FileUse.TRANSACTION,
    ),
    PageRoute("POST", "/tomorrow/aside", tomorrow.aside, fields=("code", "aside")),
    PageRoute(
        "POST",
        "/tomorrow/asked",
        tomorrow.ask,
        fields=("code", "asked", "wrote", "word"),
        use=FileUse.TRANSACTION,
    ),
    PageRoute(
        "POST", "/tomorrow/asked/back", tomorrow.unask, fields=("code", "line"), use=FileUse.TRANSACTION
    ),
    PageRoute("POST", "/tomorrow/paper", tomorrow.paper, fields=("every",)),
    PageRoute("GET", "/tomorrow/paper/{sheet}", tomorrow.sheet),
    PageRoute("GET", "/marking", marking.look),
    PageRoute("GET", "/marking/now", marking.now),
    PageRoute("GET", "/marking/written", marking.history),
    PageRoute("POST", "/marking/judge", marking.judge, fields=("label", "text")),
    PageRoute("POST", "/marking/foretell", marking.foretell, fields=("label", "row")),
    PageRoute(
        "POST",
        "/marking/keep",
        marking.keep,
        fields=("cells",),
        max_bytes=marking.MOST,
        use=FileUse.TRANSACTION,
    ),
    PageRoute("POST", "/marking/column", marking.column, fields=("label", "wrong"), use=FileUse.TRANSACTION),
    PageRoute(
        "POST", "/marking/paste", marking.paste, fields=("text", "code", "label"), max_bytes=marking.MOST
    ),
    PageRoute(
        "POST",
        "/marking/read-as",
        marking.read_as,
        fields=("code", "label", "typed", "read", "saw"),
        use=FileUse.TRANSACTION,
    ),
    PageRoute("GET", "/papers", papers.look),
    PageRoute("POST", "/papers", papers.keep, fields=("code", "said", "saw"), use=FileUse.TRANSACTION),
    PageRoute("POST", "/papers/for", papers.give, fields=("whom", "saw"), use=FileUse.TRANSACTION),
    PageRoute("GET", "/walkthrough", walkthrough.look),
    PageRoute("GET", "/walkthrough/board", walkthrough.show_board),
    PageRoute("POST", "/walkthrough/choices", walkthrough.choose, fields=walkthrough.TAKES),
    PageRoute("POST", "/walkthrough/shown", walkthrough.show, use=FileUse.TRANSACTION),
    PageRoute("POST", "/walkthrough/film", walkthrough.make),
    PageRoute("GET", "/walkthrough/film/{file}", walkthrough.lend),
    PageRoute(
        "POST",
        "/walkthrough/recording",
        recording.take,
        fields=("label", "steps", "saw"),
        files=("sound",),
        max_bytes=recording.MOST,
    ),
    PageRoute("GET", "/walkthrough/recording/{label}", recording.hear),
    PageRoute(
        "POST", "/walkthrough/forget", recording.take_away, fields=("label", "saw"), use=FileUse.TRANSACTION
    ),
)

#: The pages of one class.
_CLASS: tuple[PageRoute | PageMount, ...] = (
    PageRoute("GET", "/week", week.look),
    PageRoute("POST", "/read", reading.read, fields=("pupil",)),
    PageRoute("GET", "/class", class_page.look),
    PageRoute("POST", "/class/add", class_page.add, fields=("more", "names"), use=FileUse.TRANSACTION),
    PageRoute("POST", "/class/name", class_page.call, fields=("name", "saw"), use=FileUse.TRANSACTION),
    PageRoute(
        "POST", "/class/names", class_page.name, fields=("code", "name", "saw"), use=FileUse.TRANSACTION
    ),
    PageRoute("GET", "/class/days", class_days.look),
    PageRoute(
        "POST",
        "/class/days",
        class_days.keep,
        fields=("code", "joined", "left", "saw"),
        use=FileUse.TRANSACTION,
    ),
    PageRoute("GET", "/pupil/{code}", pupil.look),
    PageRoute("GET", "/pupil/{code}/held", pupil.held),
    PageRoute("GET", "/pupil/{code}/held.json", pupil.as_json),
    PageRoute("GET", "/pupil/{code}/held.csv", pupil.as_csv),
    PageRoute(
        "POST",
        "/pupil/{code}/given",
        pupil.give,
        fields=("what", "to", "why", "day"),
        use=FileUse.TRANSACTION,
    ),
    PageRoute("POST", "/pupil/{code}/given/back", pupil.take_back, fields=("line",), use=FileUse.TRANSACTION),
    PageRoute(
        "POST",
        "/pupil/{code}/asked",
        pupil.ask,
        fields=("night", "asked", "wrote", "word"),
        use=FileUse.TRANSACTION,
    ),
    PageRoute(
        "POST", "/pupil/{code}/asked/back", pupil.unask, fields=("night", "line"), use=FileUse.TRANSACTION
    ),
    PageRoute("GET", "/pupil/{code}/erase", pupil.ask_erase),
    PageRoute(
        "POST", "/pupil/{code}/erase", pupil.erase, fields=("sure", "backups", "saw"), use=FileUse.ITSELF
    ),
    PageRoute("POST", "/clean", pupil.clean_file, use=FileUse.ITSELF),
    PageRoute("GET", "/page", page_desk.new),
    PageRoute("GET", "/page/{sheet:int}", page_desk.look),
    PageRoute("GET", "/page/{sheet:int}/version/{version:int}", page_desk.version),
    PageRoute("POST", "/page/live", page_desk.live, fields=page_desk.TYPED),
    PageRoute("POST", "/page/mended", page_desk.mended, fields=page_desk.REMEDY),
    PageRoute("POST", "/page/moved", page_desk.moved, fields=page_desk.MOVE),
    PageRoute("POST", "/page/composed", page_desk.wished, fields=page_desk.WISHES),
    PageRoute("POST", "/page/saved", page_desk.saved, fields=page_desk.SAVE, use=FileUse.TRANSACTION),
    PageRoute("POST", "/page/set", page_desk.night, fields=page_desk.SET, use=FileUse.TRANSACTION),
    PageRoute("POST", "/page/printed", page_desk.printed, fields=page_desk.PRINT, use=FileUse.ITSELF),
    PageRoute("GET", "/printing", printing.look),
    PageRoute("POST", "/printing", printing.keep, fields=printing.FORM, use=FileUse.TRANSACTION),
    PageMount("/night/{night:int}", _NIGHT),
)

TABLE: tuple[PageRoute | PageMount, ...] = (
    PageRoute("GET", "/", start.start),
    PageRoute("GET", "/welcome", welcome.look),
    PageRoute("POST", "/welcome", welcome.make, fields=("name", "pupils", "names"), use=FileUse.TRANSACTION),
    PageRoute("POST", "/demo", welcome.demo, use=FileUse.ITSELF),
    PageRoute("GET", "/demo/away", welcome.ask_away),
    PageRoute("POST", "/demo/away", welcome.away, use=FileUse.ITSELF),
    PageRoute("GET", "/under-way/{job}", job.look),
    PageRoute("GET", "/under-way/{job}/now", job.now),
    PageRoute("GET", "/{book}/keep", keep.look),
    PageMount(
        "/{book}/keep",
        (
            PageRoute("GET", "/backup", keep.download),
            PageRoute("POST", "/locked", keep.lock, fields=("passphrase", "again")),
            PageRoute("POST", "/back", keep.restore_own, fields=("file",), use=FileUse.ITSELF),
            PageRoute(
                "POST",
                "/restore",
                keep.restore_file,
                fields=("passphrase",),
                files=("backup",),
                max_bytes=keep.MOST,
                use=FileUse.ITSELF,
            ),
            PageRoute("POST", "/aside", keep.put_aside, use=FileUse.ITSELF),
            PageRoute("GET", "/check", checking.look),
            PageRoute("POST", "/mend", checking.mend, use=FileUse.ITSELF),
            PageRoute("POST", "/stand", checking.let_stand, use=FileUse.ITSELF),
            PageRoute("POST", "/until", keep.until, fields=("day", "saw"), use=FileUse.TRANSACTION),
            PageRoute("POST", "/remove", keep.remove, fields=("file",), use=FileUse.ITSELF),
        ),
    ),
    PageMount("/{book}/{room:int}", _CLASS),
)
