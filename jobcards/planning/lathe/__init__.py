"""Set-ups at the lathe: holding, dials, and the operations by the shape they cut."""
