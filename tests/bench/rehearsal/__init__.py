"""A rehearsed year: a stock room with a truth of its own, and people who slip, before the real server."""
