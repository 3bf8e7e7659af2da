"""How well a recording is listened to: made-up teachers with synthetic voices, slips planted, and what is told."""
