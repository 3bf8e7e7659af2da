"""The English words round a film."""

from onewhole.languages.film_words import FilmWords

ROUND_FILM = FilmWords(
    board="Board",
    written="Written on the board",
    steps="Steps",
    play="Play",
    pause="Pause",
    again="Play again",
    tried="Tried it: go on",
    back="Step back",
    next="Next step",
    start="From the start",
    aloud="Read aloud",
    keys="Keys:",
    key_plays="plays and pauses",
    key_next="next step",
    key_back="step back",
    key_start="from the start",
    jump="Jump to a problem",
    jump_to="Jump to",
    all_steps="All steps",
    show_all="Show all steps",
    hide_all="Hide all steps",
    one_after_another="Every step stands below, one after another.",
    step_of="Step {at} of {of}",
    offline="This page works without the internet, and sends nothing anywhere.",
    on_the_board="On the board:",
    fresh_board="A fresh board.",
    struck_out="Struck out:",
    picture="The picture:",
)
