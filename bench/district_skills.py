"""DINA fitted to one page of the district by other Python packages, each in a process of its own.

Run by bench/district.py with a Python in which they are installed: `python bench/district_skills.py PACKAGE
ROWS`; ROWS is a NumPy file of right and wrong, the needs of each problem, and how many papers have each row.
Packages that take no counts get 20,000 rows drawn by seeded chance, and the log-likelihood is of those.
"""

import sys

import numpy as np

DRAWN = 20_000
ROUNDS, STILL = 2000, 1e-6


def likelihood(answers, slip, guess, shares):  # noqa: ANN001, ANN201
    """Return the log-likelihood of a DINA model at a point, by our own few lines."""
    right, needs, times = answers
    skills = needs.shape[1]
    states = (np.arange(2**skills)[:, None] >> np.arange(skills)) & 1
    can = (states @ needs.T) == needs.sum(axis=1)
    chance = np.clip(np.where(can, 1 - slip, guess), 1e-12, 1 - 1e-12)
    rows = np.exp(right @ np.log(chance).T + (1 - right) @ np.log(1 - chance).T)
    return float(times @ np.log(rows @ shares))


def by_mirt(right, needs, times):  # noqa: ANN001, ANN201
    """Fit by the EM algorithm of mirt."""
    from mirt.models.cdm import fit_cdm  # noqa: PLC0415

    found, shares = fit_cdm(right, needs, "DINA", max_iter=ROUNDS, tol=STILL)
    return likelihood((right, needs, times), found.slip, found.guess, shares)


def by_psy(right, needs, times):  # noqa: ANN001, ANN201
    """Fit by the EM algorithm of psy; it takes all sets of skills as equally likely and gives no shares."""
    from psy import EmDina  # noqa: PLC0415

    kept, guess = EmDina(attrs=needs.T, score=right, max_iter=ROUNDS, tol=STILL).em()
    shares = np.full(2 ** needs.shape[1], 0.5 ** needs.shape[1])
    return likelihood((right, needs, times), 1 - np.ravel(kept), np.ravel(guess), shares)


def by_knowledgespaces(right, needs, times):  # noqa: ANN001, ANN201
    """Fit by the EM algorithm of a BLIM on the answers that DINA expects: the same likelihood."""
    from knowledgespaces import KnowledgeStructure  # noqa: PLC0415
    from knowledgespaces.estimation.blim_em import ResponseMatrix, estimate_blim  # noqa: PLC0415

    skills = needs.shape[1]
    states = (np.arange(2**skills)[:, None] >> np.arange(skills)) & 1
    can = (states @ needs.T) == needs.sum(axis=1)
    items = [f"{at}" for at in range(len(needs))]
    sets = [[items[at] for at in np.flatnonzero(row)] for row in np.unique(can, axis=0)]
    data = ResponseMatrix(items, right, times)
    return estimate_blim(KnowledgeStructure(items, sets), data, max_iter=ROUNDS, tol=STILL).log_likelihood


PACKAGES = {"mirt": by_mirt, "psy": by_psy, "knowledgespaces": by_knowledgespaces}

if __name__ == "__main__":
    held = np.load(sys.argv[2])
    right, needs, times = held["right"].astype(int), held["needs"].astype(int), held["times"]
    if sys.argv[1] != "knowledgespaces":
        right = right[np.random.default_rng(1).choice(len(right), DRAWN, p=times / times.sum())]
        times = np.ones(len(right))
    print(f"{int(times.sum()):,} papers, log-likelihood {PACKAGES[sys.argv[1]](right, needs, times):.3f}")
