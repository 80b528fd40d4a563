"""What reads the labels that no decoder has read."""
