//! Colours, type and spacing, from `assets/theme.ron`.

use std::sync::{Arc, LazyLock};

use eframe::egui::{
    self, Color32, CornerRadius, FontData, FontDefinitions, FontFamily, FontId, Stroke, TextStyle, Theme,
    Visuals, vec2,
};
use serde::{Deserialize, Deserializer, de};

/// A colour written `#rrggbb`.
fn hex<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Color32, D::Error> {
    let text = String::deserialize(deserializer)?;
    Color32::from_hex(&text).map_err(|_error| de::Error::custom(format!("{text} is not #rrggbb")))
}

macro_rules! palette {
    ($($(#[$doc:meta])* $name:ident)*) => {
        /// The colours of one theme.
        #[derive(Debug, Clone, PartialEq, Deserialize)]
        pub struct Palette {
            $($(#[$doc])* #[serde(deserialize_with = "hex")] pub $name: Color32,)*
        }
    };
}
palette! {
    /// Behind everything.
    ground
    /// Panels.
    panel
    /// Fields and cards.
    raised
    /// Thin lines.
    line
    /// Edges of what can be typed into or clicked.
    edge
    /// Text.
    ink
    /// Lesser text.
    soft
    /// What can be acted on.
    accent
    /// Text on the accent.
    on_accent
    /// A hair-line gap.
    gap_low
    /// A wide gap.
    gap_high
    /// Moisture of the boards.
    water
    /// Humidity of the air.
    air
    /// Doubt.
    warn
    /// Something is wrong.
    error
    /// All is well.
    good
    /// Board faces.
    wood
    /// Lines between boards.
    wood_line
    /// Boards that are cut through.
    cut
    /// Their edges.
    cut_line
    /// Dividers and trim.
    trim
    /// What is selected.
    select
    /// Sealant.
    bead
    /// The dark of an open joint.
    void
}

#[derive(Debug, Clone, PartialEq, Deserialize)]
struct Sizes {
    body: f32,
    small: f32,
    heading: f32,
    answer: f32,
    mono: f32,
}

#[derive(Debug, Clone, PartialEq, Deserialize)]
struct Spacing {
    item: (f32, f32),
    button: (f32, f32),
    margin: f32,
}

/// The window's look.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct ThemeData {
    light: Palette,
    dark: Palette,
    sizes: Sizes,
    spacing: Spacing,
}

static DATA: LazyLock<ThemeData> = LazyLock::new(|| {
    let text = include_str!("../../assets/theme.ron");
    ron::from_str(text).unwrap_or_else(|error| panic!("assets/theme.ron: {error}"))
});

/// The semi-bold family.
pub fn strong_family() -> FontFamily {
    FontFamily::Name("strong".into())
}

/// Text style of the answer line.
pub fn answer_style() -> TextStyle {
    TextStyle::Name("answer".into())
}

/// The font of notes and of what is written on charts: nothing in the window is smaller.
pub fn note() -> FontId {
    FontId::proportional(DATA.sizes.small)
}

/// The palette of the theme that is on.
pub fn palette(ctx: &egui::Context) -> &'static Palette {
    match ctx.theme() {
        Theme::Light => &DATA.light,
        Theme::Dark => &DATA.dark,
    }
}

/// Space around the content of panels.
pub fn margin() -> f32 {
    DATA.spacing.margin
}

/// Sets fonts, sizes, spacing and both themes.
pub fn apply(ctx: &egui::Context) {
    ctx.set_fonts(fonts());
    for (theme, palette) in [(Theme::Light, &DATA.light), (Theme::Dark, &DATA.dark)] {
        ctx.style_mut_of(theme, |style| {
            style.visuals = visuals(theme, palette);
            let sizes = &DATA.sizes;
            style.text_styles = [
                (TextStyle::Body, FontId::proportional(sizes.body)),
                (TextStyle::Button, FontId::proportional(sizes.body)),
                (TextStyle::Small, FontId::proportional(sizes.small)),
                (TextStyle::Monospace, FontId::monospace(sizes.mono)),
                (TextStyle::Heading, FontId::new(sizes.heading, strong_family())),
                (answer_style(), FontId::new(sizes.answer, strong_family())),
            ]
            .into();
            style.spacing.item_spacing = DATA.spacing.item.into();
            style.spacing.button_padding = DATA.spacing.button.into();
            style.spacing.interact_size = vec2(36.0, 24.0);
            style.spacing.icon_spacing = 7.0;
        });
    }
}

/// A ring around what has the keyboard, whatever it is: some widgets show it faintly or not at all.
pub fn focus_ring(ctx: &egui::Context) {
    let Some(focused) = ctx.memory(|memory| memory.focused()) else { return };
    let Some(widget) = ctx.read_response(focused) else { return };
    // What is scrolled out of sight gets no ring.
    if widget.interact_rect.is_positive() {
        let ring = widget.interact_rect.intersect(widget.rect).expand(2.0);
        let stroke = Stroke::new(2.0, palette(ctx).accent);
        ctx.layer_painter(widget.layer_id).rect_stroke(ring, 6, stroke, egui::StrokeKind::Middle);
    }
}

fn fonts() -> FontDefinitions {
    let mut fonts = FontDefinitions::default();
    let files: [(&str, &'static [u8]); 2] = [
        ("Inter", include_bytes!("../../assets/fonts/Inter-Regular.otf")),
        ("Inter SemiBold", include_bytes!("../../assets/fonts/Inter-SemiBold.otf")),
    ];
    for (name, bytes) in files {
        fonts.font_data.insert(name.to_owned(), Arc::new(FontData::from_static(bytes)));
    }
    let fallback = fonts.families.get(&FontFamily::Proportional).cloned().unwrap_or_default();
    let behind = |first: &str| -> Vec<String> {
        std::iter::once(first.to_owned()).chain(fallback.iter().cloned()).chain(["Hack".to_owned()]).collect()
    };
    fonts.families.insert(FontFamily::Proportional, behind("Inter"));
    fonts.families.insert(strong_family(), behind("Inter SemiBold"));
    fonts
}

fn visuals(theme: Theme, palette: &Palette) -> Visuals {
    let mut visuals = theme.default_visuals();
    visuals.panel_fill = palette.panel;
    visuals.window_fill = palette.panel;
    visuals.extreme_bg_color = palette.raised;
    visuals.faint_bg_color = palette.ground;
    visuals.override_text_color = Some(palette.ink);
    visuals.weak_text_color = Some(palette.soft);
    visuals.hyperlink_color = palette.accent;
    visuals.error_fg_color = palette.error;
    visuals.warn_fg_color = palette.warn;
    visuals.window_stroke = Stroke::new(1.0, palette.line);
    visuals.selection.bg_fill = palette.accent.gamma_multiply(0.35);
    visuals.selection.stroke = Stroke::new(2.0, palette.accent);
    // A blinking one would draw the whole window twice a second while a hand rests.
    visuals.text_cursor.blink = false;
    visuals.text_cursor.stroke = Stroke::new(2.0, palette.accent);
    let corner = CornerRadius::same(5);
    let widgets = &mut visuals.widgets;
    // What is pointed at has a darker edge; what has the keyboard a thick one in the accent.
    for (widget, fill, line, edge) in [
        (&mut widgets.noninteractive, palette.panel, palette.line, 1.0),
        (&mut widgets.inactive, palette.raised, palette.edge, 1.0),
        (&mut widgets.hovered, palette.raised, palette.soft, 1.0),
        (&mut widgets.active, palette.ground, palette.accent, 2.0),
        (&mut widgets.open, palette.raised, palette.accent, 1.0),
    ] {
        widget.bg_fill = fill;
        widget.weak_bg_fill = fill;
        widget.bg_stroke = Stroke::new(edge, line);
        widget.fg_stroke = Stroke::new(1.2, palette.ink);
        widget.corner_radius = corner;
        widget.expansion = 0.0;
    }
    visuals
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Relative luminance and contrast ratio, WCAG 2.1.
    fn contrast(a: Color32, b: Color32) -> f32 {
        let luminance = |c: Color32| {
            let channel = |v: u8| {
                let v = f32::from(v) / 255.0;
                if v <= 0.040_45 { v / 12.92 } else { ((v + 0.055) / 1.055).powf(2.4) }
            };
            0.2126 * channel(c.r()) + 0.7152 * channel(c.g()) + 0.0722 * channel(c.b())
        };
        let (a, b) = (luminance(a) + 0.05, luminance(b) + 0.05);
        a.max(b) / a.min(b)
    }

    #[test]
    fn text_stands_out_from_its_ground() {
        for palette in [&DATA.light, &DATA.dark] {
            for text in [palette.ink, palette.soft, palette.accent, palette.warn, palette.error, palette.good]
            {
                for ground in [palette.panel, palette.raised] {
                    assert!(
                        contrast(text, ground) >= 4.5,
                        "{text:?} on {ground:?}: {}",
                        contrast(text, ground)
                    );
                }
            }
            assert!(contrast(palette.on_accent, palette.accent) >= 4.5);
            // What is drawn, not written (WCAG 2.1, 1.4.11).
            for shape in [palette.cut_line, palette.bead] {
                let behind = [palette.ground, palette.void];
                assert!(behind.iter().any(|behind| contrast(shape, *behind) >= 3.0), "{shape:?}");
            }
            assert!(contrast(palette.cut_line, palette.cut) >= 3.0);
            for behind in [palette.ground, palette.panel, palette.raised] {
                assert!(contrast(palette.edge, behind) >= 3.0, "{behind:?}");
            }
        }
    }
}
