"""The calls of a round and of the stations."""
