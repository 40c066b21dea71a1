"""Work on the shaper: how the ram is set, and what its tool cuts."""
