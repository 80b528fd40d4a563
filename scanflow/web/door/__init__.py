"""What stands before every page and call: connections, names, sizes of bodies, and who calls."""
