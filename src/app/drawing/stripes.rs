//! Many straight lines as one mesh: thousands of joints cost a frame no more than their corners do.

use eframe::egui::{Color32, Mesh, Pos2, Shape};

/// Lines to be painted together.
pub(super) struct Stripes {
    mesh: Mesh,
    /// Width of the soft edge, in points: a pixel of the screen.
    soft: f32,
}

impl Stripes {
    /// None yet, for so many.
    pub fn for_lines(pixels_per_point: f32, count: usize) -> Self {
        let mut mesh = Mesh::default();
        mesh.reserve_vertices(8 * count);
        mesh.reserve_triangles(6 * count);
        Self { mesh, soft: 1.0 / pixels_per_point }
    }

    /// A line from end to end, so wide.
    pub fn line(&mut self, [from, to]: [Pos2; 2], width: f32, color: Color32) {
        // What is thinner than a pixel is paler instead.
        let color = if width < self.soft { color.gamma_multiply(width / self.soft) } else { color };
        let inner = 0.5 * (width - self.soft).max(0.0);
        let across = (to - from).normalized().rot90();
        let first = self.mesh.vertices.len() as u32;
        let (edge, clear) = (inner + self.soft, Color32::TRANSPARENT);
        // The core of what is no wider than a pixel is a line.
        let rows: &[(f32, Color32)] = match inner > 0.0 {
            true => &[(-edge, clear), (-inner, color), (inner, color), (edge, clear)],
            false => &[(-edge, clear), (0.0, color), (edge, clear)],
        };
        for &(off, color) in rows {
            self.mesh.colored_vertex(from + across * off, color);
            self.mesh.colored_vertex(to + across * off, color);
        }
        for row in (first..).step_by(2).take(rows.len() - 1) {
            self.mesh.add_triangle(row, row + 1, row + 2);
            self.mesh.add_triangle(row + 1, row + 2, row + 3);
        }
    }

    /// All of them in one shape.
    pub fn shape(self) -> Shape {
        Shape::mesh(self.mesh)
    }
}
