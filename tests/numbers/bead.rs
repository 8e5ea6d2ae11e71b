//! The bead as it is laid: its strain against published formulas, against another finite-element library,
//! and the table against the solver.

mod endurance;
mod oracle;
mod published;
mod section;
mod speed;
mod table;
