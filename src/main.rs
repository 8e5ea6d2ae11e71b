//! Arguments in, window or command line out.

use std::process::ExitCode;

use gapwright::{app, cli};

fn main() -> ExitCode {
    app::start_log();
    tracing::debug!("started");
    let window: cli::OpenWindow = |job| app::run(job).map_err(|error| error.to_string());
    cli::run(app::has_display().then_some(window))
}
