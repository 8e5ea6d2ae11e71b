//! Labels of what can be noted and of what figures rest on.

use super::{Arg, Say, Words, say};
use crate::joint::BeadState;
use crate::surface::JointKind;
use crate::survey::{Failure, MeterSetting};
use crate::wood::{CoefficientSource, Kind};

impl Say for Kind {
    fn say(&self, words: &Words) -> String {
        say!(words, "label-source-kind", kind = Arg::Id(self.key()))
    }
}

impl Say for CoefficientSource<'_> {
    fn say(&self, words: &Words) -> String {
        let kind = Arg::Id(self.kind.key());
        let source = Arg::Called(self.source);
        match self.worked_out {
            true => say!(words, "label-coefficient-worked-out", source = source, kind = kind),
            false => say!(words, "label-coefficient-printed", source = source, kind = kind),
        }
    }
}

impl Say for Failure {
    fn say(&self, words: &Words) -> String {
        say!(words, "label-failure", failure = Arg::Id(self.key()))
    }
}

impl Say for MeterSetting {
    fn say(&self, words: &Words) -> String {
        say!(words, "label-meter-setting", setting = Arg::Id(self.key()))
    }
}

impl Say for JointKind {
    fn say(&self, words: &Words) -> String {
        say!(words, "label-joint-kind", kind = Arg::Id(self.key()))
    }
}

impl Say for BeadState {
    fn say(&self, words: &Words) -> String {
        let (state, used) = match *self {
            Self::Pulled(used) => ("pulled", used),
            Self::Squeezed(used) => ("squeezed", used),
            Self::TearsBehind(used) => ("tears_behind", used),
            Self::CrushedBehind(used) => ("crushed_behind", used),
            Self::Torn(used) => ("torn", used),
            Self::Out(used) => ("out", used),
        };
        let used = words.figures().percent(used.to_pct(), 0);
        say!(words, "label-bead", state = Arg::Id(state), used = &used)
    }
}
