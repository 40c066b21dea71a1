"""Drawings of a card as inline SVG: the parts, the set-ups, and the part after each operation."""
