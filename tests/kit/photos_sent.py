"""Photos sent to the browser door by a form, and the work that reads them waited for."""

from tests.kit.doors import Answer, Opened
from tests.kit.waiting import until

PHOTOS = "/mine/1/night/1/marking/photos"
#: How a JPEG begins.
JPEG = b"\xff\xd8\xff\xe0"


def sent(door: Opened, *names: str) -> Answer:
    """Send pictures of these names, and return what comes back at once."""
    files = [("pictures", (name, JPEG + name.encode(), "image/jpeg")) for name in names]
    came = door.client.post(PHOTOS, data={"csrf_token": door.csrf_token}, files=files, headers=door.origin)
    return Answer(came.status_code, came.text, came.headers.get("location", ""), came.content)


def read(door: Opened, *names: str) -> Answer:
    """Send pictures, wait until they are read, and return the page that is shown then."""
    came = sent(door, *names)
    assert came.status == 303, came.text
    job = door.door.jobs[came.goes.rpartition("/")[2]]
    until(lambda: door.door.jobs[job.name].ended, "the papers are read")
    ended = door.door.jobs[job.name]
    assert not ended.refused, ended.refused
    return door.get(ended.goes)
