//! Fields of the job itself: who, where, when.

use super::{fields, optional};
use crate::job::fields::Kind;

fields! {
    /// What the job is called.
    TITLE = "title", "title", Job, Kind::Text;
    /// The homeowner's name.
    OWNER = "owner", "owner", Job, Kind::Text;
    /// Where the house is.
    ADDRESS = "address", "address", Job, Kind::Text;
    /// Name of the firm.
    FIRM = "firm", "contractor.name", Job, Kind::Text;
    /// Address and telephone of the firm.
    FIRM_DETAILS = "firm-details", "contractor.details", Job, Kind::Text;
    /// Who signs for the firm.
    FIRM_SIGNS = "firm-signs", "contractor.signs", Job, Kind::Text;
    /// The firm's logo.
    LOGO = "logo", "contractor.logo", Job, Kind::File;
    /// Parts of the letter in the user's own words.
    WORDING = "wording", "wording", Job, Kind::List;
    /// Free notes.
    NOTES = "notes", "notes", Job, Kind::Text;
    /// Units in which figures are typed and shown.
    UNITS = "units", "units", Job, Kind::Choice;
    /// Year the house was built.
    YEAR_BUILT = "year-built", "built", Job, optional!(job, built, Year, 1600, 2199, LeaveOut);
    /// When the boards were installed.
    INSTALLED = "installed", "installed", Job, Kind::Date;
    /// The day of the visit.
    VISITED = "visited", "visited", Job, Kind::Date;
}
