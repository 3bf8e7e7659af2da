"""Web: the browser door. `asgi.py` assembles it, `routes.py` is its table of contents."""
