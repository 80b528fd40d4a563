"""How a shop of an older revision is brought up to date."""
