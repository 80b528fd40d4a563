"""How well bars are printed, by a picture of them."""
