"""Blocks on a rotary table: how they are centred and clamped, what is cut, and how the table turns."""
