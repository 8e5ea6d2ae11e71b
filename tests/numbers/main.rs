//! Figures against what others published, worked out by hand, or computed with other libraries.

mod by_hand;
mod checked;
mod cutting;
mod drying;
mod layout;
mod odds;
mod outlines;
mod published;
mod rows;
mod weather_files;
