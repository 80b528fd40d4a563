"""The example shop: reclaimed bicycle parts, one day of the whole main job."""
