"""The words round a film: on the page that plays it, and in its transcript."""

from msgspec import Struct


class FilmWords(Struct, frozen=True):
    """What stands on the page that plays a film, and what a transcript says is done on the board.

    ``step_of`` has {at} and {of} for the number of a step and of all steps of its part; ``struck_out`` and
    ``picture`` come before what is struck out and shown. ``space`` and ``home`` are what is printed on these
    keys. ``leave`` leads back to the teacher's page.
    """

    board: str
    written: str
    steps: str
    play: str
    pause: str
    again: str
    tried: str
    back: str
    next: str
    start: str
    aloud: str
    keys: str
    key_plays: str
    key_next: str
    key_back: str
    key_start: str
    space: str
    home: str
    jump: str
    jump_to: str
    all_steps: str
    show_all: str
    hide_all: str
    one_after_another: str
    step_of: str
    offline: str
    on_the_board: str
    fresh_board: str
    struck_out: str
    picture: str
    leave: str
