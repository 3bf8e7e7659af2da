"""The docs as a site: the same pages, with those of the code, built without a network."""
