"""The calls about sections, slots, things and their doubts."""
