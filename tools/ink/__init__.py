"""The network that reads an answer cell: its training cells, its training, and the figures about it.

``python -m tools.ink --help`` lists the steps; `docs/reading-model.md` tells what came of them.
"""
