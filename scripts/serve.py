"""Build the site and show it at 127.0.0.1:8000.

python3 scripts/serve.py                 build, show, and build again whenever a file changes
python3 scripts/serve.py --build         build into site/ and stop
python3 scripts/serve.py --job SLUG      that one card, while you write it
python3 scripts/serve.py --shop NAME     worked out for that shop of jobcards/shops
"""

from __future__ import annotations

import sys

from _setup import inside


def main() -> int:
    """Hand over to the build, once its packages are there."""
    from jobcards.pages import build

    return build.main(sys.argv[1:])


if __name__ == "__main__":
    inside("site")
    sys.exit(main())
