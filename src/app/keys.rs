//! A key or a click that sends the keyboard elsewhere ends its frame: what is typed after it is for the field that
//! has the keyboard next, however fast it is typed and however long a frame takes. A field that a click or Enter
//! brings up is drawn in the frame after it, and has the keyboard from then on; keys wait that long.

use eframe::egui::{Context, Event, Key, Plugin, PointerButton, RawInput, Ui};

use super::lead;

/// Frames for which keys wait at most for an entry that is led to: what is drawn nowhere holds up none.
const MOST: u8 = 8;

/// Holds back what comes after Enter, Tab, Esc, a shortcut or a click, for the frame in which it is meant.
#[derive(Debug, Default)]
pub(super) struct OneStepAFrame {
    waiting: Vec<Event>,
    /// Whether the frame before took what may bring up a field.
    brought: bool,
    /// Frames for which keys have waited for an entry that is led to.
    led: u8,
}

impl Plugin for OneStepAFrame {
    fn debug_name(&self) -> &'static str {
        "one-step-a-frame"
    }

    fn input_hook(&mut self, ctx: &Context, input: &mut RawInput) {
        self.waiting.append(&mut input.events);
        self.led = if lead::is_coming(ctx) { self.led.saturating_add(1) } else { 0 };
        let waits = self.brought || (1..=MOST).contains(&self.led);
        let end = if waits { self.typed_from(0) } else { self.first_step() };
        input.events = self.waiting.drain(..end).collect();
        self.brought = input.events.iter().any(brings_field);
    }

    fn on_end_pass(&mut self, ui: &mut Ui) {
        if !self.waiting.is_empty() {
            ui.ctx().request_repaint();
        }
    }
}

impl OneStepAFrame {
    /// Where the first key of those from `start` on stands; the end without one.
    fn typed_from(&self, start: usize) -> usize {
        let typed = self.waiting[start..].iter().position(is_typed);
        typed.map_or(self.waiting.len(), |at| start + at)
    }

    /// Where the first step ends: after a key that sends the keyboard on, or before the keys that follow a click.
    fn first_step(&self) -> usize {
        let ends = self.waiting.iter().position(|event| sends_keyboard_on(event) || is_click(event));
        match ends {
            Some(at) if is_click(&self.waiting[at]) => self.typed_from(at),
            Some(at) => at + 1,
            None => self.waiting.len(),
        }
    }
}

const fn is_typed(event: &Event) -> bool {
    matches!(event, Event::Text(_) | Event::Key { .. } | Event::Paste(_) | Event::Ime(_))
}

const fn is_click(event: &Event) -> bool {
    matches!(event, Event::PointerButton { button: PointerButton::Primary, pressed: false, .. })
}

const fn brings_field(event: &Event) -> bool {
    is_click(event) || matches!(event, Event::Key { key: Key::Enter, pressed: true, .. })
}

const fn sends_keyboard_on(event: &Event) -> bool {
    let Event::Key { key, pressed: true, modifiers, .. } = event else { return false };
    modifiers.command || matches!(key, Key::Enter | Key::Tab | Key::Escape)
}
