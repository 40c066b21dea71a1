"""The built site, a server for it on this machine only, and a browser to look at it with."""

import os
import shutil
import threading
from collections.abc import Iterator
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, Request, sync_playwright

from jobcards.pages import build

# Headless, and without the errands that Chromium runs of its own accord.
BROWSER_ARGUMENTS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
AT_HOME = ("http://127.0.0.1:", "file://", "data:", "blob:", "about:")


class Quiet(SimpleHTTPRequestHandler):
    """Serves files without telling of each."""

    def log_message(self, format: str, *args: Any) -> None:  # noqa: ANN401 - the library's own
        pass


@pytest.fixture(scope="session")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The whole site, built once."""
    target = tmp_path_factory.mktemp("built") / "site"
    build.build_site(target)
    return target


@pytest.fixture(scope="session")
def served(site: Path) -> Iterator[str]:
    """The address at which the built site is served, without a slash at the end."""
    server = ThreadingHTTPServer(("127.0.0.1", 0), partial(Quiet, directory=str(site)))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    yield f"http://127.0.0.1:{server.server_port}"
    server.shutdown()
    server.server_close()


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """Chromium; without one the test is left out, except where all must run (CI)."""
    chromium = os.environ.get("JOBCARDS_BROWSER") or shutil.which("chromium") or shutil.which("chromium-browser")
    if not chromium:
        reason = "no Chromium here; install the package chromium"
        if os.environ.get("CI") == "true":
            pytest.fail(reason)
        pytest.skip(reason)
    with sync_playwright() as playwright:
        running = playwright.chromium.launch(executable_path=chromium, headless=True, args=BROWSER_ARGUMENTS)
        yield running
        running.close()


@pytest.fixture
def page(browser: Browser) -> Iterator[Page]:
    """A fresh window. The test fails when a page asks for anything from outside this machine."""
    outside: list[str] = []
    context = browser.new_context()
    window = context.new_page()

    def note(request: Request) -> None:
        if not request.url.startswith(AT_HOME):
            outside.append(request.url)

    window.on("request", note)
    yield window
    context.close()
    assert not outside, f"fetched from outside: {outside}"
