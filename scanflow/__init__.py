"""Bar code picking service for a room of one-of-a-kind goods: a scan that says yes or refuses."""
