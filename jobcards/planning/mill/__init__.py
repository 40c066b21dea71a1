"""Set-ups at the mill: zero, holding, and the operations by the shape they cut."""
