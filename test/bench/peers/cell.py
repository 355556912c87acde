"""The published cell OFF20 on the same equal cells, by SciPy: what a general library makes of it.

Usage: python3 cell.py SPACING_MM. Prints a line for each method: name, seconds with assembly, iterations, ohm.
"""

import sys
import time

import numpy as np
import scipy.sparse as sp
import scipy.sparse.linalg as sla

H = float(sys.argv[1]) * 1e-3
KAPPA = 10.0
NX, NY, NZ = (round(side / H) for side in (0.12, 0.08, 0.06))


def rect(y0, y1, z0, z1):
    """Mask of a rectangle in the plane of a plate, mm."""
    y = (np.arange(NY) + 0.5) * H * 1e3
    z = (np.arange(NZ) + 0.5) * H * 1e3
    return ((y > y0) & (y < y1))[:, None] & ((z > z0) & (z < z1))[None, :]


def assembled():
    """Conductance matrix and right side for 1 V, and the leads at the anode."""
    n = NX * NY * NZ
    index = np.arange(n).reshape(NX, NY, NZ)
    board, window, plate = rect(2, 42, 10, 50), rect(8, 36, 20, 40), rect(28, 56, 20, 40)
    at_piece, at_plate = round(0.04 / H), round(0.08 / H)
    through = np.ones((NX - 1, NY, NZ))
    through[at_piece - 1][board] = 0
    through[at_plate - 1][plate] = 0
    pairs = [
        (index[:-1].ravel(), index[1:].ravel(), through.ravel()),
        (index[:, :-1].ravel(), index[:, 1:].ravel(), None),
        (index[:, :, :-1].ravel(), index[:, :, 1:].ravel(), None),
    ]
    diagonal = np.zeros(n)
    rows, columns, values = [], [], []
    for a, b, share in pairs:
        g = KAPPA * H * (np.ones(a.size) if share is None else share)
        np.add.at(diagonal, a, g)
        np.add.at(diagonal, b, g)
        rows += [a, b]
        columns += [b, a]
        values += [-g, -g]
    lead = 2 * KAPPA * H
    anode = index[at_piece][window]
    for cells in (anode, index[at_plate - 1][plate], index[at_plate][plate]):
        diagonal[cells] += lead
    f = np.zeros(n)
    f[anode] = lead
    rows.append(np.arange(n))
    columns.append(np.arange(n))
    values.append(diagonal)
    matrix = sp.csr_matrix((np.concatenate(values), (np.concatenate(rows), np.concatenate(columns))), shape=(n, n))
    return matrix, f, anode, lead


def tell(name, solve):
    start = time.perf_counter()
    matrix, f, anode, lead = assembled()
    u, iterations = solve(matrix, f)
    ohm = 1 / np.sum(lead * (1 - u[anode]))
    print(f"{name}\t{time.perf_counter() - start:.2f}\t{iterations}\t{ohm:.4f}", flush=True)


def jacobi(matrix, f):
    count = [0]
    inverse = sp.diags(1 / matrix.diagonal())

    def step(_):
        count[0] += 1

    u, _ = sla.cg(matrix, f, rtol=1e-8, M=inverse, callback=step, maxiter=5000)
    return u, count[0]


def multigrid(matrix, f):
    import pyamg

    residuals = []
    u = pyamg.ruge_stuben_solver(matrix).solve(f, tol=1e-8, accel="cg", residuals=residuals)
    return u, len(residuals) - 1


tell("SciPy, CG with a diagonal", jacobi)
try:
    tell("PyAMG, Ruge-Stüben and CG", multigrid)
except ImportError:
    print("PyAMG is not installed", flush=True)
if NX * NY * NZ < 100_000:
    tell("SciPy, SuperLU", lambda matrix, f: (sla.spsolve(matrix.tocsc(), f), 1))
