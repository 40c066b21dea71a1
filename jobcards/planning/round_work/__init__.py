"""Turned parts at the mill: in a V-block, a dividing head or on a rotary table; turned by counted holes or degrees."""
