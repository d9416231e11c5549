"""Writes studentised-range.json: quantiles of the studentised range by scipy. Run: python3 studentised-range.py"""
import json
from pathlib import Path
import numpy as np
import scipy
from scipy.stats import norm, studentized_range

freedom = [2, 3, 5, 8, 10, 16, 20, 42, 120, np.inf]
values = [2, 3, 4, 6, 8, 12, 16, 24, 40]
probabilities = [0.9, 0.95, 0.95 ** (1 / 5), 0.99]
rows = [
    {"p": p, "m": m, "nu": None if np.isinf(nu) else nu, "q": float(studentized_range.ppf(p, m, nu))}
    for nu in freedom
    for m in values
    for p in probabilities
]
z = np.linspace(-8.9, 8.9, 179)
out = {
    "source": f"scipy {scipy.__version__}: scipy.stats.studentized_range.ppf, scipy.stats.norm.cdf",
    "note": "nu null is infinite",
    "quantiles": rows,
    "normal": [[float(x), float(norm.cdf(x))] for x in z],
}
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=0))
