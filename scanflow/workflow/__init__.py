"""One function for each thing the shop does; each is given a unit of work and is one transaction."""
