//! The arguments of the command line. Their help texts are messages of `command-line.ftl`.

#![allow(
    clippy::missing_docs_in_private_items,
    missing_docs,
    reason = "clap would print doc comments as help"
)]

use std::path::PathBuf;

use clap::{ArgMatches, Args, Command as Clap, CommandFactory as _, FromArgMatches as _, Parser, Subcommand};

use super::bead::BeadArguments;
use super::new_job::NewJob;
use crate::words::Words;

#[derive(Parser)]
#[command(version, args_conflicts_with_subcommands = true)]
pub(super) struct Arguments {
    pub job: Option<PathBuf>,
    #[command(subcommand)]
    pub command: Option<Command>,
}

#[derive(Subcommand)]
pub(super) enum Command {
    Assess {
        job: PathBuf,
        #[arg(long)]
        json: bool,
    },
    Bead(BeadArguments),
    New(Box<NewJob>),
    Check {
        job: PathBuf,
    },
    Joints(Table),
    Year(Table),
    Export {
        job: PathBuf,
        #[arg(long)]
        out: PathBuf,
    },
    Ready {
        job: PathBuf,
        #[arg(long)]
        json: bool,
        #[arg(long)]
        out: Option<PathBuf>,
        #[command(flatten)]
        languages: PaperLanguages,
    },
    Rates {
        folder: PathBuf,
        #[arg(long, alias = "shelf")]
        prices: Option<PathBuf>,
    },
    Papers {
        job: PathBuf,
        #[arg(long)]
        out: PathBuf,
        #[arg(long)]
        templates: Option<PathBuf>,
        #[command(flatten)]
        languages: PaperLanguages,
        #[arg(long)]
        draft: bool,
        #[arg(long)]
        keep: bool,
    },
    Schema {
        #[arg(long)]
        job: bool,
    },
    Templates {
        #[arg(long)]
        out: PathBuf,
    },
}

/// The languages of the papers.
#[derive(Args, Clone)]
pub(super) struct PaperLanguages {
    #[arg(long, value_name = "TAG")]
    pub owner_language: Option<String>,
    #[arg(long, value_name = "TAG")]
    pub crew_language: Option<String>,
}

#[derive(Args)]
pub(super) struct Table {
    pub job: PathBuf,
    #[arg(long, required = true)]
    pub csv: bool,
}

impl Arguments {
    /// Reads the arguments of the process; on wrong usage or a wish for help clap prints and exits.
    pub(super) fn read(words: &Words) -> Self {
        let command =
            with_help(Self::command().about(text(words, "command-line").unwrap_or_default()), words);
        let matches: ArgMatches = command.get_matches();
        Self::from_arg_matches(&matches).unwrap_or_else(|error| error.exit())
    }
}

/// The command with the help of its arguments and of its subcommands.
fn with_help(command: Clap, words: &Words) -> Clap {
    let name = command.get_name().to_owned();
    let argument = |argument: clap::Arg| {
        let help = text(words, &format!("command-line-{name}.{}", argument.get_id().as_str()));
        match help {
            Some(help) => argument.help(help),
            None => argument,
        }
    };
    let names: Vec<String> = command.get_subcommands().map(|sub| sub.get_name().to_owned()).collect();
    let command = command.mut_args(argument);
    names.into_iter().fold(command, |command, name| {
        command.mut_subcommand(&name, |sub| {
            let about = text(words, &format!("command-line-{name}")).unwrap_or_default();
            with_help(sub.about(about), words)
        })
    })
}

fn text(words: &Words, id: &str) -> Option<String> {
    words.optional(id).map(std::borrow::Cow::into_owned)
}
