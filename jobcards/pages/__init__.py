"""From a worked card to its page, wall sheet, inspection record and numbers.json; the hook that hands them over."""

from collections.abc import Iterator
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from jobcards.pages.site import SiteFile

__all__ = ["site_files"]


def site_files(site_url: str = "", only: str = "", shop: str = "", forgiving: bool = False) -> "Iterator[SiteFile]":
    """Every file made for the site. Raises ProblemsFound.

    The drawings and the dry run are taken up only now, so that the rest of this package works without them.
    """
    from jobcards.pages.site import site_files as every_file

    return every_file(site_url, only, shop, forgiving)
