"""Questions by what they ask about; :mod:`onewhole.misconceptions.ask` puts the closed family together."""
