"""The same tests on the same code give the same result, on a busy machine too."""

from hypothesis import settings

settings.register_profile("house", derandomize=True, deadline=None)
settings.load_profile("house")
