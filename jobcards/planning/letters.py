"""Letters for places that are many: a to z, then aa, ab and on."""

ALPHABET = "abcdefghijklmnopqrstuvwxyz"


def letter(index: int) -> str:
    """The letter of a place, counted from nought.

    >>> [letter(index) for index in (0, 25, 26, 27, 52, 199)]
    ['a', 'z', 'aa', 'ab', 'ba', 'gr']
    """
    out = ALPHABET[index % len(ALPHABET)]
    return out if index < len(ALPHABET) else letter(index // len(ALPHABET) - 1) + out


def suffix(index: int, count: int) -> str:
    """What is added to an id for one of several places; nothing where there is only one.

    >>> suffix(1, 3), suffix(0, 1)
    ('-b', '')
    """
    return "" if count == 1 else f"-{letter(index)}"
