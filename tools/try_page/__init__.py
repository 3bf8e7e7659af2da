"""The page "Try and check": the pure floors in a browser, with no program on any machine."""
