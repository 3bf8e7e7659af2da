"""What is found when the papers of a class are read, and what a teacher may do about it."""

from onewhole.findings.in_papers import PaperFinding, PaperMissing, StrangeCell, UnawaitedPaper
from onewhole.languages.english.in_pictures import found_in_pictures, pictures_mended
from onewhole.languages.english.making import told
from onewhole.sentences.node import Typed
from onewhole.sentences.sentence import Sentences


def found_in_papers(found: PaperFinding, known_as: str = "") -> Sentences:
    """Say what was found, and what to do; ``known_as`` is what another page is, where the teacher has it.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(found_in_papers(PaperMissing("K07")))
    'The paper of K07 is in none of these pictures. Read it when it comes, or say that K07 is away.'
    """
    match found:
        case PaperMissing(pupil):
            return (
                *told("the paper of", Typed(pupil), "is in none of these pictures"),
                *told("read it when it comes, or say that", Typed(pupil), "is away"),
            )
        case StrangeCell(pupil, problem):
            return told("an answer of", Typed(pupil), "to", Typed(problem), "is of no paper of this class")
        case UnawaitedPaper(pupil, away) if away.away:
            return told(Typed(pupil), "is down as", away.value, ": this counts as a late paper now")
        case UnawaitedPaper(pupil):
            return told(Typed(pupil), "did not get this page, as it stands; the answers count all the same")
        case _:
            return (*found_in_pictures(found, known_as), *pictures_mended(found))
