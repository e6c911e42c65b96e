"""The assay's model once more, in vectorised numpy: a yardstick for the program's speed and a second hand on its figures.

Reads the model as numbers (bench/assayCase.ts) from standard input and writes timings and answers as JSON. The closed form
works on all suppositions of a cable at once as stacked matrices; the draws work on whole blocks at once and never loop
over draws.
"""
import json
import sys
import time

import numpy as np
from numpy.linalg import cholesky, inv, solve

SETTLED = 1e-4
LEAST_SWEEPS, MOST_SWEEPS = 2, 12
HOPELESS = 1e-30
NEGLIGIBLE = 1e-9
NOT_DRAWN = 1e-7
ROOT_THREE = np.sqrt(3.0)


class Cable:
    """Arrays over the suppositions (h) of one cable with n rows: y (h,n), G (n,4), S (h,n,b), V (h,n,n), mu, P (h,4)."""

    def __init__(self, cable, model):
        rows, metals = cable["rows"], model["metals"]
        nb, n = len(model["inputs"]), len(rows)
        sd = np.array([i["sd"] for i in model["inputs"]])
        self.n = n
        self.G = np.array([r["g"] for r in rows], float)
        row_fault = np.array([r["fault"] for r in rows])
        present = [f for f in range(len(model["faults"])) if (row_fault == f).any()]
        kinds = [None, *present]

        base = np.zeros((n, nb))
        for i, r in enumerate(rows):
            for e in r["shared"]:
                base[i, e["at"]] += e["power"] * e["slope"] * sd[e["at"]]
        density, resistivity, lay = model["common"]
        base[:, lay] += self.G[:, 1] * model["commonSd"][2]
        self.own = {}
        for i, r in enumerate(rows):
            for e in r["own"]:
                own = self.own.setdefault(e["input"], (np.sqrt(e["variance"]), e["dof"], np.zeros(n)))
                own[2][i] += e["slope"]
        variance = sum(s * s * np.outer(slope, slope) for s, _, slope in self.own.values())

        y, S, V, mu, P, prior, fault = [], [], [], [], [], [], []
        for m, metal in enumerate(metals):
            yh = np.array([r["y"] for r in rows], float)
            Sh = base.copy()
            for i, r in enumerate(rows):
                t = r["temperature"]
                if t:
                    factor = 1 + metal["alpha"] * t["above20"]
                    yh[i] -= np.log(factor)
                    if t["at"] is not None:
                        Sh[i, t["at"]] += metal["alpha"] / factor * sd[t["at"]]
            shares = metal["sharesCopperConstants"]
            if shares:
                Sh[:, density] += self.G[:, 2] * model["commonSd"][0]
                Sh[:, resistivity] += self.G[:, 3] * model["commonSd"][1]
            less = np.array([0, model["commonSd"][2], model["commonSd"][0] * shares, model["commonSd"][1] * shares])
            sds = np.array([model["lnArea"]["sd"], model["lnLay"]["sd"], metal["lnDensity"]["sd"], metal["lnResistivity"]["sd"]])
            means = [model["lnArea"]["mean"], model["lnLay"]["mean"], metal["lnDensity"]["mean"], metal["lnResistivity"]["mean"]]
            for f in kinds:
                hit = row_fault == f if f is not None else np.zeros(n, bool)
                size = model["faults"][f] if f is not None else {"odds": model["soundOdds"], "mean": 0, "sd": 0}
                y.append(yh - size["mean"] * hit)
                S.append(Sh)
                V.append(variance + size["sd"] ** 2 * np.outer(hit, hit))
                mu.append(means)
                P.append(np.maximum(sds**2 - less**2, 1e-8))
                prior.append(np.log(metal["prior"]) + cable["sight"][m] + np.log(size["odds"]))
                fault.append(size["sd"] * hit)
        self.y, self.S, self.V = np.array(y), np.array(S), np.array(V)
        self.mu, self.P, self.prior, self.fault = np.array(mu), np.array(P), np.array(prior), np.array(fault)
        self.prepare_curves(rows, model, sd, len(kinds))
        self.weights = np.full(len(y), 1.0 / len(y))
        self.info = self.info_mean = None

    def prepare_curves(self, rows, model, sd, kinds):
        """Exact effect of each shared input on each row: (row, input, power, slope per supposition)."""
        h = len(self.y)
        alpha = np.repeat([m["alpha"] for m in model["metals"]], kinds)
        self.curves = []
        for i, r in enumerate(rows):
            for e in r["shared"]:
                self.curves.append((i, e["at"], e["power"], np.full(h, e["slope"] * sd[e["at"]])))
            t = r["temperature"]
            if t and t["at"] is not None:
                self.curves.append((i, t["at"], 1.0, alpha / (1 + alpha * t["above20"]) * sd[t["at"]]))

    def foretell(self, mean, cov):
        r = self.y - self.mu @ self.G.T - self.S @ mean
        M = self.V + np.einsum("ik,hk,jk->hij", self.G, self.P, self.G) + self.S @ cov @ self.S.transpose(0, 2, 1)
        return r, M

    def drop_hopeless(self):
        live = self.weights >= HOPELESS
        if live.all():
            return
        for name in ("y", "S", "V", "mu", "P", "prior", "fault", "weights"):
            setattr(self, name, getattr(self, name)[live])
        self.curves = [(row, at, power, slope[live]) for row, at, power, slope in self.curves]

    def weigh(self, mean, cov):
        self.drop_hopeless()
        r, M = self.foretell(mean, cov)
        L = cholesky(M)
        z = solve(L, r[..., None])[..., 0]
        ln = self.prior - 0.5 * (z * z).sum(1) - np.log(np.diagonal(L, axis1=1, axis2=2)).sum(1)
        w = np.exp(ln - ln.max())
        w /= w.sum()
        moved = np.abs(w - self.weights).max()
        self.weights = w
        return moved

    def collapse(self, nb):
        r, M = self.foretell(np.zeros(nb), np.zeros((nb, nb)))
        w = self.weights
        mean = w @ r
        second = np.einsum("h,hij->ij", w, M + r[:, :, None] * r[:, None, :]) - np.outer(mean, mean)
        S = np.einsum("h,hik->ik", w, self.S)
        self.pull = solve(second, S).T
        self.info, self.info_mean = self.pull @ S, self.pull @ mean

    def answer(self, mean, cov):
        kept = self.weights > NEGLIGIBLE
        self.kept, self.belief = kept, self.weights[kept] / self.weights[kept].sum()
        r, M = self.foretell(mean, cov)
        self.gain = (self.P[:, :1] * self.G[:, 0])[:, None, :] @ inv(M)
        self.gain = self.gain[:, 0]
        self.lnA = self.mu[:, 0] + (self.gain * r).sum(1)
        self.varA = self.P[:, 0] - self.P[:, 0] * (self.gain @ self.G[:, 0])
        self.others = cov


def joint(model):
    nb = len(model["inputs"])
    cables = [Cable(c, model) for c in model["cables"]]
    precision, vector, states = np.eye(nb), np.zeros(nb), [None] * len(cables)
    sweep, moved = 0, np.inf
    while sweep < LEAST_SWEEPS or (sweep < MOST_SWEEPS and moved > SETTLED):
        sweep, moved = sweep + 1, 0.0
        for at, c in enumerate(cables):
            if c.info is not None:
                precision, vector = precision - c.info, vector - c.info_mean
            cov = inv(precision)
            states[at] = (cov @ vector, cov)
            moved = max(moved, c.weigh(*states[at]))
            c.collapse(nb)
            precision, vector = precision + c.info, vector + c.info_mean
    for c, state in zip(cables, states):
        c.answer(*state)
    return cables


def mixture_moments(c):
    w, m, v = c.belief, c.lnA[c.kept], c.varA[c.kept]
    mean = w @ m
    return mean, np.sqrt(w @ (v + m * m) - mean * mean)


def block_of_draws(cables, uniform, straight, size, rng):
    """ln area of every cable, (cables, size): all draws of the block at once."""
    nb = len(uniform)
    b = np.where(uniform[:, None], ROOT_THREE * (2 * rng.random((nb, size)) - 1), rng.standard_normal((nb, size)))
    told = np.zeros((nb, size))
    parts = []
    for c in cables:
        h = c.drawn[np.minimum(np.searchsorted(c.up_to, rng.random(size)), len(c.drawn) - 1)]
        x = c.mu[h].T + c.root_P[h].T * rng.standard_normal((4, size))
        r = c.y[h].T - c.G @ x
        for k in straight:
            r -= c.S[h, :, k].T * b[k]
        for row, at, power, slope in c.curves:
            r[row] -= power * np.log1p(np.maximum(slope[h] * b[at], -0.95))
        r -= c.gaussian_root @ rng.standard_normal((c.n, size))
        for sd, dof, slopes in c.heavy_tailed:
            r -= np.outer(sd * slopes, rng.standard_t(dof, size))
        if c.any_fault:
            r -= c.fault[h].T * rng.standard_normal(size)
        own_told = c.pull @ r
        told += own_told
        parts.append((c, h, x[0] + np.einsum("jn,nj->j", c.gain[h], r), own_told))
    return np.stack([ln - np.einsum("jk,kj->j", c.told[h], told - own) for c, h, ln, own in parts])


def by_draws(model, draws, block, seed):
    cables = joint(model)
    for c in cables:
        c.drawn = np.flatnonzero(c.kept & (c.weights > NOT_DRAWN))
        c.up_to = np.cumsum(c.weights[c.drawn] / c.weights[c.drawn].sum())
        c.root_P = np.sqrt(c.P)
        own = c.own.values()
        c.gaussian_root = cholesky(sum(s * s * np.outer(slope, slope) for s, dof, slope in own if dof is None))
        c.heavy_tailed = [each for each in own if each[1] is not None]
        c.any_fault = bool(c.fault[c.drawn].any())
        c.told = np.einsum("hn,hnk->hk", c.gain, c.S) @ c.others
    uniform = np.array([i["uniform"] for i in model["inputs"]])
    straight = np.flatnonzero(~uniform)
    rng = np.random.Generator(np.random.SFC64(seed))
    tail = (1 - model["level"]) / 2
    total = np.zeros((len(cables), 4))
    blocks = draws // block
    for _ in range(blocks):
        ln = block_of_draws(cables, uniform, straight, block, rng)
        value = np.exp(ln.mean(1))
        ends = np.exp(np.quantile(ln, [tail, 1 - tail], axis=1))
        total += np.stack([value, value * ln.std(1, ddof=1), ends[0], ends[1]], axis=1)
    return total / blocks * 1e6


def best_time(run, repeats):
    times = []
    for _ in range(repeats):
        started = time.perf_counter()
        result = run()
        times.append(time.perf_counter() - started)
    return sorted(times)[len(times) // 2], result


def main():
    request = json.load(sys.stdin)
    model, draws = request["model"], request["draws"]
    joint(model)
    closed_seconds, cables = best_time(lambda: [mixture_moments(c) for c in joint(model)], 9)
    timed = []
    for block in request["blocks"]:
        by_draws(model, block, block, 1)
        timed.append((*best_time(lambda block=block: by_draws(model, draws, block, 7), 1), block))
    seconds, answers, block = min(timed, key=lambda each: each[0])
    json.dump(
        {
            "numpy": np.__version__,
            "closedSeconds": closed_seconds,
            "closed": [[np.exp(m) * 1e6, np.exp(m) * 1e6 * s] for m, s in cables],
            "drawSeconds": seconds,
            "block": block,
            "drawn": answers.tolist(),
        },
        sys.stdout,
    )


main()
