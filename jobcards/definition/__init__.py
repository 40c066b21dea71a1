"""What a YAML file may say: models, reading, expressions, problems with file, line and column."""

from jobcards.definition.checks.shop import check_shop
from jobcards.definition.expression import Expression
from jobcards.definition.job import Job
from jobcards.definition.loading import job_paths, load_family, load_job, load_shop, shop_for, shop_paths
from jobcards.definition.model import Mark
from jobcards.definition.problem import Problem, ProblemsFound
from jobcards.definition.shop import Shop
from jobcards.definition.size import Size

__all__ = [
    "Expression",
    "Job",
    "Mark",
    "Problem",
    "ProblemsFound",
    "Shop",
    "Size",
    "check_shop",
    "job_paths",
    "load_family",
    "load_job",
    "load_shop",
    "shop_for",
    "shop_paths",
]
