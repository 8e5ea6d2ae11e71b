//! What a person enters of a boarded surface.

use geo::{Coord, Intersects as _, LineString, Polygon};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::measure::{Angle, Length};

/// A corner. In files: `("5 ft", "2-1/2 in")`.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
pub struct Point(
    /// To the right.
    pub Length,
    /// Up.
    pub Length,
);

impl Point {
    /// A corner from metres.
    pub const fn m(x: f64, y: f64) -> Self {
        Self(Length::m(x), Length::m(y))
    }

    pub(crate) fn coord(self) -> Coord {
        Coord { x: self.0.to_m(), y: self.1.to_m() }
    }
}

/// The polygon through `corners`, in metres.
pub(crate) fn polygon(corners: &[Point]) -> Polygon {
    Polygon::new(corners.iter().map(|corner| corner.coord()).collect::<LineString>(), vec![])
}

/// The outline as a polygon, in metres.
pub(crate) fn outline_polygon(surface: &Surface) -> Polygon {
    polygon(&surface.outline)
}

impl Surface {
    /// How many of its openings take something of it.
    pub fn openings_within(&self) -> usize {
        let outline = outline_polygon(self);
        self.openings.iter().filter(|opening| polygon(&opening.corners).intersects(&outline)).count()
    }
}

/// What kind of surface it is: it sets the words and the labour, not the geometry.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum SurfaceKind {
    /// Flat ceiling.
    #[default]
    Ceiling,
    /// Wall or wainscot.
    Wall,
    /// Sloped ceiling, drawn in its own plane.
    Slope,
}

impl SurfaceKind {
    /// All of them, in the order offered.
    pub const ALL: [Self; 3] = [Self::Ceiling, Self::Slope, Self::Wall];

    /// As a key, to select a message by.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Ceiling => "ceiling",
            Self::Slope => "slope",
            Self::Wall => "wall",
        }
    }
}

/// A hole in a surface: a window, a door, a skylight.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Opening {
    /// Name, unique in the surface.
    pub name: String,
    /// Corners in order.
    pub corners: Vec<Point>,
}

/// What a divider is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum DividerKind {
    /// A board that parts two sections.
    #[default]
    Dividing,
    /// The board in which two slopes meet; each slope's drawing shows its own part of it.
    Ridge,
}

impl DividerKind {
    /// All of them, in the order offered.
    pub const ALL: [Self; 2] = [Self::Dividing, Self::Ridge];

    /// As a key, to select a message by.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Dividing => "dividing",
            Self::Ridge => "ridge",
        }
    }
}

/// A straight board between sections, or along a ridge.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Divider {
    /// Name, unique in the surface.
    pub name: String,
    /// What it is.
    pub kind: DividerKind,
    /// One end of its centre line.
    pub from: Point,
    /// The other end.
    pub to: Point,
    /// Its width.
    pub width: Length,
}

impl Divider {
    /// The width of a new divider: a nominal 1x4.
    pub const USUAL_WIDTH: Length = Length::inches(3.5);

    /// Its length.
    pub fn length(&self) -> Length {
        let axis = self.to.coord() - self.from.coord();
        Length::m(axis.x.hypot(axis.y))
    }

    /// The divider's rectangle, or `None` if it has no length.
    pub(crate) fn rectangle(&self) -> Option<Polygon> {
        let (from, to) = (self.from.coord(), self.to.coord());
        let axis = to - from;
        let length = axis.x.hypot(axis.y);
        if length < 1e-9 {
            return None;
        }
        let half = self.width.to_m() / 2.0;
        let side = Coord { x: -axis.y / length * half, y: axis.x / length * half };
        let corners = vec![from - side, to - side, to + side, from + side];
        Some(Polygon::new(LineString::new(corners), vec![]))
    }
}

/// The edge profile of a board's face. Sizes are of one board's edge; a joint has two.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub enum Profile {
    /// Square edges.
    Square,
    /// A 45° chamfer whose leg is this long; two make the V.
    VGroove(Length),
    /// A half-round bead this wide along one edge.
    Bead(Length),
}

impl Default for Profile {
    fn default() -> Self {
        Self::VGroove(Length::inches(0.125))
    }
}

impl Profile {
    /// All of them, in the order offered: with the size of this one, or the usual size where it has none.
    pub fn alternatives(self) -> [Self; 3] {
        let size = self.size().or(Self::default().size()).unwrap_or(Length::ZERO);
        [Self::VGroove(size), Self::Bead(size), Self::Square]
    }

    /// Leg of the chamfer or width of the bead; `None` for square edges.
    pub const fn size(self) -> Option<Length> {
        match self {
            Self::Square => None,
            Self::VGroove(size) | Self::Bead(size) => Some(size),
        }
    }

    /// As a key without its size, to select a message by.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Square => "square",
            Self::VGroove(_) => "v_groove",
            Self::Bead(_) => "bead",
        }
    }

    /// How much more face than plan one metre of board-to-board joint has, in metres.
    pub fn developed_extra(self) -> Length {
        match self {
            Self::Square => Length::ZERO,
            Self::VGroove(leg) => leg * (2.0 * (std::f64::consts::SQRT_2 - 1.0)),
            Self::Bead(width) => width * (std::f64::consts::FRAC_PI_2 - 1.0),
        }
    }

    /// Leg of the chamfer, nothing without one.
    pub fn v_leg(self) -> Length {
        match self {
            Self::VGroove(leg) => leg,
            Self::Square | Self::Bead(_) => Length::ZERO,
        }
    }
}

/// Where a board is held across its width. Boards are laid groove first, tongue leading.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum Fixing {
    /// Blind-nailed at the tongue: all movement shows at the groove.
    #[default]
    Tongue,
    /// Nailed in the middle: half to each side.
    Middle,
    /// Nailed at the groove: all movement shows at the tongue.
    Groove,
    /// Nailed at both edges: held, and strained.
    BothEdges,
}

impl Fixing {
    /// All of them, in the order offered.
    pub const ALL: [Self; 4] = [Self::Tongue, Self::Middle, Self::Groove, Self::BothEdges];

    /// As a key, to select a message by.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Tongue => "tongue",
            Self::Middle => "middle",
            Self::Groove => "groove",
            Self::BothEdges => "both_edges",
        }
    }

    /// Share of a board's movement that shows at its groove edge.
    pub const fn at_groove(self) -> f64 {
        match self {
            Self::Tongue => 1.0,
            Self::Middle => 0.5,
            Self::Groove | Self::BothEdges => 0.0,
        }
    }

    /// Share of a board's movement that shows at its tongue edge.
    pub const fn at_tongue(self) -> f64 {
        match self {
            Self::Groove => 1.0,
            Self::Middle => 0.5,
            Self::Tongue | Self::BothEdges => 0.0,
        }
    }
}

/// What the boards' backs face.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default, Serialize, Deserialize, JsonSchema,
)]
pub enum Behind {
    /// Air: furring, joists, an attic.
    #[default]
    Cavity,
    /// Drywall, plaster or another face that they lie tight against.
    Tight,
}

impl Behind {
    /// All of them, in the order offered.
    pub const ALL: [Self; 2] = [Self::Cavity, Self::Tight];

    /// As a key, to select a message by.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Cavity => "cavity",
            Self::Tight => "tight",
        }
    }
}

/// The coating that slows a board's moisture. How much is in the shelf.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default, Serialize, Deserialize, JsonSchema,
)]
pub enum Finish {
    /// No coating.
    Bare,
    /// Two coats of latex on the face, bare back.
    #[default]
    LatexFace,
    /// Latex on the face over a back that was primed too.
    LatexBackPrimed,
    /// Oil (alkyd) paint on the face, bare back.
    OilFace,
}

impl Finish {
    /// As a key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Bare => "bare",
            Self::LatexFace => "latex_face",
            Self::LatexBackPrimed => "latex_back_primed",
            Self::OilFace => "oil_face",
        }
    }
}

/// The boards of a section.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct BoardSpec {
    /// Species, by its id in the catalog, or by a name it has or had there.
    pub species: String,
    /// Thickness.
    pub thickness: Length,
    /// Width over the tongue.
    pub overall_width: Length,
    /// Width that shows.
    pub face_width: Length,
    /// Edge profile.
    pub profile: Profile,
    /// Angle of the growth rings to the face: 0 flat-sawn, 90 quarter-sawn.
    pub ring_angle: Angle,
    /// Where the boards are nailed.
    pub fixing: Fixing,
    /// Their coating.
    pub finish: Finish,
    /// What their backs face.
    pub behind: Behind,
    /// Longest board; longer courses have butt joints, staggered by half. `None` for full lengths.
    pub longest: Option<Length>,
}

impl Default for BoardSpec {
    /// A 1x6 tongue-and-groove V-joint board of eastern white pine. Ring angle for mixed boards.
    fn default() -> Self {
        Self {
            species: "pine-eastern-white".to_owned(),
            thickness: Length::inches(0.75),
            overall_width: Length::inches(5.375),
            face_width: Length::inches(5.125),
            profile: Profile::default(),
            ring_angle: Angle::degrees(25.0),
            fixing: Fixing::default(),
            finish: Finish::default(),
            behind: Behind::default(),
            longest: None,
        }
    }
}

impl BoardSpec {
    /// How far the tongue reaches into the groove, if there is one.
    pub fn tongue(&self) -> Option<Length> {
        let tongue = self.overall_width - self.face_width;
        (tongue > Length::ZERO).then_some(tongue)
    }
}

/// A part of a surface with one kind of board in one direction.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Section {
    /// Name, unique in the surface.
    pub name: String,
    /// Corners of the part it takes; `None` for the whole outline.
    pub region: Option<Vec<Point>>,
    /// The boards.
    pub board: BoardSpec,
    /// Direction the boards run: 0 to the right, 90 up.
    pub direction: Angle,
    /// Width of the ripped starter course; nothing to start with a full board.
    pub start: Length,
}

/// A photo pinned to a place. The file lies in a folder beside the job's.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Photo {
    /// Name of the file, without a folder.
    pub file: String,
    /// The place.
    pub at: Point,
    /// What it shows.
    pub note: String,
}

impl Photo {
    /// Whether this is the name of a file and no way out of its folder.
    pub fn is_bare_name(file: &str) -> bool {
        !file.is_empty() && !file.starts_with('.') && !file.contains(['/', '\\', ':', '\0'])
    }
}

/// One boarded plane.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Surface {
    /// Name, unique in the job.
    pub name: String,
    /// What it is.
    pub kind: SurfaceKind,
    /// Corners of the outline, in order.
    pub outline: Vec<Point>,
    /// Width of the trim board around the outline; nothing for none.
    pub trim: Length,
    /// Holes.
    pub openings: Vec<Opening>,
    /// Boards between sections.
    pub dividers: Vec<Divider>,
    /// Sections.
    pub sections: Vec<Section>,
    /// Photos.
    pub photos: Vec<Photo>,
    /// Where north is on the drawing, counter-clockwise from the right, if it was noted: the sunny side
    /// dries more.
    pub north: Option<Angle>,
    /// Places along the outline whose walls have windows, one for each such edge: the nearest.
    pub windows: Vec<Point>,
}
