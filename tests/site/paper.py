"""What comes out of the printer."""

import io
from typing import Literal

from playwright.sync_api import Page
from pypdf import PdfReader

Paper = Literal["A4", "Letter"]


def print_pages(page: Page, size: Paper) -> PdfReader:
    """Print what the window shows on paper of this size; `.pages` are the sheets, each with `.extract_text()`."""
    return PdfReader(io.BytesIO(page.pdf(format=size, prefer_css_page_size=False, print_background=False)))
