"""What was found in pictures of papers, told in words with what to do next."""

from onewhole.findings.in_pictures import PictureFinding
from onewhole.languages.english.in_pictures import found_in_pictures, pictures_mended
from onewhole.notations.sentences.text import text_of


def picture_told(found: PictureFinding, known_as: str = "") -> str:
    """Say what was found and what to do; ``known_as`` is what another page is, where the teacher has it.

    >>> from onewhole.findings.in_pictures import NoPage
    >>> picture_told(NoPage("desk.jpg")).partition(". ")[2]
    'Take the picture from above, with all four corners of the paper in it.'
    """
    return f"{text_of(found_in_pictures(found, known_as))} {text_of(pictures_mended(found))}"
