"""What a count sees of the room, and what it finds amiss."""
