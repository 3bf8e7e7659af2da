"""Skill models fitted by machine: the likelihood, its summits, and what is measured at them."""
