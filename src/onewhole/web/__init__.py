"""Web: the browser door. `app.py` assembles it, `routes.py` is its table of contents."""
