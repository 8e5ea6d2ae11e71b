"""Times the program's solver of beads and scikit-fem on the same meshes, in one run.

The program prints its meshes, its forces and how long a solve takes: meshing, equilibrium and all stretches
that are read off it. scikit-fem gets the same quadrilaterals with quadratic places and linear pressures, the same
incompressible material in one mixed system, as few load steps as it converges in, and a direct solver; neither
meshing nor reading is counted against it, nor is the first solve.

    pip install scikit-fem
    python3 tests/numbers/bead/speed.py
"""

import json
import subprocess
import sys
import time

import numpy as np
from scipy.sparse import bmat
from scipy.sparse.linalg import splu
from skfem import Basis, BilinearForm, ElementQuad1, ElementQuad2, ElementVector, LinearForm, MeshQuad
from skfem.helpers import ddot, grad

TEST = "bead::tests::meshes_and_times_for_the_peer"
BULK = 1e5


def ours():
    command = ["cargo", "test", "--offline", "--lib", *sys.argv[1:], TEST, "--", "--ignored", "--nocapture"]
    printed = subprocess.run(command, check=True, capture_output=True, text=True).stdout
    return [json.loads(line[line.index("BEAD ") + 5 :]) for line in printed.splitlines() if "BEAD " in line]


class Peer:
    def __init__(self, bead):
        places = np.array(bead["nodes_m"]) * 1e3
        corners = np.array(bead["elements"])[:, [0, 2, 8, 6]]
        used, numbers = np.unique(corners, return_inverse=True)
        mesh = MeshQuad(places[used].T, numbers.reshape(corners.shape).T)
        self.open = bead["open_m"] * 1e3
        self.u = Basis(mesh, ElementVector(ElementQuad2()), intorder=4)
        self.p = Basis(mesh, ElementQuad1(), intorder=4)
        x, y = self.u.doflocs
        right = places[bead["right"]]
        on_right = np.array([np.min(np.hypot(right[:, 0] - a, right[:, 1] - b)) < 1e-6 for a, b in zip(x, y)])
        horizontal = np.zeros(x.size, bool)
        for at in (self.u.nodal_dofs, self.u.facet_dofs, self.u.interior_dofs):
            horizontal[at[0]] = True
        fixed = on_right | (np.isclose(x, 0) & horizontal)
        self.moving = on_right & horizontal
        self.free = np.concatenate([np.nonzero(~fixed)[0], x.size + np.arange(self.p.N)])

    def assemble(self, x):
        u, p = self.u.interpolate(x[: self.u.N]), self.p.interpolate(x[self.u.N :])

        @BilinearForm
        def stiff(du, v, w):
            a, b, q = grad(du), grad(v), 1 - w["p"]
            return ddot(a, b) - q * (a[0, 0] * b[1, 1] + a[1, 1] * b[0, 0] - a[0, 1] * b[1, 0] - a[1, 0] * b[0, 1])

        @BilinearForm
        def couple(du, q, w):
            f, a = grad(w["u"]) + np.eye(2)[:, :, None, None], grad(du)
            return q * (f[1, 1] * a[0, 0] + f[0, 0] * a[1, 1] - f[1, 0] * a[0, 1] - f[0, 1] * a[1, 0])

        @LinearForm
        def force(v, w):
            f, b = grad(w["u"]) + np.eye(2)[:, :, None, None], grad(v)
            cof = f[1, 1] * b[0, 0] + f[0, 0] * b[1, 1] - f[1, 0] * b[0, 1] - f[0, 1] * b[1, 0]
            return ddot(f, b) + (w["p"] - 1) * cof

        @LinearForm
        def volume(q, w):
            f = grad(w["u"]) + np.eye(2)[:, :, None, None]
            return q * (f[0, 0] * f[1, 1] - f[0, 1] * f[1, 0] - 1 - w["p"] / BULK)

        at = dict(u=u, p=p)
        k, c = stiff.assemble(self.u, **at), couple.assemble(self.u, self.p, **at)
        matrix = bmat([[k, c.T], [c, self.mass]], format="csc")
        return matrix, np.concatenate([force.assemble(self.u, **at), volume.assemble(self.p, **at)])

    def solve(self, steps):
        """Force over Young's modulus, mm, as whole joints have it; and how long it took."""
        start = time.perf_counter()
        self.mass = BilinearForm(lambda dp, q, w: -dp * q / BULK).assemble(self.p)
        x = np.zeros(self.u.N + self.p.N)
        carried = np.zeros(x.size)
        carried[: self.u.N][self.moving] = 0.5 * self.open / steps
        for _ in range(steps):
            for iteration in range(20):
                matrix, residual = self.assemble(x)
                if iteration == 0:
                    residual = residual + matrix @ carried
                free = residual[self.free]
                if iteration > 0 and np.linalg.norm(free) <= 1e-6 * np.linalg.norm(residual):
                    break
                change = np.zeros(x.size)
                change[self.free] = splu(matrix[self.free][:, self.free]).solve(-free)
                x = x + change + (carried if iteration == 0 else 0)
                if not np.all(np.isfinite(x)):
                    raise ArithmeticError
            else:
                raise ArithmeticError
        return residual[: self.u.N][self.moving].sum() / 3.0, time.perf_counter() - start


def fastest(peer):
    for steps in (1, 2, 3, 4, 6, 8):
        try:
            peer.solve(steps)
        except (ArithmeticError, RuntimeError):
            continue
        solves = [peer.solve(steps) for _ in range(5)]
        return steps, solves[0][0], min(seconds for _, seconds in solves)
    raise ArithmeticError("no number of steps converges")


def main():
    ratios = []
    for bead in ours():
        steps, force, seconds = fastest(Peer(bead))
        ratios.append(seconds / bead["seconds"])
        off = force / (bead["force_per_modulus_m"] * 1e3) - 1
        print(
            f"{bead['name']}: {len(bead['elements'])} elements; ours {1e3 * bead['seconds']:.1f} ms, "
            f"scikit-fem {1e3 * seconds:.0f} ms in {steps} steps: {ratios[-1]:.0f} times as fast; "
            f"its force is {100 * off:+.2f} % off ours"
        )
    print(f"at least {min(ratios):.0f} times as fast")


if __name__ == "__main__":
    main()
