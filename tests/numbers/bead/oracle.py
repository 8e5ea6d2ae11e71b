"""Strains sealant beads with scikit-fem, for tests/bead_oracle.rs to hold ours against.

Nothing is shared with the program: triangles with quadratic places and linear continuous pressures
(Taylor-Hood), the full neo-Hookean energy with its logarithm, the whole mixed system solved at once,
a mesh of its own that is finer at the corners.

    pip install scikit-fem
    python3 tests/numbers/bead/oracle.py > tests/numbers/bead/oracle.json
"""

import json
import sys
import time

import numpy as np
from scipy.sparse import bmat
from scipy.sparse.linalg import splu
from skfem import Basis, BilinearForm, ElementTriP1, ElementTriP2, ElementVector, LinearForm, MeshTri
from skfem.helpers import ddot, grad

REACH = 0.25
BULK = 1e5
INCH = 25.4
GAP, LEG = 3 / 32 * INCH, INCH / 8

# Lengths in mm; `open` is in gaps. The back is free, on a frictionless plane (pressed on it all along),
# or bonded to the tongue of the left board but for the last 0.1 mm before the right one.
SECTIONS = [
    dict(name="slot", gap=GAP, leg=LEG, fill=0.0, depth=GAP, sag=0.0, behind="free", open=0.5),
    dict(name="half_v", gap=GAP, leg=LEG, fill=0.5, depth=0.0, sag=0.0, behind="free", open=0.5),
    dict(name="half_v_slot", gap=GAP, leg=LEG, fill=0.5, depth=GAP, sag=0.0, behind="free", open=0.5),
    dict(name="hollow", gap=GAP, leg=LEG, fill=0.6, depth=1.0, sag=0.1, behind="free", open=0.3),
    dict(name="test_bead", gap=12.7, leg=0.0, fill=0.0, depth=12.7, sag=0.0, behind="free", open=0.25),
    dict(name="half_v_closing", gap=GAP, leg=LEG, fill=0.5, depth=0.0, sag=0.0, behind="free", open=-0.25),
    dict(name="pressed", gap=GAP, leg=LEG, fill=0.5, depth=GAP, sag=0.0, behind="breaker", open=-0.25),
    dict(name="tongue", gap=GAP, leg=LEG, fill=0.5, depth=GAP, sag=0.0, behind="tongue", open=0.25),
]


def spread(length, smallest, growth, ends):
    """Points from 0 to length, dense at the named ends."""
    if ends == "both":
        half = spread(length / 2, smallest, growth, "start")
        return np.concatenate([half, length - half[-2::-1]])
    sizes = [min(smallest, length / 2)]
    while sum(sizes) < length:
        sizes.append(min(sizes[-1] * growth, length / 6))
    at = np.concatenate([[0], np.cumsum(sizes)]) * length / sum(sizes)
    return at if ends == "start" else length - at[::-1]


def grid(section, smallest, growth):
    """Shares of the half width and heights of the lines of a grid."""
    top, whole = section["fill"] * section["leg"], section["behind"] == "tongue"
    half = section["gap"] / 2
    strip = 0.1 if whole else 0.0
    right = spread(half - strip, smallest, growth, "end")
    if whole:
        right = np.concatenate([right, half - strip + strip * np.array([0.25, 0.5, 0.75, 1.0])])
    across = right / half
    if whole:
        across = np.concatenate([-across[:0:-1], across])
    up = [np.array([-section["depth"]])]
    if section["depth"] > 0:
        up.append(-section["depth"] + spread(section["depth"], smallest, growth, "both")[1:])
    if top > 0:
        up.append(spread(top, smallest, growth, "both")[1:])
    return across, np.concatenate(up)


def half_width(section, y):
    return section["gap"] / 2 + np.maximum(y, 0.0)


def place(section, share, level):
    top, bottom = section["fill"] * section["leg"], -section["depth"]
    sag = section["sag"] * 2 * half_width(section, top)
    height = (level - bottom) / (top - bottom)
    return share * half_width(section, level), level - sag * height * (1 - share**2)


class Strainer:
    def __init__(self, section, smallest, growth):
        self.section = section
        across, up = grid(section, smallest, growth)
        # Triangles of the grid with straight sides; a hollow face is a fine polygon.
        mesh = MeshTri.init_tensor(across, up)
        self.shares, self.levels = mesh.p
        mesh = MeshTri(np.array(place(section, *mesh.p)), mesh.t)
        self.mesh = mesh
        self.u = Basis(mesh, ElementVector(ElementTriP2()), intorder=5)
        self.p = Basis(mesh, ElementTriP1(), intorder=5)
        self.bounds()

    def bounds(self):
        top, bottom = self.section["fill"] * self.section["leg"], -self.section["depth"]
        dofs = self.u.doflocs
        x, y = dofs
        right = np.isclose(x, half_width(self.section, y)) & (y <= top + 1e-9)
        left = np.isclose(x, -half_width(self.section, y))
        axis = np.arange(x.size)
        # Components alternate from dof to dof at each node and edge.
        horizontal = np.zeros(x.size, bool)
        for at in (self.u.nodal_dofs, self.u.facet_dofs):
            horizontal[at[0]] = True
        fixed = right.copy()
        behind = self.section["behind"]
        if behind == "tongue":
            fixed |= left
            back = np.isclose(y, bottom) & (x < self.section["gap"] / 2 - 0.1 + 1e-9)
            fixed |= back
        else:
            fixed |= np.isclose(x, 0) & horizontal
        if behind == "breaker":
            fixed |= np.isclose(y, bottom) & ~horizontal
        self.moving = right & horizontal
        self.free = np.concatenate([axis[~fixed], x.size + np.arange(self.p.N)])
        self.travel = self.section["gap"] * (1.0 if behind == "tongue" else 0.5)

    def assemble(self, u, p):
        @BilinearForm
        def stiff(du, v, w):
            f = grad(w["u"]) + np.eye(2)[:, :, None, None]
            j = f[0, 0] * f[1, 1] - f[0, 1] * f[1, 0]
            inv = np.array([[f[1, 1], -f[0, 1]], [-f[1, 0], f[0, 0]]]) / j
            a, b = grad(du), grad(v)
            inv_a, inv_b = np.einsum("ij...,jk...->ik...", inv, a), np.einsum("ij...,jk...->ik...", inv, b)
            tr_a, tr_b = inv_a[0, 0] + inv_a[1, 1], inv_b[0, 0] + inv_b[1, 1]
            cross = np.einsum("ij...,ji...->...", inv_a, inv_b)
            return ddot(a, b) + (1 - w["p"] * j) * cross + w["p"] * j * tr_a * tr_b

        @BilinearForm
        def couple(du, q, w):
            f = grad(w["u"]) + np.eye(2)[:, :, None, None]
            a = grad(du)
            return q * (f[1, 1] * a[0, 0] + f[0, 0] * a[1, 1] - f[1, 0] * a[0, 1] - f[0, 1] * a[1, 0])

        @LinearForm
        def force(v, w):
            f = grad(w["u"]) + np.eye(2)[:, :, None, None]
            j = f[0, 0] * f[1, 1] - f[0, 1] * f[1, 0]
            inv = np.array([[f[1, 1], -f[0, 1]], [-f[1, 0], f[0, 0]]]) / j
            b = grad(v)
            inv_b = np.einsum("ij...,jk...->ik...", inv, b)
            return ddot(f, b) + (w["p"] * j - 1) * (inv_b[0, 0] + inv_b[1, 1])

        @LinearForm
        def volume(q, w):
            f = grad(w["u"]) + np.eye(2)[:, :, None, None]
            return q * (f[0, 0] * f[1, 1] - f[0, 1] * f[1, 0] - 1 - w["p"] / BULK)

        @BilinearForm
        def mass(dp, q, w):
            return -dp * q / BULK

        at = dict(u=self.u.interpolate(u), p=self.p.interpolate(p))
        k, c = stiff.assemble(self.u, **at), couple.assemble(self.u, self.p, **at)
        m = mass.assemble(self.p)
        matrix = bmat([[k, c.T], [c, m]], format="csc")
        return matrix, np.concatenate([force.assemble(self.u, **at), volume.assemble(self.p, **at)])

    def solve(self, steps):
        u, p = np.zeros(self.u.N), np.zeros(self.p.N)
        done, target, step = 0.0, self.section["open"], self.section["open"] / steps
        while abs(done - target) > 1e-12:
            step = np.sign(target) * min(abs(step), abs(target - done))
            try:
                u, p = self.equilibrium(u, p, step)
                done += step
                step *= 1.4
            except ArithmeticError:
                step *= 0.4
                if abs(step) < 1e-4:
                    raise
        residual = self.assemble(u, p)[1]
        return u, p, residual

    def equilibrium(self, u, p, step):
        x = np.concatenate([u, p])
        carried = np.zeros(x.size)
        carried[: self.u.N][self.moving] = step * self.travel
        for iteration in range(15):
            matrix, residual = self.assemble(x[: self.u.N], x[self.u.N :])
            if iteration == 0:
                residual = residual + matrix @ carried
            free = residual[self.free]
            size = np.linalg.norm(free)
            if not np.isfinite(size):
                break
            if iteration > 0 and size <= 1e-7 * np.linalg.norm(residual):
                return x[: self.u.N], x[self.u.N :]
            change = np.zeros(x.size)
            change[self.free] = splu(matrix[self.free][:, self.free]).solve(-free)
            x = x + change + (carried if iteration == 0 else 0)
        raise ArithmeticError

    def local(self, u, at):
        """Mean of the largest principal stretch within REACH of a place."""
        near = np.linalg.norm(self.mesh.p[:, self.mesh.t].mean(axis=1) - np.array(at)[:, None], axis=0)
        near = np.nonzero(near < REACH + self.longest())[0]
        basis = Basis(self.mesh, ElementVector(ElementTriP2()), elements=near, intorder=18)
        f = basis.interpolate(u).grad + np.eye(2)[:, :, None, None]
        x = basis.global_coordinates().value
        inside = (x[0] - at[0]) ** 2 + (x[1] - at[1]) ** 2 <= REACH**2
        c = np.einsum("ki...,kj...->ij...", f, f)
        mean, apart = (c[0, 0] + c[1, 1]) / 2, np.hypot((c[0, 0] - c[1, 1]) / 2, c[0, 1])
        stretch = np.sqrt(mean + apart)
        return float((stretch * inside * basis.dx).sum() / (inside * basis.dx).sum())

    def longest(self):
        """The longest side of an element."""
        p = self.mesh.p[:, self.mesh.t]
        return np.max(np.linalg.norm(p - np.roll(p, 1, axis=1), axis=0))

    def face_middle(self, u):
        """Stretch of the face's line over a short piece from its middle."""
        top = self.section["fill"] * self.section["leg"]
        face = np.isclose(self.levels, top)
        order = np.argsort(np.abs(self.shares[face]))
        nodes = np.nonzero(face)[0][order[:2]]
        if self.section["behind"] == "tongue":
            nodes = np.nonzero(face)[0][order[:3]]
            nodes = nodes[np.argsort(self.shares[nodes])][[0, 2]]
        moved = self.mesh.p[:, nodes] + u[self.u.nodal_dofs[:, nodes]]
        laid = self.mesh.p[:, nodes]
        return float(np.linalg.norm(moved[:, 1] - moved[:, 0]) / np.linalg.norm(laid[:, 1] - laid[:, 0]))

    def places(self):
        s = self.section
        top, bottom, half = s["fill"] * s["leg"], -s["depth"], s["gap"] / 2
        wide = half_width(s, top)
        found = dict(face_middle=(0.0, top - s["sag"] * 2 * wide), visible_edge=(wide, top))
        if top > 0 and bottom < 0:
            found["slot_corner"] = (half, 0.0)
        if s["behind"] == "tongue":
            found["tongue_corner"] = (half, bottom)
        else:
            found["back_middle"] = (0.0, bottom)
            found["back_edge"] = (half, bottom)
        return found


def main():
    results = []
    for section in SECTIONS:
        scale = 2.0 if section["name"] == "test_bead" else 1.0
        strainer = Strainer(section, 0.03 * scale, 1.35)
        u, _, residual = strainer.solve(6)
        force = residual[: strainer.u.N][strainer.moving].sum() / 3.0
        result = dict(
            section=section,
            unknowns=int(strainer.free.size),
            face_middle_line=strainer.face_middle(u),
            force_per_modulus_mm=float(force),
            places={name: strainer.local(u, at) for name, at in strainer.places().items()},
        )
        # The same work on a grid as coarse as the program's own, for speed alone.
        coarse = Strainer(section, 0.17, 2.2)
        start = time.perf_counter()
        try:
            coarse.solve(2)
            result["coarse_seconds"] = time.perf_counter() - start
            result["coarse_unknowns"] = int(coarse.free.size)
        except ArithmeticError:
            result["coarse_seconds"] = None
        results.append(result)
        print(section["name"], result, file=sys.stderr)
    json.dump(results, sys.stdout, indent=1)
    print()


if __name__ == "__main__":
    main()
