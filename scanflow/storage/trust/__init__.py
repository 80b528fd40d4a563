"""Whether the data are what they were: the check of all of them, and what keeps writes away."""
