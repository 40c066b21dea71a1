"""What stops a dry run."""


class CannotFollow(ValueError):
    """The card says something that cannot be done as it stands; the message says what, in the trade's words."""
