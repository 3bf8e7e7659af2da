"""The closed family of reasons, by what they speak of; :mod:`onewhole.working.reason` puts them together."""
