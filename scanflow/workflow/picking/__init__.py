"""What happens on a round and at the stations."""
