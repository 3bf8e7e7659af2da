"""Two school years composed, night by night, beside as many pages composed by themselves.

Run: `python bench/year_plan.py`. Seconds of processor, for the machine may be busy. Told are the nights, the
slowest, twins on one page, problems that come twice in the year, and the most minutes of a page. The ratio is
that of a night of the year to a page of the same skill with a seed of its own. Goal: 60 seconds each, no
twins, minutes kept.
"""

from datetime import date
from time import process_time

from onewhole.desk.classes.year_files import composed_year
from onewhole.desk.classes.year_plan import year_plan
from onewhole.desk.page.compose import compose
from onewhole.problems.twins import twin_key
from onewhole.sheets.wishes import Wishes
from onewhole.sheets.years.year_wishes import YearWishes

#: Every so many nights a page of the same skill is composed by itself.
BESIDE = 12


def main() -> None:
    for grade in (4, 5):
        began = process_time()
        plan = year_plan(YearWishes(date(2026, 9, 8), grade=grade))
        planned = process_time() - began
        taken, before, made = [], began, []
        for night, page in composed_year(plan):
            now = process_time()
            taken.append((now - before, night.day.isoformat(), night.page.skill.value if night.page else ""))
            before = now
            made.append((night, page))
        total = process_time() - began
        alone = []
        for at, (night, _) in enumerate(made[::BESIDE]):
            assert night.page is not None
            began = process_time()
            page = night.page
            compose(
                Wishes(
                    skill=page.skill,
                    number=10,
                    digits=page.digits,
                    denominators=page.denominators,
                    seed=1000 + at,
                )
            )
            alone.append(process_time() - began)
        problems = [page.sheet.problems for _, page in made]
        twins = sum(len(page) - len({twin_key(one.statement) for one in page}) for page in problems)
        typed = [one.typed for page in problems for one in page]
        print(f"grade {grade}: {len(made)} nights, {total:.1f} s (planned in {planned:.2f} s)")
        print(f"  slowest {max(taken)[0]:.1f} s: {max(taken)[1]} {max(taken)[2]}")
        ratio = (total / len(made)) / (sum(alone) / len(alone))
        print(f"  a night {total / len(made):.3f} s; by itself {sum(alone) / len(alone):.3f} s: {ratio:.2f}")
        print(f"  twins on a page {twins}; twice in the year {len(typed) - len(set(typed))} of {len(typed)}")
        print(f"  most minutes {max(page.minutes for _, page in made)} of {plan.wishes.minutes}")


if __name__ == "__main__":
    main()
