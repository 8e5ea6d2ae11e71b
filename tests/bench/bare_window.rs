//! A window with nothing in it: what opening the program is measured against.

use eframe::egui;

struct Empty;

impl eframe::App for Empty {
    fn ui(&mut self, ui: &mut egui::Ui, _frame: &mut eframe::Frame) {
        ui.label("bare");
    }
}

fn main() -> eframe::Result {
    eframe::run_native("bare", eframe::NativeOptions::default(), Box::new(|_| Ok(Box::new(Empty))))
}
