"""What must hold between the parts of a definition, beyond each value being right by itself."""
