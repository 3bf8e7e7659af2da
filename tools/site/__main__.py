"""Builds the site: `python -m tools.site`."""

from tools.site.build import build

if __name__ == "__main__":
    made = build()
    count = len(list(made.rglob("*.html")))
    print(f"{made}: {count} pages. To look at it: open {made}/index.html")
