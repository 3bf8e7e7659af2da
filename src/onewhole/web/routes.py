"""The table of contents of the browser door, written by hand: method, address, page, what its form takes."""

from onewhole.web.handling import Way
from onewhole.web.pages import class_page, keep, pupil, reading, start, week, welcome, work

WAYS: tuple[Way, ...] = (
    Way("GET", "/", start.start),
    Way("GET", "/welcome", welcome.look),
    Way("POST", "/welcome", welcome.make, takes=("name", "pupils", "names")),
    Way("POST", "/demo", welcome.demo),
    Way("GET", "/demo/away", welcome.ask_away),
    Way("POST", "/demo/away", welcome.away),
    Way("GET", "/{book}/{room:int}/week", week.look),
    Way("POST", "/{book}/{room:int}/night/{night:int}/step", week.done, takes=("step",)),
    Way("POST", "/{book}/{room:int}/read", reading.read, takes=("pupil",)),
    Way("GET", "/{book}/{room:int}/class", class_page.look),
    Way("POST", "/{book}/{room:int}/class/add", class_page.add, takes=("more", "names")),
    Way("POST", "/{book}/{room:int}/class/name", class_page.call, takes=("name",)),
    Way("POST", "/{book}/{room:int}/class/names", class_page.name, takes=("code", "name")),
    Way("GET", "/{book}/{room:int}/pupil/{code}", pupil.look),
    Way("GET", "/{book}/{room:int}/pupil/{code}/held", pupil.held),
    Way("GET", "/{book}/{room:int}/pupil/{code}/held.json", pupil.as_json),
    Way("GET", "/{book}/{room:int}/pupil/{code}/held.csv", pupil.as_csv),
    Way("GET", "/{book}/{room:int}/pupil/{code}/erase", pupil.ask_erase),
    Way("POST", "/{book}/{room:int}/pupil/{code}/erase", pupil.erase, takes=("sure", "backups")),
    Way("GET", "/work/{work}", work.look),
    Way("GET", "/work/{work}/now", work.now),
    Way("GET", "/{book}/keep", keep.look),
    Way("GET", "/{book}/keep/backup", keep.download),
    Way("POST", "/{book}/keep/back", keep.restore_own, takes=("file",)),
    Way("POST", "/{book}/keep/restore", keep.restore_file, files=("backup",), most=keep.MOST),
    Way("POST", "/{book}/keep/until", keep.until, takes=("day",)),
    Way("POST", "/{book}/keep/remove", keep.remove, takes=("file",)),
)
