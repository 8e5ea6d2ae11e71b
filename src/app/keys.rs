//! A key that sends the keyboard elsewhere ends its frame: what is typed after it is for the field that
//! has the keyboard next, however fast it is typed and however long a frame takes.

use eframe::egui::{Context, Event, Key, Plugin, RawInput, Ui};

/// Holds back what comes after Enter, Tab, Esc or a shortcut, for the next frame.
#[derive(Debug, Default)]
pub(super) struct OneStepAFrame {
    waiting: Vec<Event>,
}

impl Plugin for OneStepAFrame {
    fn debug_name(&self) -> &'static str {
        "one-step-a-frame"
    }

    fn input_hook(&mut self, _: &Context, input: &mut RawInput) {
        self.waiting.append(&mut input.events);
        let end = self.waiting.iter().position(sends_keyboard_on).map_or(self.waiting.len(), |at| at + 1);
        input.events = self.waiting.drain(..end).collect();
    }

    fn on_end_pass(&mut self, ui: &mut Ui) {
        if !self.waiting.is_empty() {
            ui.ctx().request_repaint();
        }
    }
}

const fn sends_keyboard_on(event: &Event) -> bool {
    let Event::Key { key, pressed: true, modifiers, .. } = event else { return false };
    modifiers.command || matches!(key, Key::Enter | Key::Tab | Key::Escape)
}
