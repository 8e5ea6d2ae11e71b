//! What is believed, against what it has to hold: its own worlds, and another's sums.

mod calibration;
