"""The site's own Markdown, with all its extensions and plugins, for one page."""

import os
from functools import cache
from typing import Any

from markdown import Markdown
from mkdocs.config import load_config

from jobcards.pages.build import ROOT


@cache
def config() -> Any:  # noqa: ANN401 - mkdocs' own
    """The site's configuration, its plugins set up."""
    os.environ["DISABLE_MKDOCS_2_WARNING"] = "true"
    loaded = load_config(str(ROOT / "mkdocs.yml"))
    loaded.plugins.on_startup(command="build", dirty=False)
    return loaded.plugins.on_config(loaded)


def to_html(markdown: str) -> str:
    """What the site engine makes of a page."""
    settings = config()
    engine = Markdown(extensions=settings.markdown_extensions, extension_configs=settings.mdx_configs)
    return engine.convert(markdown)
