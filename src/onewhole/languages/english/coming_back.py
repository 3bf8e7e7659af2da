"""What is said about a skill that comes back: how many would still have it, and when it is due."""

from datetime import date

from onewhole.languages.english.days import DAYS, MONTHS

#: What is said of a skill that a pupil does not have yet.
NOT_YET = "not there yet"
#: Within so many days a day is told by its weekday alone.
_THIS_WEEK = 7


def still_there(tenths: tuple[int, int, int]) -> str:
    """Say how many of ten would still have a skill, with the band, from low, share and high in tenths.

    >>> still_there((5, 7, 9))
    'about 7 in 10 would still have it (5 to 9)'
    """
    low, share, high = tenths
    return f"about {share} in 10 would still have it ({low} to {high})"


def pupil_still(tenths: tuple[int, int, int]) -> str:
    """Say how likely it is that one pupil still has a skill, with the band, in tenths.

    >>> pupil_still((5, 7, 9))
    'about 7 in 10 (5 to 9)'
    """
    low, share, high = tenths
    return f"about {share} in 10 ({low} to {high})"


def due_told(due: date, today: date) -> str:
    """Say when a skill is due, as seen from a day.

    >>> thursday, monday = date(2026, 11, 26), date(2026, 11, 23)
    >>> due_told(thursday, monday), due_told(monday, thursday), due_told(monday, monday)
    ('due on Thursday', 'due since Monday, November 23', 'due today')
    >>> due_told(date(2027, 1, 4), monday)
    'due on Monday, January 4, 2027'
    """
    if due == today:
        return "due today"
    if 0 < (due - today).days < _THIS_WEEK:
        return f"due on {DAYS[due.weekday()]}"
    year = f", {due.year}" if due.year != today.year else ""
    when = f"{DAYS[due.weekday()]}, {MONTHS[due.month - 1]} {due.day}{year}"
    return f"due since {when}" if due < today else f"due on {when}"


def last_told(days: int, right: int, read: int) -> str:
    """Say when a skill was last on a page, and how it went then where answers were read.

    >>> last_told(20, 12, 24)
    'Last on a page 20 days ago; 12 of 24 answers were right then.'
    >>> last_told(1, 0, 0), last_told(-2, 0, 0)
    ('Last on a page yesterday.', 'On a page set for 2 days from now.')
    """
    went = f"; {right} of {read} answers were right then" if read else ""
    match days:
        case 0:
            when = "On a page today"
        case 1:
            when = "Last on a page yesterday"
        case _ if days > 0:
            when = f"Last on a page {days} days ago"
        case -1:
            when = "On a page set for tomorrow"
        case _:
            when = f"On a page set for {-days} days from now"
    return f"{when}{went}."
