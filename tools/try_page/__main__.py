"""Makes the page "Try and check": `python -m tools.try_page`."""

from tools.try_page.build import build, python_version

if __name__ == "__main__":
    made = build()
    size = sum(path.stat().st_size for path in made.rglob("*") if path.is_file())
    print(f"{made}: {size / 1_000_000:.1f} MB, Pyodide {python_version()}")
    print(f"To look at it: python3 -m http.server --directory {made} --bind 127.0.0.1")
