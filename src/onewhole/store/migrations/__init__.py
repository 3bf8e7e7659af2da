"""The steps that bring a file of an earlier release forward."""
