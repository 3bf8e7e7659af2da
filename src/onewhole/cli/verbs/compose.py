"""`onewhole compose`: a page from wishes, or a composed page made again."""

import sys
from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.say_json import say_json
from onewhole.desk.page import compose as desk
from onewhole.desk.page.parse_wishes import SKILLS, USUAL, TypedWishes, parse_wishes

Skill = Annotated[
    str,
    typer.Option("--skill", metavar="SKILL", help=f"What to practise: {', '.join(SKILLS)}."),
]
Number = Annotated[int, typer.Option("--number", metavar="NUMBER", help="How many problems.")]
Denominators = Annotated[
    str, typer.Option("--denominators", metavar="LIST", help="Those that may occur, such as 4,6,8.")
]
Largest = Annotated[int, typer.Option("--wholes", metavar="NUMBER", help="The largest number of wholes.")]
Digits = Annotated[
    int | None, typer.Option("--digits", metavar="NUMBER", help="Digits of the largest whole number.")
]
Regrouping = Annotated[
    str, typer.Option("--regrouping", metavar="SHARE", help="The share that needs it, such as 2/3, or any.")
]
Strategy = Annotated[
    str, typer.Option("--strategy", metavar="NAME", help="The strategy that the class was taught.")
]
Minutes = Annotated[int | None, typer.Option("--minutes", metavar="MINUTES", help="A budget for the page.")]
Review = Annotated[
    list[str] | None,
    typer.Option(
        "--review", metavar="SKILL", help="An earlier skill that comes back: fractions, tens, opened-wholes."
    ),
]
Back = Annotated[
    list[str] | None,
    typer.Option("--back", metavar="PROBLEM", help="A problem that comes back as it is typed here."),
]
Faded = Annotated[
    bool, typer.Option("--faded", help="Begin with a worked example whose last line is left out.")
]
Seed = Annotated[int, typer.Option("--seed", metavar="NUMBER", help="Another number gives another page.")]
Doubles = Annotated[bool, typer.Option("--doubles", help="Let both numbers of a problem be the same.")]
Told = Annotated[int, typer.Option("--told", metavar="NUMBER", help="How many are told as stories.")]
NotAgain = Annotated[
    list[Path] | None,
    typer.Option("--not-again", metavar="SHEET", help="A sheet whose problems do not come again."),
]
After = Annotated[
    Path | None, typer.Option("--after", metavar="SHEET", help="Last night's sheet; it does not come again.")
]
Answers = Annotated[
    Path | None, typer.Option("--answers", metavar="CSV", help="Its answers: what they leave open is asked.")
]
Again = Annotated[Path | None, typer.Option("--again", metavar="SHEET", help="Make a composed sheet again.")]
Title = Annotated[str, typer.Option("--title", metavar="WORDS", help="What the page is called.")]
Seconds = Annotated[
    int, typer.Option("--seconds", metavar="SECONDS", min=1, help="After which the best so far is taken.")
]
To = Annotated[Path | None, typer.Option("--to", metavar="FILE", help="The file to write the sheet to.")]
AsJson = Annotated[bool, typer.Option("--json", help="Print JSON for other programs.")]


def run(
    skill: Skill = USUAL.skill.value,
    number: Number = USUAL.number,
    denominators: Denominators = "",
    largest: Largest = USUAL.largest,
    regrouping: Regrouping = "",
    strategy: Strategy = "",
    minutes: Minutes = None,
    review: Review = None,
    back: Back = None,
    faded: Faded = False,
    seed: Seed = USUAL.seed,
    digits: Digits = None,
    doubles: Doubles = False,
    told: Told = USUAL.told,
    not_again: NotAgain = None,
    after: After = None,
    answers: Answers = None,
    again: Again = None,
    title: Title = "",
    seconds: Seconds = desk.SECONDS,
    to: To = None,
    as_json: AsJson = False,
) -> int:
    """Print the sheet, or write it; notes about the page go to standard error."""
    if again:
        composed = desk.compose_file_again(again, seconds=seconds)
    else:
        wishes = parse_wishes(
            TypedWishes(
                skill=skill,
                number=number,
                denominators=denominators,
                largest=largest,
                regrouping=regrouping,
                strategy=strategy,
                minutes=minutes,
                review=review or (),
                back=back or (),
                faded=faded,
                seed=seed,
                digits=digits,
                doubles=doubles,
                told=told,
                not_again=not_again or (),
                after=after,
                answers=answers,
            )
        )
        composed = desk.compose(wishes, title=title, seconds=seconds)
    if to:
        desk.keep(composed, to)
    if as_json:
        say_json(desk.as_object(composed))
        return 0
    if not to:
        print(desk.typed(composed), end="")
    print("\n".join(desk.told(composed)), file=sys.stderr)
    return 0
