"""The rules of the stock room: pure, without I/O, clock, web or database."""
