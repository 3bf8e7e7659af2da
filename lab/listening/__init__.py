"""How well a recording is listened to: synthetic voices, improvised words, slips, and what is told."""
