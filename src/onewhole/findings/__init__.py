"""Findings: what is found in a page and in a night's answers, and what one click does; no words."""
