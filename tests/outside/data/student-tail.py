"""Writes student-tail.json: chances beyond t of Student's t by mpmath. Run: python3 student-tail.py"""
import json
from pathlib import Path
import mpmath

mpmath.mp.dps = 60
freedom = [0.1, 0.5, 1, 1.5, 2, 3, 3.9, 4, 5, 8, 16, 20.5, 39, 41, 50, 100, 1e4, 1e6, None]
places = [0, 1e-8, 0.01, 0.3, 0.7, 1, 1.3, 1.7, 1.9, 1.999, 2, 2.1, 2.5, 3, 4, 5, 7, 10, 15, 30, 1000]


def tail(t, nu):
    t = mpmath.mpf(t)
    if nu is None:
        return mpmath.erfc(t / mpmath.sqrt(2)) / 2
    nu = mpmath.mpf(nu)
    return mpmath.betainc(nu / 2, 0.5, 0, nu / (nu + t * t), regularized=True) / 2


rows = [[nu, t, tail(t, nu)] for nu in freedom for t in places if nu != 1e6 or t <= 30]
out = {
    "source": f"mpmath {mpmath.__version__} with 60 digits: betainc, erfc",
    "note": "degrees of freedom (null is infinite), t, chance beyond t; chances below 1e-30 are left out",
    "rows": [[nu, t, float(mpmath.nstr(chance, 17))] for nu, t, chance in rows if chance > 1e-30],
}
Path(__file__).with_suffix(".json").write_text(
    "{\n"
    + f'"source": {json.dumps(out["source"])},\n"note": {json.dumps(out["note"])},\n"rows": [\n'
    + ",\n".join(json.dumps(row) for row in out["rows"])
    + "\n]\n}\n"
)
