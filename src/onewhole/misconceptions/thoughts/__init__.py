"""Thoughts by what they are about; :mod:`onewhole.misconceptions.thought` puts the closed family together."""
