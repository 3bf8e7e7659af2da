"""The patterns, one file a group; :mod:`onewhole.misconceptions.catalogue` puts the groups together."""
