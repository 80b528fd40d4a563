"""The pages about sections, slots, things and their cards."""
