"""Worked job cards for small machine shops: from a drawing and a route to every number at the machine."""
