//! Fields of the job itself: who, where, when.

use super::{fields, figure, optional};
use crate::job::fields::Kind;

fields! {
    /// What the job is called.
    TITLE = "title", "title", Job, Kind::Text;
    /// The homeowner's name.
    OWNER = "owner", "owner", Job, Kind::Text;
    /// Where the house is.
    ADDRESS = "address", "address", Job, Kind::Text;
    /// The homeowner's telephone.
    OWNER_PHONE = "owner-phone", "phone", Job, Kind::Text;
    /// How the crew gets in.
    GETTING_IN = "getting-in", "getting_in", Job, Kind::Text;
    /// Name of the firm.
    FIRM = "firm", "contractor.name", Job, Kind::Text;
    /// Address and telephone of the firm.
    FIRM_DETAILS = "firm-details", "contractor.details", Job, Kind::Text;
    /// Who signs for the firm.
    FIRM_SIGNS = "firm-signs", "contractor.signs", Job, Kind::Text;
    /// License or registration number of the firm.
    LICENSE = "license", "contractor.license", Job, Kind::Text;
    /// Insurance of the firm.
    INSURANCE = "insurance", "contractor.insurance", Job, Kind::Text;
    /// Number of the proposal.
    PROPOSAL_NUMBER = "proposal-number", "proposal.number", Job, Kind::Text;
    /// Days for which the proposal is good.
    PROPOSAL_VALID = "proposal-valid", "proposal.valid_days", Job,
        figure!(job, proposal.valid_days, Days, 0, 365, Nearest);
    /// When what is due.
    PAYMENT_TERMS = "payment-terms", "proposal.payment", Job, Kind::Text;
    /// What the proposal leaves out.
    EXCLUSIONS = "exclusions", "proposal.exclusions", Job, Kind::Text;
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
    /// The delivery of the boards that opened.
    BOARDS_DELIVERY = "boards-delivery", "received.delivery", Job, Kind::Text;
    /// The grade stamp on them.
    GRADE_STAMP = "grade-stamp", "received.stamp", Job, Kind::Text;
    /// Where they lay before they were installed.
    STORAGE = "storage", "received.storage", Job, Kind::Text;
    /// The day of the visit.
    VISITED = "visited", "visited", Job, Kind::Date;
}
